import { findingText } from "../../book/finding";
import { estimateLines } from "./estimate-lines";
import type { QuoteAnswer, TierAnswer } from "./quote-answer";

/** The quote as a person reads it at a terminal: what the customer is told first, then our own figures. */
export function quoteText(answer: QuoteAnswer): readonly string[] {
  const { tiers, setUpFees, findings } = answer;
  const line = (
    label: string,
    say: (tier: TierAnswer, at: number) => string,
  ): string => row(label, tiers.map(say));
  return [
    `Quote for ${answer.product}, of ${answer.asOf}, valid until ${answer.validUntil}`,
    "",
    line("Bottles", ({ bottles }) => count(bottles)),
    line("Price a bottle", ({ price }) => money(price, 2)),
    line("Price in all", ({ price, bottles }) =>
      money(price === null ? null : price * bottles, 2),
    ),
    ...setUpFees.map(
      ({ name, amount }) => `${name}, once: ${amount.toFixed(2)}`,
    ),
    answer.leftovers === "charged"
      ? "Labels and containers left over are in the price and the customer's."
      : "Labels and containers left over stay ours.",
    "",
    `For us (${answer.channel}, goal ${(answer.goal * 100).toFixed(1)} % on ${answer.goalOn} cost)`,
    line("Line", (tier) => tier.line ?? "none"),
    line("Direct cost", ({ directPerBottle }) => money(directPerBottle, 4)),
    line("Full cost", ({ perBottle }) => money(perBottle, 4)),
    ...estimateLines(answer.estimateFromSeason),
    line("Price on full cost", ({ priceOnFullCost }) =>
      money(priceOnFullCost, 2),
    ),
    line("Price on direct cost", ({ priceOnDirectCost }) =>
      money(priceOnDirectCost, 2),
    ),
    line("Earned over direct cost", ({ contribution }) =>
      money(contribution, 4),
    ),
    line("Left over, worth", ({ leftovers }) =>
      money(
        leftovers.reduce((sum, { value }) => sum + value, 0),
        2,
      ),
    ),
    ...setUpFees.map(({ name, perBottle }) =>
      line(`${name}, a bottle`, (_, at) => money(perBottle[at] ?? null, 4)),
    ),
    ...(tiers.some(({ breakEven }) => breakEven !== undefined)
      ? [
          line("One-time money back at", ({ breakEven }) =>
            breakEven ? count(breakEven.bottles) : "never",
          ),
          line(
            "in months",
            ({ breakEven }) => breakEven?.months?.toFixed(1) ?? "–",
          ),
        ]
      : []),
    ...(findings.length === 0
      ? []
      : ["", "Findings", ...findings.map((f) => `- ${findingText(f)}`)]),
  ];
}

const row = (label: string, cells: readonly string[]): string =>
  label.padEnd(30) + cells.map((cell) => cell.padStart(14)).join("");

const count = (value: number): string => value.toLocaleString("en-US");
const money = (value: number | null, decimals: number): string =>
  value === null ? "withheld" : value.toFixed(decimals);
