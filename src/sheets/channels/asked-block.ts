import { ownOverheadsAs } from "../costing/season-before";
import type { Block, Content, Line } from "../model";

export interface ChannelsAsked {
  readonly product: string;
  readonly full: string;
  readonly direct: string;
  readonly missing: string;
  /** Where a rolled book's costing sheet says what its overheads are shared over. */
  readonly basis: string | undefined;
  readonly shelf: number | undefined;
  readonly further: number | undefined;
  readonly mailer: number | undefined;
  readonly tax: number | undefined;
  readonly drawn: string;
  /** Where the channels stand, to choose from. */
  readonly channels: string;
}

/** What the orders follow from beside the book: yours to change. */
export const askedBlock = (asked: ChannelsAsked): Block => ({
  kind: "lines",
  title: "What you can change",
  lines: [
    input(
      "shelf",
      "What a shop asks for it",
      asked.shelf ?? {
        formula: '=IF(COUNT({orders.price})=0,"",MAX({orders.price}))',
      },
      "#,##0.00",
      "the highest price we ask, unless you type another",
    ),
    input(
      "further",
      "Sending, each bottle after the first",
      asked.further ?? 0,
      "#,##0.00",
      "added to Outbound freight of the table Channels",
    ),
    input(
      "mailer",
      "Mailer and filling, a parcel",
      asked.mailer,
      "#,##0.00",
      "blank = not entered, and said so below",
    ),
    {
      ...input(
        "tax",
        "Sales tax collected on the goods",
        asked.tax,
        "0.0%",
        "only the fee on it costs us; blank = not entered",
      ),
      rule: { kind: "number", min: 0, max: 0.5 },
      ruleSays: "A share from 0 % to 50 %.",
    },
    {
      name: "drawn",
      label: "Channel in the picture",
      role: "input",
      content: asked.drawn,
      rule: { kind: "list from", source: asked.channels },
      ruleSays: "A channel of the table Channels.",
    },
    figure("full", "Full cost of a bottle", asked.full),
    figure("direct", "Direct cost of a bottle", asked.direct),
  ],
});

const input = (
  name: string,
  label: string,
  content: Content | undefined,
  format: string,
  hint: string,
): Line => ({
  name,
  label,
  role: "input",
  format,
  content,
  hint,
  rule: { kind: "number", min: 0 },
  ruleSays: "A number, 0 or more.",
});

const figure = (name: string, label: string, reference: string): Line => ({
  name,
  label,
  role: "calculated",
  format: "#,##0.0000",
  content: { formula: `=${reference}` },
  hint: "from its costing sheet, at today's bulk price",
});

const says = (name: string, label: string, formula: string): Line => ({
  name,
  label,
  role: "check",
  content: { formula: `=${formula}` },
});

/** What must be known for the orders to be believed. */
export const checksBlock = ({ missing, basis }: ChannelsAsked): Block => ({
  kind: "lines",
  title: "Checks",
  lines: [
    says(
      "cost_known",
      "The cost is known",
      `IF(ISNUMBER({full}),"ok","withheld: needs "&${missing})`,
    ),
    ...(basis === undefined ? [] : [ownOverheadsAs(basis)]),
    says(
      "singles",
      "Single bottles",
      'IF({orders.losing&}="","pay in every channel","lose money in "&LEFT({orders.losing&},LEN({orders.losing&})-2))',
    ),
    says(
      "shipping_known",
      "What buyers pay for shipping",
      'IF({orders.open&}="","ok","not entered, taken as free to the buyer: "&LEFT({orders.open&},LEN({orders.open&})-2))',
    ),
    says(
      "mailer_known",
      "Mailer",
      'IF(ISNUMBER({mailer}),"ok","not entered: orders are before a mailer")',
    ),
    says(
      "tax_known",
      "Sales tax",
      'IF(OR(ISNUMBER({tax}),COUNTIF({orders.taxed},"yes")=0),"ok","not entered: orders are before the fee on sales tax")',
    ),
    says(
      "long_enough",
      "This sheet looks at every row",
      'IF(ROWS(Channels[Channel])<=ROWS({orders.channel}),"ok","the book has grown: build this sheet anew")',
    ),
  ],
});
