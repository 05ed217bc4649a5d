import type { Block } from "../model";
import { namedShare, product } from "./book-references";

export interface ProductBlockFacts {
  readonly product: string;
  readonly bottles: number;
  readonly lineNames: readonly string[];
  /** Whether the book's settings hold a syrup loss. */
  readonly lossIsSet: boolean;
  /** The newest day of the book, as a formula. */
  readonly newestDay: string;
}

/** The inputs: the only cells of the sheet that are typed in. */
export const inputsBlock = (facts: ProductBlockFacts): Block => ({
  kind: "lines",
  title: "What you can change",
  lines: [
    {
      name: "bottles",
      label: "Bottles in this run",
      unit: "bottles",
      role: "input",
      format: "#,##0",
      content: facts.bottles,
      rule: { kind: "whole number", min: 1, max: 10_000_000 },
      ruleSays: "A whole number of bottles, 1 or more.",
    },
    {
      name: "line",
      label: "Line to run on",
      role: "input",
      content: undefined,
      hint: "blank = the cheapest of your usual lines",
      rule: { kind: "list", choices: facts.lineNames },
      ruleSays:
        "One of the lines in the Lines table, or blank for the cheapest.",
    },
    {
      name: "as_of",
      label: "Prices as of",
      role: "input",
      format: "yyyy-mm-dd",
      content: { formula: `=${facts.newestDay}` },
      hint: "the newest date in the book, unless you type another",
      rule: { kind: "date", min: 36526, max: 73050 },
    },
    {
      name: "brix_typed",
      label: "Brix to pack at",
      unit: "°Bx",
      role: "input",
      format: "0.0",
      content: undefined,
      hint: "blank = the weighted Brix of the lots in stock",
      rule: { kind: "number", min: 60, max: 75 },
      ruleSays: "Brix at 68 °F, between 60 and 75.",
    },
    {
      name: "loss",
      label: "Syrup lost between drum and bottle",
      role: "input",
      format: "0.0%",
      content: facts.lossIsSet
        ? { formula: `=${namedShare("Settings", "Setting", "Syrup loss")}` }
        : 0,
      hint: facts.lossIsSet
        ? "from Settings"
        : "none entered; 1 to 2 % is common practice",
      rule: { kind: "number", min: 0, max: 0.5 },
      ruleSays: "A share from 0 % to 50 %.",
    },
    {
      name: "ending",
      label: "Prices end in",
      role: "input",
      format: "0.00",
      content: 0.99,
      rule: { kind: "number", min: 0, max: 0.99 },
      ruleSays: "The cents a price ends in, from 0.00 to 0.99.",
    },
  ],
});

/** What the product is, from the Products table. */
export const productBlock = (facts: ProductBlockFacts): Block => ({
  kind: "lines",
  title: "The product",
  lines: [
    {
      name: "product",
      label: "Product",
      role: "calculated",
      content: facts.product,
    },
    {
      name: "product_row",
      label: "Row in Products",
      role: "calculated",
      content: { formula: "=MATCH({product},Products[Product],0)" },
    },
    {
      name: "description",
      label: "Description",
      role: "calculated",
      content: { formula: `=${product("Description")}` },
    },
    {
      name: "owner",
      label: "Label of",
      role: "calculated",
      content: { formula: `=${product("Label owner")}` },
    },
    {
      name: "declared",
      label: "Declared on the label",
      role: "calculated",
      content: { formula: `=${product("Declared text")}` },
    },
    {
      name: "declared_ml",
      label: "Declared volume",
      unit: "mL",
      role: "calculated",
      format: "#,##0.##",
      content: { formula: `=${product("Declared mL")}` },
    },
    {
      name: "fill",
      label: "Filled volume at 68 °F",
      unit: "mL",
      role: "calculated",
      format: "#,##0.0",
      content: { formula: `=${product("Fill mL at 68 °F")}` },
    },
    {
      name: "per_case",
      label: "Bottles in a case",
      role: "calculated",
      format: "#,##0",
      content: { formula: `=${product("Bottles per case")}` },
    },
    {
      name: "cases",
      label: "Cases in this run",
      role: "calculated",
      format: "#,##0",
      content: { formula: "=ROUNDUP({bottles}/{per_case},0)" },
      hint: "the last case may be part filled",
    },
    {
      name: "pallets",
      label: "Pallets in this run",
      role: "calculated",
      format: "#,##0",
      content: {
        formula: `=ROUNDUP({cases}/(${product("Cases per layer")}*${product("Layers per pallet")}),0)`,
      },
    },
    {
      name: "kind",
      label: "Syrup",
      role: "calculated",
      content: { formula: `=${product("Syrup kind")}` },
    },
    {
      name: "organic",
      label: "Organic",
      role: "calculated",
      content: { formula: `=IF(${product("Organic")}="yes","yes","no")` },
      hint: "organic and ordinary lots are never mixed here",
    },
  ],
});
