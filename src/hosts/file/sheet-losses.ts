import { partText, partXml, relationsOf, type Parts } from "./package-parts";
import {
  allNamed,
  childNamed,
  childrenNamed,
  flagOf,
  type XmlElement,
} from "./xml";

export const PRINT_SETTINGS = "print settings";

/** What a worksheet's part says and the model does not carry, in words without the sheet's name. */
export function sheetLosses(parts: Parts, part: string): readonly string[] {
  const worksheet = partXml(parts, part);
  return [
    ...worksheet.children.flatMap((child) => elementLosses(child)),
    ...hiddenLines(worksheet),
    ...drawnShapes(parts, part),
  ];
}

/** Elements of a worksheet the model carries, or whose loss changes nothing a person sees. */
const carried = new Set(
  `sheetPr dimension sheetViews sheetFormatPr cols sheetData mergeCells dataValidations pageMargins drawing
  legacyDrawing tableParts ignoredErrors phoneticPr cellWatches`.split(/\s+/),
);

const named: Readonly<Record<string, string>> = {
  sheetCalcPr: "calculation settings",
  sheetProtection: "protection",
  protectedRanges: "protected ranges",
  scenarios: "scenarios",
  autoFilter: "a filter",
  sortState: "a sort order",
  dataConsolidate: "a consolidation",
  conditionalFormatting: "conditional formats",
  hyperlinks: "hyperlinks",
  printOptions: PRINT_SETTINGS,
  pageSetup: PRINT_SETTINGS,
  headerFooter: PRINT_SETTINGS,
  rowBreaks: PRINT_SETTINGS,
  colBreaks: PRINT_SETTINGS,
  legacyDrawingHF: PRINT_SETTINGS,
  drawingHF: PRINT_SETTINGS,
  customProperties: "custom properties",
  customSheetViews: "saved views",
  smartTags: "smart tags",
  picture: "a background picture",
  oleObjects: "embedded objects",
  controls: "form controls",
  webPublishItems: "web publishing settings",
};

const extensions: Readonly<Record<string, string>> = {
  conditionalFormattings: "conditional formats",
  sparklineGroups: "sparklines",
  slicerList: "slicers",
  timelineRefs: "timelines",
  protectedRanges: "protected ranges",
  ignoredErrors: "",
  dataValidations: "",
};

function elementLosses(element: XmlElement): readonly string[] {
  const { name } = element;
  if (name === "sheetViews") return viewLosses(element);
  if (name === "extLst")
    return childrenNamed(element, "ext").flatMap(({ children }) =>
      children.flatMap((child) => {
        const found = extensions[child.name] ?? `an extension (${child.name})`;
        return found === "" ? [] : [found];
      }),
    );
  if (name === "AlternateContent")
    return element.children.flatMap((choice) =>
      choice.children.flatMap(elementLosses),
    );
  if (carried.has(name)) return [];
  return [named[name] ?? `something that is not understood (${name})`];
}

function viewLosses(views: XmlElement): readonly string[] {
  const [view] = views.children;
  const pane = childNamed(view, "pane");
  return [
    ...(flagOf(view, "showGridLines", true) ? [] : ["hidden grid lines"]),
    ...(flagOf(view, "showZeros", true) ? [] : ["hidden zeros"]),
    ...(flagOf(view, "showFormulas")
      ? ["formulas shown in place of results"]
      : []),
    ...(flagOf(view, "rightToLeft") ? ["columns counted from the right"] : []),
    ...(pane && !/^frozen/.test(pane.attributes["state"] ?? "")
      ? ["a split window"]
      : []),
  ];
}

function hiddenLines(worksheet: XmlElement): readonly string[] {
  const lines = [
    ...childrenNamed(childNamed(worksheet, "cols"), "col"),
    ...childrenNamed(childNamed(worksheet, "sheetData"), "row"),
  ];
  return [
    ...(lines.some((line) => flagOf(line, "hidden"))
      ? ["hidden rows or columns"]
      : []),
    ...(lines.some(
      ({ attributes }) => Number(attributes["outlineLevel"] ?? 0) > 0,
    )
      ? ["grouped rows or columns"]
      : []),
  ];
}

/** Charts and pictures have parts of their own; shapes and the older controls are only written in a drawing. */
function drawnShapes(parts: Parts, part: string): readonly string[] {
  return relationsOf(parts, part).flatMap(({ kind, target }) => {
    if (!parts[target]) return [];
    if (kind === "drawing") {
      const drawing = partXml(parts, target);
      const drawn = ["sp", "cxnSp"].some(
        (name) => allNamed(drawing, name).length > 0,
      );
      return drawn ? ["drawn shapes"] : [];
    }
    const controls =
      kind === "vmlDrawing" &&
      /ObjectType="(?!Note")/.test(partText(parts, target));
    return controls ? ["form controls"] : [];
  });
}
