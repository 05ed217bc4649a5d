import type { Block, Column } from "../model";

const terms = (heading: string): string =>
  `INDEX(Channels[${heading}],{row.no})`;
const forChain = (text: string): string => `IF({row.no}="","",${text})`;
const fromShelf = (text: string): string =>
  `IF(AND(ISNUMBER({row.shop}),ISNUMBER({shelf})),${text},"")`;

/** Back from the shelf to what stays with us, and forward from our price to the shelf. Margins are chained, never added. */
export const chainBlock = (rows: number): Block => ({
  kind: "table",
  name: "chain",
  title: "Back from the shelf, and forward to it",
  rows,
  columns: [
    {
      name: "channel",
      label: "Channel",
      content: {
        formula: '=IF({row.no}="","",INDEX({orders.channel},{row.no}))',
      },
    },
    column("shop", "Shop keeps", forChain(terms("Buyer margin")), "0.0%"),
    column(
      "distributor",
      "Distributor keeps",
      forChain(`N(${terms("Distributor margin")})`),
      "0.0%",
    ),
    column(
      "invoice",
      "We invoice",
      fromShelf("{shelf}*(1-{row.shop})*(1-{row.distributor})"),
    ),
    column(
      "broker",
      "Broker",
      fromShelf(`{row.invoice}*N(${terms("Broker")})`),
    ),
    column(
      "promotion",
      "Promotion and returns",
      fromShelf(`{row.invoice}*N(${terms("Promotion and returns")})`),
    ),
    column(
      "net",
      "We keep",
      fromShelf("{row.invoice}-{row.broker}-{row.promotion}"),
    ),
    column(
      "left",
      "Left after full cost",
      fromShelf('IF(ISNUMBER({full}),{row.net}-{full},"")'),
    ),
    column(
      "of_invoice",
      "Left of the invoice",
      'IF(ISNUMBER({row.left}),{row.left}/{row.invoice},"")',
      "0.0%",
    ),
    column(
      "price",
      "Our price now",
      forChain("INDEX({orders.price},{row.no})"),
      "#,##0.00",
    ),
    column(
      "on_shelf",
      "Leads to, on the shelf",
      'IF(ISNUMBER({row.price}),IF(AND({row.shop}<1,{row.distributor}<1),{row.price}/(1-{row.distributor})/(1-{row.shop}),"no shelf price"),"")',
      "#,##0.00",
    ),
    column("no", "Row", 'IFERROR(MATCH({n},{orders.chain_no},0),"")', "0"),
  ],
});

const column = (
  name: string,
  label: string,
  formula: string,
  format = "#,##0.0000",
): Column => ({ name, label, format, content: { formula: `=${formula}` } });
