import { functions, functionNamed } from "../../src/functions";
import { answer } from "../../src/functions/answer";
import type { Definition } from "../../src/functions/define";
import { CannotAnswer } from "../../src/measures/cannot-answer";
import type { CellTerm, Term } from "../../src/terms/term";

/** What is said for the error cell, or the answer where there is one. */
function said(definition: Definition, args: readonly unknown[]): unknown {
  try {
    return answer(definition, args);
  } catch (error) {
    if (error instanceof CannotAnswer) return `${error.code} ${error.message}`;
    throw error;
  }
}

const ofFamilies = functions.filter(({ family }) =>
  ["Lines and runs", "Cost", "Price"].includes(family),
);

interface Single {
  readonly title: string;
  readonly definition: Definition;
  readonly at: number;
  readonly words: string;
  readonly term: CellTerm;
}

/** Every argument of these families that takes one cell, with the sentence's name for it. */
const singles: readonly Single[] = ofFamilies.flatMap((definition) =>
  Object.entries(definition.args).flatMap(([name, term], at) =>
    takesOneCell(term)
      ? [
          {
            title: `${definition.name} ${name}`,
            definition,
            at,
            words: name.replace(/_/g, " "),
            term,
          },
        ]
      : [],
  ),
);

function takesOneCell(term: Term): term is CellTerm {
  return term.kind !== "rows" && term.kind !== "list";
}

/** The function's first example with one argument replaced; arguments before it that it leaves out stay out. */
function saidWith({ definition, at }: Single, raw: unknown): unknown {
  const length = Math.max(at + 1, definition.examples[0].args.length);
  return said(
    definition,
    Array.from({ length }, (_, i) =>
      i === at ? raw : definition.examples[0].args[i],
    ),
  );
}

const numeric = singles.filter(({ term }) =>
  ["number", "money", "share", "quantity"].includes(term.kind),
);
const limitsOf = (term: CellTerm) =>
  term as { readonly min?: number; readonly above?: number };

test("the families are here", () => {
  expect(ofFamilies.length).toBeGreaterThanOrEqual(21);
  expect(numeric.length).toBeGreaterThanOrEqual(60);
});

describe("words where a figure belongs", () => {
  test.each(numeric)("$title", (single) => {
    expect(saidWith(single, "a few")).toMatch(
      new RegExp(`^#VALUE! ${single.words}: .*"?a few"? `),
    );
  });
});

describe("a figure below what it can be", () => {
  const limited = numeric.filter(({ term }) => {
    const { min, above } = limitsOf(term);
    return (min ?? above ?? -1) >= 0;
  });

  test.each(limited)("$title", (single) => {
    // A share is spoken of in per cent.
    const shown = single.term.kind === "share" ? "-500 %" : "-5";
    expect(saidWith(single, -5)).toMatch(
      new RegExp(
        `^#(VALUE!|N/A) ${single.words}: ${shown} .*?(is below|must be more than) `,
      ),
    );
  });

  test.each(numeric.filter(({ term }) => limitsOf(term).above === 0))(
    "nought for $title",
    (single) => {
      expect(saidWith(single, 0)).toMatch(
        new RegExp(`^#VALUE! ${single.words}: 0 .*must be more than 0`),
      );
    },
  );
});

describe("35 where 35 % was meant", () => {
  test.each(singles.filter(({ term }) => term.kind === "share"))(
    "$title",
    (single) => {
      expect(saidWith(single, 35)).toBe(
        `#VALUE! ${single.words}: 35 reads as 3500 %; type 35 % or 0.35`,
      );
    },
  );
});

describe("a word that is not one of the choices", () => {
  test.each(singles.filter(({ term }) => term.kind === "choice"))(
    "$title",
    (single) => {
      expect(saidWith(single, "either")).toMatch(
        new RegExp(`^#VALUE! ${single.words}: "either" is not one of "`),
      );
    },
  );
});

describe("a day that could be two days", () => {
  test.each(singles.filter(({ term }) => term.kind === "date"))(
    "$title",
    (single) => {
      expect(saidWith(single, "03/04/2026")).toMatch(
        new RegExp(`^#VALUE! ${single.words}: "03/04/2026" could be `),
      );
    },
  );
});

describe("a cell that holds an error", () => {
  test.each(singles)("$title", (single) => {
    expect(saidWith(single, { error: "#REF!" })).toBe(
      `#VALUE! ${single.words}: the cell holds the error #REF!`,
    );
  });
});

describe("an argument too many", () => {
  test.each(ofFamilies.map((f) => [f.name, f] as const))("%s", (name, f) => {
    const count = Object.keys(f.args).length;
    const args = Array.from({ length: count + 1 }, () => 1);
    expect(said(f, args)).toBe(
      `#VALUE! SYRUP.${name} takes ${count} arguments, not ${count + 1}`,
    );
  });
});

const labels = [
  [250, 0.58],
  [1000, 0.29],
];
const lots = [
  ["2026-03-20", 1000, 2.4],
  ["2026-04-08", 2000, 2.6],
];
const caps = [
  ["CAP-28", "2026-05-01", 0.12],
  ["CAP-28", "2026-05-01", 0.13],
];

