import { findingText } from "../../book/finding";
import { estimateLines } from "./estimate-lines";
import type { PricesAnswer, ProductPrices } from "./prices-answer";

/** The price list as a person reads it at a terminal: products under their goal first, then all in the book's order. */
export function pricesText(answer: PricesAnswer): readonly string[] {
  const under = answer.products
    .filter(isUnder)
    .sort((a, b) => worst(a) - worst(b));
  return [
    `Price list on ${answer.asOf}`,
    `Bulk, per lb: ${Object.entries(answer.bulkPrices)
      .map(([kind, price]) => `${kind} ${price.toFixed(2)}`)
      .join(", ")}`,
    "",
    `Under their goal: ${under.length} of ${answer.products.length}${under.length === 0 ? "" : `: ${under.map(({ product }) => product).join(", ")}`}`,
    "",
    row("Full cost of a bottle", [
      "bottles",
      "at today's price",
      "average",
      "oldest first",
      "direct",
      "line",
      "under the goal",
    ]),
    ...answer.products.map(productRow),
    ...estimateLines(answer.estimateFromSeason),
    ...movedLines(answer),
    ...(answer.findings.length === 0
      ? []
      : ["", "Findings", ...answer.findings.map((f) => `- ${findingText(f)}`)]),
  ];
}

const isUnder = ({ channels }: ProductPrices): boolean =>
  channels.some(({ underGoal }) => underGoal);

const worst = ({ channels }: ProductPrices): number =>
  Math.min(
    ...channels.map(({ marginAfterChannelCosts: kept, goal }) =>
      kept === null ? Infinity : kept - goal,
    ),
  );

const productRow = (p: ProductPrices): string => {
  const charged = p.channels.filter(({ margin }) => margin !== null);
  return row(p.product, [
    p.bottles.toLocaleString("en-US"),
    money(p.cost.replacement),
    money(p.cost.average),
    money(p.cost.oldestFirst),
    money(p.direct.replacement),
    p.line ?? "none",
    charged.length === 0
      ? "–"
      : `${charged.filter(({ underGoal }) => underGoal).length} of ${charged.length} prices`,
  ]);
};

const movedLines = ({ moved }: PricesAnswer): readonly string[] =>
  moved === undefined
    ? []
    : [
        "",
        row("Against the other book", ["before", "now", "moved"]),
        ...moved.map(({ product, before, now, share, over }) =>
          row(product, [
            money(before),
            money(now),
            share === null ? "–" : percent(share),
            over ? "look at its prices" : "",
          ]).trimEnd(),
        ),
      ];

const row = (label: string, cells: readonly string[]): string =>
  label.padEnd(24) + cells.map((cell) => cell.padStart(18)).join("");

const money = (value: number | null): string =>
  value === null ? "withheld" : value.toFixed(4);
const percent = (share: number): string =>
  `${share < 0 ? "−" : "+"}${(Math.abs(share) * 100).toFixed(1)} %`;
