import fc from "fast-check";
import { as, type Money, type Share } from "../../../src/measures/quantity";
import {
  type Drivers,
  type Overhead,
  overheadPart,
  overheadShare,
} from "../../../src/trade/costing/overhead-share";

const bill = (over: Partial<Overhead> = {}): Overhead => ({
  item: "Certification audit",
  perYear: as<Money>(10_600),
  toBulk: as<Share>(0),
  driver: "lots and runs",
  ...over,
});
const season: Drivers = {
  runs: 18,
  lots: 13,
  gallons: 4623,
  hours: [
    { line: "Small pair", hours: 30 },
    { line: "Small A", hours: 10 },
    { line: "Big line", hours: 60 },
  ],
  // 660 bottles of 252 mL: 660 × 252 ÷ 3,785.41.
  own: { gallons: 43.937, hours: 2.5, line: "Small pair" },
};

describe("worked example: a certification of 10,600 a year, and a run of 660 bottles", () => {
  test("over 13 lots and 18 runs it is 341.94 each, 51.8 ¢ a bottle", () => {
    const share = overheadShare(bill(), season) ?? 0;
    expect(share).toBeCloseTo(341.94, 2); // 10,600 ÷ 31
    expect(share / 660).toBeCloseTo(0.518, 3);
  });

  test("over 4,623 gallons it is 2.29 a gallon, 15.3 ¢ a bottle: 3.4 times less", () => {
    const byGallons = overheadShare(bill({ driver: "Gallons packed" }), season);
    expect((byGallons ?? 0) / season.own.gallons).toBeCloseTo(2.29, 2); // 10,600 ÷ 4,623
    expect((byGallons ?? 0) / 660).toBeCloseTo(0.153, 3); // 2.2929 × 43.937 ÷ 660
    const byRuns = overheadShare(bill(), season) ?? 0;
    expect(byRuns / (byGallons ?? 1)).toBeCloseTo(3.4, 1);
  });

  test("a twentieth run added makes it 10,600 ÷ 33 = 321.21", () => {
    expect(overheadShare(bill(), { ...season, runs: 20 })).toBeCloseTo(
      321.21,
      2,
    );
  });

  test("half of it shared to bulk leaves half for the bottles", () => {
    expect(overheadShare(bill({ toBulk: as<Share>(0.5) }), season)).toBeCloseTo(
      170.97,
      2,
    ); // 10,600 × 0.5 ÷ 31 = 170.968
  });
});

describe("what a bill is shared by", () => {
  const of = (driver: string, over: Partial<Drivers> = {}) =>
    overheadShare(bill({ driver, perYear: as<Money>(900) }), {
      ...season,
      ...over,
    });

  test("runs; lots, of which a run is none; hours of the run's own kind of line", () => {
    expect(of("runs")).toBeCloseTo(50, 9); // 900 ÷ 18
    expect(of("lots")).toBe(0);
    expect(of("small-line hours")).toBeCloseTo(56.25, 9); // 900 × 2.5 ÷ (30 + 10)
    expect(of("big-line hours")).toBe(0);
    expect(
      of("big-line hours", { own: { ...season.own, line: "Big line" } }),
    ).toBeCloseTo(37.5, 9); // 900 × 2.5 ÷ 60
  });

  test("a driver we do not know, or one that sums to nothing, gives no share", () => {
    expect(of("square feet")).toBeUndefined();
    expect(of("")).toBeUndefined();
    expect(of("medium-line hours")).toBeUndefined();
    expect(of("runs", { runs: 0 })).toBeUndefined();
    expect(of("gallons packed", { gallons: 0 })).toBeUndefined();
  });
});

