import fc from "fast-check";
import {
  as,
  type Kilograms,
  type MoneyPerHour,
  type MoneyPerKg,
  type PerHour,
  type Seconds,
  type Share,
} from "../../../src/measures/quantity";
import { KG_PER_LB } from "../../../src/measures/units";
import { chooseLine, type Line } from "../../../src/trade/lines/choice";

const smallPair: Line = {
  name: "Small pair",
  heads: {
    count: 8,
    fill: as<Seconds>(12),
    handling: as<Seconds>(10),
    running: as<Share>(0.78),
  },
  station: { name: "hand cap and invert", rate: as<PerHour>(720) },
  setup: as<Seconds>(25 * 60),
  clean: as<Seconds>(30 * 60),
  purge: as<Kilograms>(11 * KG_PER_LB),
  crew: as<MoneyPerHour>(96.76),
  usual: true,
};
const bigLine: Line = {
  name: "Big line",
  heads: {
    count: 12,
    fill: as<Seconds>(14),
    handling: as<Seconds>(3),
    running: as<Share>(0.85),
  },
  station: { name: "labeller", rate: as<PerHour>(2400) },
  setup: as<Seconds>(150 * 60),
  clean: as<Seconds>(75 * 60),
  purge: as<Kilograms>(60 * KG_PER_LB),
  crew: as<MoneyPerHour>(127.44),
  usual: true,
};
const bulkPrice = as<MoneyPerKg>(2.6 / KG_PER_LB);
const choose = (
  bottles: number,
  lines: readonly Line[] = [smallPair, bigLine],
  asked?: string,
) =>
  chooseLine(lines, {
    bottles,
    bulkPrice,
    ...(asked === undefined ? {} : { asked }),
  });

describe("the worked example of the small pair and the big line, at 2.60 a pound", () => {
  test("1,200 bottles: 278.56 against 704.70, the small pair", () => {
    const { chosen, options } = choose(1200);
    const [small, big] = options;
    expect(chosen?.line.name).toBe("Small pair");
    // 55/60 × 96.76 + 11 × 2.60 = 117.2967, + 1,200 × 96.76 ÷ 720; 225/60 × 127.44 + 60 × 2.60 = 633.90, + 1,200 × 0.059.
    expect(small?.cost).toBeCloseTo(278.56, 2);
    expect(big?.cost).toBeCloseTo(704.7, 2);
    expect((big?.cost ?? 0) - (small?.cost ?? 0)).toBeCloseTo(426.14, 2);
    expect([small?.limitedBy, big?.limitedBy]).toEqual([
      "hand cap and invert",
      "heads",
    ]);
    // 55 min + 1,200 ÷ 720 h; 225 min + 1,200 ÷ 2,160 h.
    expect(small?.hours).toBeCloseTo(2.5833, 4);
    expect(big?.hours).toBeCloseTo(4.3056, 4);
  });

  test("9,000 bottles: 1,326.80 against 1,164.90, the big line", () => {
    const { chosen, options } = choose(9000);
    const [small, big] = options;
    expect(chosen?.line.name).toBe("Big line");
    expect(small?.cost).toBeCloseTo(1326.8, 2);
    expect(big?.cost).toBeCloseTo(1164.9, 2);
    expect((small?.cost ?? 0) - (big?.cost ?? 0)).toBeCloseTo(161.9, 2);
  });

  test("it flips at 6,853 bottles, whichever line is asked from", () => {
    // 516.6033 ÷ 0.0753889 = 6,852.5.
    expect(choose(6852).chosen?.line.name).toBe("Small pair");
    expect(choose(6853).chosen?.line.name).toBe("Big line");
    expect(choose(1200).options[1]?.crossover).toBe(6853);
    expect(choose(9000).options[0]?.crossover).toBe(6853);
    expect(choose(1200).options[0]?.crossover).toBeUndefined();
  });

  test("syrup at 3.60 moves it to 7,503 bottles", () => {
    // The purges are 49 lb apart: 49.00 more; 565.6033 ÷ 0.0753889 = 7,502.5.
    const { options } = chooseLine([smallPair, bigLine], {
      bottles: 1200,
      bulkPrice: as<MoneyPerKg>(3.6 / KG_PER_LB),
    });
    expect(options[1]?.crossover).toBe(7503);
  });
});

