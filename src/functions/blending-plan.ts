import { blendingTerms as terms } from "../terms/blending";
import { optional } from "../terms/term";
import {
  type BlendDraw,
  type BlendLot,
  blendPlan,
  type WantedBlend,
} from "../trade/blending/least-cost";
import { noBlend } from "./blending-blocked";
import { blendInWords, blendOf, testFirst } from "./blending-words";
import { inPounds, perKilogram, perPound } from "./by-weight";
import { type Answer, defineFunction, type Values } from "./define";

const args = {
  lots: terms.lots,
  weight: terms.weightWanted,
  brix_min: terms.brixMin,
  brix_max: optional(terms.brixMax, undefined),
  transmittance_min: optional(terms.transmittanceMin, undefined),
  organic_only: optional(terms.organicOnly, "FALSE"),
} as const;
type Asked = Values<typeof args>;

/** Invented lots, as the examples use them. */
const demoLots = [
  ["A-1", 4000, 66, 2.5, 72, "no"],
  ["A-2", 3000, 67, 2.6, 18, "no"],
  ["A-3", 2000, 66.5, 2.7, 80, "yes"],
  ["A-4", 1500, 67, 2.75, 60, null],
] as const;

const lotsOf = ({ lots }: Asked): readonly BlendLot[] =>
  lots.map(
    ({ name, lb_available, brix, price_per_lb, transmission, organic }) => ({
      name,
      available: lb_available,
      brix,
      price: perKilogram(price_per_lb),
      transmittance: transmission,
      organic,
    }),
  );

const wantedOf = (values: Asked): WantedBlend => ({
  weight: values.weight,
  brixMin: values.brix_min,
  brixMax: values.brix_max,
  transmittanceMin: values.transmittance_min,
  organicOnly: values.organic_only,
});

function drawsOf(values: Asked): readonly BlendDraw[] {
  const [lots, wanted] = [lotsOf(values), wantedOf(values)];
  const plan = blendPlan(lots, wanted);
  if (plan.kind !== "plan") throw noBlend(plan, lots, wanted);
  return plan.draws;
}

/** Past these digits there is only the noise of the arithmetic; pounds that add up are to show as such. */
const clean = (value: number): number => Number(value.toPrecision(12));

const drawRow = (
  { lot, weight }: BlendDraw,
  all: number,
): readonly Answer[] => [
  lot.name,
  clean(inPounds(weight)),
  clean(weight / all),
  clean(weight * lot.price),
];

function totalRow(draws: readonly BlendDraw[]): readonly Answer[] {
  const { brix, light, price } = blendOf(draws);
  return [
    "total",
    clean(brix),
    light === undefined ? "not known" : clean(light),
    clean(perPound(price)),
  ];
}

export const blendingPlanFunctions = [
  defineFunction({
    name: "BLEND_PLAN",
    family: "Blending",
    summary:
      "Cheapest blend of a weight from the lots there are, within limits of Brix and colour.",
    question:
      "Which lots make this blend at the least cost, and how much of each?",
    args,
    gives: {
      about: "what to draw of each lot",
      unit: "",
      spills: ["Lot", "lb", "Share", "$"],
    },
    basis: ["arithmetic", "absorbancesAdd"],
    uncertainty:
      "The pounds and the money are exact for the figures given; the transmission is an estimate.",
    caution: testFirst,
    notes: [
      'A row for each lot that is drawn, in the order of your rows: lot, pounds, share of the blend, money. Lots of which nothing is drawn are left out. The last row reads "total", then °Bx of the blend, its transmission in % and its price per lb.',
      "No mix costs less. Of mixes that cost the same it is the one that draws the most from the lot in your first row, of those the most from the second, and so on: put first what you would rather use up.",
      "Brix is weighed by pounds. Transmission is the geometric mean by pounds; on its logarithm the limit is a straight line like the others.",
      'Transmission may be blank only where `transmittance_min` is left out; the last row then says "not known" where a drawn lot has none.',
      "A blank under organic counts as not organic. A blend of organic and ordinary lots is not organic, and the arithmetic line says so.",
      "At most 100 lots to draw on.",
    ],
    examples: [
      {
        args: [demoLots, 5000, 66.5],
        gives: [
          ["A-1", 2500, 0.5, 6250],
          ["A-2", 2500, 0.5, 6500],
          ["total", 66.5, 36, 2.55],
        ],
        within: 1e-8,
        source:
          "hand arithmetic: half of each is 66.5 °Bx; √(72 × 18) = 36; A-3 and A-4 are dearer than 2.55",
      },
      {
        args: [demoLots, 1000, 66, 67, 50, true],
        gives: [
          ["A-3", 1000, 1, 2700],
          ["total", 66.5, 80, 2.7],
        ],
        within: 1e-8,
        source: "read off the rows: A-3 is the only lot marked organic",
      },
      {
        args: [
          [
            ["B-1", 6000, 66.5, 2.6, 80, "no"],
            ["B-2", 3000, 66.5, 2.2, 5, "no"],
          ],
          4000,
          66,
          null,
          40,
        ],
        gives: [
          ["B-1", 3000, 0.75, 7800],
          ["B-2", 1000, 0.25, 2200],
          ["total", 66.5, 40, 2.5],
        ],
        within: 1e-8,
        source:
          "hand arithmetic: 80³ × 5 = 40⁴, so a quarter of B-2 is the most that 40 % allows",
      },
    ],
    noNative:
      "the answer fills as many rows as lots are drawn, and is found by a search that no plain formula does",
    compute: (values) => {
      const draws = drawsOf(values);
      return [
        ...draws.map((draw) => drawRow(draw, values.weight)),
        totalRow(draws),
      ];
    },
    why: (values) =>
      blendInWords(drawsOf(values), lotsOf(values), wantedOf(values)),
  }),
];
