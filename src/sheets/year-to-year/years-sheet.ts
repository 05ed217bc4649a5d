import { bookTables } from "../../book/book";
import { isAgedKind } from "../../book/aged-syrup";
import { columnAt, type Contents, contentsOf } from "../../book/contents";
import { newestDayFormula } from "../../book/newest-day";
import { sameName } from "../../book/keys";
import { unusable } from "../../measures/cannot-answer";
import {
  bookColumn,
  bookRows,
  mostOf,
  needBook,
  refuseSheet,
} from "../book-cells";
import { barrelCostBlock, barrelsBlock } from "../costing/barrels-block";
import { setting } from "../costing/book-references";
import { heatBlock } from "../costing/heat-block";
import type { NamedPlace } from "../costing/names";
import type { Block, ChartDescription, Line } from "../model";
import {
  figureNames,
  figurePlaces,
  inNames,
  sheetNameOf,
  type Sources,
} from "../named-figures";
import { place } from "../place";
import type { DefinedName, Sheet } from "../workbook";
import {
  askedBlock,
  checksBlock,
  sidesBlock,
  stepsBlock,
} from "./bridge-blocks";
import { billsOf, materialRows, partsBlock } from "./part-rows";
import { runRows } from "./run-rows";

export interface YearsSheetQuestion {
  readonly contents: readonly Contents[];
  readonly product: string;
  readonly existingSheets: readonly string[];
  readonly portable?: boolean;
  readonly season?: number;
  readonly against?: number;
}

const sources = {
  season: "season",
  against: "against",
  sides: "sides",
  steps: "steps",
  checks: ["told.label", "long_enough"],
} as const satisfies Sources<string>;

export type YearsKey = keyof typeof sources;

/** Where a workbook keeps a product's season against season; empty without such a sheet. */
export const yearsPlaces = (
  names: readonly DefinedName[],
  product: string,
): Partial<Readonly<Record<YearsKey, NamedPlace>>> =>
  figurePlaces(
    `years_${inNames(product)}`,
    Object.keys(sources) as YearsKey[],
    names,
  );

/**
 * What a bottle cost last season and this, as it was made, and what the change is made of: live formulas into the book.
 * Refuses (#VALUE!) a product that is not in Products, a workbook without the tables, and one that has such a sheet.
 */
export function yearsSheet(question: YearsSheetQuestion): {
  readonly sheet: Sheet;
  readonly names: readonly DefinedName[];
} {
  const { contents, product, existingSheets, portable = false } = question;
  const name = sheetNameOf("Years", product);
  needBook(contents, "a sheet of seasons");
  refuseSheet(existingSheets, name);
  const own = (key: "products" | "productMaterials" | "runs"): number =>
    bookColumn(contents, key, "product").filter(
      (cell) => sameName(cell) === sameName(product),
    ).length;
  if (own("products") === 0)
    throw unusable(`There is no product "${product}" in Products`);
  const runs = own("runs") + 6;
  const parts = own("productMaterials") + 3;
  const bills = mostOf(bookColumn(contents, "overheads", "season")) + 4;
  const fromBarrels = isAged(contents, product);
  const placed = place(
    {
      name,
      tabColor: "#7a4a5e",
      widths: [44, 18, 18, 16, 12, 14, 16, 14, 14, 16, 10, 12, 14, 12, 40, 8],
      frozenRows: 1,
      charts: [stepsChart],
      print: {
        paper: "letter",
        landscape: true,
        fit: "one page wide",
        headings: { first: 0, rows: 1 },
        foot: `Season against season: ${product}`,
      },
      blocks: [
        {
          kind: "title",
          content: {
            formula: '={product}&": "&{season}&" against "&{against}',
          },
        },
        {
          kind: "notes",
          lines: [
            "Yellow cells are yours to change. Syrup is at what was paid for the lots drawn; parts, wages and energy are at the book's one list in both seasons.",
          ],
        },
        askedBlock({
          product,
          season: question.season ?? newestDayFormula(contents),
          against: question.against,
        }),
        sidesBlock,
        stepsBlock,
        { kind: "notes", lines: ["", ""] },
        checksBlock,
        runRows(runs, fromBarrels ? "barrels" : "lots"),
        productLines(contents),
        partsBlock(parts),
        billsOf("then", bills),
        billsOf("now", bills),
        ...(fromBarrels
          ? [
              barrelCostBlock,
              pricedBarrels(bookRows(contents, "oakBarrels") + 8),
            ]
          : []),
        materialRows(runs, parts),
      ],
    },
    { portable },
  );
  return {
    sheet: placed.sheet,
    names: figureNames(`years_${inNames(product)}`, placed, sources),
  };
}

const stepsChart: ChartDescription = {
  kind: "columns",
  title: "What the change is made of",
  says: "The steps from the cost of a bottle in the season before to its cost in the season, as listed under What the change is made of.",
  categories: "{steps.price.label..steps.own_bills.label}",
  series: [
    {
      name: "a bottle",
      values: "{steps.price.change..steps.own_bills.change}",
      color: "#7a4a5e",
    },
  ],
  format: "0.00",
  beside: "steps",
  rows: 12,
  columns: 6,
};

/** Barrels with what came out of each cost as paid, as a costing sheet prices them. */
function pricedBarrels(rows: number): Block {
  const barrels = barrelsBlock(rows);
  if (barrels.kind !== "table") throw new Error("Barrels are a table");
  const wanted = ["lot", "counts", "left", "price", "out", "months", "source"];
  return {
    ...barrels,
    title: "Emptied barrels, and what came out of them cost",
    columns: barrels.columns.filter(({ name }) => wanted.includes(name)),
  };
}

const calculated = (name: string, label: string, formula: string): Line => ({
  name,
  label,
  role: "calculated",
  content: { formula: `=${formula}` },
});

/** What of the product and of heat the rows below go by. */
function productLines(contents: readonly Contents[]): Block {
  const product = (heading: string): string =>
    `INDEX(Products[${heading}],{product_row})`;
  const heat =
    heatBlock.kind === "lines"
      ? heatBlock.lines.filter(({ name }) =>
          ["fuel", "fuel_price", "fuel_heat", "efficiency"].includes(name),
        )
      : [];
  return {
    kind: "lines",
    title: "The product, and heat",
    lines: [
      calculated(
        "product_row",
        "Row in Products",
        "MATCH({product},Products[Product],0)",
      ),
      calculated("per_case", "Bottles in a case", product("Bottles per case")),
      calculated(
        "per_pallet",
        "Cases on a pallet",
        `${product("Cases per layer")}*${product("Layers per pallet")}`,
      ),
      calculated("target_fill", "Fill, mL", product("Fill mL at 68 °F")),
      calculated(
        "organic",
        "Organic",
        `IF(${product("Organic")}="yes","yes","no")`,
      ),
      {
        ...calculated("as_of", "Prices as of", newestDayFormula(contents)),
        format: "yyyy-mm-dd",
      },
      calculated(
        "pack_temperature",
        "Filling temperature",
        setting("Pack temperature"),
      ),
      ...heat,
    ],
  };
}

/** A product of aged syrup is drawn from barrels, where the book has any. */
function isAged(contents: readonly Contents[], product: string): boolean {
  const table = contentsOf(contents, bookTables.products);
  const { product: code, syrupKind } = bookTables.products.columns;
  const row = table?.rows.find(
    (cells) =>
      sameName(cells[columnAt(table.headings, code)]) === sameName(product),
  );
  const kind = table && row?.[columnAt(table.headings, syrupKind)];
  return isAgedKind(String(kind ?? "")) && bookRows(contents, "oakBarrels") > 0;
}