describe("which lines are in the choice", () => {
  test("a line asked for by name is taken though it is dearer, in any case of letters", () => {
    const { chosen } = choose(1200, [smallPair, bigLine], " big LINE");
    expect(chosen?.line.name).toBe("Big line");
    // Still compared: the small pair overtaken at the same run size.
    expect(
      choose(1200, [smallPair, bigLine], "Big line").options[0]?.crossover,
    ).toBe(6853);
  });

  test("a line that is nobody's usual one is priced but not chosen", () => {
    const cheap: Line = {
      ...smallPair,
      name: "Small A",
      crew: as<MoneyPerHour>(10),
      usual: false,
    };
    const { chosen, options } = choose(1200, [cheap, smallPair, bigLine]);
    expect(chosen?.line.name).toBe("Small pair");
    expect(options[0]?.cost).toBeLessThan(chosen?.cost ?? 0);
    expect(choose(1200, [cheap, smallPair], "Small A").chosen?.line).toBe(
      cheap,
    );
  });

  test("a crew without wages does not win by costing nothing", () => {
    const unpaid: Line = { ...bigLine, crew: as<MoneyPerHour>(0) };
    expect(choose(9000, [smallPair, unpaid]).chosen?.line.name).toBe(
      "Small pair",
    );
    expect(choose(9000, [unpaid]).chosen).toBeUndefined();
    expect(choose(9000, []).chosen).toBeUndefined();
  });

  test("of lines that cost the same the first is taken, and they have no crossover", () => {
    const twin: Line = { ...smallPair, name: "Other pair" };
    const { chosen, options } = choose(1200, [smallPair, twin]);
    expect(chosen?.line.name).toBe("Small pair");
    expect(options[1]?.crossover).toBeUndefined();
  });
});

const anyLine: fc.Arbitrary<Line> = fc
  .record({
    count: fc.integer({ min: 2, max: 16 }),
    fill: fc.integer({ min: 4, max: 40 }),
    handling: fc.integer({ min: 0, max: 20 }),
    running: fc.integer({ min: 40, max: 100 }),
    station: fc.integer({ min: 200, max: 4000 }),
    setup: fc.integer({ min: 0, max: 240 }),
    clean: fc.integer({ min: 0, max: 120 }),
    purge: fc.integer({ min: 0, max: 80 }),
    crew: fc.integer({ min: 2000, max: 20_000 }),
    usual: fc.boolean(),
  })
  .map((l) => ({
    name: "",
    heads: {
      count: l.count,
      fill: as<Seconds>(l.fill),
      handling: as<Seconds>(l.handling),
      running: as<Share>(l.running / 100),
    },
    station: { name: "cap bench", rate: as<PerHour>(l.station) },
    setup: as<Seconds>(l.setup * 60),
    clean: as<Seconds>(l.clean * 60),
    purge: as<Kilograms>(l.purge * KG_PER_LB),
    crew: as<MoneyPerHour>(l.crew / 100),
    usual: l.usual,
  }));
const anyLines = fc
  .array(anyLine, { minLength: 1, maxLength: 5 })
  .map((lines) => lines.map((line, i) => ({ ...line, name: `Line ${i}` })));
const anyBottles = fc.integer({ min: 1, max: 60_000 });

test("the chosen line is never dearer than another usual line, at any run size", () => {
  fc.assert(
    fc.property(anyLines, anyBottles, (lines, bottles) => {
      const { chosen, options } = choose(bottles, lines);
      const usual = options.filter(({ line }) => line.usual);
      expect(chosen === undefined).toBe(usual.length === 0);
      for (const option of usual)
        expect(chosen?.cost).toBeLessThanOrEqual(option.cost);
    }),
  );
});

test("with two lines the choice flips at their crossover and nowhere else", () => {
  fc.assert(
    fc.property(anyLine, anyLine, (a, b) => {
      const lines = [
        { ...a, name: "a", usual: true },
        { ...b, name: "b", usual: true },
      ];
      const from = choose(1, lines).options.find(
        ({ crossover }) => crossover !== undefined,
      )?.crossover;
      const nameAt = (bottles: number) =>
        choose(bottles, lines).chosen?.line.name;
      if (from === undefined) {
        // One is cheaper, or equal, at every run size.
        expect(nameAt(1)).toBe(nameAt(1e9));
        return;
      }
      // On the whole bottle where the costs are equal either may be named; one past it, the answer must have changed.
      if (from > 1) expect(nameAt(from - 1)).toBe(nameAt(1));
      expect(nameAt(from + 1)).toBe(nameAt(1e9));
    }),
  );
});
