import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import { compareWorkbooks } from "../../../src/sheets/compare/compare-workbooks";
import type { Copy } from "../../../src/sheets/handover/copy";
import { FIGURES_SHEET } from "../../../src/sheets/handover/cut-tables";
import { copyInUnits } from "../../../src/sheets/metric/unit-system";
import { copyIn } from "../../../src/sheets/words/french-copy";
import {
  type Verdict,
  verdictsOn,
} from "../../../src/sheets/returned/verdicts";
import type { Cell, Sheet, Workbook } from "../../../src/sheets/workbook";
import { demoTables } from "../../book/csv-folder";
import { type DemoCopy, demoCopy } from "../../support/handed-over";
import { withCell } from "../compare/edited";

const COSTING = "Cost P250-LOFT";
const contents = demoTables();
let copy: DemoCopy;
let sent: Workbook;

beforeAll(async () => {
  copy = await demoCopy("partner", "costing:P250-LOFT");
  sent = await asSent(copy);
}, 120_000);

/** As a person has it: out of the file that was sent. */
const asSent = async ({
  workbook,
}: Pick<Copy, "workbook">): Promise<Workbook> =>
  (await readXlsx(await writeXlsx(workbook), "sent.xlsx")).workbook;

function sheetNamed(name: string): Sheet {
  const found = sent.sheets.find((sheet) => sheet.name === name);
  if (!found) throw new Error(`no sheet ${name}`);
  return found;
}
const cellsOf = (sheet: string): readonly Cell[] => sheetNamed(sheet).cells;

/** The cell of a sheet in the row that begins with a word, below a heading. */
function cellAt(sheet: string, row: string, heading?: string): Cell {
  const cells = cellsOf(sheet);
  const label = cells.find((cell) => cell.column === 0 && cell.value === row);
  const column =
    heading === undefined
      ? 1
      : cells.findLast(
          (cell) => cell.row < (label?.row ?? 0) && cell.value === heading,
        )?.column;
  const found = cells.find(
    (cell) => cell.row === label?.row && cell.column === column,
  );
  if (!found) throw new Error(`${sheet} has no ${row}, ${heading ?? ""}`);
  return found;
}

function verdictOf(
  sheet: string,
  { row, column }: Cell,
  now: Pick<Cell, "value" | "formula">,
  book = contents,
): Verdict {
  const back = withCell(sent, sheet, { row, column, ...now });
  const { changes, unmatched } = compareWorkbooks(sent, back);
  expect(unmatched).toEqual([]);
  const verdicts = verdictsOn(changes, sent, book);
  expect(verdicts).toHaveLength(1);
  return verdicts[0] as Verdict;
}

/** Where a value stands in the demo's own table. */
const tableCell = (
  name: string,
  heading: string,
  wanted: Readonly<Record<string, unknown>>,
) => {
  const table = contents.find((one) => one.name === name);
  const at = (h: string): number => table?.headings.indexOf(h) ?? -1;
  const rows = [...(table?.rows.keys() ?? [])].filter((r) =>
    Object.entries(wanted).every(
      ([h, value]) => table?.rows[r]?.[at(h)] === value,
    ),
  );
  const row = rows.at(-1) ?? -1;
  return {
    sheet: table?.sheet,
    row: (table?.row ?? 0) + 1 + row,
    column: (table?.column ?? 0) + at(heading),
    heading,
    holds: table?.rows[row]?.[at(heading)],
  };
};

