import { formulasOf } from "../add-in-functions";
import { callsAddIn } from "../formula-text";
import { partText, partXml, relationsOf, type Parts } from "../package-parts";
import { allNamed, flagOf, type XmlElement } from "../xml";

/** The only kinds of parts a copy is made of. */
const plain: readonly RegExp[] = [
  /^\[Content_Types\]\.xml$/,
  /^_rels\/\.rels$/,
  /^docProps\/(core|app)\.xml$/,
  /^xl\/(workbook|styles|sharedStrings|metadata)\.xml$/,
  /^xl\/_rels\/workbook\.xml\.rels$/,
  /^xl\/theme\/theme\d+\.xml$/,
  /^xl\/worksheets\/sheet\d+\.xml$/,
  /^xl\/worksheets\/_rels\/sheet\d+\.xml\.rels$/,
  /^xl\/tables\/table\d+\.xml$/,
  /^xl\/drawings\/drawing\d+\.xml$/,
  /^xl\/drawings\/_rels\/drawing\d+\.xml\.rels$/,
  /^xl\/charts\/(chart|style|colors)\d+\.xml$/,
  /^xl\/charts\/_rels\/chart\d+\.xml\.rels$/,
];

export interface Objection {
  readonly part: string;
  readonly says: string;
}

/** What no copy may hold whatever it says: foreign kinds of parts, ways out of the file, hidden things, our functions. */
export const forbiddenIn = (parts: Parts): readonly Objection[] => [
  ...missingSheets(parts),
  ...Object.keys(parts).flatMap((part) => [
    ...(plain.some((kind) => kind.test(part))
      ? []
      : [{ part, says: "is a part no copy has" }]),
    ...ofRelations(parts, part),
    ...(/\.xml$/.test(part) && parts[part] ? ofXml(parts, part) : []),
  ]),
];

/** Formulas that read a sheet the file does not have. */
function missingSheets(parts: Parts): readonly Objection[] {
  const book = parts["xl/workbook.xml"]
    ? partXml(parts, "xl/workbook.xml")
    : undefined;
  const known = new Set(
    (book ? allNamed(book, "sheet") : []).map(({ attributes }) =>
      (attributes["name"] ?? "").toLowerCase(),
    ),
  );
  return formulasOf(parts).flatMap(({ part, formula }) =>
    [
      ...formula
        .replace(/"(?:[^"]|"")*"/g, "")
        .matchAll(/'((?:[^']|'')+)'!|([A-Za-z_][\w.]*)!/g),
    ]
      .map(([, quoted, bare]) => quoted?.replace(/''/g, "'") ?? bare ?? "")
      .filter((name) => !known.has(name.toLowerCase()))
      .map((name) => ({
        part,
        says: `reads the sheet ${name}, which the file does not have`,
      })),
  );
}

const ofRelations = (parts: Parts, part: string): readonly Objection[] =>
  part.endsWith(".rels")
    ? relationsOf(parts, part.replace(/_rels\/([^/]*)\.rels$/, "$1"))
        .filter(({ external }) => external)
        .map(({ target }) => ({
          part,
          says: `leads out of the file, to ${target}`,
        }))
    : [];

function ofXml(parts: Parts, part: string): readonly Objection[] {
  const found: string[] = [];
  const root = partXml(parts, part);
  for (const { formula } of formulasOf({ [part]: parts[part] as Uint8Array })) {
    if (callsAddIn(formula) || /SYRUP[._]/i.test(formula))
      found.push(`needs the add-in: ${formula.slice(0, 80)}`);
    if (/\[\d+\]|\[[^\]]*\.xl\w*\]/i.test(formula))
      found.push(`reads another workbook: ${formula.slice(0, 80)}`);
  }
  if (/^xl\/worksheets\/sheet/.test(part)) found.push(...ofSheet(root));
  if (part === "xl/workbook.xml") found.push(...ofWorkbook(root));
  if (part === "docProps/core.xml")
    for (const one of root.children)
      if (
        /^(creator|lastModifiedBy|description|subject|keywords|category|contentStatus)$/.test(
          one.name,
        ) &&
        one.text.trim() !== ""
      )
        found.push(`names its ${one.name}: ${one.text.trim().slice(0, 80)}`);
  if (
    part === "docProps/app.xml" &&
    /<(Company|Manager|HyperlinkBase)>[^<]/.test(partText(parts, part))
  )
    found.push("names a company, a manager or a place");
  return found.map((says) => ({ part, says }));
}

function ofWorkbook(root: XmlElement): readonly string[] {
  return [
    ...allNamed(root, "sheet")
      .filter(
        ({ attributes }) => (attributes["state"] ?? "visible") !== "visible",
      )
      .map(({ attributes }) => `hides the sheet ${attributes["name"] ?? ""}`),
    ...allNamed(root, "definedName")
      .filter(({ attributes }) => attributes["name"] !== "_xlnm.Print_Titles")
      .map(({ attributes }) => `defines the name ${attributes["name"] ?? ""}`),
    ...(allNamed(root, "fileSharing").length > 0 ? ["names who keeps it"] : []),
    ...(allNamed(root, "externalReference").length > 0
      ? ["leads to another workbook"]
      : []),
  ];
}

function ofSheet(root: XmlElement): readonly string[] {
  const found = new Map<string, XmlElement[]>();
  const collect = (element: XmlElement): void => {
    if (looked.has(element.name)) {
      const alike = found.get(element.name) ?? [];
      alike.push(element);
      found.set(element.name, alike);
    }
    element.children.forEach(collect);
  };
  collect(root);
  const all = (name: string): readonly XmlElement[] => found.get(name) ?? [];
  return [
    ...Object.entries(hidable).flatMap(([name, what]) =>
      all(name)
        .filter((one) => flagOf(one, "hidden"))
        .map(
          ({ attributes }) =>
            `hides ${what} ${attributes["r"] ?? attributes["min"] ?? ""}`,
        ),
    ),
    ...Object.entries(unwanted).flatMap(([name, says]) =>
      all(name).length > 0 ? [says] : [],
    ),
  ];
}

const hidable = { row: "row", col: "column" };

const unwanted = {
  legacyDrawing: "has comments",
  hyperlink: "has links",
  conditionalFormatting: "has a conditional format",
  customProperties: "has properties of its own",
  scenarios: "has scenarios",
  extLst: "has an extension",
};

const looked = new Set([...Object.keys(hidable), ...Object.keys(unwanted)]);
