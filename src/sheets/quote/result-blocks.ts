import type { Block, Content, Line } from "../model";
import { ownOverheads } from "../costing/season-before";
import { inTier } from "./tier-blocks";

const channel = (heading: string): string =>
  `INDEX(Channels[${heading}],{channel_row})`;

/** What the customer's channel asks for and takes. */
export const channelBlock: Block = {
  kind: "lines",
  title: "The channel's goal",
  lines: [
    {
      name: "channel_row",
      label: "Row in Channels",
      role: "calculated",
      content: { formula: "=MATCH({channel},Channels[Channel],0)" },
    },
    {
      name: "goal",
      label: "Goal margin (of price)",
      role: "calculated",
      format: "0.0%",
      content: { formula: `=${channel("Goal margin")}` },
    },
    {
      name: "shares",
      label: "Fees, marketing, returns, broker",
      unit: "of price",
      role: "calculated",
      format: "0.0%",
      content: {
        formula: `=N(${channel("Fee share")})+N(${channel("Marketing")})+N(${channel("Promotion and returns")})+N(${channel("Broker")})`,
      },
    },
    {
      name: "fixed",
      label: "Fee per bottle",
      role: "calculated",
      format: "0.0000",
      content: {
        formula: `=N(${channel("Fee per order")})/${channel("Bottles per order")}`,
      },
    },
    {
      name: "valid_until",
      label: "Quote stands until",
      role: "result",
      format: "yyyy-mm-dd",
      content: { formula: "={as_of}+{valid_days}" },
    },
  ],
};

interface Row {
  readonly name: string;
  readonly label: string;
  readonly role?: "result";
  readonly format?: string;
  /** The formula for one quantity, with `own` naming a cell of its costing and `row` one of these rows. */
  readonly formula: (
    own: (name: string) => string,
    row: (name: string) => string,
  ) => string;
}

const priceFor = (cost: string): string =>
  `ROUND(SYRUP.PRICE_FOR_MARGIN(${cost},{goal},{shares},{fixed}),2)`;

/** A year's costs take their share of every bottle sold at the forecast's pace. */
const EARNED_EACH = (contribution: string): string =>
  `(${contribution}-IF(ISNUMBER({forecast}),N({per_year})/{forecast},IF(N({per_year})>0,NA(),0)))`;

const rows: readonly Row[] = [
  {
    name: "bottles",
    label: "Bottles",
    format: "#,##0",
    formula: (own) => own("bottles"),
  },
  {
    name: "price",
    label: "Price to quote, a bottle",
    role: "result",
    format: "#,##0.00",
    formula: (_, row) =>
      `IF({goal_on}="direct",${row("on_direct")},${row("on_full")})`,
  },
  {
    name: "on_full",
    label: "For the goal on full cost",
    format: "#,##0.00",
    formula: (_, row) => priceFor(row("full")),
  },
  {
    name: "on_direct",
    label: "For the goal on direct cost",
    format: "#,##0.00",
    formula: (_, row) => priceFor(row("direct")),
  },
  {
    name: "full",
    label: "Full cost of a bottle",
    format: "#,##0.0000",
    formula: (own) => own("cost.full.replacement"),
  },
  {
    name: "direct",
    label: "Direct cost of a bottle",
    format: "#,##0.0000",
    formula: (own) => own("cost.direct.replacement"),
  },
  { name: "line", label: "Line", formula: (own) => own("chosen_line") },
  {
    name: "contribution",
    label: "Earned over direct cost, a bottle",
    format: "#,##0.0000",
    formula: (_, row) =>
      `${row("price")}*(1-{shares})-{fixed}-${row("direct")}`,
  },
  {
    name: "earned",
    label: "Earned over direct cost, in all",
    format: "#,##0.00",
    formula: (_, row) => `${row("contribution")}*${row("bottles")}`,
  },
  {
    name: "left_value",
    label: "Left over, worth",
    format: "#,##0.00",
    formula: (own) => own("materials.left_value.total"),
  },
  {
    name: "artwork_each",
    label: "Artwork and plates, if spread over bottles",
    format: "0.0000",
    formula: (_, row) =>
      `IF(ISNUMBER({artwork}),{artwork}/IF(ISNUMBER({artwork_life}),{artwork_life},${row("bottles")}),"")`,
  },
  {
    name: "back_at",
    label: "Our one-time money back at, bottles",
    format: "#,##0",
    formula: (_, row) =>
      `IF(NOT(ISNUMBER({one_time})),"",IF(NOT(ISNUMBER(${row("contribution")})),"withheld",IF(NOT(ISNUMBER(${EARNED_EACH(row("contribution"))})),"needs the bottles a year",IF(${EARNED_EACH(row("contribution"))}<=0,"never",ROUNDUP(ROUND({one_time}/${EARNED_EACH(row("contribution"))},6),0)))))`,
  },
  {
    name: "months",
    label: "in months at what is expected",
    format: "0.0",
    formula: (_, row) =>
      `IF(OR(NOT(ISNUMBER({forecast})),NOT(ISNUMBER(${row("back_at")}))),"",{one_time}/${EARNED_EACH(row("contribution"))}/{forecast}*12)`,
  },
  {
    name: "below",
    label: "Below a least order",
    formula: (own) => own("materials.below&"),
  },
];

