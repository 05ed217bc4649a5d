import { costAnswer } from "../../src/apps/cli/cost-answer";
import { costingFacts } from "../../src/book/costing-facts";
import { readBook } from "../../src/book/read";
import { KG_PER_LB } from "../../src/measures/units";
import {
  type Change,
  changing,
  typing,
  withoutRows,
  worksheetTables,
} from "../book/worksheet-tables";

const PRODUCT = "B250-OAK";

const answer = (bottles: number, ...changes: readonly Change[]) => {
  const { book } = readBook(worksheetTables(...changes));
  const { bottle } = costingFacts(book, { product: PRODUCT, bottles });
  return {
    cost: costAnswer(book, [], PRODUCT, bottles),
    perLb: (bottle.bulkPrice ?? Number.NaN) * KG_PER_LB,
    lots: bottle.lots
      .filter(({ left }) => left > 0)
      .map(({ left, price }) => [left / KG_PER_LB, price * KG_PER_LB]),
  };
};
const needs = ({ cost }: ReturnType<typeof answer>): readonly string[] =>
  cost.findings
    .map(({ found }) => found)
    .filter((found) => found.startsWith("needs "));

const setting = (name: string, value: number, unit: string): Change =>
  changing("Settings", (table) => ({
    ...table,
    rows: [...table.rows, [name, value, unit, null]],
  }));

// oak_barrels.csv: six emptied barrels took 3,073 lb of Dark and gave 2,928 lb; they cost 915 and serve two fills.
test("at replacement, aged syrup is what went in at today's bulk price with half a barrel, by the pounds that came out", () => {
  // (3,073 × 2.52 + 915 ÷ 2) ÷ 2,928
  expect(answer(1140).perLb).toBeCloseTo(8201.46 / 2928, 10);
  const dearer = answer(
    1140,
    typing("BulkPrices", "Price per lb", 3, 2.77),
  ).perLb;
  // Dark up 25 ¢ is up 26.2 ¢ once 145 of 3,073 lb stay in the oak.
  expect(dearer - 8201.46 / 2928).toBeCloseTo((0.25 * 3073) / 2928, 10);
});

test("what was paid comes from the emptied barrels themselves, the one emptied first going first", () => {
  const { lots, cost } = answer(900);
  // OAK-05 and OAK-06 hold 278 and 529 lb: (1,289.22 + 75) ÷ 533 and (1,279.91 + 75) ÷ 529.
  expect(lots).toEqual([
    [expect.closeTo(278, 9), expect.closeTo(1364.22 / 533, 10)],
    [expect.closeTo(529, 9), expect.closeTo(1354.91 / 529, 10)],
  ]);
  const each = cost.syrup.lbPerBottle ?? Number.NaN;
  // RUN-25 packed at 66.5 °Bx, which weighs 11.054 lb a gallon: 252 mL are 0.7359 lb.
  expect(each).toBeCloseTo(0.7359, 3);
  const need = 900 * each + 11;
  const average = (278 * 1364.22) / 533 + (529 * 1354.91) / 529;
  expect(cost.syrup.average).toBeCloseTo((each * average) / 807, 9);
  const oldest = (278 * 1364.22) / 533 + ((need - 278) * 1354.91) / 529;
  expect(cost.syrup.oldestFirst).toBeCloseTo((each * oldest) / need, 9);
});

// The demo's own notes put it at roughly $6.0 with about $16 of overhead a gallon.
test("an oak product has a full cost of roughly six dollars", () => {
  const { cost } = answer(1140);
  expect(cost.costPerBottle.replacement).toBeGreaterThan(5.4);
  expect(cost.costPerBottle.replacement).toBeLessThan(6.6);
  expect(needs({ cost, perLb: 0, lots: [] })).toEqual([]);
});

test("fills, storage, interest and resale count where the settings give them", () => {
  const paid = (...changes: readonly Change[]): unknown =>
    answer(900, ...changes).lots[1]?.[1];
  expect(paid(setting("Barrel fills", 3, "fills"))).toBeCloseTo(
    (1279.91 + 150 / 3) / 529,
    10,
  );
  // OAK-06 lay 365 days, which are 12 months.
  expect(
    paid(
      setting("Barrel storage", 5, "USD a month"),
      setting("Cost of money", 9, "percent a year"),
      setting("Barrel resale", 40, "USD"),
    ),
  ).toBeCloseTo((1279.91 * 1.09 + (150 - 40) / 2 + 5 * 12) / 529, 10);
});

test("a figure that is not in the book withholds what rests on it and is named", () => {
  const noCost = answer(900, typing("OakBarrels", "Syrup cost in", 6, null));
  expect(needs(noCost)).toEqual(["needs the syrup cost in of OAK-05"]);
  expect(noCost.cost.costPerBottle).toEqual({
    replacement: expect.any(Number),
    average: null,
    oldestFirst: null,
  });
  const noLot = answer(
    900,
    withoutRows("LotUse", (cells) => cells[3] === "OAK-05"),
  );
  expect(needs(noLot)).toEqual(["needs the lot that went into OAK-05"]);
  expect(noLot.cost.costPerBottle.replacement).toBeNull();
  const aging = answer(
    900,
    changing("OakBarrels", (table) => ({
      ...table,
      rows: table.rows.slice(6),
    })),
  );
  expect(needs(aging)).toEqual(["needs an emptied oak barrel"]);
  const unmeasured = answer(
    900,
    withoutRows("Runs", (cells) => cells[2] === PRODUCT),
  );
  expect(needs(unmeasured)).toEqual([
    "needs a Brix, as no run of B250-OAK gives one",
  ]);
});