/** What each function refuses of its own accord. */
test.each<readonly [string, readonly unknown[], string]>([
  [
    "LINE_CROSSOVER",
    [600, 0.2, 100, 0.1],
    "#N/A always: b costs no more than a from the first bottle on",
  ],
  [
    "LINE_CROSSOVER",
    [100, 0.2, 100, 0.1],
    "#N/A always: b costs no more than a from the first bottle on",
  ],
  [
    "LINE_CROSSOVER",
    [100, 0.1, 100, 0.2],
    "#N/A never: b costs more than a at every run size",
  ],
  [
    "LINE_CROSSOVER",
    [100, 0.1, 600, 0.2],
    "#N/A never: b costs more than a at every run size",
  ],
  [
    "LINE_CROSSOVER",
    [100, 0.1, 100, 0.1],
    "#N/A a and b cost the same at every run size",
  ],
  // 500 dearer once and 0.10 cheaper each the other way round: 5,000.
  [
    "LINE_CROSSOVER",
    [600, 0.1, 100, 0.2],
    "#N/A only small runs: b is cheaper below 5000 bottles, a from there on",
  ],
  [
    "LINE_RATE",
    [8, 12, 10, 1, [["cap bench", 0]]],
    "#VALUE! stations, row 1, rate: 0 per h must be more than 0 per h",
  ],
  [
    "LINE_RATE",
    [8, 12, 10, 1, [["cap bench"], [720], [0]]],
    "#VALUE! stations: 0 per h must be more than 0 per h",
  ],
  [
    "LINE_LIMIT",
    [8, 12, 10, 1, [[null, 720]]],
    "#VALUE! stations: the one of 720 per h needs its name",
  ],
  [
    "PIECES_TO_DRAW",
    [1200, 1, 0.015, 0],
    "#VALUE! carton: 0 pieces must be more than 0 pieces",
  ],
  [
    "PIECES_TO_DRAW",
    [1200, 1, 1],
    "#VALUE! spoilage: 100 % must be less than 100 %",
  ],
  ["BREAK_PRICE", [100, labels], "#N/A minimum order is 250"],
  ["BREAK_PRICE", [100, [[null, null]]], "#VALUE! needs breaks"],
  [
    "BREAK_PRICE",
    [300, [...labels, [250, 0.6]]],
    "#VALUE! breaks: two prices from 250",
  ],
  [
    "BEST_BUY",
    [300, [...labels, [1000, 0.3]], 250],
    "#VALUE! breaks: two prices from 1000",
  ],
  [
    "BEST_BUY",
    [300, labels, 0],
    "#VALUE! carton: 0 pieces must be more than 0 pieces",
  ],
  [
    "BEST_BUY",
    [300, [[250, -1]]],
    "#VALUE! breaks, row 1, price: -1 each is below 0 each",
  ],
  ["LOT_COST", ["oldest first", 3120, lots], "#N/A short by 120 lb"],
  ["LOT_COST", ["average", 3120, lots], "#N/A short by 120 lb"],
  [
    "LOT_COST",
    ["oldest first", 1120, lots, "2026-04-01"],
    "#N/A short by 120 lb",
  ],
  [
    "LOT_COST",
    ["replacement", 10, lots, "2026-01-01"],
    "#N/A no lot had been received by that day, so no price",
  ],
  [
    "LOT_COST",
    ["average", 10, [["2026-03-20", null, 2.4]]],
    "#VALUE! lots, row 1: needs left",
  ],
  [
    "LOT_COST",
    ["average", 10, [["2026-03-20", -3, 2.4]]],
    "#VALUE! lots, row 1, left: -3 lb is below 0 lb",
  ],
  [
    "PRICE_ON",
    ["CAP-28", "2026-06-01", caps],
    "#VALUE! prices: CAP-28 has two prices from 2026-05-01",
  ],
  [
    "PRICE_ON",
    ["CORK", "2026-06-01", caps],
    "#N/A no price for CORK in the list",
  ],
  [
    "PRICE_ON",
    ["CAP-28", "2026-06-01", [["CAP-28", "2026-05-01", null]]],
    "#VALUE! prices, row 1: needs price",
  ],
  [
    "COST_TOTAL",
    [
      [["syrup"], ["caps"], ["bands"]],
      [[1.91], [null], [null]],
    ],
    "#VALUE! needs caps, bands",
  ],
  [
    "PRICE_FOR_MARGIN",
    [4.85, 0.9, 0.1],
    "#N/A no price works: margin and fees take 100 % of it",
  ],
  [
    "PRICE_FOR_MARGIN",
    [4.85, 1],
    "#N/A no price works: margin and fees take 100 % of it",
  ],
  ["MARKUP", [7.2, 0], "#VALUE! cost: 0 each must be more than 0 each"],
  ["ROUND_PRICE", [8, 1], "#VALUE! ending: 1 must be less than 1"],
  [
    "USABLE_PRICE",
    [2.4, 1000, 0, 1000],
    "#VALUE! filter loss and heel: they leave nothing of 1,000 lb",
  ],
  ["LOADED_WAGE", [20, 0.18, 1], "#VALUE! idle: 100 % must be less than 100 %"],
])("%s(%j) says %s", (name, args, sentence) => {
  const definition = functionNamed(name);
  if (!definition) throw new Error(`There is no ${name}`);
  expect(said(definition, args)).toBe(sentence);
});
