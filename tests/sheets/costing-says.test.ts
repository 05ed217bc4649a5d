import { gridFunctions } from "../../src/apps/grid-functions";
import { costingFacts } from "../../src/book/costing-facts";
import { readBook } from "../../src/book/read";
import { calculate } from "../../src/hosts/grid/calculate";
import { costingSheet } from "../../src/sheets/costing/costing-sheet";
import { costingNames } from "../../src/sheets/costing/names";
import { farmBook } from "../../src/sheets/farm-book";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { bottleCost } from "../../src/trade/costing/bottle-cost";
import {
  type Change,
  changing,
  typing,
  withoutRows,
  worksheetTables,
} from "../book/worksheet-tables";

const BOTTLES = 600;

async function sheetAndTrade(product: string, ...changes: readonly Change[]) {
  const contents = worksheetTables(...changes);
  const book = farmBook(contents);
  const { sheet, names } = costingSheet({
    contents,
    product,
    bottles: BOTTLES,
    existingSheets: [],
  });
  const { workbook } = await calculate(
    { ...book, sheets: [...book.sheets, sheet], names },
    gridFunctions,
  );
  const { bottle } = costingFacts(readBook(contents).book, {
    product,
    bottles: BOTTLES,
  });
  return { workbook, cost: bottleCost(bottle) };
}

const valueAt = (
  { sheets }: Workbook,
  name: string,
  row: number,
  column: number,
): Stored =>
  sheets
    .find((sheet) => sheet.name === name)
    ?.cells.find((cell) => cell.row === row && cell.column === column)?.value ??
  null;

function named(workbook: Workbook, product: string, key: "missing"): Stored {
  const place = costingNames(workbook.names, product)[key];
  if (!place) throw new Error(`the sheet names no ${key}`);
  return valueAt(workbook, place.sheet, place.row, place.column);
}

const cases: readonly (readonly [
  string,
  string,
  readonly Change[],
  readonly string[],
])[] = [
  ["nothing", "P250-LOFT", [], []],
  [
    "the bulk price",
    "P250-LOFT",
    [withoutRows("BulkPrices", (cells) => cells[0] === "Amber")],
    ["a bulk price for Amber"],
  ],
  [
    "the wages",
    "P250-LOFT",
    [withoutRows("Crew", () => true)],
    ["a line with its crew and wages"],
  ],
  [
    "a blank fuel price",
    "P250-LOFT",
    [
      changing("Energy", (table) => ({
        ...table,
        rows: table.rows.map((cells) =>
          cells[0] === "Propane price" ? cells.with(1, null) : cells,
        ),
      })),
    ],
    [
      "Energy rows for fuel, its price and heat, efficiency, hold loss and start temperature",
    ],
  ],
  ["nothing of a barrel", "B250-OAK", [], []],
  [
    "the bulk price of what went into the barrels",
    "B250-OAK",
    [withoutRows("BulkPrices", (cells) => cells[0] === "Dark")],
    ["a bulk price for Dark"],
  ],
  [
    "what a barrel's syrup cost",
    "B250-OAK",
    [typing("OakBarrels", "Syrup cost in", 6, null)],
    ["the syrup cost in of OAK-05"],
  ],
  [
    "the lot in a barrel, and every run",
    "B250-OAK",
    [
      withoutRows("LotUse", (cells) => cells[3] === "OAK-05"),
      withoutRows("Runs", (cells) => cells[2] === "B250-OAK"),
    ],
    [
      "the lot that went into OAK-05",
      "a Brix, as no run of B250-OAK gives one",
    ],
  ],
];

test.each(cases)(
  "with %s missing, the sheet and the trade name that and nothing else",
  async (_, product, changes, names) => {
    const { workbook, cost } = await sheetAndTrade(product, ...changes);
    const said = String(named(workbook, product, "missing") ?? "")
      .split("; ")
      .filter(Boolean);
    expect(said).toEqual(names);
    expect(cost.missing).toEqual(names);
  },
);

/** The advice beside a part, found by its words in the table of materials. */
function adviceFor(workbook: Workbook, part: string): Stored {
  const sheet = workbook.sheets.at(-1);
  const heading = sheet?.cells.find(({ value }) => value === "Advice");
  const row = sheet?.cells.find(
    ({ column, value }) =>
      column === 0 &&
      typeof value === "string" &&
      value.startsWith(`${part} ·`),
  );
  if (!sheet || !heading || !row) throw new Error(`no advice for ${part}`);
  return valueAt(workbook, sheet.name, row.row, heading.column);
}

/** The row of a part in Parts, as people see it. */
const partRow = (part: string): number =>
  (worksheetTables()
    .find(({ name }) => name === "Parts")
    ?.rows.findIndex((cells) => cells[0] === part) ?? -1) + 2;

test("an order rounded up to cartons or to a minimum is no advice to buy up; a cheaper break is", async () => {
  const whole = await sheetAndTrade(
    "P250-LOFT",
    typing("Parts", "Minimum order", partRow("BTL-250"), 1001),
  );
  const bottles = whole.cost.materials.find(({ part }) => part === "BTL-250");
  // The least order of 1,001 is 84 cartons of 12, which are 1,008.
  expect(bottles?.pieces).toBe(1008);
  expect(bottles?.buysUp).toBe(false);
  expect(adviceFor(whole.workbook, "BTL-250") ?? "").toBe("");
  // 600 bottles need 619 labels, 750 in whole cartons: 1,000 × 0.29 is cheaper than 750 × 0.41.
  expect(whole.cost.materials.filter(({ buysUp }) => buysUp)).not.toEqual([]);
  for (const { part, buysUp, pieces } of whole.cost.materials)
    expect([part, adviceFor(whole.workbook, part) || ""]).toEqual([
      part,
      buysUp
        ? `buy up to ${pieces.toLocaleString("en-US")}: the next price break is cheaper in all`
        : "",
    ]);
});

test.each(["P250-LOFT", "B250-OAK"])(
  "every hint on the sheet of %s ends before the pane begins in a window of 1,360 points",
  (product) => {
    const { sheet, names } = costingSheet({
      contents: worksheetTables(),
      product,
      bottles: BOTTLES,
      existingSheets: [],
    });
    const hints = sheet.cells.filter(
      ({ column, style, value }) =>
        column === 3 && style?.italic === true && typeof value === "string",
    );
    expect(hints.length).toBeGreaterThan(8);
    expect(hints.filter(({ value }) => String(value).length > 53)).toEqual([]);
    // The public name of the channels reaches to what a channel keeps after its own costs.
    const { channels } = costingNames(names, product);
    const last = sheet.cells.find(
      ({ row, column }) =>
        channels !== undefined &&
        row === channels.row - 1 &&
        column === channels.column + channels.columns - 1,
    );
    expect(last?.value).toBe("Margin after the channel's own costs");
  },
);
