import type { CellPlace, TableContents } from "../../../hosts/host";
import type { Finding } from "../../../book/finding";

/** The cell a finding speaks of, "Lots row 7, Net lb"; the row's first cell where no column is named; undefined when it is not in the book. */
export function placeOfFinding(
  { where }: Finding,
  tables: readonly TableContents[],
): CellPlace | undefined {
  const match = /^(.+?) row (\d+)(?:, (.+))?$/.exec(where);
  if (!match) return tablePlace(where, tables);
  const [, sheet, row, heading] = match;
  const at = Number(row) - 1;
  const table = tables.find(
    (t) => t.sheet === sheet && at >= t.row && at <= t.row + t.rows.length,
  );
  if (!table) return undefined;
  const column = heading === undefined ? 0 : table.headings.indexOf(heading);
  return {
    sheet: table.sheet,
    row: at,
    column: table.column + Math.max(0, column),
  };
}

/** Some findings are about a whole table: "table Lots", or its sheet's name. */
function tablePlace(
  where: string,
  tables: readonly TableContents[],
): CellPlace | undefined {
  const name = where
    .replace(/^table /, "")
    .split(",")[0]
    ?.trim();
  const table = tables.find((t) => t.name === name || t.sheet === name);
  return table && { sheet: table.sheet, row: table.row, column: table.column };
}
