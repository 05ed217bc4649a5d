import type { Block } from "../model";
import { product, setting } from "./book-references";
import { kettleLines } from "./kettle-lines";
import { carriedOfRun } from "./season-before";

/** The bulk price of a kind of syrup on the day asked for; #N/A where none holds yet. */
export function newestBulkPrice(kind: string): string {
  const from = `SUMPRODUCT(MAX((BulkPrices[Syrup kind]=${kind})*(BulkPrices[Valid from]<={as_of})*BulkPrices[Valid from]))`;
  return `IF(${from}=0,NA(),AVERAGEIFS(BulkPrices[Price per lb],BulkPrices[Syrup kind],${kind},BulkPrices[Valid from],${from}))`;
}

/** The Brix syrup from lots is packed at, and from barrels, where only a run has measured it. */
const BRIX = {
  lots: "IF(SUM({lots.left})>0,SUMPRODUCT({lots.left},{lots.brix})/SUM({lots.left}),NA())",
  barrels:
    "AVERAGEIFS(Runs[Brix],Runs[Product],{product},Runs[Date],SUMPRODUCT(MAX((Runs[Product]={product})*Runs[Date])))",
};

const REPLACEMENT = {
  lots: newestBulkPrice("{kind}"),
  barrels:
    'IF(OR({kind}<>"Oak",COUNT({lots.today})=0,COUNT({lots.today})<>COUNTIF({lots.counts},"yes")),NA(),SUMPRODUCT({lots.today},{lots.out})/SUM({lots.out}))',
};

/** Where a product's syrup comes from. */
export type SyrupFrom = keyof typeof BRIX;

/** A rolled book has no runs yet, but knows the Brix of the newest one before. */
const brixFrom = (from: SyrupFrom, rolled: boolean): string =>
  rolled && from === "barrels"
    ? `IF(COUNTIFS(Runs[Product],{product})=0,${carriedOfRun("Brix of the newest run", "{product}")},${BRIX[from]})`
    : BRIX[from];

/** From volume to weight, and what a pound costs three ways. */
export const syrupBlock = (from: SyrupFrom, rolled = false): Block => ({
  kind: "lines",
  title: "Syrup in the bottle",
  lines: [
    {
      name: "brix",
      label: "Brix at 68 °F",
      unit: "°Bx",
      role: "calculated",
      format: "0.00",
      content: {
        formula: `=IF(ISNUMBER({brix_typed}),{brix_typed},${brixFrom(from, rolled)})`,
      },
    },
    {
      name: "lb_per_gal",
      label: "Weight of a gallon",
      unit: "lb/gal in air at 68 °F",
      role: "calculated",
      format: "0.000",
      content: { formula: "=SYRUP.POUNDS_PER_GALLON({brix})" },
    },
    {
      name: "pack_temperature",
      label: "Filling temperature",
      unit: "°F",
      role: "calculated",
      format: "0",
      content: { formula: `=${setting("Pack temperature")}` },
      hint: "scalds at once; your process authority sets it",
    },
    {
      name: "shrinkage",
      label: "Shrinks while it cools by",
      unit: "of the hot volume, ±0.1 %",
      role: "calculated",
      format: "0.00%",
      content: { formula: "=SYRUP.SHRINKAGE({brix},{pack_temperature})" },
    },
    {
      name: "hot_fill",
      label: "Volume to fill hot",
      unit: "mL, ±0.1 %",
      role: "calculated",
      format: "#,##0.0",
      content: {
        formula: "=SYRUP.HOT_VOLUME({fill},{brix},{pack_temperature})",
      },
      hint: "measure your own bottle; glass varies by batch",
    },
    {
      name: "lb_per_bottle",
      label: "Syrup drawn for a bottle",
      unit: "lb",
      role: "result",
      format: "0.0000",
      content: { formula: "=SYRUP.SYRUP_PER_BOTTLE({fill},{brix},{loss})" },
    },
    {
      name: "purge",
      label: "Start and purge of the line",
      unit: "lb",
      role: "calculated",
      format: "#,##0.0",
      content: { formula: "=INDEX({lines.purge},{chosen_no})" },
    },
    {
      name: "need",
      label: "Syrup for the whole run",
      unit: "lb",
      role: "result",
      format: "#,##0.0",
      content: { formula: "={bottles}*{lb_per_bottle}+{purge}" },
    },
    ...kettleLines,
    {
      name: "bulk_price",
      label: "Price per lb at replacement",
      unit: from === "lots" ? "newest bulk price" : "bulk price aged in oak",
      role: "calculated",
      format: "0.0000",
      content: { formula: `=${REPLACEMENT[from]}` },
    },
    {
      name: "average_price",
      label: "Price per lb on average",
      unit: "of what is in stock",
      role: "calculated",
      format: "0.0000",
      content: {
        formula:
          '=SYRUP.LOT_COST("average",{need},{lots.received:price})/{need}',
        portable:
          "=IF(SUM({lots.left})<{need},NA(),SUMPRODUCT({lots.left},{lots.price})/SUM({lots.left}))",
      },
    },
    {
      name: "oldest_price",
      label: "Price per lb oldest first",
      unit: "of the lots this run would draw",
      role: "calculated",
      format: "0.0000",
      content: {
        formula:
          '=SYRUP.LOT_COST("oldest first",{need},{lots.received:price})/{need}',
        portable:
          "=IF(SUM({lots.left})<{need},NA(),SUMPRODUCT({lots.drawn},{lots.price})/{need})",
      },
    },
    {
      name: "fill_seconds",
      label: "Filling time on the bench fillers",
      unit: "s",
      role: "calculated",
      format: "0",
      content: { formula: `=${product("Fill seconds")}` },
    },
  ],
});

