import { findingText, type Finding } from "../../book/finding";
import { type CostAnswer, costingPlace } from "./cost-answer";
import { estimateLines } from "./estimate-lines";

/** The answers as a person reads them at a terminal: one product in full, or a line for each of many. */
export const costText = (
  answers: readonly CostAnswer[],
  found: readonly Finding[],
): readonly string[] => {
  const [only, second] = answers;
  return only && !second ? oneProduct(only) : manyProducts(answers, found);
};

function oneProduct(answer: CostAnswer): readonly string[] {
  const { line, directPerBottle: direct, costPerBottle: full } = answer;
  return [
    `${answer.product}, a run of ${answer.bottles.toLocaleString("en-US")} bottles`,
    line
      ? `Line: ${line.name}, ${Math.round(line.ratePerHour).toLocaleString("en-US")} an hour, limited by ${line.limitedBy}${line.crossoverBottles === null ? "" : `; even with ${line.otherLine ?? "the other"} at ${line.crossoverBottles.toLocaleString("en-US")} bottles`}`
      : "Line: none can be costed",
    "",
    row("Cost of a bottle", ["at today's price", "average", "oldest first"]),
    row(
      "Direct",
      [direct.replacement, direct.average, direct.oldestFirst].map((amount) =>
        money(amount),
      ),
    ),
    row(
      "Full",
      [full.replacement, full.average, full.oldestFirst].map((amount) =>
        money(amount),
      ),
    ),
    row("Full, a case", [money(answer.perCase)]),
    ...estimateLines(answer.estimateFromSeason),
    "",
    ...answer.parts.map(({ name, perBottle }) => row(name, [money(perBottle)])),
    "",
    row("Channel", ["price", "margin", "goal", "markup", "for the goal"]),
    ...answer.prices.map((p) =>
      row(p.channel, [
        p.price === null ? "–" : money(p.price, 2),
        percent(p.margin),
        percent(p.goal),
        percent(p.markup),
        money(p.priceForGoal, 2),
        p.underGoal ? "under its goal" : "",
      ]).trimEnd(),
    ),
    ...findingLines(answer.findings),
  ];
}

const manyProducts = (
  answers: readonly CostAnswer[],
  found: readonly Finding[],
): readonly string[] => [
  row("Full cost of a bottle", [
    "bottles",
    "at today's price",
    "average",
    "oldest first",
    "line",
    "under the goal",
  ]),
  ...answers.map(({ product, bottles, costPerBottle: full, line, prices }) =>
    row(product, [
      bottles.toLocaleString("en-US"),
      ...[full.replacement, full.average, full.oldestFirst].map((amount) =>
        money(amount),
      ),
      line?.name ?? "none",
      underGoal(prices),
    ]),
  ),
  ...estimateLines(answers[0]?.estimateFromSeason ?? null),
  ...findingLines([...answers.flatMap(aboutCosting), ...found]),
];

/** Why a total is withheld; prices under their goal are only counted here. */
const aboutCosting = ({ product, findings }: CostAnswer): readonly Finding[] =>
  findings.filter(({ where }) => where === costingPlace(product));

const underGoal = (prices: CostAnswer["prices"]): string => {
  const charged = prices.filter(({ margin }) => margin !== null);
  return charged.length === 0
    ? "–"
    : `${charged.filter((p) => p.underGoal).length} of ${charged.length} prices`;
};

const findingLines = (findings: readonly Finding[]): readonly string[] =>
  findings.length === 0
    ? []
    : ["", "Findings", ...findings.map((f) => `- ${findingText(f)}`)];

const row = (label: string, cells: readonly string[]): string =>
  label.padEnd(28) + cells.map((cell) => cell.padStart(17)).join("");

const money = (value: number | null, decimals = 4): string =>
  value === null ? "withheld" : value.toFixed(decimals);
const percent = (share: number | null): string =>
  share === null ? "–" : `${(share * 100).toFixed(1)} %`;
