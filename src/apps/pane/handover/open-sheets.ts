import { newestDayIn } from "../../../book/newest-day";
import type { Host } from "../../../hosts/host";
import { unusable } from "../../../measures/cannot-answer";
import { isoDate } from "../../../measures/read-date";
import { costingNames } from "../../../sheets/costing/names";
import { farmName } from "../../../sheets/farm-book";
import { liveSheets } from "../../../sheets/handover/asked-sheets";
import type { CopyQuestion } from "../../../sheets/handover/copy";
import { figuresOf } from "../../../sheets/handover/figures";
import { type Asked, askedText } from "../../../sheets/handover/read-asked";
import type { SheetToCopy } from "../../../sheets/handover/sheet-to-copy";
import { priceListNames } from "../../../sheets/prices/names";
import { quoteNames } from "../../../sheets/quote/names";
import { toteNames } from "../../../sheets/totes/names";
import type { Sheet, Stored } from "../../../sheets/workbook";
import type { OpenBook } from "../open-book";
import { productsOf } from "../price/products";

/** A sheet of the open workbook that a copy can be made of. */
export interface Offered {
  readonly asked: Asked;
  readonly words: string;
  /** How many quantities a quote has. */
  readonly quantities?: number;
}

/** The costings, price list, quotes and statement this workbook has. */
export async function offered(
  host: Pick<Host, "readArea">,
  book: OpenBook,
): Promise<readonly Offered[]> {
  const products = productsOf(book.tables).map(({ code }) => code);
  const statement = toteNames(book.names).statement_buyer;
  const buyer = statement
    ? (
        await host.readArea(
          statement.sheet,
          statement.row,
          statement.column,
          1,
          1,
        )
      )[0]?.[0]
    : undefined;
  return [
    ...products
      .filter((of) => costingNames(book.names, of).full_replacement)
      .map((of) => ({
        asked: { kind: "costing" as const, of },
        words: `Costing of ${of}`,
      })),
    ...(priceListNames(book.names).list
      ? [{ asked: { kind: "prices" as const }, words: "Price list" }]
      : []),
    ...products.flatMap((of) => {
      const { quantities } = quoteNames(book.names, of);
      return quantities
        ? [
            {
              asked: { kind: "quote" as const, of },
              words: `Quote for ${of}`,
              quantities: quantities.rows * quantities.columns,
            },
          ]
        : [];
    }),
    ...(typeof buyer === "string" && buyer !== ""
      ? [
          {
            asked: { kind: "totes" as const, of: buyer },
            words: `Statement of ${buyer}`,
          },
        ]
      : []),
  ];
}

/**
 * The chosen sheets as they are laid out and as their cells now stand. Refuses (#VALUE!) a sheet that no longer stands as
 * it was built.
 */
export async function openSheets(
  host: Pick<Host, "readArea">,
  book: OpenBook,
  chosen: readonly Offered[],
): Promise<Omit<CopyQuestion, "audience" | "ticks">> {
  const day = newestDayIn(book.tables);
  const built = chosen.map(({ asked, quantities = 1 }) =>
    liveSheets(book.tables, [asked], {
      // Only how many there are decides where things stand.
      bottles: Array.from({ length: quantities }, (_, i) => i + 1),
    }),
  );
  const parties = built.flatMap(({ sheets }) =>
    sheets.flatMap(({ about }) => about),
  );
  const sheets = await Promise.all(
    built.flatMap((one) =>
      one.sheets.map(async (sheet): Promise<SheetToCopy> => {
        const values = await readSheet(host, sheet.placed.sheet);
        refuseMoved(sheet, values);
        return {
          ...sheet,
          valueAt: values,
          ...(sheet.kind === "prices"
            ? { about: parties, ...partyRows(book, chosen) }
            : {}),
        };
      }),
    ),
  );
  const names = new Set(sheets.map(({ placed }) => placed.sheet.name));
  const others = built
    .flatMap(({ workbook }) => workbook.sheets)
    .filter(
      (sheet) =>
        sheet.tables.length === 0 &&
        !names.has(sheet.name) &&
        book.sheets.includes(sheet.name),
    );
  const read = await Promise.all(others.map((sheet) => readSheet(host, sheet)));
  return {
    contents: book.tables,
    farm: farmName(book.tables),
    day: day === undefined ? "" : isoDate(day),
    sheets,
    otherFigures: others.flatMap((sheet, i) =>
      sheet.cells.flatMap(({ row, column }) => {
        const value = read[i]?.(row, column);
        return typeof value === "number" ? [value] : [];
      }),
    ),
  };
}

/** With a customer's costing beside it, the price list may show that customer's products. */
function partyRows(
  book: OpenBook,
  chosen: readonly Offered[],
): Pick<SheetToCopy, "topicOfRow"> {
  const { sheets } = liveSheets(
    book.tables,
    chosen.map(({ asked }) => asked),
    { bottles: [1] },
  );
  const list = sheets.find(({ kind }) => kind === "prices");
  return list?.topicOfRow ? { topicOfRow: list.topicOfRow } : {};
}

type ValueAt = (row: number, column: number) => Stored;

async function readSheet(
  host: Pick<Host, "readArea">,
  { name, cells }: Sheet,
): Promise<ValueAt> {
  const rows = cells.reduce((most, { row }) => Math.max(most, row + 1), 1);
  const columns = cells.reduce(
    (most, { column }) => Math.max(most, column + 1),
    1,
  );
  const values = await host.readArea(name, 0, 0, rows, columns);
  return (row, column) => values[row]?.[column] ?? null;
}

function refuseMoved(
  { placed, kind, asked }: Omit<SheetToCopy, "valueAt">,
  valueAt: ValueAt,
): void {
  const held = new Set(
    figuresOf(placed).map(({ row, column }) => `${row},${column}`),
  );
  const moved = placed.sheet.cells.some(
    ({ row, column, value }) =>
      column === 0 &&
      typeof value === "string" &&
      !held.has(`${row},${column}`) &&
      valueAt(row, column) !== value,
  );
  if (moved)
    throw unusable(
      `${placed.sheet.name} no longer stands as it was built, or the book has grown past it: delete it and build the ${kind === "prices" ? "price list" : askedText({ kind, of: asked.split(":").slice(1).join(":") })} anew`,
    );
}
