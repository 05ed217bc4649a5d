import { answer } from "../../src/functions/answer";
import { functionNamed } from "../../src/functions";
import { CannotAnswer } from "../../src/measures/cannot-answer";
import { asked } from "./asked";
import { cell, demoRows } from "./demo-rows";

/** The sentence and the error of a call that has no answer. */
function refusal(name: string, ...args: readonly unknown[]): string {
  const definition = functionNamed(name);
  if (!definition) throw new Error(`No function ${name}`);
  try {
    answer(definition, args);
  } catch (error) {
    if (error instanceof CannotAnswer) return `${error.code} ${error.message}`;
    throw error;
  }
  throw new Error(`${name} has an answer`);
}

const column = (...cells: readonly unknown[]) => cells.map((c) => [c]);

describe("two lots to a target Brix", () => {
  test("1,000 lb at 66.0 take 666.67 lb at 67.0 to 66.4", () => {
    // 1,000 × 0.4 ÷ 0.6.
    expect(cell("BLEND_PARTNER", 1000, 66, 67, 66.4)).toBeCloseTo(666.667, 3);
  });

  test("a target outside the two, and two lots alike, are told apart and never divided by zero", () => {
    expect(refusal("BLEND_PARTNER", 1000, 65.9, 66.2, 66.5)).toBe(
      "#N/A both lots are below 66.5",
    );
    expect(refusal("BLEND_PARTNER", 1000, 66.5, 66.5, 66.5)).toMatch(
      /^#N\/A both lots are at 66.5 already/,
    );
  });
});

