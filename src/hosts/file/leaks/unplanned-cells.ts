import type { Cell, Sheet, Workbook } from "../../../sheets/workbook";
import { cellAddress } from "../../../sheets/address";
import { formulaInFile } from "../formula-text";
import { partXml, type Parts } from "../package-parts";
import { textFromFile, textInFile } from "../worksheet-text";
import { allNamed, childNamed, childrenNamed, type XmlElement } from "../xml";
import type { Objection } from "./forbidden-parts";

/** Cells, shared texts and choices in the file that the plan of the copy does not have, down to figures of one digit. */
export function unplannedIn(
  parts: Parts,
  planned: Workbook,
): readonly Objection[] {
  const shared = sharedTexts(parts);
  const meant = new Set(planned.sheets.flatMap(textsOf));
  return [
    ...shared
      .filter((text) => !meant.has(text))
      .map((text) => ({
        part: "xl/sharedStrings.xml",
        says: `has a text nobody planned: ${text.slice(0, 80)}`,
      })),
    ...Object.keys(parts)
      .filter((part) => /^xl\/worksheets\/sheet\d+\.xml$/.test(part))
      .flatMap((part) => {
        const sheet = planned.sheets[Number(/(\d+)\.xml$/.exec(part)?.[1]) - 1];
        return sheet
          ? inSheet(part, partXml(parts, part), sheet, shared)
          : [{ part, says: "is a sheet nobody planned" }];
      }),
  ];
}

const textsOf = ({ cells, tables }: Sheet): readonly string[] => [
  ...cells.flatMap(({ value }) => (typeof value === "string" ? [value] : [])),
  ...tables.flatMap(({ columns }) => columns.map(({ heading }) => heading)),
];

const sharedTexts = (parts: Parts): readonly string[] =>
  parts["xl/sharedStrings.xml"]
    ? childrenNamed(partXml(parts, "xl/sharedStrings.xml"), "si").map(wholeText)
    : [];

const wholeText = (element: XmlElement): string =>
  textFromFile(
    allNamed(element, "t")
      .map(({ text }) => text)
      .join(""),
  );

function inSheet(
  part: string,
  root: XmlElement,
  sheet: Sheet,
  shared: readonly string[],
): readonly Objection[] {
  const cells = new Map(
    sheet.cells.map((cell) => [cellAddress(cell.row, cell.column), cell]),
  );
  const choices = new Set(
    sheet.validations.flatMap(({ rule }) =>
      rule.kind === "list" ? [rule.choices.join(",")] : [],
    ),
  );
  return [
    ...allNamed(root, "c").flatMap((found) => {
      const address = found.attributes["r"] ?? "";
      return sameAs(cells.get(address), found, shared)
        ? []
        : [{ part, says: `has in ${address} what nobody planned` }];
    }),
    ...allNamed(root, "dataValidation")
      .filter(({ attributes }) => attributes["type"] === "list")
      .map((one) => textFromFile(childNamed(one, "formula1")?.text ?? ""))
      .filter(
        (list) => !choices.has(list.replace(/^"|"$/g, "").replace(/""/g, '"')),
      )
      .map((list) => ({
        part,
        says: `offers choices nobody planned: ${list.slice(0, 80)}`,
      })),
  ];
}

function sameAs(
  planned: Cell | undefined,
  found: XmlElement,
  shared: readonly string[],
): boolean {
  const formula = childNamed(found, "f")?.text;
  const stored = childNamed(found, "v")?.text;
  const inline = childNamed(found, "is");
  if (formula === undefined && stored === undefined && !inline) return true;
  if (!planned) return false;
  if (
    (formula ?? "") !==
    (planned.formula === undefined
      ? ""
      : textInFile(formulaInFile(planned.formula)))
  )
    return false;
  const { value = null } = planned;
  const type = found.attributes["t"];
  const text =
    type === "s"
      ? shared[Number(stored)]
      : inline
        ? wholeText(inline)
        : stored === undefined
          ? ""
          : textFromFile(stored);
  if (value === null) return text === "" || text === undefined;
  if (typeof value === "object") return text === value.error;
  if (typeof value === "boolean") return text === (value ? "1" : "0");
  if (typeof value === "number") return Number(text) === value;
  return text === value;
}
