import type { Block, Line } from "../model";
import type { CostingParts } from "./costing-parts";
import { inTier } from "./tier-blocks";

export interface QuoteInputs {
  readonly quantities: readonly number[];
  readonly channel: string;
  readonly leftovers: "charged" | "kept";
  readonly goalOn: "full" | "direct";
  readonly validDays: number;
  readonly artwork: number | undefined;
  readonly artworkLife: number | undefined;
  readonly oneTime: number | undefined;
  readonly perYear: number | undefined;
  readonly forecast: number | undefined;
}

const money = (
  name: string,
  label: string,
  content: number | undefined,
  hint: string,
): Line => ({
  name,
  label,
  role: "input",
  format: "#,##0.00",
  content,
  hint,
  rule: { kind: "number", min: 0, max: 10_000_000 },
  ruleSays: "An amount of money, 0 or more, or blank.",
});

const bottles = (
  name: string,
  label: string,
  content: number | undefined,
  hint: string,
): Line => ({
  name,
  label,
  unit: "bottles",
  role: "input",
  format: "#,##0",
  content,
  hint,
  rule: { kind: "whole number", min: 1, max: 10_000_000 },
  ruleSays: "A whole number of bottles, 1 or more.",
});

/** The only cells of a quote that are typed in; a customer never sees this sheet. */
export const quoteInputsBlock = (
  inputs: QuoteInputs,
  { inputs: shared, channelNames }: CostingParts,
): Block => ({
  kind: "lines",
  title: "What you can change",
  lines: [
    ...inputs.quantities.map((quantity, i) =>
      bottles(
        inTier(i + 1, "bottles"),
        `Quantity ${i + 1}`,
        quantity,
        i === 0 ? "each quantity is costed on its own cheapest line" : "",
      ),
    ),
    {
      name: "leftovers",
      label: "Leftover labels and containers",
      role: "input",
      content: inputs.leftovers,
      hint: "charged: the customer pays for them; kept: they are our stock",
      rule: { kind: "list", choices: ["charged", "kept"] },
      ruleSays: "charged or kept.",
    },
    {
      name: "channel",
      label: "Goal of the channel",
      role: "input",
      content: inputs.channel,
      hint: "its goal margin, fees and returns decide the price",
      rule: { kind: "list", choices: channelNames },
      ruleSays: "A channel that sells by the bottle.",
    },
    {
      name: "goal_on",
      label: "Goal held against",
      unit: "cost",
      role: "input",
      content: inputs.goalOn,
      hint: "full: with the season's overheads; direct: without",
      rule: { kind: "list", choices: ["full", "direct"] },
      ruleSays: "full or direct.",
    },
    money(
      "artwork",
      "Artwork and plates, once",
      inputs.artwork,
      "paid by the customer apart from the bottles; blank = not in the quote",
    ),
    bottles(
      "artwork_life",
      "Bottles the artwork lasts for",
      inputs.artworkLife,
      "blank = this run only",
    ),
    {
      name: "valid_days",
      label: "Quote stands for",
      unit: "days",
      role: "input",
      format: "0",
      content: inputs.validDays,
      hint: "30 days is common practice",
      rule: { kind: "whole number", min: 1, max: 365 },
      ruleSays: "Whole days, from 1 to 365.",
    },
    {
      name: "customer",
      label: "Customer",
      role: "input",
      content: { formula: '=IF({owner}="own","",{owner})' },
    },
    {
      name: "delivery",
      label: "Delivery",
      role: "input",
      content: "at our dock; freight is not in the price",
    },
    {
      name: "lead",
      label: "Ready in",
      role: "input",
      content: undefined,
      hint: "in words, for example 4 weeks; blank = to be agreed",
    },
    money(
      "one_time",
      "Our own money spent once",
      inputs.oneTime,
      "moulds, trials, artwork the customer does not pay; blank = none",
    ),
    money(
      "per_year",
      "Costs a year of this product alone",
      inputs.perYear,
      "blank = none",
    ),
    bottles(
      "forecast",
      "Bottles expected to sell in a year",
      inputs.forecast,
      "blank = months are not worked out",
    ),
    ...shared,
  ],
});
