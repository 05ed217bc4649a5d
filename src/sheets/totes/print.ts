import type { PlacedSheet } from "../place";
import { rowsIn } from "../printed-area";
import type { Cell } from "../workbook";

/** How one of these sheets comes out of a printer. */
export interface Printing {
  /** So many columns print; those beyond are working, or for the screen. */
  readonly columns: number;
  /** A table whose headings stand on every page after the first; without one the sheet's title does. */
  readonly repeats?: string;
  /** A table that is working: nothing from it on is printed. */
  readonly stopsAt?: string;
}

/** The page of a placed sheet, and its words set off from the numbers left of them. */
export function toPrint(
  placed: PlacedSheet,
  { columns, repeats, stopsAt }: Printing,
): PlacedSheet {
  const { sheet, places } = placed;
  const { print } = sheet;
  const table = repeats === undefined ? undefined : places.get(repeats);
  const end = stopsAt === undefined ? undefined : places.get(stopsAt);
  return {
    ...placed,
    sheet: {
      ...sheet,
      cells: setOff(placed),
      ...(print
        ? {
            print: {
              ...print,
              // A table's title and headings stand in the two rows above its first.
              ...(table ? { headings: { first: table.row - 1, rows: 1 } } : {}),
              upTo: { columns, rows: end ? end.row - 2 : rowsIn(sheet) },
            },
          }
        : {}),
    },
  };
}

/** Words that begin where a number ends would touch it. */
function setOff({ sheet, description, places }: PlacedSheet): readonly Cell[] {
  const words = new Set<string>();
  for (const block of description.blocks) {
    if (block.kind !== "table") continue;
    const at = places.get(block.name);
    if (!at) continue;
    block.columns.forEach(({ format }, c) => {
      if (format !== undefined || block.columns[c - 1]?.format === undefined)
        return;
      for (let row = at.row - 1; row < at.row + at.rows; row += 1)
        words.add(`${row},${c}`);
    });
  }
  return sheet.cells.map((cell) =>
    words.has(`${cell.row},${cell.column}`)
      ? { ...cell, style: { ...cell.style, align: "left", indent: 1 } }
      : cell,
  );
}
