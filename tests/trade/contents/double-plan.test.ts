import { lotVerdict } from "../../../src/trade/contents/lot-verdict";
import { doublePlanFor } from "../../../src/trade/contents/sampling";
import { lotOf, repeated } from "./lot";

const individual = (errors: readonly number[], lotSize: number) =>
  lotVerdict(lotOf({ errors, short: 9, rule: "EU", lotSize })).individual;

const sampleWith = (short: number, of: number): readonly number[] => [
  ...repeated(of - short, 3),
  ...repeated(short, -10),
];

// By an independent script from the plan of Directive 76/211/EEC Annex II 2.2.1, which was read.
test.each([
  [400, 1, 0, "passes"],
  [400, 2, 2, "passes"],
  [400, 2, 3, "fails"],
  [400, 3, 0, "fails"],
  [2000, 3, 3, "passes"],
  [2000, 5, 0, "fails"],
  [5000, 4, 4, "passes"],
  [5000, 6, 3, "fails"],
])(
  "of a lot of %d, %d short in the first sample and %d in the second: %s",
  (lot, first, second, verdict) => {
    const { sample } = doublePlanFor(lot);
    const both = [...sampleWith(first, sample), ...sampleWith(second, sample)];
    expect(individual(both, lot).verdict).toBe(verdict);
  },
);

test("between the two numbers it is undecided, and says what to weigh next", () => {
  expect(individual(sampleWith(2, 30), 400)).toMatchObject({
    found: 2,
    verdict: "undecided",
    weighMore: 30,
  });
  expect(individual(sampleWith(2, 45), 400)).toMatchObject({
    verdict: "undecided",
    weighMore: 15,
  });
});

test("an unfinished first sample decides only what is certain", () => {
  expect(individual(sampleWith(0, 10), 400).verdict).toBe("passes");
  expect(individual(sampleWith(1, 10), 400)).toMatchObject({
    verdict: "undecided",
    weighMore: 20,
  });
  expect(individual(sampleWith(3, 10), 400).verdict).toBe("fails");
});

test("short bottles weighed beyond an accepted first sample are not passed over", () => {
  const more = [...sampleWith(1, 30), ...sampleWith(2, 10)];
  expect(individual(more, 400)).toMatchObject({
    found: 3,
    verdict: "undecided",
    weighMore: 20,
  });
});
