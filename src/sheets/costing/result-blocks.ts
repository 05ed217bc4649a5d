import type { Block, Content } from "../model";
import { basisFormula } from "./season-before";

const methods = ["replacement", "average", "oldest"] as const;
const prices = {
  replacement: "bulk_price",
  average: "average_price",
  oldest: "oldest_price",
} as const;

const each = (
  formula: (method: (typeof methods)[number]) => string,
): readonly Content[] =>
  methods.map((method) => ({ formula: formula(method) }));

/** The answer: what a bottle costs, three ways side by side, direct and full cost apart. */
export const costBlock: Extract<Block, { readonly kind: "matrix" }> = {
  kind: "matrix",
  name: "cost",
  title: "What the bottle costs",
  columns: [
    { name: "replacement", label: "At today's bulk price" },
    { name: "average", label: "At the average of the stock" },
    { name: "oldest", label: "Oldest lots first" },
  ],
  rows: [
    {
      name: "price",
      label: "Syrup, per lb",
      format: "0.0000",
      contents: each((m) => `={${prices[m]}}`),
    },
    {
      name: "syrup",
      label: "Syrup in the bottle",
      format: "0.0000",
      contents: each(
        (m) => `=SYRUP.SYRUP_COST({fill},{brix},{cost.price.${m}},{loss})`,
      ),
    },
    {
      name: "purge",
      label: "Start and purge syrup",
      format: "0.0000",
      contents: each((m) => `={purge}*{cost.price.${m}}/{bottles}`),
    },
    {
      name: "materials",
      label: "Materials",
      format: "0.0000",
      contents: each(
        () =>
          "=SYRUP.COST_TOTAL({materials.title},{materials.order_cost})/{bottles}",
      ),
    },
    {
      name: "freight",
      label: "Freight in",
      format: "0.0000",
      contents: each(
        () =>
          "=SYRUP.COST_TOTAL({materials.title},{materials.freight})/{bottles}",
      ),
    },
    {
      name: "labour",
      label: "Crew",
      format: "0.0000",
      contents: each(() => "={labour}"),
    },
    {
      name: "heat",
      label: "Heat and power",
      format: "0.0000",
      contents: each(() => "={heat}"),
    },
    {
      name: "overhead",
      label: "Overheads",
      format: "0.0000",
      contents: each(
        () => "=SYRUP.COST_TOTAL({overheads.item},{overheads.per_bottle})",
      ),
    },
    {
      name: "direct",
      label: "Direct cost of a bottle",
      role: "result",
      format: "#,##0.0000",
      contents: each(
        (m) =>
          `=SYRUP.COST_TOTAL({cost.syrup.label..cost.heat.label},{cost.syrup.${m}..cost.heat.${m}})`,
      ),
    },
    {
      name: "full",
      label: "Full cost of a bottle",
      role: "result",
      format: "#,##0.0000",
      contents: each((m) => `={cost.direct.${m}}+{cost.overhead.${m}}`),
    },
    {
      name: "case",
      label: "Full cost of a case",
      role: "result",
      format: "#,##0.00",
      contents: each((m) => `={cost.full.${m}}*{per_case}`),
    },
    {
      name: "gap",
      label: "Against today's price, ¢ a bottle",
      format: '+0.0;-0.0;"–"',
      contents: each((m) => `=({cost.full.${m}}-{cost.full.replacement})*100`),
    },
  ],
};

/** The same in a rolled book, whose full cost says which season its overheads are shared over. */
export const rolledCostBlock: typeof costBlock = {
  ...costBlock,
  rows: costBlock.rows.flatMap((row) =>
    row.name === "full"
      ? [
          row,
          {
            name: "basis",
            label: "Overheads in the full cost",
            role: "check" as const,
            contents: [{ formula: `=${basisFormula()}` }],
          },
        ]
      : [row],
  ),
};

