import { contentsTerms as terms } from "../terms/contents";
import { optional } from "../terms/term";
import type { LotSample, Outcome } from "../trade/contents/lot";
import { allowance, lotVerdict } from "../trade/contents/lot-verdict";
import { mean, spread } from "../trade/contents/sample";
import { arithmeticOnly, enteredMillilitres } from "./contents-words";
import { type Answer, defineFunction, type Values } from "./define";
import { figure } from "./wording";

const args = {
  volumes: terms.volumesWithBlanks,
  declared: terms.declared,
  lot_size: terms.lotSize,
  allowed_short: terms.allowedShort,
  rule: optional(terms.rule, "US"),
  house_goal: optional(terms.houseGoal, undefined),
} as const;
type Call = Values<typeof args>;

const lotOf = (call: Call): LotSample => ({
  volumes: call.volumes.filter((v) => v !== undefined),
  declared: call.declared,
  lotSize: call.lot_size,
  allowedShort: call.allowed_short,
  rule: call.rule,
  houseGoal: call.house_goal ?? call.declared,
});

const inMillilitres = (litres: number): number => litres * 1000;

function rowsOf(call: Call): readonly (readonly Answer[])[] {
  const tests = lotVerdict(lotOf(call));
  const count = (value: number): number => value;
  return [
    row("sample size", tests.sampleSize, count),
    row("average test", tests.average, inMillilitres),
    row("individual test", tests.individual, count),
    ...(tests.twiceShort
      ? [row("twice the allowed shortfall", tests.twiceShort, count)]
      : []),
    row("house goal", tests.houseGoal, inMillilitres),
  ];
}

const row = (
  test: string,
  { found, limit, verdict, by, weighMore }: Outcome,
  shown: (value: number) => number,
): readonly Answer[] => [
  test,
  shown(found),
  limit === undefined ? "" : shown(limit),
  verdict,
  verdict === "undecided"
    ? `weigh ${weighMore} more`
    : by === undefined
      ? ""
      : shown(by),
];

function whyOf(call: Call): string {
  const lot = lotOf(call);
  const tests = lotVerdict(lot);
  return [
    weighedWords(call, lot, tests.sampleSize),
    `average: ${averageWords(lot, tests.average)}`,
    `individual: ${tests.individual.found} below ${limitWords(lot, 1)}, ${tests.individual.limit} allowed, ${verdictWords(tests.individual)}`,
    ...(tests.twiceShort
      ? [
          `${tests.twiceShort.found} below ${limitWords(lot, 2)}, none allowed, ${verdictWords(tests.twiceShort)}`,
        ]
      : []),
    `house goal: ${enteredMillilitres(lot.houseGoal)}, ${verdictWords(tests.houseGoal)} by ${few(tests.houseGoal.by ?? 0)}`,
  ].join("; ");
}

function weighedWords(call: Call, lot: LotSample, size: Outcome): string {
  const { volumes } = lot;
  const blank = call.volumes.length - volumes.length;
  const sample = [
    `${volumes.length} weighed of a lot of ${figure(lot.lotSize, 9)}`,
    blank > 0 ? ` (${blank} blank passed over)` : "",
    size.weighMore > 0
      ? `, ${size.weighMore} fewer than the plan asks`
      : ` where the plan asks for ${size.limit}`,
  ].join("");
  const lowest = volumes.reduce((least, v) => (v < least ? v : least));
  const spreadWords =
    volumes.length > 1 ? `, spread ${few(spread(volumes))}` : "";
  return `${sample}: mean ${millilitres(mean(volumes))}${spreadWords}, lowest ${millilitres(lowest)}`;
}

function averageWords(lot: LotSample, test: Outcome): string {
  if (test.limit === undefined)
    return test.verdict === "no test"
      ? "a lot of one has none"
      : `undecided on one bottle, weigh ${test.weighMore} more`;
  const may = allowance(lot);
  const limit = `${enteredMillilitres(lot.declared)} − ${few(may)}${factorWords(lot, may)} = ${millilitres(test.limit)}`;
  return `${limit}, ${verdictWords(test)} by ${few(test.by ?? 0)}`;
}

/** The factor is shown as what it multiplies; identical bottles have no spread to show it on. */
function factorWords(lot: LotSample, may: number): string {
  if (lot.volumes.length < 2 || may === 0) return "";
  const deviation = spread(lot.volumes);
  return ` (${figure(may / deviation, 4)} × ${few(deviation)})`;
}

