import { unusable } from "../../../measures/cannot-answer";
import { cellAddress } from "../../../sheets/address";
import type { Stored, Table } from "../../../sheets/workbook";
import {
  pack,
  partBytes,
  partText,
  partXml,
  relationsOf,
  type Parts,
} from "../package-parts";
import { areaOf, areaReference } from "../ranges";
import { tableFromPart } from "../table-part";
import { textFromFile } from "../worksheet-text";
import { openPackage, type OpenPackage } from "./open-package";
import { cellFinder, type NewCell, withCells } from "./sheet-cells";
import { prefixOf } from "./xml-insertion";

/**
 * Adds rows at the end of a table of a workbook, or in the blank row an empty table has to have, by heading; only the table's part and its sheet's are written to.
 * A calculated column takes its own formula with the given value as its result. Refuses (#VALUE!) a table that is not
 * there, an unknown heading, a totals row, and cells below the table that are not blank.
 */
export function appendRows(
  bytes: Uint8Array,
  fileName: string,
  table: string,
  rows: readonly Readonly<Record<string, Stored>>[],
): Uint8Array {
  const open = openPackage(bytes, fileName);
  const { sheet, tablePart } = findTable(open, fileName, table);
  const { table: held } = tableFromPart(partXml(open.parts, tablePart));
  if (
    !held ||
    Number(partXml(open.parts, tablePart).attributes["totalsRowCount"] ?? 0) > 0
  )
    throw unusable(
      `Table ${table} in ${fileName} has no heading row or has a totals row; rows cannot be added below it.`,
    );
  refuseUnknown(rows, held.columns, table, fileName);
  const xml = partText(open.parts, sheet.part);
  const cellAt = cellFinder(xml);
  const end = held.area.row + held.area.rows;
  const first = isEmpty(held, cellAt) ? held.area.row + 1 : end;
  const cells = rows.flatMap((row, r) =>
    held.columns.map(({ heading, formula }, c): NewCell => {
      const at = { row: first + r, column: held.area.column + c };
      if (at.row >= end && cellAt(at.row, at.column)?.blank === false)
        throw unusable(
          `${fileName}, sheet ${sheet.name}: cell ${cellAddress(at.row, at.column)} below table ${table} is not blank; nothing was added.`,
        );
      return {
        ...at,
        value: row[heading] ?? null,
        ...(formula === undefined ? {} : { formula }),
        style: cellAt(Math.min(first, end - 1), at.column)?.style,
      };
    }),
  );
  const area = {
    ...held.area,
    rows: Math.max(held.area.rows, first - held.area.row + rows.length),
  };
  return pack({
    ...open.parts,
    [sheet.part]: partBytes(grownDimension(withCells(xml, cells), area)),
    [tablePart]: partBytes(
      partText(open.parts, tablePart).replace(
        /(<(?:[\w.-]+:)?(?:table|autoFilter)\b[^>]*?\bref=")[^"]*(")/g,
        `$1${areaReference(area)}$2`,
      ),
    ),
  });
}

/** Whether the only row below the headings holds nothing but the formulas of calculated columns. */
const isEmpty = (
  { area, columns }: Pick<Table, "area" | "columns">,
  cellAt: ReturnType<typeof cellFinder>,
): boolean =>
  area.rows === 2 &&
  columns.every(
    ({ formula }, c) =>
      formula !== undefined ||
      cellAt(area.row + 1, area.column + c)?.blank !== false,
  );

function findTable(
  { parts, sheets }: OpenPackage,
  fileName: string,
  table: string,
): {
  readonly sheet: OpenPackage["sheets"][number];
  readonly tablePart: string;
} {
  for (const sheet of sheets)
    for (const { kind, target } of relationsOf(parts, sheet.part))
      if (kind === "table" && parts[target] && isNamed(parts, target, table))
        return { sheet, tablePart: target };
  throw unusable(
    `${fileName} has no table ${table}; it may have been deleted or renamed. Nothing was added.`,
  );
}

const isNamed = (parts: Parts, part: string, table: string): boolean =>
  textFromFile(
    partXml(parts, part).attributes["displayName"] ?? "",
  ).toLowerCase() === table.toLowerCase();

function refuseUnknown(
  rows: readonly Readonly<Record<string, Stored>>[],
  columns: readonly { readonly heading: string }[],
  table: string,
  fileName: string,
): void {
  const known = new Set(columns.map(({ heading }) => heading));
  for (const row of rows)
    for (const heading of Object.keys(row))
      if (!known.has(heading))
        throw unusable(
          `Table ${table} in ${fileName} has no column "${heading}"; nothing was added.`,
        );
}

/** The sheet's own note of how far its cells reach. */
function grownDimension(
  xml: string,
  area: {
    readonly row: number;
    readonly rows: number;
    readonly column: number;
    readonly columns: number;
  },
): string {
  const pattern = new RegExp(`(<${prefixOf(xml)}dimension ref=")([^"]*)(")`);
  const given = pattern.exec(xml)?.[2];
  if (!given) return xml;
  const held = areaOf(given);
  const row = Math.min(held.row, area.row);
  const column = Math.min(held.column, area.column);
  const whole = {
    row,
    column,
    rows: Math.max(held.row + held.rows, area.row + area.rows) - row,
    columns:
      Math.max(held.column + held.columns, area.column + area.columns) - column,
  };
  return xml.replace(pattern, `$1${areaReference(whole)}$3`);
}
