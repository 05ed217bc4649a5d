import { lotVerdict } from "../../../src/trade/contents/lot-verdict";
import { mean, spread } from "../../../src/trade/contents/sample";
import { mL } from "../../scenarios/in-pounds";
import { lotOf, repeated } from "./lot";

// Rule: Handbook 133 section 2.3; bottles invented, figures by an independent script; sample size and factor from memory.
const withinLimit = [-1, 1, 0, -3, -1, 2, -1, 0, -4, 1, -2, 1];
const oneTooShort = [5, 4, 6, 3, -14, 5, 4, 6, 3, 5, 4, 6];

describe("category A", () => {
  test("a minus average within the factor times the spread passes", () => {
    const lot = lotOf({ errors: withinLimit });
    const { average, individual, houseGoal } = lotVerdict(lot);
    expect((mean(lot.volumes) - lot.declared) * 1000).toBeCloseTo(-0.5833, 4);
    expect(spread(lot.volumes) * 1000).toBeCloseTo(1.7816, 4);
    expect((lot.declared - (average.limit ?? 0)) * 1000).toBeCloseTo(1.1313, 4);
    expect(average.verdict).toBe("passes");
    expect(individual).toMatchObject({ found: 0, limit: 0, verdict: "passes" });
    // The inspector is content; the house is not.
    expect(houseGoal.verdict).toBe("fails");
  });

  test("one package beyond the allowed shortfall fails a lot with a plus average", () => {
    const lot = lotOf({ errors: oneTooShort });
    const { average, individual } = lotVerdict(lot);
    expect((mean(lot.volumes) - lot.declared) * 1000).toBeCloseTo(3.0833, 4);
    expect(spread(lot.volumes) * 1000).toBeCloseTo(5.4848, 4);
    expect((lot.declared - (average.limit ?? 0)) * 1000).toBeCloseTo(3.4829, 4);
    expect(average.verdict).toBe("passes");
    expect(individual).toMatchObject({
      found: 1,
      limit: 0,
      verdict: "fails",
      by: 1,
    });
  });

  test("short by exactly the allowed shortfall is not beyond it", () => {
    const errors = [-13, ...repeated(11, 3)];
    expect(lotVerdict(lotOf({ errors })).individual.found).toBe(0);
    const short = [-13.0001, ...repeated(11, 3)];
    expect(lotVerdict(lotOf({ errors: short })).individual.found).toBe(1);
    // Whatever the sizes: 0.237 − 0.25 is a hair more than 0.013 in binary.
    for (let size = 20; size < 400; size += 1)
      for (const short of [0.1, 0.7, 1.3, 4.5, 9, 13]) {
        const exactly = lotOf({
          errors: [-short, 20],
          size,
          short,
          lotSize: 2,
        });
        expect(lotVerdict(exactly).individual.found).toBe(0);
      }
  });

  test("an average short by exactly the limit passes, a hair more fails", () => {
    // Errors of ±1 mL: mean 0, spread √(12 ÷ 11); the factor is a stored one, so the limit can be met exactly.
    const shifted = (by: number) =>
      lotVerdict(
        lotOf({
          errors: [...repeated(6, -1), ...repeated(6, 1)].map((e) => e + by),
        }),
      ).average;
    const limit = 0.635 * Math.sqrt(12 / 11);
    expect(shifted(-limit).verdict).toBe("passes");
    expect(shifted(-limit - 1e-6).verdict).toBe("fails");
    expect(shifted(0).verdict).toBe("passes");
  });

  test("bottles all alike have no allowance: right on the label passes, below fails", () => {
    expect(lotVerdict(lotOf({ errors: repeated(12, 0) })).average.verdict).toBe(
      "passes",
    );
    expect(
      lotVerdict(lotOf({ errors: repeated(12, -0.1) })).average.verdict,
    ).toBe("fails");
  });

  test("a lot of one has only the individual test", () => {
    const { sampleSize, average, individual } = lotVerdict(
      lotOf({ errors: [-2], lotSize: 1 }),
    );
    expect(sampleSize).toMatchObject({ found: 1, limit: 1, verdict: "passes" });
    expect(average).toMatchObject({ verdict: "no test", limit: undefined });
    expect(individual.verdict).toBe("passes");
  });

  test("one bottle of a larger lot leaves the average undecided", () => {
    const { average } = lotVerdict(lotOf({ errors: [2] }));
    expect(average).toMatchObject({ verdict: "undecided", weighMore: 11 });
  });

  test("too few bottles fail the sample size, more than asked are fine", () => {
    const size = (weighed: number) =>
      lotVerdict(lotOf({ errors: repeated(weighed, 1) })).sampleSize;
    expect(size(7)).toMatchObject({ verdict: "fails", limit: 12, by: 5 });
    expect(size(12).verdict).toBe("passes");
    expect(size(40)).toMatchObject({ verdict: "passes", by: 28 });
  });

  test("one beyond of a large lot passes with 48 weighed, and is undecided with fewer", () => {
    const one = (weighed: number) =>
      lotVerdict(
        lotOf({ errors: [-20, ...repeated(weighed - 1, 4)], lotSize: 10_800 }),
      ).individual;
    expect(one(48)).toMatchObject({ found: 1, limit: 1, verdict: "passes" });
    expect(one(12)).toMatchObject({ verdict: "undecided", weighMore: 36 });
    const two = lotOf({
      errors: [-20, -20, ...repeated(10, 4)],
      lotSize: 10_800,
    });
    expect(lotVerdict(two).individual.verdict).toBe("fails");
  });
});

