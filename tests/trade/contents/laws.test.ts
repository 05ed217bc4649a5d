import fc from "fast-check";
import type { LotSample } from "../../../src/trade/contents/lot";
import {
  lotVerdict,
  type LotVerdict,
} from "../../../src/trade/contents/lot-verdict";
import { mL } from "../../scenarios/in-pounds";
import { lotOf } from "./lot";

const anyErrors = (maxLength: number) =>
  fc.array(fc.double({ min: -25, max: 25, noNaN: true }), {
    minLength: 1,
    maxLength,
  });

/** Bottles as wide apart as they come, so that all tests are decided either way. */
const anyLot = fc
  .record({
    errors: anyErrors(170),
    lotSize: fc.integer({ min: 170, max: 9000 }),
    rule: fc.constantFrom("US" as const, "EU" as const, "OIML" as const),
  })
  .map(lotOf);

const verdicts = (tests: LotVerdict): readonly string[] =>
  [
    tests.sampleSize,
    tests.average,
    tests.individual,
    tests.twiceShort,
    tests.houseGoal,
  ].map((test) => test?.verdict ?? "none");

const rank = { fails: 0, undecided: 1, "no test": 1, passes: 2 } as const;
const ranks = (tests: LotVerdict): readonly number[] =>
  verdicts(tests).map((v) => rank[v as keyof typeof rank] ?? 1);

test("more syrup in every bottle never makes a verdict worse", () => {
  fc.assert(
    fc.property(
      anyLot,
      fc.double({ min: 0, max: 20, noNaN: true }),
      (lot, more) => {
        const fuller: LotSample = {
          ...lot,
          volumes: lot.volumes.map((v) => mL(v * 1000 + more)),
        };
        const [before, after] = [lotVerdict(lot), lotVerdict(fuller)].map(
          ranks,
        );
        return (before ?? []).every((r, i) => (after?.[i] ?? -1) >= r);
      },
    ),
    { numRuns: 500 },
  );
});

/** Under the double plan the first bottles are the first sample, so only those may change places among themselves. */
test("the order of weighing makes no difference, within the first sample of a double plan", () => {
  const oneSample = anyLot.filter(
    ({ rule, volumes }) => rule !== "EU" || volumes.length <= 30,
  );
  fc.assert(
    fc.property(oneSample, fc.integer(), (lot, seed) => {
      const [shuffled = []] = fc.sample(
        fc.shuffledSubarray([...lot.volumes], {
          minLength: lot.volumes.length,
        }),
        { numRuns: 1, seed },
      );
      expect(verdicts(lotVerdict({ ...lot, volumes: shuffled }))).toEqual(
        verdicts(lotVerdict(lot)),
      );
    }),
  );
});

test("a larger allowed shortfall never makes the individual test worse, and leaves the average alone", () => {
  fc.assert(
    fc.property(
      anyLot,
      fc.double({ min: 0, max: 50, noNaN: true }),
      (lot, more) => {
        const lenient = { ...lot, allowedShort: mL(13 + more) };
        const [before, after] = [lotVerdict(lot), lotVerdict(lenient)];
        expect(after.average).toEqual(before.average);
        return (
          rank[after.individual.verdict] >= rank[before.individual.verdict] &&
          after.individual.found <= before.individual.found
        );
      },
    ),
  );
});

test("a verdict is what its figures say", () => {
  fc.assert(
    fc.property(anyLot, (lot) => {
      const { average, houseGoal, individual } = lotVerdict(lot);
      for (const { found, limit, verdict, by } of [average, houseGoal]) {
        if (limit === undefined || by === undefined) continue;
        expect(verdict).toBe(found < limit - 1e-12 ? "fails" : "passes");
        expect(by).toBeCloseTo(Math.abs(found - limit), 12);
      }
      if (individual.verdict === "passes")
        expect(individual.found).toBeLessThanOrEqual(individual.limit ?? -1);
    }),
  );
});
