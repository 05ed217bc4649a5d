import type { Block } from "../model";
import { DRAWN_OLDEST_FIRST, newestBulkPrice } from "./syrup-blocks";

const barrel = (heading: string): string => `INDEX(OakBarrels[${heading}],{n})`;
const inTable = (text: string): string =>
  `IF({n}>ROWS(OakBarrels[Barrel]),"",${text})`;
const forCounted = (text: string): string =>
  `IF({row.counts}="yes",${text},"")`;
const agedPrice = (costIn: string): string =>
  `SYRUP.AGED_PRICE(${costIn},{row.out},${barrel("Barrel cost")},{barrel_fills},{row.months},{barrel_storage},{barrel_money},{barrel_resale})`;

/** Emptied barrels as the lots that aged syrup is drawn from, each at the price its own costs come to. */
export const barrelsBlock = (rows: number): Block => ({
  kind: "table",
  name: "lots",
  title: "Emptied barrels this syrup would be drawn from, oldest first",
  rows,
  columns: [
    {
      name: "lot",
      label: "Barrel",
      content: { formula: `=${inTable(barrel("Barrel"))}` },
    },
    { name: "no", label: "No.", content: { formula: `=${inTable("{n}")}` } },
    {
      name: "counts",
      label: "Emptied and suitable",
      content: {
        formula: `=${inTable(`IF(AND(ISNUMBER(${barrel("Emptied on")}),N(${barrel("Pounds out")})>0),IF(IFERROR(IF(INDEX(Lots[Organic],MATCH({row.source},Lots[Lot],0))="yes","yes","no"),"no")={organic},"yes","no"),"aging")`)}`,
      },
    },
    {
      name: "received",
      label: "Emptied",
      format: "yyyy-mm-dd",
      content: { formula: `=${forCounted(barrel("Emptied on"))}` },
    },
    {
      name: "left",
      label: "Left, lb",
      format: "#,##0;-#,##0;–",
      content: { formula: `=${forCounted(`MAX(0,${barrel("Left lb")})`)}` },
    },
    {
      name: "price",
      label: "Aged price per lb, as paid",
      format: "0.0000",
      content: {
        formula: `=${forCounted(`IF(ISNUMBER(${barrel("Syrup cost in")}),${agedPrice(barrel("Syrup cost in"))},IF({row.left}>0,"",0))`)}`,
      },
    },
    {
      name: "drawn",
      label: "Drawn for this run, lb",
      format: "#,##0.0;-#,##0.0;–",
      content: { formula: DRAWN_OLDEST_FIRST },
    },
    {
      name: "out",
      label: "Came out, lb",
      format: "#,##0",
      content: { formula: `=${forCounted(barrel("Pounds out"))}` },
    },
    {
      name: "months",
      label: "Months in oak",
      format: "0.0",
      content: {
        formula: `=${forCounted(`(${barrel("Emptied on")}-${barrel("Filled on")})*12/365`)}`,
      },
    },
    {
      name: "source",
      label: "Filled from",
      content: {
        formula: `=${inTable(`IFERROR(INDEX(LotUse[From],MATCH({row.lot},LotUse[To],0)),"")`)}`,
      },
    },
    {
      name: "kind_in",
      label: "Syrup that went in",
      content: {
        formula: `=${forCounted(`IFERROR(INDEX(Lots[Grade],MATCH({row.source},Lots[Lot],0)),"")`)}`,
      },
    },
    {
      name: "bulk_in",
      label: "Its bulk price, per lb",
      format: "0.0000",
      content: {
        formula: `=${forCounted(`IFERROR(${newestBulkPrice("{row.kind_in}")},"")`)}`,
      },
    },
    {
      name: "today",
      label: "Aged price per lb, today",
      format: "0.0000",
      content: {
        formula: `=${forCounted(`IF(ISNUMBER({row.bulk_in}),${agedPrice(`${barrel("Pounds in")}*{row.bulk_in}`)},"")`)}`,
      },
    },
    {
      name: "needs",
      label: "Missing",
      role: "check",
      content: {
        formula: `=${forCounted('IF({row.kind_in}="","the lot that went into "&{row.lot}&"; ",IF(OR(ISNUMBER({row.bulk_in}),MATCH({row.kind_in},{lots.kind_in},0)<{n}),"","a bulk price for "&{row.kind_in}&"; "))&IF(ISNUMBER({row.price}),"","the syrup cost in of "&{row.lot}&"; ")')}`,
      },
    },
  ],
});

/** A setting that may be left out of the book, as a number; 0 without it. */
const settingOr0 = (name: string): string =>
  `=SUMIFS(Settings[Value],Settings[Setting],"${name}")`;

/** What a fill of a barrel costs besides its syrup. */
export const barrelCostBlock: Block = {
  kind: "lines",
  title: "What a fill of an oak barrel costs besides its syrup",
  lines: [
    {
      name: "barrel_fills",
      label: "Fills a barrel serves in all",
      role: "calculated",
      format: "0.#",
      content: {
        formula:
          '=IF(COUNTIFS(Settings[Setting],"Barrel fills",Settings[Value],">0")>0,SUMIFS(Settings[Value],Settings[Setting],"Barrel fills"),MAX(OakBarrels[Fill number]))',
      },
      hint: 'setting "Barrel fills", else the most in Oak barrels',
    },
    {
      name: "barrel_storage",
      label: "Storage of a barrel",
      unit: "a month",
      role: "calculated",
      format: "#,##0.00",
      content: { formula: settingOr0("Barrel storage") },
      hint: 'setting "Barrel storage"; none charged without it',
    },
    {
      name: "barrel_money",
      label: "Interest on the syrup in it",
      unit: "a year",
      role: "calculated",
      format: "0.0%",
      content: {
        formula: `${settingOr0("Cost of money")}*IF(COUNTIFS(Settings[Setting],"Cost of money",Settings[Unit],"percent*")>0,0.01,1)`,
      },
      hint: 'setting "Cost of money"; none charged without it',
    },
    {
      name: "barrel_resale",
      label: "An emptied barrel is sold for",
      role: "calculated",
      format: "#,##0.00",
      content: { formula: settingOr0("Barrel resale") },
      hint: 'setting "Barrel resale"; nothing without it',
    },
  ],
};
