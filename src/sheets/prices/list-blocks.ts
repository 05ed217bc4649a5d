import { namedShare } from "../costing/book-references";
import { channelsBlock } from "../costing/result-blocks";
import { ownOverheads } from "../costing/season-before";
import { newestBulkPrice } from "../costing/syrup-blocks";
import type { Block, Column, Line } from "../model";
import type { PriceListFacts } from "./facts";
import { formulaOf } from "./rebind";

/** A figure of the working sheet: a cell of its own, or a column of one of its tables. */
export type Working = (name: string) => string;

const says = (name: string, label: string, formula: string): Line => ({
  name,
  label,
  role: "check",
  content: { formula: `=${formula}` },
});

/** What a person types in. */
export const inputsBlock = (facts: PriceListFacts): Block => ({
  kind: "lines",
  title: "What you can change",
  lines: [
    {
      name: "as_of",
      label: "Prices as of",
      role: "input",
      format: "yyyy-mm-dd",
      content:
        typeof facts.day === "number"
          ? facts.day
          : { formula: `=${facts.day}` },
      hint: "the newest date in the book, unless you type another",
      rule: { kind: "date", min: 36526, max: 73050 },
    },
    {
      name: "loss",
      label: "Syrup lost between drum and bottle",
      role: "input",
      format: "0.0%",
      content: facts.lossIsSet
        ? { formula: `=${namedShare("Settings", "Setting", "Syrup loss")}` }
        : 0,
      hint: facts.lossIsSet
        ? "from Settings"
        : "none entered; 1 to 2 % is common practice",
      rule: { kind: "number", min: 0, max: 0.5 },
      ruleSays: "A share from 0 % to 50 %.",
    },
    {
      name: "ending",
      label: "Prices end in",
      role: "input",
      format: "0.00",
      content: 0.99,
      rule: { kind: "number", min: 0, max: 0.99 },
      ruleSays: "The cents a price ends in, from 0.00 to 0.99.",
    },
    {
      name: "unit_channel",
      label: "Unit prices of",
      role: "input",
      content: facts.channels[0]?.name,
      hint: "the channel whose price an ounce and a mL are shown",
      rule: {
        kind: "list",
        choices: facts.channels.map(({ name }) => name),
      },
      ruleSays: "A channel that sells by the bottle.",
    },
  ],
});

/** Today's bulk prices, to read; they are changed in their table. */
export const bulkBlock = ({ kinds }: PriceListFacts): Block => ({
  kind: "lines",
  title: "Bulk prices on that day",
  lines: kinds.map((kind, i) => ({
    name: `bulk_${i + 1}`,
    label: kind,
    unit: "per lb",
    role: "calculated",
    format: "0.0000",
    content: {
      formula: `=IFERROR(${newestBulkPrice(`"${kind.replace(/"/g, '""')}"`)},"none yet")`,
    },
    ...(i === 0
      ? { hint: "change it in the sheet Bulk prices; every product moves" }
      : {}),
  })),
});

export const glanceBlock = (facts: PriceListFacts, w: Working): Block => ({
  kind: "lines",
  title: "At a glance",
  lines: [
    says(
      "under_count",
      "Under their goal",
      'COUNT({list.short})&" of "&ROWS(Products[Product])&" products in some channel"',
    ),
    says(
      "losing_count",
      "Below cost",
      'IF(COUNTIF({list.losing},"?*")=0,"none",COUNTIF({list.losing},"?*")&" of "&ROWS(Products[Product])&" products in some channel")',
    ),
    says(
      "withheld_count",
      "Withheld",
      `IF(COUNTIF(${w("products.needs")},"?*")=0,"none",COUNTIF(${w("products.needs")},"?*")&" of "&ROWS(Products[Product])&" products: see Flags for what is missing")`,
    ),
    says(
      "kink_count",
      "Kinks in a size ladder",
      `IF(COUNTIF(${w("ladder.kinks")},"?*")=0,"none",COUNTIF(${w("ladder.kinks")},"?*")&" sizes dearer an ounce than a smaller one")`,
    ),
    says(
      "long_enough",
      "These sheets look at every row",
      `IF(AND(ROWS(Products[Product])<=ROWS({list.product}),ROWS(ProductMaterials[Product])<=ROWS(${w("materials.part")}),ROWS(Lots[Lot])<=ROWS(${w("lots.lot")}),${facts.barrels > 0 ? `ROWS(OakBarrels[Barrel])<=ROWS(${w("barrels.lot")}),` : ""}ROWS(Lines[Line])=ROWS(${w("lines.name")}),COUNTIFS(Overheads[Season],${w("season")})<=ROWS(${w("overheads.item")})),"ok","the book has grown: build the price list anew")`,
    ),
    ...(facts.rolled
      ? [ownOverheads(w("overheads.estimated"), w("season_before"))]
      : []),
    says(
      "channels_stand",
      "Channels stand as they did",
      `IF(AND(ROWS(Channels[Channel])=ROWS(${w("channels.channel")}),${facts.channels.map(({ no, name }) => `INDEX(${w("channels.channel")},${no})="${name.replace(/"/g, '""')}"`).join(",")}),"ok","the channels have changed: build the price list anew")`,
    ),
  ],
});

/** The products under their goal now, the furthest first. */
export const underBlock = (rows: number, w: Working): Block => {
  const channels = channelsBlock(1);
  const at = (column: string): string =>
    `IF({row.at}="","",INDEX({list.${column}},{row.at}))`;
  const term = (name: string): string =>
    `INDEX(${w(`channels.${name}`)},{row.channel_no})`;
  const column = (
    name: string,
    label: string,
    formula: string,
    format?: string,
  ): Column => ({
    name,
    label,
    ...(format === undefined ? {} : { format }),
    content: { formula: `=${formula}` },
  });
  return {
    kind: "table",
    name: "under",
    title: "Under their goal now, the furthest first",
    rows,
    columns: [
      column("product", "Product", at("product")),
      column("description", "Description", at("description")),
      column("channel", "In channel", at("worst")),
      column(
        "price",
        "Price now",
        `IF({row.at}="","",{row.cost}/(1-${term("shares")}-{row.left})+${term("fixed")}/(1-${term("shares")}-{row.left}))`,
        "#,##0.00",
      ),
      column("left", "Left of the price", at("left"), "0.0%"),
      column("goal", "Goal", at("goal"), "0%"),
      column(
        "goal_price",
        "Price for the goal",
        `IF({row.at}="","",IFERROR(${formulaOf(channels, "goal_price", {
          "row.by_bottle": '"yes"',
          "cost.full.replacement": "{row.cost}",
          "row.goal": "{row.goal}",
          "row.shares": term("shares"),
          "row.fixed": term("fixed"),
          ending: "{ending}",
        })},"none works"))`,
        "#,##0.00",
      ),
      column("cost", "Full cost", at("full"), "#,##0.0000"),
      column("also", "Also under in", at("also")),
      column("channel_no", "Channel, row", at("worst_no")),
      column(
        "at",
        "Row",
        'IF({n}>COUNT({list.short}),"",MATCH(SMALL({list.short},{n}),{list.short},0))',
      ),
    ],
  };
};
