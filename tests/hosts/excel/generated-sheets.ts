import type { Change } from "../../../src/hosts/host";
import type { Cell, Sheet } from "../../../src/sheets/workbook";
import { emptySheet } from "../grid/invented-workbook";

export const nothing: Change = {
  says: "",
  append: [],
  addSheets: [],
  names: [],
};

/** A price list such as a packer sends out: a row a product, prices by channel, worked out and looked up. Invented. */
export function priceList(products: number): Sheet {
  const headings = [
    "Product",
    "Bottle",
    "Case",
    "Cost",
    "Farm shop",
    "Grocer",
    "Export",
    "Note",
  ];
  const row = (r: number): readonly Cell[] =>
    [
      { value: `P${r}-AMBER` },
      { value: `${250 + (r % 4) * 125} mL`, style: { align: "right" } },
      { value: 12 },
      { value: 3.1 + (r % 50) / 100, style: { format: "0.0000" } },
      { formula: `=ROUND($D${r + 1}/(1-0.42),2)`, style: { format: "0.00" } },
      { formula: `=ROUND($D${r + 1}/(1-0.3),2)`, style: { format: "0.00" } },
      {
        formula: `=IF($C${r + 1}>0,$D${r + 1}*$C${r + 1},"")`,
        style: { format: "0.00" },
      },
      { value: r % 7 === 0 ? "0042" : "from stock" },
    ].map((cell, column) => ({ row: r, column, ...cell }) as Cell);
  return {
    ...emptySheet("Price list"),
    widths: { 0: 24, 1: 12, 7: 40 },
    frozen: { rows: 1, columns: 1 },
    cells: [
      ...headings.map((value, column) => ({
        row: 0,
        column,
        value,
        style: { bold: true, fill: "#5b3a21", color: "#ffffff" },
      })),
      ...Array.from({ length: products }, (_, i) => row(i + 1)).flat(),
    ],
    tables: [
      {
        name: "PriceList",
        area: { row: 0, column: 0, rows: products + 1, columns: 8 },
        columns: headings.map((heading) => ({ heading })),
      },
    ],
  };
}
