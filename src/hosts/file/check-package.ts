import { formulasOf } from "./add-in-functions";
import { checkTables, repeated } from "./check-tables";
import { formulaPieces } from "./formula-pieces";
import {
  partText,
  partXml,
  relationsOf,
  unpack,
  workbookPart,
  type Parts,
} from "./package-parts";
import { allNamed, type XmlElement } from "./xml";

/** What a worksheet program would object to in a workbook file, one sentence each; empty when nothing is found. */
export function checkPackage(bytes: Uint8Array): readonly string[] {
  const parts = unpack(bytes);
  if (!workbookPart(parts)) return ["The package holds no workbook."];
  const worksheets = Object.keys(parts).filter((part) =>
    /^xl\/worksheets\/[^/]+\.xml$/.test(part),
  );
  return [
    ...worksheets.flatMap((part) => checkOrder(part, partXml(parts, part))),
    ...checkRelations(parts),
    ...checkContentTypes(parts),
    ...checkTables(parts, worksheets),
    ...checkNoteShapes(parts),
    ...checkFunctionNames(parts),
  ];
}

/** The children of CT_Worksheet in the order the schema asks for (ECMA-376 part 1, annex A.2, sml.xsd), written from memory. */
const worksheetOrder =
  `sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection
protectedRanges scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr
conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks
customProperties cellWatches ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF drawingHF picture oleObjects
controls webPublishItems tableParts extLst`.split(/\s+/);

function checkOrder(part: string, worksheet: XmlElement): readonly string[] {
  const found: string[] = [];
  let last = -1;
  for (const { name } of worksheet.children) {
    if (name === "AlternateContent") continue;
    const place = worksheetOrder.indexOf(name);
    if (place < 0) found.push(`${part} holds ${name}, which no worksheet has.`);
    else if (place < last)
      found.push(
        `${part} has ${name} after ${worksheetOrder[last]}, which must come later.`,
      );
    last = Math.max(last, place);
  }
  return found;
}

function checkRelations(parts: Parts): readonly string[] {
  const sources = Object.keys(parts)
    .filter((part) => part.endsWith(".rels"))
    .map((part) => part.replace(/_rels\/([^/]*)\.rels$/, "$1"));
  return sources.flatMap((source) => {
    const relations = relationsOf(parts, source);
    const ids = relations.map(({ id }) => id);
    return [
      ...(source !== "" && !parts[source]
        ? [`There are relationships for ${source}, which does not exist.`]
        : []),
      ...repeated(ids).map(
        (id) => `${source} has two relationships named ${id}.`,
      ),
      ...relations
        .filter(({ external, target }) => !external && !parts[target])
        .map(
          ({ target }) =>
            `${source || "The package"} points to ${target}, which does not exist.`,
        ),
      ...danglingIds(parts, source, new Set(ids)),
    ];
  });
}

function danglingIds(
  parts: Parts,
  source: string,
  ids: ReadonlySet<string>,
): readonly string[] {
  if (!parts[source] || !source.endsWith(".xml")) return [];
  const used = [...partText(parts, source).matchAll(/\sr:id="([^"]*)"/g)];
  return used.flatMap(([, id = ""]) =>
    ids.has(id)
      ? []
      : [`${source} uses the relationship ${id}, which does not exist.`],
  );
}

function checkContentTypes(parts: Parts): readonly string[] {
  if (!parts["[Content_Types].xml"])
    return ["The package has no content types."];
  const types = partXml(parts, "[Content_Types].xml");
  const valuesOf = (element: string, attribute: string): readonly string[] =>
    allNamed(types, element).map(
      ({ attributes }) => attributes[attribute] ?? "",
    );
  const extensions = new Set(
    valuesOf("Default", "Extension").map((e) => e.toLowerCase()),
  );
  const overrides = new Set(
    valuesOf("Override", "PartName").map((name) => name.slice(1)),
  );
  const bare = (part: string): boolean =>
    part.endsWith(".rels") || part === "[Content_Types].xml";
  return [
    ...Object.keys(parts)
      .filter((part) => !bare(part) && !overrides.has(part))
      // "xml" by itself says nothing about what a part is.
      .filter(
        (part) =>
          part.endsWith(".xml") ||
          !extensions.has(part.split(".").pop()?.toLowerCase() ?? ""),
      )
      .map((part) => `${part} has no content type.`),
    ...[...overrides]
      .filter((part) => !parts[part])
      .map(
        (part) => `A content type is given for ${part}, which does not exist.`,
      ),
  ];
}

function checkNoteShapes(parts: Parts): readonly string[] {
  const ids = Object.keys(parts)
    .filter((part) => part.endsWith(".vml"))
    .flatMap((part) =>
      [...partText(parts, part).matchAll(/<v:shape id="([^"]+)"/g)].map(
        ([, id = ""]) => id,
      ),
    );
  return repeated(ids).map((id) => `Two notes have the shape ${id}.`);
}

function checkFunctionNames(parts: Parts): readonly string[] {
  const unstored = formulasOf(parts).filter(({ formula }) =>
    formulaPieces(formula).some(
      ({ code, text }) => code && /(?<![\w.])SYRUP\.\w/i.test(text),
    ),
  );
  return unstored.map(
    ({ part, formula }) =>
      `${part} has a formula with a function under its worksheet name: ${formula}`,
  );
}
