import { isAgedKind } from "../../book/aged-syrup";
import { bookTables, tableList } from "../../book/book";
import { columnAt, type Contents, contentsOf } from "../../book/contents";
import { newestDayFormula } from "../../book/newest-day";
import { unusable } from "../../measures/cannot-answer";
import { fixedAddress, sheetReference } from "../address";
import { mostOf } from "../book-cells";
import { inBooksGallon } from "../books-gallon";
import type { SheetDescription } from "../model";
import { place, type PlacedSheet } from "../place";
import type { Area, DefinedName, Sheet } from "../workbook";
import { barrelCostBlock, barrelsBlock } from "./barrels-block";
import { checksBlock, missingBlock } from "./checks-block";
import { heatBlock } from "./heat-block";
import { labourBlock } from "./labour-block";
import { linesBlock } from "./lines-block";
import { materialsBlock } from "./materials-block";
import { moneyChart } from "./money-chart";
import { costingKeys, type CostingKey, costingName } from "./names";
import { overheadsBlock, seasonBlock } from "./overheads-block";
import { inputsBlock, productBlock } from "./product-blocks";
import { channelsBlock, costBlock, rolledCostBlock } from "./result-blocks";
import { isRolled } from "./season-before";
import { lotsBlock, syrupBlock, type SyrupFrom } from "./syrup-blocks";

export interface CostingQuestion {
  /** The book's tables as they stand. */
  readonly contents: readonly Contents[];
  readonly product: string;
  readonly bottles: number;
  readonly existingSheets: readonly string[];
  /** Only plain worksheet functions: opens anywhere. */
  readonly portable?: boolean;
}

/**
 * A costing sheet for one product: live formulas into the book's tables, and workbook names for its figures.
 * Refuses (#VALUE!) a product that is not in Products and a sheet that exists.
 */
export function costingSheet(question: CostingQuestion): {
  readonly sheet: Sheet;
  readonly names: readonly DefinedName[];
  readonly placed: PlacedSheet;
} {
  const name = costingSheetName(question.product);
  const taken = question.existingSheets.find(
    (s) => s.toLowerCase() === name.toLowerCase(),
  );
  if (taken !== undefined)
    throw unusable(
      `The sheet "${taken}" exists; rename or delete it before building a new one`,
    );
  const placed = place(
    inBooksGallon(describeCosting(question, name), question.contents),
    { portable: question.portable === true },
  );
  return {
    sheet: placed.sheet,
    names: names(question.product, name, placed),
    placed,
  };
}

/** "Cost P250-LOFT", at most 31 characters and without the signs a sheet name may not hold. */
export const costingSheetName = (product: string): string =>
  `Cost ${product.replace(/[\\/?*[\]:']/g, "-")}`.slice(0, 31);

function describeCosting(
  { contents, product, bottles }: CostingQuestion,
  name: string,
): SheetDescription {
  refuseUncosted(contents, product);
  const count = (key: keyof typeof bookTables): number =>
    contentsOf(contents, bookTables[key])?.rows.length ?? 0;
  const facts = {
    product,
    bottles,
    lineNames: column(contents, "lines", "line").map(String),
    lossIsSet: column(contents, "settings", "setting").some((s) =>
      same(s, "Syrup loss"),
    ),
    newestDay: newestDayFormula(contents),
  };
  const materials = column(contents, "productMaterials", "product").filter(
    (p) => same(p, product),
  ).length;
  const from = syrupFrom(contents, product);
  const overheads = mostOf(column(contents, "overheads", "season"));
  const rolled = isRolled(contents);
  return {
    name,
    tabColor: "#b06a2c",
    widths: [
      42, 18, 18, 18, 14, 14, 18, 14, 14, 16, 14, 14, 14, 12, 12, 12, 30, 8,
    ],
    frozenRows: 1,
    charts: [moneyChart],
    print: {
      paper: "letter",
      landscape: true,
      fit: "one page wide",
      headings: { first: 0, rows: 1 },
      foot: `Costing of ${product}`,
    },
    blocks: [
      {
        kind: "title",
        content: { formula: '="Costing: "&{description}&" ("&{product}&")"' },
      },
      {
        kind: "notes",
        lines: [
          "Yellow cells are yours to change; everything else follows from them and from the tables of this book.",
          "Money is in the books' currency. Weight is the book of record; gallons are derived last.",
        ],
      },
      inputsBlock(facts),
      rolled ? rolledCostBlock : costBlock,
      channelsBlock(count("channels") + 2),
      checksBlock(from, rolled),
      productBlock(facts),
      syrupBlock(from, rolled),
      ...(from === "barrels" ? [barrelCostBlock] : []),
      linesBlock(Math.max(1, count("lines"))),
      labourBlock,
      materialsBlock(materials + 4),
      heatBlock,
      seasonBlock(rolled),
      overheadsBlock(overheads + 4, rolled),
      from === "lots"
        ? lotsBlock(count("lots") + 15)
        : barrelsBlock(count("oakBarrels") + 15),
      missingBlock(from),
    ],
  };
}

