import { cellAddress } from "../../sheets/address";
import { partXml, relationsOf, type Parts } from "./package-parts";
import { areaOf } from "./ranges";
import { textFromFile } from "./worksheet-text";
import { allNamed, childrenNamed, childNamed, type XmlElement } from "./xml";

/** What is wrong with the tables of a package, one sentence each. */
export function checkTables(
  parts: Parts,
  worksheets: readonly string[],
): readonly string[] {
  const tables = worksheets.flatMap((worksheet) =>
    relationsOf(parts, worksheet)
      .filter(({ kind, target }) => kind === "table" && parts[target])
      .map(({ target }) => ({
        worksheet,
        part: target,
        table: partXml(parts, target),
      })),
  );
  const attribute = (name: string): readonly string[] =>
    tables.map(({ table }) => (table.attributes[name] ?? "").toLowerCase());
  const texts = sharedTexts(parts);
  return [
    ...repeated(attribute("id")).map((id) => `Two tables have the id ${id}.`),
    ...repeated(attribute("displayName")).map(
      (name) => `Two tables are named ${name}.`,
    ),
    ...tables.flatMap(({ worksheet, part, table }) => [
      ...checkColumns(part, table),
      ...checkHeadings(partXml(parts, worksheet), part, table, texts),
    ]),
  ];
}

export const repeated = (values: readonly string[]): readonly string[] => [
  ...new Set(values.filter((value, i) => values.indexOf(value) !== i)),
];

function checkColumns(part: string, table: XmlElement): readonly string[] {
  const area = areaOf(table.attributes["ref"] ?? "");
  const columns = columnNames(table);
  return [
    ...(columns.length === area.columns
      ? []
      : [
          `${part} names ${columns.length} columns for an area of ${area.columns}.`,
        ]),
    ...(area.rows < 2 ? [`${part} has no row below its headings.`] : []),
    ...repeated(columns.map((name) => name.toLowerCase())).map(
      (name) => `${part} has two columns named ${name}.`,
    ),
  ];
}

function checkHeadings(
  worksheet: XmlElement,
  part: string,
  table: XmlElement,
  texts: readonly string[],
): readonly string[] {
  if (table.attributes["headerRowCount"] === "0") return [];
  const { row, column } = areaOf(table.attributes["ref"] ?? "");
  const line = childrenNamed(childNamed(worksheet, "sheetData"), "row").find(
    ({ attributes }) => attributes["r"] === String(row + 1),
  );
  return columnNames(table).flatMap((name, i) => {
    const address = cellAddress(row, column + i);
    const cell = childrenNamed(line, "c").find(
      ({ attributes }) => attributes["r"] === address,
    );
    const shown = cell && shownText(cell, texts);
    return shown === name
      ? []
      : [
          `${part}: cell ${address} shows ${shown ?? "nothing"} where the column is named ${name}.`,
        ];
  });
}

const columnNames = (table: XmlElement): readonly string[] =>
  allNamed(table, "tableColumn").map(({ attributes }) =>
    textFromFile(attributes["name"] ?? ""),
  );

function shownText(
  cell: XmlElement,
  texts: readonly string[],
): string | undefined {
  const stored = childNamed(cell, "v")?.text;
  if (cell.attributes["t"] === "s") return texts[Number(stored)];
  if (cell.attributes["t"] === "inlineStr") return textOf(cell);
  return stored;
}

const sharedTexts = (parts: Parts): readonly string[] =>
  parts["xl/sharedStrings.xml"]
    ? childrenNamed(partXml(parts, "xl/sharedStrings.xml"), "si").map(textOf)
    : [];

const textOf = (element: XmlElement): string =>
  textFromFile(
    allNamed(element, "t")
      .map(({ text }) => text)
      .join(""),
  );