/** How much of a lot a run takes when the oldest go first and lots of one day go in the order of their rows. */
export const DRAWN_OLDEST_FIRST =
  '=IF(NOT(ISNUMBER({row.left})),"",MAX(0,MIN({row.left},{need}-SUMIFS({lots.left},{lots.received},"<"&{row.received})-SUMIFS({lots.left},{lots.received},{row.received},{lots.no},"<"&{row.no}))))';

const inTable = (text: string): string => `IF({n}>ROWS(Lots[Lot]),"",${text})`;

/** Which lots could go into this product and how much of each the run would draw, oldest first. */
export const lotsBlock = (rows: number): Block => ({
  kind: "table",
  name: "lots",
  title: "Lots this syrup would be drawn from, oldest first",
  rows,
  columns: [
    {
      name: "lot",
      label: "Lot",
      content: { formula: `=${inTable("INDEX(Lots[Lot],{n})")}` },
    },
    { name: "no", label: "No.", content: { formula: `=${inTable("{n}")}` } },
    {
      name: "brix",
      label: "Brix at 68 °F",
      format: "0.0",
      content: { formula: `=${inTable("INDEX(Lots[Brix at 68 °F],{n})")}` },
    },
    {
      name: "received",
      label: "Received",
      format: "yyyy-mm-dd",
      content: { formula: `=${inTable("INDEX(Lots[Received],{n})")}` },
    },
    {
      name: "left",
      label: "Suitable and left, lb",
      format: "#,##0;-#,##0;–",
      content: {
        formula: `=${inTable('IF(AND(INDEX(Lots[Grade],{n})={kind},IF(INDEX(Lots[Organic],{n})="yes","yes","no")={organic}),MAX(0,INDEX(Lots[Left lb],{n})),0)')}`,
      },
    },
    {
      name: "price",
      label: "Landed price per lb",
      format: "0.0000",
      content: { formula: `=${inTable("INDEX(Lots[Landed per lb],{n})")}` },
    },
    {
      name: "drawn",
      label: "Drawn for this run, lb",
      format: "#,##0.0;-#,##0.0;–",
      content: {
        formula: DRAWN_OLDEST_FIRST,
      },
    },
  ],
});
