import { as, type Brix } from "../../src/measures/quantity";
import { whereReaches } from "../../src/measures/root";
import { densityInAir } from "../../src/trade/syrup/density";
import { asked } from "./asked";
import { cell, demoRows } from "./demo-rows";

const checks = demoRows("fill_checks.csv");

const volumesOf = (run: string, brix: number): readonly number[] =>
  checks
    .filter((row) => row.run === run)
    .map(({ empty_g, full_g }) =>
      Number(cell("NET_VOLUME", Number(full_g), Number(empty_g), brix)),
    );

const column = (values: readonly unknown[]): readonly (readonly unknown[])[] =>
  values.map((value) => [value]);

/** The scenarios divide by 1.3252 g/mL; this is the syrup that weighs so much in air. */
const scenarioBrix = whereReaches(
  (b) => densityInAir(as<Brix>(b)),
  1.3252,
  0,
  85,
);

/** The allowed shortfall is the farm's to enter, from its own handbook edition; 9 mL only stands for it here. */
const ALLOWED = 9;

const tests = (volumes: readonly unknown[], lot: number, ...more: unknown[]) =>
  asked("LOT_VERDICT", [column(volumes), 250, lot, ALLOWED, ...more]);

describe("check weights of RUN-27: 12 bottles of 250 mL of a run of 10,800", () => {
  const volumes = volumesOf("RUN-27", scenarioBrix);
  const { answer, why } = tests(volumes, 10_800, "US");

  test("the nets are those on the check sheet, 249.48 mL on average", () => {
    // Sum 3,967.4 g, ÷ 12 = 330.617 g, ÷ 1.3252 = 249.48; lowest 327.5 g = 247.13.
    expect(volumes).toHaveLength(12);
    expect(Math.min(...volumes)).toBeCloseTo(247.13, 2);
    expect(why).toContain("mean 249.484 mL, spread 1.37");
    expect(why).toContain("lowest 247.13");
  });

  test("the inspector's average passes: short by 0.516, and 0.871 is allowed", () => {
    expect(answer).toContainEqual([
      "average test",
      expect.closeTo(250 - 0.516, 3),
      // 0.635 × 1.37 with the spread as rounded; to the hundredth here.
      expect.closeTo(250 - 0.871, 2),
      "passes",
      expect.closeTo(0.355, 2),
    ]);
  });

  test("the house rule fails by 0.52 mL, on its own line", () => {
    expect(answer).toContainEqual([
      "house goal",
      expect.closeTo(249.484, 3),
      expect.closeTo(250, 9),
      "fails",
      expect.closeTo(0.52, 2),
    ]);
  });

  test("no bottle is beyond the allowed shortfall", () => {
    expect(answer).toContainEqual(["individual test", 0, 1, "passes", 1]);
  });

  test("12 bottles are 36 too few for so large a run, and a row says so", () => {
    expect(answer).toContainEqual(["sample size", 12, 48, "fails", 36]);
    expect(why).toContain("36 fewer than the plan asks");
  });

  test("the factor for 12 is 0.635, which is t 2.201 over √12", () => {
    expect(cell("SAMPLE_FACTOR", 12)).toBe(0.635);
    expect(2.201 / Math.sqrt(12)).toBeCloseTo(0.635, 3);
  });

  test("at the run's own 66.7 °Bx the volumes differ by 0.07 %, the verdicts do not", () => {
    // 1.3252 is rounded for all syrups of the farm; the model weighs 66.7 °Bx at 1.3260 to 1.3261 in air.
    const own = tests(volumesOf("RUN-27", 66.7), 10_800).answer;
    const verdicts = (rows: unknown) =>
      (rows as readonly (readonly unknown[])[]).map((row) => row[3]);
    expect(verdicts(own)).toEqual(verdicts(answer));
    for (const [i, volume] of volumesOf("RUN-27", 66.7).entries())
      expect(Math.abs(volume / (volumes[i] ?? 0) - 1)).toBeLessThan(0.001);
  });
});

describe("check weights of RUN-26: 12 bottles of a run of 840", () => {
  const { answer, why } = tests(volumesOf("RUN-26", scenarioBrix), 840);

  test("both the inspector's average and the house goal fail", () => {
    // Mean 248.82, error −1.18; 0.635 × 1.683 = 1.069.
    expect(answer).toContainEqual([
      "average test",
      expect.closeTo(248.82, 2),
      expect.closeTo(250 - 1.069, 2),
      "fails",
      expect.closeTo(1.18 - 1.069, 2),
    ]);
    expect(answer).toContainEqual([
      "house goal",
      expect.closeTo(248.82, 2),
      expect.closeTo(250, 9),
      "fails",
      expect.closeTo(1.18, 2),
    ]);
  });

  test("the sentence says both and adds up nothing", () => {
    expect(why).toMatch(/average: .* fails by 0\.11/);
    expect(why).toMatch(/house goal: 250 mL, fails by 1\.18/);
    expect(why).not.toMatch(/the lot (passes|fails)/);
  });
});

describe("what a check sheet leaves open", () => {
  test("a blank bottle is passed over and counted aloud", () => {
    const { answer, why } = tests([251, null, 250.5, "", 249.8], 3);
    expect(why).toContain("3 weighed of a lot of 3 (2 blank passed over)");
    expect(answer).toContainEqual(["sample size", 3, 3, "passes", 0]);
  });

  test("a goal of the house's own stands beside the label", () => {
    const { answer } = tests([251, 250.5, 249.8], 3, "US", "252 mL");
    expect(answer).toContainEqual([
      "house goal",
      expect.closeTo(250.433, 3),
      expect.closeTo(252, 9),
      "fails",
      expect.closeTo(1.567, 3),
    ]);
  });

  test("the EU's first sample may leave it undecided, and says what to weigh", () => {
    const volumes = Array.from({ length: 30 }, (_, i) => (i < 2 ? 240 : 252));
    const { answer, why } = tests(volumes, 400, "EU");
    expect(answer).toContainEqual([
      "individual test",
      2,
      4,
      "undecided",
      "weigh 30 more",
    ]);
    expect(answer).toContainEqual([
      "twice the allowed shortfall",
      0,
      0,
      "passes",
      0,
    ]);
    expect(why).toContain("undecided, weigh 30 more");
  });

  test("a lot of one has no average test", () => {
    const { answer } = tests([249], 1);
    expect(answer).toContainEqual(["average test", 249, "", "no test", ""]);
    expect(answer).toContainEqual(["individual test", 0, 0, "passes", 0]);
  });

  test("a text among the volumes is refused by its place", () => {
    expect(() => tests([251, "low", 249.8], 3)).toThrow(
      'volumes, item 2: "low" is not a number in mL',
    );
  });

  test("the US shortfall is asked for", () => {
    expect(() => asked("ALLOWED_SHORT", [250, "US"])).toThrow(
      "enter the MAV from Table 2-6 of the handbook edition your state uses",
    );
  });

  test("a bottle without its head, and half a head, are refused by their place", () => {
    const spread = (heads: readonly unknown[]) =>
      asked("HEAD_SPREAD", [column([251, 249]), column(heads)]);
    expect(() => spread([1, null])).toThrow(
      "heads, item 2: needs the head that filled 249 mL",
    );
    expect(() => spread([1, 1.5])).toThrow(
      "heads, item 2: 1.5 is not a whole number",
    );
    expect(() => spread([1])).toThrow("2 volumes do not stand beside 1 heads");
  });
});
