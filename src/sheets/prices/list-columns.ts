import { channelsBlock } from "../costing/result-blocks";
import type { Block, Column } from "../model";
import type { PriceListFacts } from "./facts";
import type { Working } from "./list-blocks";
import { formulaOf } from "./rebind";
import { usualRunFormula } from "./usual-run";

/** Columns of the list before those of the channels, in their order: the pane reads by it. */
export const listColumns = [
  "product",
  "description",
  "declared",
  "bottles",
  "line",
  "full",
  "average",
  "average_gap",
  "oldest",
  "oldest_gap",
  "direct",
  "direct_average",
  "direct_oldest",
  "unit_price",
  "per_oz",
  "per_ml",
  "worst",
  "left",
  "goal",
  "short",
  "also",
  "losing",
  "flags",
  "worst_no",
] as const;

/** What stands for each channel, in its order. */
export const channelColumns = ["price", "margin", "markup", "kept"] as const;

/** Every product in the order of Products: cost three ways, unit price, every channel against its goal, and flags. */
export const listBlock = (facts: PriceListFacts, w: Working): Block => {
  const at = (name: string): string => `INDEX(${w(name)},{n})`;
  const figure = (name: string): string =>
    `IF(ISNUMBER(${at(name)}),${at(name)},"withheld")`;
  const gap = (name: string): string =>
    `IF(AND(ISNUMBER({row.${name}}),ISNUMBER({row.full})),({row.${name}}-{row.full})*100,"")`;
  const numbers = facts.channels.map(({ no }) => no);
  const gaps = `{row.gap_${numbers[0]}}:{row.gap_${numbers.at(-1)}}`;
  const joined = (text: (no: number) => string): string =>
    numbers.map(text).join("&");
  const channelName = (no: number): string =>
    `INDEX(${w("channels.channel")},${no})`;
  const worst = `INDEX(${w("channels.channel")},{row.worst_no})`;
  return {
    kind: "table",
    name: "list",
    title: "Every product",
    rows: facts.rows,
    columns: [
      {
        name: "product",
        label: "Product",
        content: { formula: `=${at("products.product")}` },
      },
      text("description", "Description", 'INDEX(Products[Description],{n})&""'),
      text("declared", "Declared", 'INDEX(Products[Declared text],{n})&""'),
      {
        name: "bottles",
        label: "Usual run, bottles",
        role: "input",
        format: "#,##0",
        content: { formula: `=${usualRunFormula(facts.rolled)}` },
      },
      text("line", "Line", at("products.line")),
      money(
        "full",
        "Full cost, today's bulk price",
        figure("products.full_replacement"),
      ),
      money(
        "average",
        "Full cost, average of the stock",
        figure("products.full_average"),
      ),
      cents("average_gap", "Gap to today, ¢", gap("average")),
      money(
        "oldest",
        "Full cost, oldest lots first",
        figure("products.full_oldest"),
      ),
      cents("oldest_gap", "Gap to today, ¢", gap("oldest")),
      money(
        "direct",
        "Direct cost, today's bulk price",
        figure("products.direct_replacement"),
      ),
      money(
        "direct_average",
        "Direct cost, average",
        figure("products.direct_average"),
      ),
      money(
        "direct_oldest",
        "Direct cost, oldest first",
        figure("products.direct_oldest"),
      ),
      text(
        "unit_price",
        "Price in the unit channel",
        unit(facts, "price", w),
        "#,##0.00",
      ),
      text("per_oz", "A fl oz", unit(facts, "oz", w), "0.0000"),
      text(
        "per_ml",
        "A mL",
        'IF(ISNUMBER({row.per_oz}),{row.per_oz}/29.5735295625,"")',
        "0.00000",
      ),
      text("worst", "Stands worst in", `IF({row.worst_no}="","",${worst})`),
      text(
        "left",
        "Left there after its own costs",
        `IF({row.worst_no}="","",MIN(${gaps})+{row.goal})`,
        "0.0%",
      ),
      text(
        "goal",
        "Goal there",
        `IF({row.worst_no}="","",INDEX(${w("channels.goal")},{row.worst_no}))`,
        "0%",
      ),
      text(
        "short",
        "Short of it by",
        // The row's number keeps two that are short by the same apart.
        `IF(COUNT(${gaps})=0,"",IF(MIN(${gaps})+0.00000001<0,MIN(${gaps})+{n}*0.00000000001,""))`,
        "0.0%",
      ),
      text(
        "also",
        "Under in all of",
        joined(
          (no) =>
            `IF(ISNUMBER({row.gap_${no}}),IF({row.gap_${no}}+0.00000001<0,${channelName(no)}&"; ",""),"")`,
        ),
      ),
      text(
        "losing",
        "Below cost in",
        joined(
          (no) =>
            `IF(ISNUMBER({row.kept_${no}}),IF({row.kept_${no}}<0,${channelName(no)}&"; ",""),"")`,
        ),
      ),
      {
        ...text(
          "flags",
          "Flags",
          `IF(${at("products.needs")}="","","withheld, needs "&${at("products.needs")})&IF({row.also}="","","under goal: "&{row.also})&IF({row.losing}="","","below cost: "&{row.losing})&IF(${at("ladder.kinks")}="","","dearer an ounce than a smaller size: "&${at("ladder.kinks")})`,
        ),
        role: "check",
      },
      text(
        "worst_no",
        "Channel, row",
        `IF(COUNT(${gaps})=0,"",CHOOSE(MATCH(MIN(${gaps}),${gaps},0),${numbers.join(",")}))`,
        "0",
      ),
      ...facts.channels.flatMap(({ no, name }) => ofChannel(no, name, w, at)),
      ...facts.channels.map(({ no, name }) =>
        text(
          `gap_${no}`,
          `${name}: over its goal`,
          `IF(ISNUMBER({row.kept_${no}}),{row.kept_${no}}-INDEX(${w("channels.goal")},${no}),"")`,
          "+0.0%;-0.0%",
        ),
      ),
    ],
  };
};