describe("a changed figure goes to the cell of the book it came from", () => {
  test.each([
    [
      "a channel's price",
      () => cellAt(COSTING, "Private label", "Price now"),
      13.25,
      () =>
        tableCell("Prices", "Price", {
          Product: "P250-LOFT",
          Channel: "Private label",
        }),
    ],
    [
      "a channel's goal",
      () => cellAt(COSTING, "Private label", "Goal"),
      0.41,
      () => tableCell("Channels", "Goal margin", { Channel: "Private label" }),
    ],
    [
      "the bulk price",
      () => cellAt(COSTING, "Price per lb at replacement"),
      2.75,
      () => tableCell("BulkPrices", "Price per lb", { "Syrup kind": "Amber" }),
    ],
    [
      "the fill",
      () => cellAt(COSTING, "Filled volume at 68 °F"),
      253.5,
      () => tableCell("Products", "Fill mL at 68 °F", { Product: "P250-LOFT" }),
    ],
    [
      "a price break of a part",
      () => {
        const cells = cellsOf(FIGURES_SHEET);
        const heading = cells.find(({ value }) => value === "Price each");
        return cells.find(
          ({ row, column }) =>
            column === heading?.column && row === heading.row + 1,
        ) as Cell;
      },
      0.5,
      () => {
        const cells = cellsOf(FIGURES_SHEET);
        const heading = cells.find(({ value }) => value === "Price each");
        const beside = (back: number): unknown =>
          cells.find(
            ({ row, column }) =>
              heading !== undefined &&
              column === heading.column - back &&
              row === heading.row + 1,
          )?.value;
        return tableCell("PartPrices", "Price each", {
          Part: beside(2),
          "From quantity": beside(1),
        });
      },
    ],
  ] as const)("%s", (_, cell, value, place) => {
    const at = cell();
    const sheet = cellsOf(COSTING).includes(at) ? COSTING : FIGURES_SHEET;
    const expected = place();
    expect(expected.holds).toBe(at.value);
    expect(verdictOf(sheet, at, { value })).toEqual({
      can: "take over",
      ...expected,
      value,
      isMoved: false,
    });
  });

  test("a price in the price list is the same cell", () => {
    // The head of the list and one row of it, as a broker gets them.
    const cells = [
      ["Every product"],
      ["Product", "Description", "Private label: price"],
      ["P250-LOFT", "Loft amber, 250 mL", 7.2],
    ].flatMap((values, row) =>
      values.map((value, column) => ({ row, column, value })),
    );
    const list: Workbook = {
      title: "",
      names: [],
      sheets: [{ ...sheetNamed(COSTING), name: "Price list", cells }],
    };
    const back = withCell(list, "Price list", {
      row: 2,
      column: 2,
      value: 7.5,
    });
    const { changes } = compareWorkbooks(list, back);
    expect(verdictsOn(changes, list, contents)).toEqual([
      {
        can: "take over",
        ...tableCell("Prices", "Price", {
          Product: "P250-LOFT",
          Channel: "Private label",
        }),
        value: 7.5,
        isMoved: false,
      },
    ]);
  });

  test("of two prices the one in force on the book's newest day is written, not one still to come", () => {
    const prices = contents.find(({ name }) => name === "Prices");
    if (!prices) throw new Error("no Prices");
    const at = (h: string): number => prices.headings.indexOf(h);
    const row = prices.rows.findIndex(
      (cells) =>
        cells[at("Product")] === "P250-LOFT" &&
        cells[at("Channel")] === "Private label",
    );
    const later = prices.rows[row]?.map((cell, c) =>
      c === at("Valid from") ? 60_000 : cell,
    );
    const book = contents.map((one) =>
      one === prices ? { ...one, rows: [...one.rows, later ?? []] } : one,
    );
    const own = verdictOf(
      COSTING,
      cellAt(COSTING, "Private label", "Price now"),
      { value: 13.25 },
      book,
    );
    expect(own).toMatchObject({ row: prices.row + 1 + row });
  });

  test("an input of the sheet is looked for on the sheet itself", () => {
    expect(
      verdictOf(COSTING, cellAt(COSTING, "Bottles in this run"), {
        value: 2400,
      }),
    ).toMatchObject({
      can: "look for",
      behind: { kind: "costing", product: "P250-LOFT" },
      label: "Bottles in this run",
      value: 2400,
    });
    // Brix is tried on one cell of the copy and typed in another at the farm.
    expect(
      verdictOf(COSTING, cellAt(COSTING, "Brix at 68 °F"), { value: 66.5 }),
    ).toMatchObject({ can: "look for", label: "Brix to pack at", value: 66.5 });
  });

  test("a number that came back as text is read, where it can be read in one way", () => {
    const at = cellAt(COSTING, "Private label", "Price now");
    expect(verdictOf(COSTING, at, { value: "$13.25" })).toMatchObject({
      can: "take over",
      value: 13.25,
    });
    expect(verdictOf(COSTING, at, { value: "13,25" })).toMatchObject({
      can: "nothing",
      why: expect.stringContaining("type 13.25") as string,
    });
    expect(
      verdictOf(COSTING, cellAt(COSTING, "Private label", "Goal"), {
        value: "41 %",
      }),
    ).toMatchObject({ can: "take over", value: 0.41 });
  });

  test("what the book holds now is told where it is no longer what was sent", () => {
    const book = contents.map((one) =>
      one.name === "Channels"
        ? {
            ...one,
            rows: one.rows.map((cells) =>
              cells.map((cell, c) =>
                one.headings[c] === "Goal margin" ? 0.5 : cell,
              ),
            ),
          }
        : one,
    );
    const own = verdictOf(
      COSTING,
      cellAt(COSTING, "Private label", "Goal"),
      { value: 0.41 },
      book,
    );
    expect(own).toMatchObject({ holds: 0.5, value: 0.41, isMoved: true });
  });
});