const limitWords = (lot: LotSample, times: number): string =>
  `${enteredMillilitres(lot.declared)} − ${times === 1 ? "" : `${times} × `}${enteredMillilitres(lot.allowedShort)} = ${enteredMillilitres(lot.declared - times * lot.allowedShort)}`;

const verdictWords = ({ verdict, weighMore }: Outcome): string =>
  verdict === "undecided" ? `undecided, weigh ${weighMore} more` : verdict;

const millilitres = (litres: number): string =>
  `${figure(litres * 1000, 6)} mL`;

/** A difference of two volumes needs fewer digits to say as much. */
const few = (litres: number): string => `${figure(litres * 1000, 4)} mL`;

const errors = [-1, 1, 0, -3, -1, 2, -1, 0, -4, 1, -2, 1] as const;
const invented =
  "rule: Handbook 133 section 2.3.7; bottles invented, average error −0.5833, spread 1.7816, × 0.635 = 1.1313 by an independent script";

export const contentsVerdictFunctions = [
  defineFunction({
    name: "LOT_VERDICT",
    family: "Net contents",
    summary:
      "The inspector's tests of a lot and the house goal, each with its own verdict.",
    question: "Would this lot pass an inspection, and does it meet our goal?",
    args,
    gives: {
      about: "one row a test",
      unit: "",
      spills: ["Test", "Found", "Limit", "Verdict", "By"],
    },
    basis: [
      "hb133Rules",
      "hb133Plan",
      "euPrepackages",
      "ukSmallLots",
      "oimlR87",
      "chance",
    ],
    caution: arithmeticOnly,
    notes: [
      "A lot passes an inspection only when every row above the house goal passes. Rows are never added up to one verdict.",
      "Sample size: fewer bottles than the plan asks for fail this row, more are fine. The other rows are worked out on the bottles there are.",
      "Average test: the mean in mL against the declared volume less the sample factor times the spread. The factor is that of the bottles weighed; see SAMPLE_FACTOR. A lot of one has no average test.",
      "Individual test: bottles short by more than the allowed shortfall, against how many may be. Short by exactly the allowed shortfall is not beyond it. With too few bottles weighed, some beyond but not too many are undecided.",
      "Twice the allowed shortfall (EU and OIML): no bottle may be short by more than that.",
      "House goal: the mean against your own goal; left out, the goal is the declared volume.",
      "Blank cells are passed over, and counted in the arithmetic.",
      "EU: the double plan. The bottles stand in the order of weighing, the first 30, 50 or 80 of them being the first sample; between its two numbers the row is undecided and says how many more to weigh. In lots below 100 every bottle is weighed, the average may not be short at all, and 5 % of the bottles may be beyond (UK rule).",
      "The allowed shortfall is yours to enter: for the US from the handbook edition your state uses; ALLOWED_SHORT gives it for the EU and OIML.",
    ],
    examples: [
      {
        args: [errors.map((e) => [355 + e]), 355, 200, 13],
        gives: [
          ["sample size", 12, 12, "passes", 0],
          ["average test", 354.4167, 353.8687, "passes", 0.548],
          ["individual test", 0, 0, "passes", 0],
          ["house goal", 354.4167, 355, "fails", 0.5833],
        ],
        within: 0.0001,
        source: invented,
      },
      {
        args: [
          [[252.1], [250.4], [null], [236.9], [251]],
          250,
          1200,
          "13 mL",
          "US",
          252,
        ],
        gives: [
          ["sample size", 4, 24, "fails", 20],
          ["average test", 247.6, 238.5957, "passes", 9.0043],
          ["individual test", 1, 0, "fails", 1],
          ["house goal", 247.6, 252, "fails", 4.4],
        ],
        within: 0.0005,
        source:
          "hand arithmetic: 990.4 ÷ 4 mL; squares 20.25 + 7.84 + 114.49 + 11.56 = 154.14, √(÷ 3) = 7.1680; 250 − 1.591 × 7.1680; 236.9 is below 237",
      },
    ],
    noNative:
      "the answer fills several cells, which one plain formula from before 2019 cannot do",
    compute: rowsOf,
    why: whyOf,
  }),
];