describe("EU and R 87", () => {
  test("data that passes in the EU can fail in the US, which allows the average less", () => {
    // t at 99.5 % over √30 is 0.503, at 97.5 % it is 0.373: mean −0.45 spreads lies between.
    const errors = [...repeated(15, -1), ...repeated(15, 1)].map(
      (e) => e - 0.45,
    );
    const average = (rule: "EU" | "US") =>
      lotVerdict(lotOf({ errors, rule, lotSize: 400 })).average.verdict;
    expect([average("EU"), average("US")]).toEqual(["passes", "fails"]);
  });

  test("no bottle may be short by more than twice the allowed shortfall", () => {
    const twice = (error: number) =>
      lotVerdict(
        lotOf({
          errors: [error, ...repeated(49, 5)],
          short: 9,
          rule: "OIML",
          lotSize: 400,
        }),
      ).twiceShort;
    expect(twice(-18)).toMatchObject({ found: 0, verdict: "passes" });
    expect(twice(-18.01)).toMatchObject({ found: 1, verdict: "fails" });
    expect(
      lotVerdict(lotOf({ errors: repeated(12, 0) })).twiceShort,
    ).toBeUndefined();
  });

  test("a small lot may not be short on average at all", () => {
    const average = (by: number) =>
      lotVerdict(
        lotOf({
          errors: [-3, 3, -2, 2].map((e) => e + by),
          rule: "EU",
          lotSize: 4,
        }),
      ).average.verdict;
    expect([average(0), average(-0.001)]).toEqual(["passes", "fails"]);
  });
});

describe("what cannot be a sample is refused", () => {
  test.each([
    [{ errors: [] }, "volumes: no bottle was weighed"],
    [
      { errors: repeated(12, 0), lotSize: 10 },
      "volumes: 12 bottles were weighed, but the lot is only 10",
    ],
    [
      { errors: repeated(12, 0), short: 355 },
      "allowed short: 355 mL is not less than the declared 355 mL",
    ],
    [
      { errors: repeated(12, 0), rule: "OIML", lotSize: 60 },
      "R 87 plans for lots below 100 are not known here",
    ],
  ] as const)("%j", (given, sentence) => {
    expect(() => lotVerdict(lotOf(given))).toThrow(sentence);
  });
});

test("the house goal is its own line, above or below the label", () => {
  const goal = (size: number) =>
    lotVerdict(lotOf({ errors: repeated(12, 1), houseGoal: mL(size) }))
      .houseGoal;
  expect(goal(356).verdict).toBe("passes");
  expect(goal(357)).toMatchObject({
    verdict: "fails",
    by: expect.closeTo(0.001, 12),
  });
});
