import type { Block } from "../model";
import { nextRow, part } from "./book-references";

/** Text for a formula that only counts in rows which hold a part; spare rows stay "". */
const forPart = (text: string): string => `IF({row.part}="","",${text})`;

const PRICES = "PartPrices[Price each]";
const FROM = "PartPrices[From quantity]";
const OTHER_PART = "(PartPrices[Part]<>{row.part})*10^12";

/** How many pieces an order at each break would bring: at least the break, the need and the minimum, in whole cartons. */
const ORDERED = `ROUNDUP(((${FROM}+{row.least}+ABS(${FROM}-{row.least}))/2)/{row.carton},0)*{row.carton}`;

/** The smallest order that would do: the need, the minimum and the first price, in whole cartons. */
const ENOUGH = `ROUNDUP(MAX({row.least},SUMPRODUCT(MIN(${OTHER_PART}+${FROM})))/{row.carton},0)*{row.carton}`;

/** A container or a label made for the run is bought whole, at the cheapest order that covers it; what lies on the shelf is charged as drawn. */
export const materialsBlock = (rows: number): Block => ({
  kind: "table",
  name: "materials",
  title: "Materials for the run",
  rows,
  total: { label: "All materials", columns: ["per_bottle"] },
  columns: [
    {
      name: "title",
      label: "Part",
      content: {
        formula: `=${forPart('{row.part}&" · "&{row.description}')}`,
      },
    },
    {
      name: "needed",
      label: "Needed",
      format: "#,##0.##",
      content: {
        formula: `=${forPart('INDEX(ProductMaterials[Quantity],{row.row})*IF({row.per}="bottle",{bottles},IF({row.per}="case",{cases},IF({row.per}="pallet",{pallets},IF({row.per}="US gallon of syrup",{bottles}*{fill}/3785.411784,NA()))))')}`,
      },
    },
    {
      name: "drawn",
      label: "Drawn with spoilage",
      format: "#,##0",
      content: {
        formula: `=${forPart(`IFERROR(SYRUP.PIECES_TO_DRAW({row.needed},1,${part("Spoilage")},IF({row.bought}="for each run",{row.carton},1)),"")`)}`,
      },
    },
    {
      name: "bought",
      label: "Bought",
      content: { formula: `=${forPart(`IFERROR(${part("Bought")},"")`)}` },
    },
    {
      name: "pieces",
      label: "Pieces charged",
      format: "#,##0",
      content: {
        formula: `=${forPart(`IF(NOT(ISNUMBER({row.order_cost})),"",IF({row.bought}="for each run",SUMPRODUCT(MIN(${OTHER_PART}+(ABS(${ORDERED}*${PRICES}-{row.order_cost})>0.000001)*10^12+${ORDERED})),{row.drawn}))`)}`,
      },
    },
    {
      name: "price",
      label: "Price each",
      format: "0.0000",
      content: {
        formula: `=${forPart('IF(NOT(ISNUMBER({row.order_cost})),"",{row.order_cost}/{row.pieces})')}`,
      },
    },
    {
      name: "order_cost",
      label: "Materials",
      format: "#,##0.00",
      content: {
        formula: `=${forPart(`IF(OR(NOT(ISNUMBER({row.drawn})),COUNTIF(PartPrices[Part],{row.part})=0),"",IF({row.bought}="for each run",SUMPRODUCT(MIN(${OTHER_PART}+${ORDERED}*${PRICES})),{row.drawn}*AVERAGEIFS(${PRICES},PartPrices[Part],{row.part},${FROM},SUMPRODUCT(MAX((PartPrices[Part]={row.part})*(${FROM}<=MAX({row.least},SUMPRODUCT(MIN(${OTHER_PART}+${FROM}))))*${FROM})))))`)}`,
      },
    },
    {
      name: "freight",
      label: "Freight in",
      format: "#,##0.00",
      content: {
        formula: `=${forPart(`IF({row.bought}="for each run",IFERROR(N(${part("Freight per order")}),0),0)`)}`,
      },
    },
    {
      name: "per_bottle",
      label: "A bottle, with freight",
      format: "0.0000",
      content: {
        formula: `=${forPart('IF(NOT(ISNUMBER({row.order_cost})),"",({row.order_cost}+{row.freight})/{bottles})')}`,
      },
    },
    {
      name: "advice",
      label: "Advice",
      role: "aside",
      content: {
        formula: `=${forPart(`IF(NOT(ISNUMBER({row.order_cost})),"",IF({row.bought}<>"for each run","",IF({row.pieces}>${ENOUGH},"buy up to "&TEXT({row.pieces},"#,##0")&": the next price break is cheaper in all","")))`)}`,
      },
    },
    {
      name: "needs",
      label: "Missing",
      role: "check",
      content: {
        formula: `=${forPart('IF({row.description}="not in Parts",{row.part}&" in Parts; ",IF(NOT(ISNUMBER({row.drawn})),"spoilage or quantity of "&{row.part}&"; ",IF(NOT(ISNUMBER({row.order_cost})),"a price for "&{row.part}&"; ","")))')}`,
      },
    },
    {
      name: "no_freight",
      label: "Freight not entered",
      role: "check",
      content: {
        formula: `=${forPart(`IF({row.bought}="for each run",IF(ISNUMBER(${part("Freight per order")}),"",{row.part}&"; "),"")`)}`,
      },
    },
    {
      name: "per",
      label: "Per",
      content: {
        formula: `=${forPart("INDEX(ProductMaterials[Per],{row.row})")}`,
      },
    },
    {
      name: "carton",
      label: "Carton",
      format: "#,##0",
      content: {
        formula: `=${forPart(`IFERROR(MAX(1,N(${part("Pieces per carton")})),1)`)}`,
      },
    },
    {
      name: "least",
      label: "Least order",
      format: "#,##0",
      content: {
        formula: `=${forPart(`IF(NOT(ISNUMBER({row.drawn})),"",MAX({row.drawn},IFERROR(N(${part("Minimum order")}),0)))`)}`,
      },
    },
    {
      name: "part",
      label: "Code",
      content: {
        formula: '=IF({row.row}="","",INDEX(ProductMaterials[Part],{row.row}))',
      },
    },
    {
      name: "description",
      label: "What it is",
      content: {
        formula: `=${forPart(`IFERROR(${part("Description")},"not in Parts")`)}`,
      },
    },
    {
      name: "row",
      label: "Row",
      content: {
        formula: `=${nextRow("ProductMaterials", "Product", "{product}", "{row_above.row}")}`,
      },
    },
  ],
});