describe("what has no cell in the book says why", () => {
  test.each([
    [
      "a calculated figure",
      () => cellAt(COSTING, "Full cost of a bottle", "At today's bulk price"),
      { value: 4 },
      "is worked out from other figures",
    ],
    [
      "a fixed figure that follows from others",
      () => cellAt(COSTING, "Kettle fuel"),
      { value: "Oil" },
      "is worked out from other figures",
    ],
    [
      "a blank",
      () => cellAt(COSTING, "Private label", "Price now"),
      { value: null },
      "a blank is never taken for a figure",
    ],
    [
      "a formula",
      () => cellAt(COSTING, "Private label", "Price now"),
      { formula: "=13+0.25", value: 13.25 },
      "only a typed figure",
    ],
    [
      "a figure beyond its limits",
      () => cellAt(COSTING, "Private label", "Goal"),
      { value: 41 },
      "41 %",
    ],
    [
      "an input beyond its limits",
      () => cellAt(COSTING, "Bottles in this run"),
      { value: 0.5 },
      "from 1 to",
    ],
    [
      "a word",
      () => cellsOf(COSTING).find(({ value }) => value === "Fee per bottle"),
      { value: "Fee" },
      "a word of the sheet",
    ],
  ] as const)("%s", (_, cell, now, says) => {
    expect(verdictOf(COSTING, cell() as Cell, now)).toEqual({
      can: "nothing",
      why: expect.stringContaining(says) as string,
    });
  });

  test("a price the book has no row for names the product and the channel", () => {
    const book = contents.map((one) =>
      one.name === "Prices" ? { ...one, rows: [] } : one,
    );
    const own = verdictOf(
      COSTING,
      cellAt(COSTING, "Private label", "Price now"),
      { value: 13.25 },
      book,
    );
    expect(own).toEqual({
      can: "nothing",
      why: expect.stringContaining(
        "Prices has no row for P250-LOFT and Private label",
      ) as string,
    });
  });

  test("a unit that is not the book's is never written into it", () => {
    const at = cellAt(COSTING, "Price per lb at replacement");
    const inMetric = withCell(sent, COSTING, {
      row: at.row,
      column: 2,
      value: "a kg",
    });
    const back = withCell(inMetric, COSTING, { ...at, value: 6 });
    const { changes } = compareWorkbooks(inMetric, back);
    expect(verdictsOn(changes, inMetric, contents)).toEqual([
      {
        can: "nothing",
        why: expect.stringContaining("another unit (a kg)") as string,
      },
    ]);
  });

  test("a copy in French or in metric is known again; a price a kilogram is never written a pound", async () => {
    const french = await asSent(copyIn(copy, "fr"));
    const metric = await asSent(copyInUnits(copy, "metric"));
    // Another language or unit moves no cell.
    const cells = {
      price: cellAt(COSTING, "Private label", "Price now"),
      fill: cellAt(COSTING, "Filled volume at 68 °F"),
      bulk: cellAt(COSTING, "Price per lb at replacement"),
    };
    const on = (from: Workbook, { row, column }: Cell, value: number) => {
      const name = from.sheets[0]?.name ?? "";
      const back = withCell(from, name, { row, column, value });
      const { changes } = compareWorkbooks(from, back);
      return verdictsOn(changes, from, contents);
    };
    expect(french.sheets[0]?.name).not.toBe(COSTING);
    for (const from of [french, metric]) {
      expect(on(from, cells.price, 7.5)).toMatchObject([
        { can: "take over", sheet: "Prices", value: 7.5, isMoved: false },
      ]);
      expect(on(from, cells.fill, 253.5)).toMatchObject([
        { can: "take over", sheet: "Products", value: 253.5, isMoved: false },
      ]);
    }
    expect(on(french, cells.bulk, 2.75)).toMatchObject([
      { can: "take over", sheet: "Bulk prices", value: 2.75 },
    ]);
    expect(on(metric, cells.bulk, 6)).toMatchObject([
      {
        can: "nothing",
        why: expect.stringContaining("in these words and units") as string,
      },
    ]);
  });

  test("an empty book has a reason for every change, and nothing throws", () => {
    const back = withCell(sent, COSTING, {
      ...cellAt(COSTING, "Private label", "Price now"),
      value: 13.25,
    });
    const { changes } = compareWorkbooks(sent, back);
    expect(verdictsOn(changes, sent, [])).toEqual([
      {
        can: "nothing",
        why: expect.stringContaining("no product or list") as string,
      },
    ]);
  });
});
