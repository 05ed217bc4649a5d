import { writeXlsx as writeBare } from "hucre/xlsx";
import type { Contents } from "../../../book/contents";
import { writeXlsx } from "../../../hosts/file/write-xlsx";
import { calculate } from "../../../hosts/grid/calculate";
import {
  type HeadlessHost,
  openHeadless,
} from "../../../hosts/grid/open-headless";
import type { CellPlace } from "../../../hosts/host";
import type { Sheet, Workbook } from "../../../sheets/workbook";
import { gridFunctions } from "../../grid-functions";
import { pricesBook } from "../prices-workbook";
import { compared } from "./clock";
import { bareFile } from "./files";
import { type Figure, kilobytes, milliseconds } from "./figure";
import { manyProducts } from "./many-products";

/** Products of each book measured, and how long an edit in the grid may take. */
const BOOKS = [
  { products: 19, editAim: 500 },
  { products: 100, editAim: 2000 },
  { products: 500, editAim: 8000 },
] as const;

/** The price list of ever more products: a bulk price until every cell has settled, and writing the workbook. */
export async function priceListFigures(
  demo: readonly Contents[],
  rounds: number,
): Promise<readonly Figure[]> {
  const figures: Figure[] = [];
  for (const { products, editAim } of BOOKS) {
    const book = pricesBook(manyProducts(demo, products));
    figures.push(await editFigure(book, products, editAim, rounds));
    figures.push(...(await writeFigures(book, products, rounds)));
  }
  return figures;
}

async function editFigure(
  book: Workbook,
  products: number,
  aim: number,
  rounds: number,
): Promise<Figure> {
  const grid = await openHeadless(book, gridFunctions);
  const empty = await openHeadless(
    { title: "", sheets: [EMPTY], names: [] },
    gridFunctions,
  );
  try {
    const price = await firstBulkPrice(grid);
    let cents = 0;
    const next = (): number => 2.5 + (cents++ % 50) / 100;
    const times = await compared(
      Math.max(1, Math.floor(rounds / 3)),
      () => grid.setCell(price, next()),
      () => empty.setCell({ sheet: EMPTY.name, row: 0, column: 0 }, next()),
    );
    return {
      work: `A bulk price, ${products} products (${formulas(book).toLocaleString("en-US")} formulas)`,
      takes: milliseconds(times.milliseconds),
      yardstick: `${milliseconds(times.yardstick)}, empty book`,
      ratio: times.ratio,
      aim: `under ${aim} ms`,
      isMet: times.milliseconds < aim,
    };
  } finally {
    grid.dispose();
    empty.dispose();
  }
}

async function writeFigures(
  book: Workbook,
  products: number,
  rounds: number,
): Promise<readonly Figure[]> {
  // What the formulas come to makes no difference to how long they take to write; small books are worked out all the same.
  const written =
    products <= 19 ? (await calculate(book, gridFunctions)).workbook : book;
  const bare = (): Promise<Uint8Array> => writeBare(bareFile(written));
  const before = process.memoryUsage().heapUsed;
  const times = await compared(
    Math.max(1, Math.floor(rounds / 3)),
    () => writeXlsx(written),
    bare,
  );
  const used = Math.max(0, process.memoryUsage().heapUsed - before);
  const bytes = (await writeXlsx(written)).length;
  const bareBytes = (await bare()).length;
  return [
    {
      work: `Write the price list's workbook, ${products} products`,
      takes: milliseconds(times.milliseconds),
      yardstick: milliseconds(times.yardstick),
      ratio: times.ratio,
      aim: "at most 1.5 times",
      isMet: times.ratio <= 1.5,
    },
    {
      work: `Size of that file (${kilobytes(used)} of memory held after writing)`,
      takes: kilobytes(bytes),
      yardstick: kilobytes(bareBytes),
      ratio: bytes / bareBytes,
    },
  ];
}

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

const formulas = ({ sheets }: Workbook): number =>
  sheets
    .flatMap(({ cells }) => cells)
    .filter(({ formula }) => formula !== undefined).length;

async function firstBulkPrice(host: HeadlessHost): Promise<CellPlace> {
  const table = (await host.readTables()).find((t) => t.name === "BulkPrices");
  const column = table?.headings.indexOf("Price per lb") ?? -1;
  if (!table || column < 0 || table.rows.length === 0)
    throw new Error("The demo book has no bulk price to change");
  return {
    sheet: table.sheet,
    row: table.row + 1,
    column: table.column + column,
  };
}