/** Refuses (#VALUE!) a workbook that lacks a table every costing needs, and a product that is not in Products. */
export function refuseUncosted(
  contents: readonly Contents[],
  product: string,
): void {
  for (const [, table] of tableList) {
    if (!table.optional && !contentsOf(contents, table))
      throw unusable(
        `The workbook has no ${table.name} table, and a costing needs it`,
      );
  }
  if (!column(contents, "products", "product").some((p) => same(p, product))) {
    throw unusable(`There is no product "${product}" in Products`);
  }
}

/** The filled cells of a column. */
export const column = (
  contents: readonly Contents[],
  key: keyof typeof bookTables,
  name: string,
): readonly unknown[] => {
  const table = bookTables[key];
  const given = contentsOf(contents, table);
  const declared = (
    table.columns as Readonly<Record<string, { readonly heading: string }>>
  )[name];
  if (!given || !declared) return [];
  const at = columnAt(given.headings, declared);
  return given.rows
    .map((row) => row[at])
    .filter((cell) => cell !== null && cell !== undefined && cell !== "");
};

/** A product of aged syrup is drawn from barrels, where the book has any. */
export function syrupFrom(
  contents: readonly Contents[],
  product: string,
): SyrupFrom {
  const table = contentsOf(contents, bookTables.products);
  const { product: code, syrupKind } = bookTables.products.columns;
  const row = table?.rows.find((cells) =>
    same(cells[columnAt(table.headings, code)], product),
  );
  const kind = table && row?.[columnAt(table.headings, syrupKind)];
  return isAgedKind(String(kind ?? "")) &&
    column(contents, "oakBarrels", "barrel").length > 0
    ? "barrels"
    : "lots";
}

const same = (cell: unknown, wanted: string): boolean =>
  String(cell).trim().toLowerCase() === wanted.trim().toLowerCase();

/** Which placed cell each public name stands for. */
const sources: Readonly<
  Record<CostingKey, string | readonly [string, string]>
> = {
  bottles: "bottles",
  line: "line",
  chosen_line: "chosen_line",
  rate: "rate",
  limited_by: "limited_by",
  crossover_text: "crossover_text",
  bulk_price: "bulk_price",
  lb_per_bottle: "lb_per_bottle",
  full_basis: "cost.basis.replacement",
  full_replacement: "cost.full.replacement",
  full_average: "cost.full.average",
  full_oldest: "cost.full.oldest",
  direct_replacement: "cost.direct.replacement",
  direct_average: "cost.direct.average",
  direct_oldest: "cost.direct.oldest",
  overhead: "cost.overhead.replacement",
  case_replacement: "cost.case.replacement",
  missing: "missing",
  parts: ["cost.syrup.label", "cost.overhead.replacement"],
  channels: ["channels.channel", "channels.kept"],
  checks: ["nothing_missing.label", "sheet_is_long_enough"],
};

function names(
  product: string,
  sheet: string,
  { places }: PlacedSheet,
): readonly DefinedName[] {
  const known = costingKeys.filter(
    (key) => key !== "full_basis" || places.has("cost.basis.replacement"),
  );
  return known.map((key) => {
    const source = sources[key];
    const [first, last] =
      typeof source === "string" ? [source, source] : source;
    const from = areaOf(places, first);
    const to = areaOf(places, last);
    const corner = fixedAddress(from.row, from.column);
    const end = fixedAddress(to.row + to.rows - 1, to.column + to.columns - 1);
    return {
      name: costingName(product, key),
      refersTo: `${sheetReference(sheet)}!${corner === end ? corner : `${corner}:${end}`}`,
    };
  });
}

function areaOf(places: ReadonlyMap<string, Area>, name: string): Area {
  const area = places.get(name);
  if (!area) throw new Error(`The costing sheet has no cell "${name}"`);
  return area;
}