const latest =
  "SUMPRODUCT(MAX((Prices[Product]={product})*(Prices[Channel]={row.channel})*(Prices[Valid from]<={as_of})*Prices[Valid from]))";
const channel = (heading: string): string => `INDEX(Channels[${heading}],{n})`;

/** Price, margin and markup in each channel against its goal. Margin is on price, markup is on cost; both on the full cost at today's bulk price. */
export const channelsBlock = (rows: number): Block => ({
  kind: "table",
  name: "channels",
  title: "Prices by channel, on the full cost at today's bulk price",
  rows,
  columns: [
    {
      name: "channel",
      label: "Channel",
      content: {
        formula:
          '=IF({n}>ROWS(Channels[Channel]),"",INDEX(Channels[Channel],{n}))',
      },
    },
    {
      name: "price",
      label: "Price now",
      format: "#,##0.00",
      content: {
        formula: `=IF({row.channel}="","",IF(${latest}=0,"",AVERAGEIFS(Prices[Price],Prices[Product],{product},Prices[Channel],{row.channel},Prices[Valid from],${latest})))`,
      },
    },
    {
      name: "margin",
      label: "Margin (of price)",
      format: "0.0%",
      content: {
        formula:
          '=IF(NOT(ISNUMBER({row.price})),"",SYRUP.MARGIN({row.price},{cost.full.replacement}))',
      },
    },
    {
      name: "goal",
      label: "Goal",
      format: "0%",
      content: {
        formula: `=IF({row.channel}="","",${channel("Goal margin")})`,
      },
    },
    {
      name: "markup",
      label: "Markup (on cost)",
      format: "0.0%",
      content: {
        formula:
          '=IF(NOT(ISNUMBER({row.price})),"",SYRUP.MARKUP({row.price},{cost.full.replacement}))',
      },
    },
    {
      name: "goal_price",
      label: "Price for the goal",
      format: "#,##0.00",
      content: {
        formula:
          '=IF({row.by_bottle}<>"yes","",SYRUP.ROUND_PRICE(SYRUP.PRICE_FOR_MARGIN({cost.full.replacement},{row.goal},{row.shares},{row.fixed}),{ending}))',
      },
    },
    {
      name: "verdict",
      label: "Verdict",
      role: "check",
      content: {
        formula:
          '=IF({row.channel}="","",IF({row.by_bottle}<>"yes","sold by the pound",IF(NOT(ISNUMBER({row.price})),"no price yet",IF(ISNUMBER({row.kept}),IF({row.kept}<{row.goal}-0.00000001,IF({row.kept}<0,"loses money","under its goal"),"meets its goal"),"cost withheld"))))',
      },
    },
    {
      name: "kept",
      label: "Margin after the channel's own costs",
      format: "0.0%",
      content: {
        formula:
          '=IF(NOT(ISNUMBER({row.price})),"",1-{row.shares}-({cost.full.replacement}+{row.fixed})/{row.price})',
      },
    },
    {
      name: "direct_margin",
      label: "Margin on direct cost",
      format: "0.0%",
      content: {
        formula:
          '=IF(NOT(ISNUMBER({row.price})),"",SYRUP.MARGIN({row.price},{cost.direct.replacement}))',
      },
    },
    {
      name: "shares",
      label: "Fees, marketing, returns, broker",
      format: "0.0%",
      content: {
        formula: `=IF({row.channel}="","",N(${channel("Fee share")})+N(${channel("Marketing")})+N(${channel("Promotion and returns")})+N(${channel("Broker")}))`,
      },
    },
    {
      name: "fixed",
      label: "Fee per bottle",
      format: "0.0000",
      content: {
        formula: `=IF({row.by_bottle}<>"yes","",N(${channel("Fee per order")})/${channel("Bottles per order")})`,
      },
    },
    {
      name: "by_bottle",
      label: "By the bottle",
      content: {
        formula: `=IF({row.channel}="","",IF(N(${channel("Bottles per order")})>0,"yes","no"))`,
      },
    },
  ],
});
