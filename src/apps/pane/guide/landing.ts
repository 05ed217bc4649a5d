import type { CellPlace, Host, TableContents } from "../../../hosts/host";
import { cellAddress } from "../../../sheets/address";
import { shown } from "../why/shown";
import { tableAt, type Range } from "../why/surroundings";
import type { Preview } from "./preview";
import { cellsText, inWords } from "./reference";

/** What writing the formula into a cell would meet there. */
export interface Landing {
  readonly place: CellPlace;
  /** The cells the answer fills, when there are several. */
  readonly fills: string | undefined;
  /** Why it cannot go there. */
  readonly obstacle: string | undefined;
  /** What stands there now and would go. */
  readonly holds: string | undefined;
}

export async function landingOf(
  place: CellPlace,
  preview: Pick<Preview, "reads" | "rows" | "columns">,
  around: {
    readonly host: Pick<Host, "readCell" | "readArea">;
    readonly tables: readonly TableContents[];
  },
): Promise<Landing> {
  const { rows, columns } = preview;
  const filled: Range = { ...place, rows, columns };
  const isSeveral = rows > 1 || columns > 1;
  const { value, formula } = await around.host.readCell(place);
  const holds =
    formula !== undefined
      ? `the formula ${formula}`
      : value === null
        ? undefined
        : `“${shown(value)}”`;
  return {
    place,
    fills: isSeveral ? cellsText(filled) : undefined,
    obstacle:
      readsItself(filled, preview.reads) ??
      (isSeveral ? await taken(filled, around) : undefined),
    holds,
  };
}

function readsItself(
  filled: Range,
  reads: Preview["reads"],
): string | undefined {
  const read = reads.find((range) => meet(range, filled));
  return (
    read &&
    `The formula reads ${inWords(read)}, so its answer cannot stand there. Choose another cell for the answer.`
  );
}

const meet = (a: Range, b: Range): boolean =>
  a.sheet === b.sheet &&
  a.row < b.row + b.rows &&
  b.row < a.row + a.rows &&
  a.column < b.column + b.columns &&
  b.column < a.column + a.columns;

/** Why an answer of several cells finds no room. */
async function taken(
  filled: Range,
  { host, tables }: Parameters<typeof landingOf>[2],
): Promise<string | undefined> {
  const { sheet, row, column, rows, columns } = filled;
  const cells = await host.readArea(sheet, row, column, rows, columns);
  const inTheWay = cells.flatMap((line, r) =>
    line.flatMap((cell, c) =>
      (r === 0 && c === 0) || cell === null
        ? []
        : [{ row: row + r, column: column + c, cell }],
    ),
  );
  const [first] = inTheWay;
  if (first)
    return `The answer fills ${inWords(filled)}, and ${
      inTheWay.length === 1
        ? `${cellAddress(first.row, first.column)} holds “${shown(first.cell)}”`
        : `${inTheWay.length} of these cells are not empty, ${cellAddress(first.row, first.column)} the first`
    }. Choose a cell with room, or empty them.`;
  const corners = [row, row + rows - 1].flatMap((r) =>
    [column, column + columns - 1].map((c) => ({ sheet, row: r, column: c })),
  );
  const table = corners
    .map((corner) => tableAt(corner, tables))
    .find((found) => found !== undefined);
  return (
    table &&
    `The answer fills several cells, which a table such as ${table.name} does not take. Choose a cell outside it.`
  );
}
