import { gridFunctions } from "../../src/apps/grid-functions";
import { type Contents } from "../../src/book/contents";
import { readBook } from "../../src/book/read";
import { calculate } from "../../src/hosts/grid/calculate";
import { farmBook } from "../../src/sheets/farm-book";
import { tablesOf } from "../../src/sheets/tables-of";
import type { Stored } from "../../src/sheets/workbook";
import { demoFolder, demoTables } from "../book/csv-folder";
import { withoutPlaces } from "../book/worksheet-tables";

const empty: { tables: readonly Contents[]; refusals: number } = {
  tables: [],
  refusals: -1,
};
let calculated = empty;

beforeAll(async () => {
  const { workbook, refusals } = await calculate(
    farmBook(demoTables()),
    gridFunctions,
  );
  calculated = { tables: tablesOf(workbook), refusals: refusals.length };
});

const column = (name: string, heading: string): readonly Stored[] => {
  const table = calculated.tables.find((known) => known.name === name);
  const at = table?.headings.indexOf(heading) ?? -1;
  return (table?.rows ?? []).map((cells) => cells[at] ?? null);
};

// The farm's own files carry these columns as it worked them out itself; `within` is half their last printed digit,
// or, for gallons, what the farm's own rounding of pounds per gallon to the third decimal can move them.
test.each([
  ["Lots", "Lb per gal", "bulk_lots.csv", "lb_per_gal_air_68F", 0.001],
  ["Lots", "Gallons at 68 °F", "bulk_lots.csv", "gallons_at_68F", 0.07],
  ["Lots", "Syrup cost", "bulk_lots.csv", "syrup_cost_usd", 0.0051],
  ["Lots", "Landed per lb", "bulk_lots.csv", "landed_per_lb_usd", 0.000051],
  ["Wages", "Loaded per hour", "wages.csv", "loaded_hourly_usd", 0.0051],
  ["OakBarrels", "Loss lb", "oak_barrels.csv", "loss_lb", 0],
  ["OakBarrels", "Left lb", "oak_barrels.csv", "still_in_barrel_stock_lb", 0],
  [
    "ToteShipments",
    "Lb per gal",
    "tote_shipments.csv",
    "lb_per_gal_air_68F",
    0.001,
  ],
  [
    "ToteShipments",
    "Gallons at 68 °F",
    "tote_shipments.csv",
    "gallons_at_68F",
    0.03,
  ],
  ["StockCount", "Difference lb", "stock_count.csv", "difference_lb", 0],
])(
  "%s, %s: the sheet works out what the farm did",
  (table, heading, csv, name, within) => {
    const file = demoFolder().get(csv);
    const at = file?.headings.indexOf(name) ?? -1;
    const values = column(table, heading);
    expect(values).toHaveLength(file?.rows.length ?? 0);
    for (const [i, value] of values.entries()) {
      const theirs = file?.rows[i]?.cells[at];
      if (theirs === "") expect(value === "" || value === null).toBe(true);
      else
        expect(Math.abs(Number(value) - Number(theirs))).toBeLessThanOrEqual(
          within,
        );
    }
  },
);

// Wages and crews of the farm with 18 % add-ons: small pair (24 + 21 + 2 × 18.5) × 1.18 = 96.76 an hour; big line 127.44.
test("crews cost an hour what the farm reckons", () => {
  const lines = column("Crew", "Line");
  const costs = column("Crew", "Cost per hour");
  const sum = (line: string): number =>
    costs.reduce<number>(
      (total, cost, i) => total + (lines[i] === line ? Number(cost) : 0),
      0,
    );
  expect(sum("Small pair")).toBeCloseTo(96.76, 9);
  expect(sum("Big line")).toBeCloseTo(127.44, 9);
});

test("the lots have left the farm's 44,494 lb, all drawn as recorded", () => {
  const total = (heading: string): number =>
    column("Lots", heading).reduce<number>((sum, v) => sum + Number(v), 0);
  expect(total("Left lb")).toBe(44_494);
  expect(total("Net lb")).toBe(266_214);
  expect(new Set(column("Runs", "Season"))).toEqual(new Set([2025, 2026]));
});

test("no cell of the book refuses, and the worked-out book reads as before", () => {
  expect(calculated.refusals).toBe(0);
  const before = readBook(demoTables());
  const after = readBook(calculated.tables);
  expect(withoutPlaces(after.book)).toEqual(withoutPlaces(before.book));
  expect(after.findings).toHaveLength(before.findings.length);
});
