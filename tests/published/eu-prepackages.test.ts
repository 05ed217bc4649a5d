import { allowedShort } from "../../src/trade/contents/allowed-short";
import { doublePlan } from "../../src/trade/contents/double-plan";
import { lotVerdict } from "../../src/trade/contents/lot-verdict";
import {
  doublePlanFor,
  sampleFactor,
  sampleSize,
} from "../../src/trade/contents/sampling";
import { tQuantile } from "../../src/trade/contents/t-quantile";
import { mL } from "../scenarios/in-pounds";
import { agreesWithPrinted } from "../support/published";
import { agreesWithShortfalls } from "../support/shortfalls";
import {
  euDoublePlans,
  euMeanFactor,
  euScope,
  euShortfalls,
  ukSmallLot,
} from "./eu-prepackages";

agreesWithShortfalls(euShortfalls, "EU", "unrounded");

test("the table is for packs of 5 mL to 10 L", () => {
  for (const inside of [euScope.least, euScope.most])
    expect(() => allowedShort(mL(inside), "EU")).not.toThrow();
  for (const outside of [euScope.least - 0.1, euScope.most + 1])
    expect(() => allowedShort(mL(outside), "EU")).toThrow("outside the EU");
});

describe.each(euDoublePlans)("a lot of $lots", (printed) => {
  const { lots, sample, accept, reject } = printed;
  const decide = (first: number, second?: number) =>
    doublePlan(doublePlanFor(lots[0]), {
      weighed: second === undefined ? sample : 2 * sample,
      inFirstSample: first,
      inAll: first + (second ?? 0),
    });

  test(`has a first sample of ${sample}`, () => {
    expect(lots.map((lot) => sampleSize(lot, "EU"))).toEqual([sample, sample]);
  });

  test(`is accepted at ${accept[0]} and rejected at ${reject[0]} after the first`, () => {
    expect(decide(accept[0]).verdict).toBe("passes");
    expect(decide(accept[0] + 1)).toMatchObject({
      verdict: "undecided",
      weighMore: sample,
    });
    expect(decide(reject[0] - 1).verdict).toBe("undecided");
    expect(decide(reject[0]).verdict).toBe("fails");
  });

  test(`is accepted at ${accept[1]} and rejected at ${reject[1]} after both`, () => {
    const first = accept[0] + 1;
    expect(decide(first, accept[1] - first).verdict).toBe("passes");
    expect(decide(first, reject[1] - first).verdict).toBe("fails");
    expect(decide(reject[0], 0).verdict).toBe("fails");
  });
});

agreesWithPrinted(euMeanFactor, (packs) => sampleFactor(packs, "EU").factor);
agreesWithPrinted(
  { ...euMeanFactor, quantity: "Student's t at 99.5 % over √n" },
  (packs) => tQuantile(0.01, packs - 1) / Math.sqrt(packs),
);

describe("a small lot", () => {
  const lotSize = ukSmallLot.below - 20;
  const lot = (short: number) =>
    lotVerdict({
      volumes: Array.from({ length: lotSize }, (_, i) =>
        mL(i < short ? 240 : 255),
      ),
      declared: mL(250),
      lotSize,
      allowedShort: mL(9),
      rule: "EU",
      houseGoal: mL(250),
    });

  test("is checked pack by pack and accepted with 5 % of them defective", () => {
    const accepted = lotSize * ukSmallLot.acceptedShare;
    expect(lot(0).sampleSize.limit).toBe(lotSize);
    expect(lot(accepted).individual.verdict).toBe("passes");
    expect(lot(accepted + 1).individual.verdict).toBe("fails");
  });

  test("has no allowance on its mean", () => {
    expect(lot(4).average.limit).toBeCloseTo(0.25, 12);
  });
});
