import type { Block } from "../model";

const share = { kind: "number", min: -0.9, max: 5 } as const;

/** What moves, and what is looked at. */
export const whatMovesBlock = (facts: {
  readonly channels: readonly string[];
  /** The products of the price list, as a reference. */
  readonly products: string;
  readonly drawn: string;
}): Block => ({
  kind: "lines",
  title: "What if",
  lines: [
    {
      name: "bulk",
      label: "Bulk moves by",
      unit: "per lb",
      role: "input",
      format: "+0.00;-0.00;0.00",
      content: 0.25,
      rule: { kind: "number", min: -50, max: 50 },
      ruleSays: "Money a pound, up or down.",
    },
    {
      name: "wages",
      label: "Wages move by",
      role: "input",
      format: "+0.0%;-0.0%;0.0%",
      content: 0,
      rule: share,
      ruleSays: "A share such as 5 %, up or down.",
    },
    {
      name: "containers",
      label: "Glass and jugs move by",
      role: "input",
      format: "+0.0%;-0.0%;0.0%",
      content: 0,
      hint: 'parts whose Kind is "container"',
      rule: share,
      ruleSays: "A share such as 5 %, up or down.",
    },
    {
      name: "step",
      label: "A step of bulk",
      unit: "per lb",
      role: "input",
      format: "0.00",
      content: 0.1,
      rule: { kind: "number", min: 0.001, max: 10 },
      ruleSays: "Money a pound between two columns.",
    },
    {
      name: "over",
      label: "Say which costs move by more than",
      role: "input",
      format: "0.0%",
      content: 0.02,
      rule: { kind: "number", min: 0, max: 1 },
      ruleSays: "A share such as 2 %.",
    },
    {
      name: "channel",
      label: "Channel",
      role: "input",
      content: facts.channels[0],
      hint: "blank = where each product stands worst",
      rule: { kind: "list", choices: facts.channels },
      ruleSays: "A channel that sells by the bottle, or blank.",
    },
    {
      name: "drawn",
      label: "Product in the picture",
      role: "input",
      content: facts.drawn,
      rule: { kind: "list from", source: facts.products },
      ruleSays: "A product of the price list.",
    },
  ],
});

export const movedGlanceBlock: Extract<Block, { readonly kind: "lines" }> = {
  kind: "lines",
  title: "At a glance",
  lines: [
    {
      name: "falling",
      label: "Fall under their goal",
      role: "check",
      content: {
        formula:
          '=COUNTIF({moves.verdict},"falls under its goal*")&" of "&COUNTIF({moves.verdict},"?*")&" priced products"',
      },
    },
    {
      name: "moving",
      label: "Costs that move over the limit",
      role: "check",
      content: {
        formula:
          '=COUNTIF({moves.over},"yes")&" of "&COUNT({moves.cost})&" products"',
      },
    },
  ],
};
