import type { Contents } from "../../../book/contents";
import {
  openHeadless,
  type HeadlessHost,
} from "../../../hosts/grid/open-headless";
import type { CellPlace } from "../../../hosts/host";
import type { Sheet, Stored, Workbook } from "../../../sheets/workbook";
import { gridFunctions } from "../../grid-functions";
import { costingBook, type Run } from "../costing-workbook";
import { compared } from "./clock";
import { type Figure, milliseconds } from "./figure";

const AIM_MS = 400;
const EMPTY: Sheet = {
  name: "Empty",
  cells: [],
  tables: [],
  validations: [],
  merges: [],
  widths: {},
  heights: {},
  frozen: { rows: 0, columns: 0 },
};

/** From a new bulk price to every cell that follows from it, in the engine without a screen. */
export async function editFigures(
  contents: readonly Contents[],
  run: Run,
  rounds: number,
): Promise<readonly Figure[]> {
  const workbook = costingBook(contents, [run]);
  const demo = await openHeadless(workbook, gridFunctions);
  const empty = await openHeadless(
    { title: "", sheets: [EMPTY], names: [] },
    gridFunctions,
  );
  try {
    const price = await bulkPriceCell(demo);
    const followers = await cellsThatFollow(demo, workbook, price);
    if (followers === 0) throw new Error("No cell follows the bulk price");
    const edit = edits();
    const {
      milliseconds: time,
      yardstick,
      ratio,
    } = await compared(
      rounds,
      () => demo.setCell(price, edit()),
      () => empty.setCell({ sheet: EMPTY.name, row: 0, column: 0 }, edit()),
    );
    return [
      {
        work: `A bulk price in the demo book with one costing sheet (${count(workbook)} formulas, ${followers} of them change)`,
        takes: milliseconds(time),
        yardstick: milliseconds(yardstick),
        ratio,
        aim: `under ${AIM_MS} ms`,
        isMet: time < AIM_MS,
      },
    ];
  } finally {
    demo.dispose();
    empty.dispose();
  }
}

/** Every edit is a price the cell did not hold. */
function edits(): () => number {
  let cents = 0;
  return () => 2.5 + (cents++ % 50) / 100;
}

async function bulkPriceCell(host: HeadlessHost): Promise<CellPlace> {
  const table = (await host.readTables()).find((t) => t.name === "BulkPrices");
  const column = table?.headings.indexOf("Price per lb") ?? -1;
  const kind = table?.headings.indexOf("Syrup kind") ?? -1;
  const row = table?.rows.findIndex((cells) => cells[kind] === "Amber") ?? -1;
  if (!table || column < 0 || row < 0)
    throw new Error("The demo book has no bulk price of Amber to change");
  return {
    sheet: table.sheet,
    row: table.row + 1 + row,
    column: table.column + column,
  };
}

async function cellsThatFollow(
  host: HeadlessHost,
  workbook: Workbook,
  price: CellPlace,
): Promise<number> {
  const before = await formulaValues(host, workbook);
  await host.setCell(price, 9.99);
  const after = await formulaValues(host, workbook);
  return before.filter((value, i) => value !== after[i]).length;
}

async function formulaValues(
  host: HeadlessHost,
  workbook: Workbook,
): Promise<readonly Stored[]> {
  const values: Stored[] = [];
  for (const { name, cells } of workbook.sheets)
    for (const { row, column, formula } of cells)
      if (formula !== undefined)
        values.push((await host.readCell({ sheet: name, row, column })).value);
  return values;
}

const count = (workbook: Workbook): number =>
  workbook.sheets
    .flatMap((sheet) => sheet.cells)
    .filter((cell) => cell.formula !== undefined).length;
