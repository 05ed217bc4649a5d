import type { Block, SheetDescription } from "../model";
import {
  column,
  day,
  money,
  numberAt,
  type Reference,
  textAt,
  weight,
} from "./columns";
import type { ToteFacts } from "./facts";
import { freightBlock } from "./freight-block";
import { toteSheetNames } from "./names";

const contractsBlock = (facts: ToteFacts, register: Reference): Block => {
  const own = (
    key: Parameters<typeof facts.column<"toteContracts">>[1],
  ): string => facts.column("toteContracts", key);
  const tickets = (name: string): string => register(`tickets.${name}`);
  const asOf = register("as_of");
  const ofOwn = (figures: string): string =>
    `SUMIFS(${tickets(figures)},${tickets("contract")},{row.contract},${tickets("counts")},"yes")`;
  const withName = (formula: string): string =>
    `IF({row.contract}="","",${formula})`;
  return {
    kind: "table",
    name: "contracts",
    title: "How far each contract has come",
    rows: facts.contracts,
    columns: [
      column("contract", "Contract", textAt(own("contract"))),
      column("buyer", "Buyer", textAt(own("customer"))),
      column("agreed", "Contract lb", numberAt(own("weight")), weight),
      column("shipped", "Shipped lb", withName(ofOwn("net")), weight),
      column(
        "totes",
        "Totes",
        withName(
          `COUNTIFS(${tickets("contract")},{row.contract},${tickets("counts")},"yes",${tickets("net")},">0")`,
        ),
        "0",
      ),
      column(
        "left",
        "Left lb",
        'IF(ISNUMBER({row.agreed}),ROUND({row.agreed}-{row.shipped},10),"")',
        weight,
      ),
      column(
        "totes_left",
        "Totes left",
        'IF(AND(ISNUMBER({row.left}),ISNUMBER({row.usual})),IF({row.left}<=0,0,ROUNDUP(ROUND({row.left}/{row.usual},6),0)),"")',
        "0",
      ),
      column(
        "share",
        "Shipped",
        'IF(ISNUMBER({row.agreed}),{row.shipped}/{row.agreed},"")',
        "0.0%",
      ),
      column(
        "time",
        "Of its days gone",
        `IF(AND(ISNUMBER({row.start}),ISNUMBER({row.end})),MIN(1,MAX(0,(${asOf}-{row.start})/MAX(1,{row.end}-{row.start}))),"")`,
        "0.0%",
      ),
      column("end", "Ends on", numberAt(own("end")), day),
      column(
        "days_left",
        "Days left",
        `IF(ISNUMBER({row.end}),{row.end}-${asOf},"")`,
        "0",
      ),
      column(
        "says",
        "In words",
        'IF(ISNUMBER({row.left}),IF({row.left}<0,"over by "&TEXT(-{row.left},"#,##0")&" lb",IF({row.days_left}<0,"closed "&TEXT({row.left},"#,##0")&" lb short",TEXT({row.left},"#,##0")&" lb left = "&{row.totes_left}&IF({row.totes_left}=1," tote"," totes")&", ends on "&TEXT({row.end},"yyyy-mm-dd"))),"")',
      ),
      column("amount", "Amount", withName(ofOwn("amount")), money),
      column("currency", "Money", withName(`LEFT(${textAt(own("basis"))},3)`)),
      column(
        "brix",
        "Mean Brix shipped",
        `IF(ISNUMBER({row.shipped}),IF({row.shipped}>0,${ofOwn("solids")}/{row.shipped},""),"")`,
        "0.00",
      ),
      column("floor", "Least Brix agreed", numberAt(own("minimumBrix")), "0.0"),
      column(
        "short",
        "Solids short",
        'IF(AND(ISNUMBER({row.brix}),ISNUMBER({row.floor})),IF({row.brix}<{row.floor},({row.floor}-{row.brix})/{row.floor},0),"")',
        "0.00%",
      ),
      column(
        "light",
        "Light totes",
        withName(
          `COUNTIFS(${tickets("contract")},{row.contract},${tickets("light")},">0")`,
        ),
        "0",
      ),
      column(
        "over_if_full",
        "Over if the last is full, lb",
        'IF(ISNUMBER({row.totes_left}),IF({row.totes_left}>0,{row.totes_left}*{row.usual}-{row.left},""),"")',
        weight,
      ),
      column("start", "Starts on", numberAt(own("start")), day),
      column(
        "usual",
        "Usual tote, lb",
        `IF({row.contract}="","",IF({row.totes}>0,{row.shipped}/{row.totes},IF(COUNT(${tickets("net")})>0,SUM(${tickets("net")})/COUNT(${tickets("net")}),"")))`,
        "#,##0.0",
      ),
    ],
  };
};

/** What is left of every contract in pounds and totes, and of its days. */
export const describeContracts = (
  facts: ToteFacts,
  register: Reference,
): SheetDescription => ({
  name: toteSheetNames.contracts,
  tabColor: "#5b3a21",
  widths: [
    13, 27, 11, 11, 10, 11, 10, 10, 10, 11, 11, 44, 13, 8, 32, 11, 10, 9, 13,
    12, 11,
  ],
  frozenRows: 1,
  print: {
    paper: "letter",
    landscape: true,
    fit: "one page wide",
    headings: { first: 0, rows: 1 },
    foot: toteSheetNames.contracts,
  },
  blocks: [
    {
      kind: "title",
      content: {
        formula: `="Contracts on "&TEXT(${register("as_of")},"yyyy-mm-dd")`,
      },
    },
    {
      kind: "notes",
      lines: [
        "Contracts count in pounds. A full last tote may go over what is left: ask what the contract allows.",
      ],
    },
    contractsBlock(facts, register),
    freightBlock(facts),
    {
      kind: "lines",
      title: "Shipped, against the days gone",
      lines: [
        {
          name: "open",
          label: "Open",
          role: "calculated",
          content: {
            formula:
              '=COUNTIFS({contracts.left},">0",{contracts.days_left},">=0")&" contracts"',
          },
        },
      ],
    },
  ],
  charts: [
    {
      kind: "bars",
      title: "Shipped, against the days gone",
      says: "For every contract the part of its pounds that is shipped, and the part of its days that is gone.",
      categories: "{contracts.contract}",
      series: [
        { name: "shipped", values: "{contracts.share}", color: "#8a5a2b" },
        { name: "days gone", values: "{contracts.time}", color: "#c9b79c" },
      ],
      format: "0%",
      beside: "open",
      rows: 14,
      columns: 7,
    },
  ],
});
