import { bookTables, type TableKey } from "../../book/book";
import { columnAt, type Contents, contentsOf } from "../../book/contents";
import { farmBookSheet } from "../farm-book-sheet";
import { look } from "../looks";
import type { Cell, Sheet, Table } from "../workbook";
import { type Audience, shows, type Ticks } from "./audiences";
import type { FigureFate, TableAllowed } from "./fates";
import { printed } from "./printed";
import { readsOf } from "./reads";
import { widthsOf } from "./room";
import type { SheetToCopy } from "./sheet-to-copy";
import type { Topic } from "./topics";

/** Which rows of a table a copy carries: those of its products, of its products' parts, or those its formulas name. */
type RowsOf = "product" | "part" | "named";

interface Carried {
  readonly key: TableKey;
  readonly topic: Topic;
  readonly columns: readonly string[];
  readonly rows: RowsOf;
}

/** The only tables of the book a copy may carry rows of, and these columns of them only. */
const carried: readonly Carried[] = [
  {
    key: "products",
    topic: "product",
    columns: ["Product", "Cases per layer", "Layers per pallet"],
    rows: "product",
  },
  {
    key: "productMaterials",
    topic: "materials",
    columns: ["Product", "Part", "Quantity", "Per"],
    rows: "product",
  },
  {
    key: "parts",
    topic: "materials",
    columns: [
      "Part",
      "Description",
      "Kind",
      "Pieces per carton",
      "Minimum order",
      "Spoilage",
      "Freight per order",
      "Bought",
    ],
    rows: "part",
  },
  {
    key: "partPrices",
    topic: "materials",
    columns: ["Part", "From quantity", "Price each"],
    rows: "part",
  },
  {
    key: "energy",
    topic: "energy",
    columns: ["Item", "Value", "Unit"],
    rows: "named",
  },
  {
    key: "settings",
    topic: "syrup",
    columns: ["Setting", "Value", "Unit"],
    rows: "named",
  },
];

const carriedAs = (table: string): Carried | undefined =>
  carried.find(({ key }) => bookTables[key].name === table);

export const tableAllowed =
  (audience: Audience, ticks: Ticks): TableAllowed =>
  (table, column) => {
    const found = carriedAs(table);
    return (
      found !== undefined &&
      found.columns.includes(column) &&
      shows(audience, ticks, found.topic)
    );
  };

export const FIGURES_SHEET = "Figures";

/** The sheet with the rows that live formulas of the copy read; undefined when none reads any. */
export function figuresSheet(
  contents: readonly Contents[],
  sheets: readonly {
    readonly sheet: SheetToCopy;
    readonly fates: readonly FigureFate[];
  }[],
): Sheet | undefined {
  const live = sheets.flatMap(({ sheet, fates }) =>
    fates.flatMap(({ fate, figure, formula }) =>
      fate === "live" && formula !== undefined
        ? [{ formula, reads: readsOf(figure, formula, sheet.placed.places) }]
        : [],
    ),
  );
  const used = new Map<string, Set<string>>();
  for (const { reads } of live)
    for (const { table, column } of reads.tables)
      used.set(table, (used.get(table) ?? new Set()).add(column));
  if (used.size === 0) return undefined;
  const products = sheets.flatMap(({ sheet }) => sheet.product ?? []);
  const named = new Set(
    live.flatMap(({ formula }) =>
      [...formula.matchAll(/"((?:[^"]|"")*)"/g)].map(([, word = ""]) =>
        word.toLowerCase(),
      ),
    ),
  );
  const wanted = rowFilter(contents, products, named);
  const cells: Cell[] = [
    {
      row: 0,
      column: 0,
      value: "Figures the formulas of this copy read",
      style: look("title"),
    },
  ];
  const tables: Table[] = [];
  let column = 0;
  for (const one of carried) {
    const columns = used.get(bookTables[one.key].name);
    const given = contentsOf(contents, bookTables[one.key]);
    if (!columns || !given) continue;
    const placed = cutTable(
      given,
      [...one.columns].filter((c) => columns.has(c)),
      wanted(one),
      column,
      one.key,
    );
    cells.push(...placed.cells);
    tables.push(placed.table);
    column += placed.table.columns.length + 1;
  }
  const widths = widthsOf(cells);
  return {
    name: FIGURES_SHEET,
    cells,
    tables,
    validations: [],
    merges: [],
    widths,
    heights: { 0: 26 },
    frozen: { rows: 3, columns: 0 },
    print: printed(
      {
        paper: "letter",
        landscape: true,
        fit: "one page wide",
        headings: { first: 0, rows: 3 },
        foot: "Figures the formulas of this copy read",
      },
      widths,
      { blocks: [], tops: [] },
    ),
  };
}

type Row = Contents["rows"][number];

const rowFilter = (
  contents: readonly Contents[],
  products: readonly string[],
  named: ReadonlySet<string>,
): ((of: Carried) => (given: Contents, row: Row) => boolean) => {
  const ofProduct = (given: Contents, row: Row): boolean =>
    products.some((p) => same(row[at(given, "Product")], p));
  const materials = contentsOf(contents, bookTables.productMaterials);
  const parts =
    materials?.rows
      .filter((row) => ofProduct(materials, row))
      .map((row) => row[at(materials, "Part")]) ?? [];
  return ({ key, rows }) => {
    if (rows === "product") return ofProduct;
    if (rows === "part")
      return (given, row) =>
        parts.some((part) => same(row[at(given, "Part")], String(part)));
    const name = key === "energy" ? "Item" : "Setting";
    return (given, row) => named.has(words(row[at(given, name)]));
  };
};

const at = ({ headings }: Contents, heading: string): number =>
  columnAt(headings, { heading });
const words = (cell: unknown): string =>
  String(cell ?? "")
    .trim()
    .toLowerCase();
const same = (cell: unknown, wanted: string): boolean =>
  words(cell) === words(wanted);

const TOP = 2;

function cutTable(
  given: Contents,
  headings: readonly string[],
  wanted: (given: Contents, row: Row) => boolean,
  left: number,
  key: TableKey,
): { readonly cells: readonly Cell[]; readonly table: Table } {
  const rows = given.rows.filter((row) => wanted(given, row));
  const style = formatsOf(given, key);
  return {
    cells: headings.flatMap((heading, c): readonly Cell[] => [
      { row: TOP, column: left + c, value: heading, style: look("subheading") },
      ...rows.map((row, r) => ({
        row: TOP + 1 + r,
        column: left + c,
        value: row[at(given, heading)] ?? null,
        ...style(heading),
      })),
    ]),
    table: {
      name: given.name,
      area: {
        row: TOP,
        column: left,
        rows: Math.max(1, rows.length) + 1,
        columns: headings.length,
      },
      columns: headings.map((heading) => ({ heading })),
    },
  };
}

/** The number formats of the table's columns as the book's own sheet shows them. */
const formatsOf = (
  given: Contents,
  key: TableKey,
): ((heading: string) => Pick<Cell, "style">) => {
  const { cells, tables } = farmBookSheet(bookTables[key], [given]);
  const [table] = tables;
  return (heading) => {
    const c = table?.columns.findIndex((one) => one.heading === heading) ?? -1;
    const cell = cells.find(
      ({ row, column }) =>
        table && row === table.area.row + 1 && column === table.area.column + c,
    );
    return { style: look("calculated", cell?.style?.format) };
  };
};
