import fc from "fast-check";
import {
  as,
  type Money,
  type PerHour,
  type Seconds,
  type Share,
} from "../../../src/measures/quantity";
import { crossover, type RunCost } from "../../../src/trade/lines/crossover";
import {
  type Heads,
  headsRate,
  lineLimit,
  lineRate,
} from "../../../src/trade/lines/line-rate";
import { runHours } from "../../../src/trade/lines/run-hours";
import { near } from "../quantities";

const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });
const cents = (max: number): fc.Arbitrary<Money> =>
  fc.integer({ min: 0, max: max * 10_000 }).map((n) => as<Money>(n / 10_000));

const anyHeads: fc.Arbitrary<Heads> = fc.record({
  count: fc.integer({ min: 1, max: 24 }),
  fill: between(3, 60).map((v) => as<Seconds>(v)),
  handling: between(0, 30).map((v) => as<Seconds>(v)),
  running: between(0.1, 1).map((v) => as<Share>(v)),
});
const anyStations = fc.array(
  fc.record({
    name: fc.constantFrom("cap bench", "labeller", "casing"),
    rate: between(100, 4000).map((v) => as<PerHour>(v)),
  }),
  { maxLength: 5 },
);
const anyRun: fc.Arbitrary<RunCost> = fc.record({
  fixed: cents(1000),
  each: cents(1),
});
const cost = ({ fixed, each }: RunCost, bottles: number): number =>
  fixed + each * bottles;

test("a line is never faster than its heads or any station, and one of them sets the pace", () => {
  fc.assert(
    fc.property(anyHeads, anyStations, (heads, stations) => {
      const rate = lineRate(heads, stations);
      const paces = [headsRate(heads), ...stations.map((s) => s.rate)];
      expect(paces.every((pace) => rate <= pace)).toBe(true);
      const limit = lineLimit(heads, stations);
      expect(
        limit === "heads"
          ? headsRate(heads) === rate
          : stations.some((s) => s.name === limit && s.rate === rate),
      ).toBe(true);
    }),
  );
});

test("from the crossover on, the chosen line is never the dearer one", () => {
  fc.assert(
    fc.property(
      anyRun,
      anyRun,
      fc.integer({ min: 0, max: 5000 }),
      (a, b, more) => {
        fc.pre(b.fixed > a.fixed && a.each > b.each);
        const from = crossover(a, b);
        // A crossover on a whole bottle makes the lines equal there, up to the half millionth that counts as whole.
        const slack = (a.each - b.each) * 1e-6;
        expect(cost(b, from + more)).toBeLessThanOrEqual(
          cost(a, from + more) + slack + 1e-9,
        );
        expect(cost(a, from - 1)).toBeLessThanOrEqual(
          cost(b, from - 1) + slack + 1e-9,
        );
      },
    ),
  );
});

test("lines that never cross say which one to run", () => {
  const dear = { fixed: as<Money>(600), each: as<Money>(0.2) };
  const cheap = { fixed: as<Money>(100), each: as<Money>(0.1) };
  const small = { fixed: as<Money>(50), each: as<Money>(0.5) };
  expect(() => crossover(cheap, dear)).toThrow(/^never: b costs more/);
  expect(() => crossover(dear, cheap)).toThrow(/^always: b costs no more/);
  expect(() => crossover(cheap, cheap)).toThrow(/^a and b cost the same/);
  // 50 dearer once, 0.40 cheaper each: they cross at 125.
  expect(() => crossover(cheap, small)).toThrow(
    "only small runs: b is cheaper below 125 bottles, a from there on",
  );
});

test("heads without any cycle time are refused", () => {
  const heads = {
    count: 4,
    fill: as<Seconds>(0),
    handling: as<Seconds>(0),
    running: as<Share>(1),
  };
  expect(() => lineRate(heads)).toThrow(/must take some time/);
});

test("two runs on one set-up take one set-up less than two runs apart", () => {
  const setup = as<Seconds>(1500);
  const clean = as<Seconds>(1800);
  const rate = as<PerHour>(720);
  fc.assert(
    fc.property(between(1, 1e5), between(1, 1e5), (first, second) => {
      const change = { setup, clean };
      const apart =
        runHours(first, rate, change) + runHours(second, rate, change);
      return near(apart - runHours(first + second, rate, change), 3300 / 3600);
    }),
  );
});