interface Run {
  readonly gallons: number;
  readonly hours: number;
  readonly line: string;
}
const anySeason = fc.array(
  fc.record<Run>({
    gallons: fc.double({ min: 1, max: 900, noNaN: true }),
    hours: fc.double({ min: 0.5, max: 12, noNaN: true }),
    line: fc.constantFrom("Small A", "Small pair", "Big line"),
  }),
  { minLength: 1, maxLength: 40 },
);
const seasonOf = (runs: readonly Run[], lots: number) => ({
  runs: runs.length,
  lots,
  gallons: runs.reduce((sum, run) => sum + run.gallons, 0),
  hours: runs,
});
const charged = (
  overhead: Overhead,
  runs: readonly Run[],
  lots: number,
): number =>
  runs.reduce(
    (sum, own) =>
      sum + (overheadShare(overhead, { ...seasonOf(runs, lots), own }) ?? 0),
    0,
  );

test("the shares of a season's runs add up to the bill, less what goes to bulk", () => {
  fc.assert(
    fc.property(
      anySeason,
      fc.constantFrom("runs", "gallons packed"),
      fc.double({ min: 0, max: 0.9, noNaN: true }),
      (runs, driver, toBulk) => {
        const overhead = bill({ driver, toBulk: as<Share>(toBulk) });
        expect(charged(overhead, runs, 13)).toBeCloseTo(
          10_600 * (1 - toBulk),
          6,
        );
      },
    ),
  );
});

test("runs carry of lots and runs what the lots leave", () => {
  fc.assert(
    fc.property(anySeason, fc.integer({ min: 0, max: 30 }), (runs, lots) => {
      expect(charged(bill(), runs, lots)).toBeCloseTo(
        (10_600 * runs.length) / (runs.length + lots),
        6,
      );
    }),
  );
});

test("a line's bill is carried by its own hours only, all of it", () => {
  fc.assert(
    fc.property(anySeason, (runs) => {
      const big = runs.filter(({ line }) => line === "Big line");
      const overhead = bill({ driver: "big-line hours" });
      expect(charged(overhead, runs, 0)).toBeCloseTo(
        big.length > 0 ? 10_600 : 0,
        6,
      );
      expect(
        charged(
          overhead,
          runs.filter(({ line }) => line !== "Big line"),
          0,
        ),
      ).toBe(0);
    }),
  );
});

test("a season before is shared over while it did more, by the bill's own driver, and the part is then an estimate", () => {
  const before = {
    season: 2025,
    runs: 20,
    lots: 12,
    gallons: 4000,
    hours: [{ line: "Small pair", hours: 80 }],
  };
  const of = (driver: string, over: Partial<Drivers> = {}) =>
    overheadPart(bill({ driver, perYear: as<Money>(900) }), {
      ...season,
      before,
      ...over,
    });
  // 900 ÷ 20 instead of ÷ 18; gallons are this season's own, 4,623 against 4,000.
  expect(of("runs")).toEqual({
    item: "Certification audit",
    cost: 45,
    estimateFrom: 2025,
  });
  expect(of("gallons packed")).toEqual({
    item: "Certification audit",
    cost: (900 * 43.937) / 4623,
  });
  // 12 + 20 are more than 13 + 18; 80 h on small lines more than 40.
  expect(of("lots and runs").cost).toBeCloseTo(900 / 32, 9);
  expect(of("small-line hours").cost).toBeCloseTo((900 * 2.5) / 80, 9);
  // Equal is as much: no estimate any more.
  expect(of("runs", { runs: 20 }).estimateFrom).toBeUndefined();
  expect(of("medium-line hours").cost).toBeUndefined();
});

test("what a season before stands in for is never shared over less than either season", () => {
  fc.assert(
    fc.property(
      anySeason,
      anySeason,
      fc.constantFrom("runs", "gallons packed", "big-line hours"),
      (runs, then, driver) => {
        const own = { gallons: 10, hours: 2, line: "Big line" };
        const overhead = bill({ driver });
        const [now, was, shared] = [
          { ...seasonOf(runs, 3), own },
          { ...seasonOf(then, 3), own },
          {
            ...seasonOf(runs, 3),
            before: { ...seasonOf(then, 3), season: 2025 },
            own,
          },
        ].map((of) => overheadShare(overhead, of));
        const known = [now, was].flatMap((cost) => cost ?? []);
        if (known.length === 0) expect(shared).toBeUndefined();
        else expect(shared).toBeCloseTo(Math.min(...known), 9);
      },
    ),
  );
});