/** Which of the channels that sell by the bottle a row of Channels is, as formula text. */
export const bottleChannel = (
  facts: Pick<PriceListFacts, "channels" | "channelRows">,
  row: string,
): string =>
  `CHOOSE(${row},${Array.from(
    { length: facts.channelRows },
    (_, i) => facts.channels.findIndex(({ no }) => no === i + 1) + 1,
  ).join(",")})`;

/** A figure of every channel, side by side in the working sheet. */
export const acrossChannels = (
  { channels }: Pick<PriceListFacts, "channels">,
  name: "price" | "oz",
): string =>
  `ladder.${name}_${channels[0]?.no ?? 1}..ladder.${name}_${channels.at(-1)?.no ?? 1}`;

const unit = (
  facts: PriceListFacts,
  name: "price" | "oz",
  w: Working,
): string =>
  `IFERROR(INDEX(${w(acrossChannels(facts, name))},{n},${bottleChannel(facts, `MATCH({unit_channel},${w("channels.channel")},0)`)}),"")`;

function ofChannel(
  no: number,
  name: string,
  w: Working,
  at: (name: string) => string,
): readonly Column[] {
  const block = channelsBlock(1);
  const from = (column: string): string =>
    formulaOf(block, column, {
      "row.price": `{row.price_${no}}`,
      "cost.full.replacement": at("products.full_replacement"),
      "row.shares": `INDEX(${w("channels.shares")},${no})`,
      "row.fixed": `INDEX(${w("channels.fixed")},${no})`,
    });
  return [
    text(`price_${no}`, `${name}: price`, at(`ladder.price_${no}`), "#,##0.00"),
    known(`margin_${no}`, `${name}: margin (of price)`, from("margin")),
    known(`markup_${no}`, `${name}: markup (on cost)`, from("markup")),
    known(`kept_${no}`, `${name}: left after its own costs`, from("kept")),
  ];
}

const text = (
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
const money = (name: string, label: string, formula: string): Column =>
  text(name, label, formula, "#,##0.0000");
const cents = (name: string, label: string, formula: string): Column =>
  text(name, label, formula, '+0.0;-0.0;"–"');
/** A share that a withheld cost withholds. */
const known = (name: string, label: string, formula: string): Column =>
  text(name, label, `IFERROR(${formula},"withheld")`, "0.0%");
