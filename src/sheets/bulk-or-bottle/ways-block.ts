import { channelsBlock } from "../costing/result-blocks";
import type { Block, Column } from "../model";
import { columnOf } from "../prices/rebind";
import { inTier } from "../quote/tier-blocks";

const own = (name: string): string => `{${inTier(1, name)}}`;

const column = (
  name: string,
  label: string,
  formula: string,
  format?: string,
): Column => ({
  name,
  label,
  ...(format === undefined ? {} : { format }),
  content: {
    formula: `=IF(NOT(ISNUMBER({row.each})),"",${formula})`,
  },
});

/** The columns a manager reads, then the working. */
export function waysBlock(rows: number): Block {
  const channels = channelsBlock(rows);
  return {
    kind: "table",
    name: "ways",
    title: "Bottled and sold through each channel, the rest in bulk",
    rows,
    columns: [
      columnOf(channels, "channel"),
      column(
        "per_lb",
        "Earned a lb in bottles",
        "{row.each}/{lb_each}",
        "0.0000",
      ),
      column(
        "bottles",
        "Bottles",
        "IF({row.per_lb}>{bulk_per_lb},MIN(INT({pounds}/{lb_each}+0.000000001),IF(ISNUMBER({labour}),INT({labour}/{hours_each}+0.000000001),10^12)),0)",
        "#,##0",
      ),
      column("bottled", "Bottled, lb", "{row.bottles}*{lb_each}", "#,##0.0"),
      column(
        "in_bulk",
        "In bulk, lb",
        "MAX(0,{pounds}-{row.bottled})",
        "#,##0.0",
      ),
      column("hours", "Labour, h", "{row.bottles}*{hours_each}", "#,##0.0"),
      column(
        "earns",
        "Earned in all",
        "{row.bottles}*{row.each}+{row.in_bulk}*{bulk_per_lb}",
        "#,##0.00",
      ),
      column(
        "more",
        "More than all in bulk",
        "{row.earns}-{pounds}*{bulk_per_lb}",
        "#,##0.00;-#,##0.00;–",
      ),
      {
        ...column(
          "limit",
          "Limited by",
          'IF({row.per_lb}<={bulk_per_lb},"nothing: bulk earns more",IF(ISNUMBER({labour}),IF(INT({labour}/{hours_each}+0.000000001)<INT({pounds}/{lb_each}+0.000000001),"the labour","the syrup"),"the syrup"))',
        ),
        role: "check",
      },
      columnOf(channels, "price"),
      {
        name: "each",
        label: "Earned a bottle",
        format: "0.0000",
        content: {
          formula: `=IF(AND(ISNUMBER({row.price}),ISNUMBER({bulk_per_lb}),ISNUMBER(${own("cost.direct.replacement")})),{row.price}*(1-{row.shares})-{row.fixed}-${own("cost.direct.replacement")},"")`,
        },
      },
      columnOf(channels, "shares"),
      columnOf(channels, "fixed"),
      columnOf(channels, "by_bottle"),
    ],
  };
}

/** What the ways are held against, and the best of them. */
export const againstBlock: Block = {
  kind: "lines",
  title: "At a glance",
  lines: [
    {
      name: "best",
      label: "Earns most",
      role: "result",
      content: {
        formula:
          '=IF({missing}<>"","withheld: needs "&{missing},IF(COUNT({ways.earns})=0,"no price in any channel",IF(MAX({ways.more})<=0,"all of it in bulk",INDEX({ways.channel},MATCH(MAX({ways.earns}),{ways.earns},0))&", "&TEXT(INDEX({ways.bottles},MATCH(MAX({ways.earns}),{ways.earns},0)),"#,##0")&" bottles")))',
      },
    },
    {
      name: "best_more",
      label: "More than all of it in bulk",
      role: "result",
      format: "#,##0.00",
      content: {
        formula: '=IF(COUNT({ways.more})=0,"",MAX(0,MAX({ways.more})))',
      },
    },
    {
      name: "bulk_per_lb",
      label: "Earned a lb in bulk",
      role: "calculated",
      format: "0.0000",
      content: {
        formula: `=IF(AND(ISNUMBER({tote_price}),ISNUMBER(${own("bulk_price")})),{tote_price}*(1-{bulk_shares})-${own("bulk_price")},"")`,
      },
      hint: "over the syrup at today's price",
    },
    {
      name: "lb_each",
      label: "Syrup of a bottle with its share of the purge",
      unit: "lb",
      role: "calculated",
      format: "0.0000",
      content: { formula: `=${own("need")}/${own("bottles")}` },
    },
    {
      name: "hours_each",
      label: "Labour of a bottle with its share of set-up",
      unit: "h of one person",
      role: "calculated",
      format: "0.00000",
      content: {
        formula: `=SUMIFS(Crew[People],Crew[Line],${own("chosen_line")})*${own("hours")}/${own("bottles")}`,
      },
    },
    {
      name: "bulk_shares",
      label: "Taken from the price of bulk",
      unit: "of price",
      role: "calculated",
      format: "0.0%",
      content: {
        formula: `=IFERROR(${["Fee share", "Marketing", "Promotion and returns", "Broker"].map((heading) => `N(INDEX(Channels[${heading}],MATCH(0,Channels[Bottles per order],0)))`).join("+")},0)`,
      },
      hint: "of the channel that does not sell by the bottle",
    },
    {
      name: "missing",
      label: "Missing",
      role: "check",
      content: {
        formula: `=IF(ISNUMBER({tote_price}),"","what a pound of "&{kind}&" brings in bulk; ")&IF(ISNUMBER({pounds}),"","the pounds that are free; ")&${own("missing")}`,
      },
    },
  ],
};
