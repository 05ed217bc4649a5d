import fc from "fast-check";
import {
  as,
  type Hours,
  type Money,
  type Share,
} from "../../../src/measures/quantity";
import {
  billCarried,
  comparedDrivers,
  type Season,
  type SeasonRun,
  sharedEachWay,
} from "../../../src/trade/costing/overheads-by-driver";

const anyRun = fc.record({
  run: fc.uuid(),
  product: fc.constantFrom("pint", "quart", "gallon"),
  line: fc.constantFrom("Small A", "Small pair", "Big line"),
  bottles: fc.integer({ min: 1, max: 20_000 }),
  gallons: fc.double({ min: 1, max: 900, noNaN: true }),
  hours: fc.double({ min: 0.5, max: 12, noNaN: true }).map((h) => as<Hours>(h)),
  lotsDrawn: fc.integer({ min: 1, max: 5 }),
  revenue: fc
    .double({ min: 1, max: 90_000, noNaN: true })
    .map((amount) => as<Money>(amount)),
});
const anySeason: fc.Arbitrary<Season> = fc.record({
  runs: fc.array(anyRun, { minLength: 1, maxLength: 30 }),
  lotsBought: fc.integer({ min: 0, max: 30 }),
});
const anyBill = fc
  .double({ min: 1, max: 100_000, noNaN: true })
  .map((amount) => as<Money>(amount));

const sum = (amounts: readonly number[]): number =>
  amounts.reduce((total, amount) => total + amount, 0);

test("whatever a bill is shared by, runs and lots carry all of it and no more", () => {
  fc.assert(
    fc.property(anyBill, anySeason, (bill, season) => {
      for (const shared of sharedEachWay(bill, season)) {
        expect(shared).toBeDefined();
        expect(sum(shared?.byRun ?? []) + (shared?.toLots ?? 0)).toBeCloseTo(
          bill,
          6,
        );
      }
    }),
  );
});

test("by products a product's runs carry one part together, however many they are", () => {
  fc.assert(
    fc.property(anyBill, anySeason, (bill, season) => {
      const at = comparedDrivers.indexOf("products");
      const shared = sharedEachWay(bill, season)[at];
      const products = new Set(season.runs.map(({ product }) => product));
      for (const product of products) {
        const own = season.runs.flatMap((run, i) =>
          run.product === product ? [shared?.byRun[i] ?? 0] : [],
        );
        expect(sum(own)).toBeCloseTo(bill / products.size, 6);
      }
    }),
  );
});

test("a bill's four parts add up to it, and only a driver that sums to nothing leaves a gap", () => {
  fc.assert(
    fc.property(
      anyBill,
      anySeason,
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.constantFrom(
        "runs",
        "lots",
        "lots and runs",
        "gallons packed",
        "small-line hours",
        "big-line hours",
        "square feet",
      ),
      (perYear, season, toBulk, driver) => {
        const parts = billCarried(
          { item: "rent", perYear, toBulk: as<Share>(toBulk), driver },
          season,
        );
        const { toBulk: bulk, toRuns, toLots, gap } = parts;
        expect(bulk + toRuns + toLots + gap).toBeCloseTo(perYear, 6);
        expect(toRuns === 0 || gap === 0).toBe(true);
        if (driver === "square feet")
          expect(gap).toBeCloseTo(perYear * (1 - toBulk), 6);
        if (driver === "runs") expect(gap).toBe(0);
      },
    ),
  );
});

test("by revenue nothing is shared while a product has no price", () => {
  const run = (product: string, revenue: number | undefined): SeasonRun => ({
    run: product,
    product,
    line: "Big line",
    bottles: 100,
    gallons: 10,
    hours: as<Hours>(2),
    lotsDrawn: 1,
    revenue: revenue === undefined ? undefined : as<Money>(revenue),
  });
  const at = comparedDrivers.indexOf("revenue");
  const season = (second: number | undefined): Season => ({
    runs: [run("pint", 300), run("quart", second)],
    lotsBought: 0,
  });
  // 1,000 × 300 ÷ 400 and 1,000 × 100 ÷ 400.
  expect(sharedEachWay(as<Money>(1000), season(100))[at]?.byRun).toEqual([
    750, 250,
  ]);
  expect(sharedEachWay(as<Money>(1000), season(undefined))[at]).toBeUndefined();
});