/** The words before a row of the answer, by which it is found wherever rows are put in. */
export const tierLabel = (name: string): string => {
  const row = rows.find((one) => one.name === name);
  if (!row) throw new Error(`A quote has no row "${name}"`);
  return row.label;
};

/** The answer for us, a column a quantity. */
export const tiersBlock = (count: number): Block => ({
  kind: "matrix",
  name: "tiers",
  title: "For us: never print this sheet for a customer",
  columns: Array.from({ length: count }, (_, i) => ({
    name: `t${i + 1}`,
    label: `Quantity ${i + 1}`,
  })),
  rows: rows.map(({ formula, ...row }) => ({
    ...row,
    contents: Array.from({ length: count }, (_, i): Content => ({
      formula: `=${formula(
        (name) => `{${inTier(i + 1, name)}}`,
        (name) => `{tiers.${name}.t${i + 1}}`,
      )}`,
    })),
  })),
});

const says = (name: string, label: string, formula: string): Line => ({
  name,
  label,
  role: "check",
  content: { formula: `=${formula}` },
});

/** What must hold before the page goes out; each says "ok" or what to do. */
export function quoteChecksBlock(
  count: number,
  {
    lotsColumn: lots,
    rolled,
  }: { readonly lotsColumn: string; readonly rolled: boolean },
): Block {
  const all = (text: (own: (name: string) => string) => string) =>
    Array.from({ length: count }, (_, i) =>
      text((name) => `{${inTier(i + 1, name)}}`),
    );
  return {
    kind: "lines",
    title: "Checks",
    lines: [
      // What is missing is missing for every quantity.
      says(
        "missing",
        "Nothing is missing",
        `IF({${inTier(1, "missing")}}="","ok","withheld: needs "&{${inTier(1, "missing")}})`,
      ),
      says(
        "least_orders",
        "No part is below its least order",
        `IF(${all((own) => own("materials.below&")).join("&")}="","ok","see Below a least order")`,
      ),
      says(
        "stock_covers",
        "Lots in stock cover the largest quantity",
        `IF(ISNUMBER({${inTier(1, "need")}}),IF(MAX(${all((own) => own("need")).join(",")})<=SUM({${inTier(1, "lots.left")}}),"ok","short by "&TEXT(MAX(${all((own) => own("need")).join(",")})-SUM({${inTier(1, "lots.left")}}),"#,##0")&" lb of "&{kind}),"withheld")`,
      ),
      says(
        "goal_works",
        "The channel leaves a price",
        'IF(ISNUMBER({goal}),IF(ROUND({goal}+{shares},12)<1,"ok","goal and shares take the whole price"),"no such channel")',
      ),
      ...(rolled
        ? [ownOverheads(`{${inTier(1, "overheads.estimated")}}`)]
        : []),
      says(
        "long_enough",
        "This sheet looks at every row",
        `IF(AND(ROWS(${lots})<=ROWS({${inTier(1, "lots.lot")}}),COUNTIF(ProductMaterials[Product],{product})<=ROWS({${inTier(1, "materials.part")}}),COUNTIF(Overheads[Season],{season})<=ROWS({${inTier(1, "overheads.item")}}),ROWS(Lines[Line])=COLUMNS({${inTier(1, "lines.name")}})),"ok","the book has grown: build this quote anew")`,
      ),
    ],
  };
}