describe("several lots together", () => {
  const weights = column(1200, 500, 300);

  test("Brix, price and colour go by weight, colour by its logarithm", () => {
    // (79,080 + 33,500 + 19,800) ÷ 2,000 = 66.19; (3,000 + 1,150 + 630) ÷ 2,000 = 2.39.
    expect(cell("BLEND_BRIX", weights, column(65.9, 67, 66))).toBeCloseTo(
      66.19,
      9,
    );
    expect(cell("BLEND_PRICE", weights, column(2.5, 2.3, 2.1))).toBeCloseTo(
      2.39,
      9,
    );
    // Half at 64 and half at 4: √256 = 16, very dark; the ordinary mean, 34, would call it dark.
    const color = cell("BLEND_COLOR", column(500, 500), column(64, 4));
    expect(color).toBeCloseTo(16, 9);
    expect(cell("COLOR_CLASS", color)).toBe("Very Dark");
    expect(cell("COLOR_CLASS", (64 + 4) / 2)).toBe("Dark");
  });

  test("a Brix beside no pounds names its row; a row that is wholly blank is passed over", () => {
    expect(
      refusal("BLEND_BRIX", column(1200, null, 300), column(65.9, 67, 66)),
    ).toMatch(/^#VALUE! row 2: needs its weight beside 67 °Bx/);
    expect(
      cell(
        "BLEND_BRIX",
        column("lb", 500, null, 500),
        column("°Bx", 66, null, 67),
      ),
    ).toBeCloseTo(66.5, 9);
  });

  test("no light at all is refused", () => {
    expect(refusal("BLEND_COLOR", column(500, 500), column(64, 0))).toMatch(
      /^#VALUE! transmittances, item 2: 0 % must be more than 0 %/,
    );
  });
});

describe("the cheapest blend from the demo farm's lots of 2026", () => {
  const lots = demoRows("bulk_lots.csv")
    .filter(({ lot = "" }) => lot.startsWith("26-"))
    .map((row) => [
      row["lot"],
      Number(row["net_lb"]),
      Number(row["brix_at_68F"]),
      Number(row["price_per_lb_usd"]),
      Number(row["light_transmission_pct"]),
      row["organic"],
    ]);
  type Row = readonly [string, number, number, number];
  const plan = (...args: readonly unknown[]): readonly Row[] =>
    cell("BLEND_PLAN", lots, ...args) as readonly Row[];

  test("amber of 66.4: its parts weigh what was asked, and no lot alone is as cheap", () => {
    const rows = plan(12_000, 66.4, 67, 50);
    const [, brix, light, price] = rows.at(-1) ?? ["", 0, 0, 0];
    const parts = rows.slice(0, -1);
    expect(parts.reduce((sum, [, lb]) => sum + lb, 0)).toBeCloseTo(12_000, 6);
    expect(brix).toBeGreaterThanOrEqual(66.4 - 1e-9);
    expect(light).toBeGreaterThanOrEqual(50 - 1e-9);
    const drawn = (place: number) =>
      parts.map(([name]) => lots.find(([lot]) => lot === name)?.[place]);
    const weights = parts.map(([, lb]) => [lb]);
    expect(cell("BLEND_BRIX", weights, column(...drawn(2)))).toBeCloseTo(
      brix,
      9,
    );
    expect(cell("BLEND_PRICE", weights, column(...drawn(3)))).toBeCloseTo(
      price,
      9,
    );
    expect(cell("BLEND_COLOR", weights, column(...drawn(4)))).toBeCloseTo(
      light,
      8,
    );
    const able = lots.filter(
      ([, lb, bx, , t]) =>
        Number(lb) >= 12_000 && Number(bx) >= 66.4 && Number(t) >= 50,
    );
    for (const lot of able)
      expect(Number(lot[3])).toBeGreaterThanOrEqual(price);
  });

  test("organic only draws on the organic lots alone, and more of it than there is says how much there is", () => {
    const organic = lots.filter((lot) => lot[5] === "yes");
    const names = plan(5000, 65.7, null, null, true)
      .slice(0, -1)
      .map(([name]) => name);
    expect(organic.map(([name]) => name)).toEqual(
      expect.arrayContaining(names),
    );
    // Lots 26-01 and 26-05: 4,253 + 7,725 = 11,978 lb.
    expect(refusal("BLEND_PLAN", lots, 12_000, 65, null, null, true)).toBe(
      "#N/A only 11,978 lb of organic syrup in these lots; 12,000 asked",
    );
  });

  test("a blank status counts as not organic, and the sentence says so", () => {
    const unknown = lots.map((lot) =>
      lot[0] === "26-01" ? [...lot.slice(0, 5), null] : lot,
    );
    expect(refusal("BLEND_PLAN", unknown, 10_000, 65, null, null, true)).toBe(
      "#N/A only 7,725 lb of organic syrup in these lots; 10,000 asked; 1 lot with a blank organic cell counts as not organic",
    );
    const { why } = asked("BLEND_PLAN", [unknown, 5000, 65, null, null, true]);
    expect(why).toMatch(
      /1 lot with a blank organic cell counts as not organic/,
    );
  });

  test("a blend of organic and ordinary lots says that it is not organic", () => {
    const two = lots.filter(([name]) =>
      ["26-05", "26-12"].includes(String(name)),
    );
    // 26-05 at 65.9 and 26-12 at 67.1: half of each is 66.5.
    const { answer: rows, why } = asked("BLEND_PLAN", [two, 4000, 66.5, 66.5]);
    expect((rows as readonly Row[]).slice(0, -1)).toEqual([
      ["26-05", 2000, 0.5, 5300],
      ["26-12", 2000, 0.5, 4480],
    ]);
    expect(why).toMatch(
      /mixes organic and ordinary syrup, so it is not organic/,
    );
  });

  test("the limit that blocks is named with what can be had", () => {
    // Heaviest first: 26-12, 9,351 lb at 67.1, then 26-11 at 67: (9,351 × 67.1 + 649 × 67) ÷ 10,000 = 67.0935.
    expect(refusal("BLEND_PLAN", lots, 10_000, 67.5)).toMatch(
      /^#N\/A brix min blocks: for 10,000 lb the lots reach at most 67.09 °Bx, 67.5 asked; type 67.09 or less/,
    );
    // Lightest: 26-01 at 76.3, of which there are 4,253 lb.
    expect(refusal("BLEND_PLAN", lots, 4000, 65, null, 80)).toMatch(
      /^#N\/A transmittance min blocks: for 4,000 lb the lots reach at most 76.3 % transmission, 80 asked/,
    );
    expect(refusal("BLEND_PLAN", lots, 4000, 67, null, 60)).toMatch(
      /^#N\/A transmittance min and brix min block each other: at 67 °Bx or more the lots reach at most [\d.]+ % transmission, 60 asked; at 60 % transmission or more the lots reach at most [\d.]+ °Bx, 67 asked/,
    );
  });

  test("a lot without pounds, and one without the transmission that a limit needs, are named", () => {
    const noPounds = [
      ["26-01", null, 65.7, 2.78, 76.3, "yes"],
      ...lots.slice(1),
    ];
    expect(refusal("BLEND_PLAN", noPounds, 4000, 65)).toBe(
      "#VALUE! lots, row 1: needs lb available",
    );
    const noLight = [
      ["26-01", 4253, 65.7, 2.78, null, "yes"],
      ...lots.slice(1),
    ];
    expect(refusal("BLEND_PLAN", noLight, 4000, 65, null, 50)).toMatch(
      /^#VALUE! lots: "26-01" needs transmission, because transmittance min is given/,
    );
  });
});
