import type { CellPlace, TableContents } from "../../hosts/host";
import type { Stored } from "../../sheets/workbook";

/** One row of a table by heading, with the places of its cells. */
export interface TableRow {
  readonly at: (heading: string) => Stored;
  readonly text: (heading: string) => string;
  readonly number: (heading: string) => number | undefined;
  readonly place: (heading: string) => CellPlace | undefined;
}

/** The rows of a table that hold anything; none when the workbook has no such table. Headings count in any case. */
export function tableRows(
  tables: readonly TableContents[],
  name: string,
): readonly TableRow[] {
  const table = tables.find((t) => t.name.toLowerCase() === name.toLowerCase());
  if (!table) return [];
  const column = (heading: string): number =>
    table.headings.findIndex((h) => h.toLowerCase() === heading.toLowerCase());
  return table.rows.flatMap((cells, index) => {
    if (cells.every((cell) => cell === null || cell === "")) return [];
    const at = (heading: string): Stored => cells[column(heading)] ?? null;
    return [
      {
        at,
        text: (heading) => asText(at(heading)),
        number: (heading) => {
          const value = at(heading);
          return typeof value === "number" ? value : undefined;
        },
        place: (heading) =>
          column(heading) < 0
            ? undefined
            : {
                sheet: table.sheet,
                row: table.row + 1 + index,
                column: table.column + column(heading),
              },
      },
    ];
  });
}

export const hasTable = (
  tables: readonly TableContents[],
  name: string,
): boolean => tables.some((t) => t.name.toLowerCase() === name.toLowerCase());

const asText = (value: Stored): string =>
  value === null || typeof value === "object" ? "" : String(value).trim();
