import type { Block, Column } from "../model";
import type { PriceListFacts } from "../prices/facts";
import type { Working } from "../prices/list-blocks";
import { acrossChannels, bottleChannel } from "../prices/list-columns";

/** Steps of bulk to either side of today's price. */
export const STEPS = [-4, -3, -2, -1, 0, 1, 2, 3, 4] as const;

/** Columns before those of the steps, in their order: the pane reads by it. */
export const moveColumns = [
  "product",
  "channel",
  "price",
  "left",
  "goal",
  "cost",
  "new_cost",
  "cents",
  "share",
  "over",
  "hold_money",
  "hold_percent",
  "ask_money",
  "ask_percent",
  "new_left",
  "verdict",
] as const;

const stepName = (step: number): string =>
  `at_${step < 0 ? "less" : "more"}_${Math.abs(step)}`;

const stepLabel = (step: number): string =>
  step === 0
    ? "bulk as it is"
    : `bulk ${Math.abs(step)} ${Math.abs(step) === 1 ? "step" : "steps"} ${step < 0 ? "cheaper" : "dearer"}`;

export interface MovesFacts {
  readonly rows: number;
  readonly channelRows: number;
  readonly channels: PriceListFacts["channels"];
  readonly working: Working;
  readonly list: Working;
}

/** The move of bulk that each step's column stands for, over the same columns. */
export const stepsBlock: Block = {
  kind: "table",
  name: "steps",
  title: "Left of the price after the channel's own costs, when bulk moves",
  rows: 1,
  columns: [
    {
      name: "what",
      label: "",
      content: "Bulk moves by, per lb",
    },
    ...moveColumns.slice(1).map((name) => ({ name, label: "", content: "" })),
    ...STEPS.map((step) => ({
      name: stepName(step),
      label: stepLabel(step),
      format: "+0.00;-0.00;0.00",
      content: { formula: `=${step}*{step}` },
    })),
  ],
};

/** A row a product: what moves its cost, the prices that hold it either way, and what is left at each step of bulk. */
export const movesBlock = (facts: MovesFacts): Block => {
  const list = (name: string): string => `INDEX(${facts.list(name)},{n})`;
  const made = (name: string): string => `INDEX(${facts.working(name)},{n})`;
  const term = (name: string): string =>
    `INDEX(${facts.working(`channels.${name}`)},{row.channel_no})`;
  const price = `INDEX(${facts.working(acrossChannels(facts, "price"))},{n},${bottleChannel(facts, "{row.channel_no}")})`;
  const left = (cost: string): string =>
    `1-${term("shares")}-(${cost}+${term("fixed")})/{row.price}`;
  const held = (cost: string, margin: string): string =>
    `IF({row.left}<0,"below cost now",SYRUP.PRICE_FOR_MARGIN(${cost},${margin},${term("shares")},${term("fixed")}))`;
  const known = (formula: string): string =>
    `IF(AND(ISNUMBER({row.price}),ISNUMBER({row.cost})),IFERROR(${formula},"none works"),"")`;
  return {
    kind: "table",
    name: "moves",
    title: "Every product: cost and price now and then",
    rows: facts.rows,
    columns: [
      {
        name: "product",
        label: "Product",
        content: { formula: `=${list("list.product")}` },
      },
      column(
        "channel",
        "Channel",
        `IF({row.channel_no}="","",${term("channel")})`,
      ),
      column(
        "price",
        "Price now",
        `IF({row.channel_no}="","",${price})`,
        "#,##0.00",
      ),
      column("left", "Left of it now", known(left("{row.cost}")), "0.0%"),
      column(
        "goal",
        "Goal",
        `IF({row.channel_no}="","",${term("goal")})`,
        "0%",
      ),
      column("cost", "Full cost now", list("list.full"), "#,##0.0000"),
      column(
        "new_cost",
        "Full cost then",
        "IF(ISNUMBER({row.cost}),{row.base}+{row.pounds}*{bulk},{row.cost})",
        "#,##0.0000",
      ),
      column(
        "cents",
        "Moves by, ¢",
        'IF(ISNUMBER({row.cost}),({row.new_cost}-{row.cost})*100,"")',
        '+0.0;-0.0;"–"',
      ),
      column(
        "share",
        "Moves by",
        'IF(ISNUMBER({row.cost}),{row.new_cost}/{row.cost}-1,"")',
        '+0.0%;-0.0%;"–"',
      ),
      column(
        "over",
        "Over the limit",
        'IF(ISNUMBER({row.share}),IF(ABS({row.share})>{over},"yes",""),"")',
      ),
      column(
        "hold_money",
        "Price that holds the money",
        known(held("{row.new_cost}+{row.left}*{row.price}", "0")),
        "#,##0.0000",
      ),
      column(
        "hold_percent",
        "Price that holds the percent",
        known(held("{row.new_cost}", "{row.left}")),
        "#,##0.0000",
      ),
      column(
        "ask_money",
        "Asked to hold the money",
        rounded("hold_money", facts),
        "#,##0.00",
      ),
      column(
        "ask_percent",
        "Asked to hold the percent",
        rounded("hold_percent", facts),
        "#,##0.00",
      ),
      column(
        "new_left",
        "Left of today's price then",
        known(left("{row.new_cost}")),
        "0.0%",
      ),
      column(
        "verdict",
        "At today's price",
        `IF(NOT(ISNUMBER({row.new_left})),"",IF({row.new_left}>={row.goal}-0.00000001,"meets its goal",IF({row.left}<{row.goal}-0.00000001,"under its goal already","falls under its goal"))&IF({row.new_left}<0,", below cost",""))`,
      ),
      ...STEPS.map((step) =>
        column(
          stepName(step),
          stepLabel(step),
          known(left(`({row.base}+{row.pounds}*{steps.${stepName(step)}})`)),
          "0.0%",
        ),
      ),
      column(
        "base",
        "Full cost with wages and glass moved",
        `IF(ISNUMBER({row.cost}),{row.cost}+${made("products.labour")}*{wages}+${made("products.containers")}*{containers},"")`,
        "#,##0.0000",
      ),
      column(
        "pounds",
        "Bulk syrup in a bottle, lb",
        `IF(ISNUMBER({row.cost}),${made("products.need")}/${made("products.bottles")}*${made("products.dearer")},"")`,
        "0.0000",
      ),
      column(
        "channel_no",
        "Channel, row",
        `IF({channel}="",${list("list.worst_no")},IFERROR(MATCH({channel},${facts.working("channels.channel")},0),""))`,
        "0",
      ),
    ],
  };
};

const rounded = (name: string, { list }: MovesFacts): string =>
  `IF(ISNUMBER({row.${name}}),SYRUP.ROUND_PRICE({row.${name}},${list("ending")}),{row.${name}})`;

/** One product over the steps, for the picture. */
export const pictureBlock: Block = {
  kind: "table",
  name: "picture",
  title: "The product in the picture",
  rows: STEPS.length,
  columns: [
    {
      name: "bulk",
      label: "Bulk moves by, per lb",
      format: "+0.00;-0.00;0.00",
      content: {
        formula: `=INDEX({steps.${stepName(-4)}..steps.${stepName(4)}},1,{n})`,
      },
    },
    {
      name: "left",
      label: "Left of the price",
      format: "0.0%",
      content: {
        formula: `=IFERROR(INDEX({moves.${stepName(-4)}:${stepName(4)}},MATCH({drawn},{moves.product},0),{n}),NA())`,
      },
    },
    {
      name: "goal",
      label: "Goal",
      format: "0.0%",
      content: {
        formula:
          "=IFERROR(INDEX({moves.goal},MATCH({drawn},{moves.product},0)),NA())",
      },
    },
  ],
};

const column = (
  name: string,
  label: string,
  formula: string,
  format?: string,
): Column => ({
  name,
  label,
  ...(format === undefined ? {} : { format }),
  content: { formula: `=IF({row.product}="","",${formula})` },
});
