import type { Book } from "../../book/book";
import type { Contents } from "../../book/contents";
import { isSameName, sameName } from "../../book/keys";
import { quoteOf, VALID_DAYS } from "../../book/quote";
import { readBook } from "../../book/read";
import { usualRun } from "../../book/usual-run";
import { unusable } from "../../measures/cannot-answer";
import { bookColumn } from "../book-cells";
import { costingSheet } from "../costing/costing-sheet";
import { farmBook } from "../farm-book";
import type { PlacedSheet } from "../place";
import { priceListSheets } from "../prices/price-list-sheets";
import { quoteSheets } from "../quote/quote-sheets";
import { toteSheets } from "../totes/totes-sheets";
import type { Sheet, Workbook } from "../workbook";
import { type Asked, askedText } from "./read-asked";
import type { SheetToCopy } from "./sheet-to-copy";
import type { Topic } from "./topics";

export interface Live {
  /** The book with the sheets asked for, its formulas without results. */
  readonly workbook: Workbook;
  readonly sheets: readonly Omit<SheetToCopy, "valueAt">[];
}

/** Builds the sheets asked for over the book. Refuses (#VALUE!) a product or buyer the book does not have. */
export function liveSheets(
  contents: readonly Contents[],
  asked: readonly Asked[],
  how: { readonly bottles?: readonly number[]; readonly asOf?: number } = {},
): Live {
  const book = farmBook(contents);
  const { book: read } = readBook(contents);
  const parties = asked.flatMap(({ kind, of }) =>
    of !== undefined && (kind === "costing" || kind === "quote")
      ? wordsOf(contents, of).slice(-1)
      : [],
  );
  const built = asked.map((one) => {
    const { kind, of = "" } = one;
    switch (kind) {
      case "costing":
        return costing(
          contents,
          one,
          how.bottles?.[0] ?? usualRun(read, of),
          how.asOf,
        );
      case "quote":
        return quote(contents, read, one, how.bottles, how.asOf);
      case "prices":
        return priceList(contents, one, parties, how.asOf);
      case "totes":
        return statement(contents, one, how.asOf);
    }
  });
  return {
    workbook: {
      ...book,
      sheets: [...built.flatMap(({ sheets }) => sheets), ...book.sheets],
      names: [...book.names, ...built.flatMap(({ names }) => names)],
    },
    sheets: built.map(({ copy }) => copy),
  };
}

interface Built {
  readonly sheets: readonly Sheet[];
  readonly names: Workbook["names"];
  readonly copy: Live["sheets"][number];
}

function costing(
  contents: readonly Contents[],
  asked: Asked,
  bottles: number,
  asOf: number | undefined,
): Built {
  const product = asked.of ?? "";
  const { sheet, names, placed } = costingSheet({
    contents,
    product,
    bottles,
    existingSheets: [],
  });
  return {
    sheets: [asOf === undefined ? sheet : withTyped(placed, "as_of", asOf)],
    names,
    copy: {
      kind: "costing",
      asked: askedText(asked),
      placed,
      product,
      about: wordsOf(contents, product),
    },
  };
}

/** The sheet with something typed into one of its cells. */
function withTyped(
  { sheet, places }: PlacedSheet,
  name: string,
  value: number | string,
): Sheet {
  const at = places.get(name);
  return {
    ...sheet,
    cells: sheet.cells.map(({ formula, ...cell }) =>
      cell.row === at?.row && cell.column === at.column
        ? { ...cell, value }
        : { ...cell, ...(formula === undefined ? {} : { formula }) },
    ),
  };
}

function statement(
  contents: readonly Contents[],
  asked: Asked,
  asOf: number | undefined,
): Built {
  const wanted = (asked.of ?? "").toLowerCase();
  const buyer = bookColumn(contents, "invoices", "customer")
    .map((cell) => String(cell ?? "").trim())
    .find((name) => name.toLowerCase() === wanted);
  if (buyer === undefined)
    throw unusable(`${askedText(asked)}: there is no invoice for this buyer`);
  const { sheets, names, placed } = toteSheets({
    contents,
    existingSheets: [],
    ...(asOf === undefined ? {} : { asOf }),
  });
  const own = placed.statement;
  return {
    sheets: sheets.map((sheet) =>
      sheet.name === own.sheet.name ? withTyped(own, "buyer", buyer) : sheet,
    ),
    names,
    copy: {
      kind: "totes",
      asked: askedText(asked),
      placed: own,
      about: [buyer],
    },
  };
}

function quote(
  contents: readonly Contents[],
  book: Book,
  asked: Asked,
  bottles: readonly number[] | undefined,
  asOf: number | undefined,
): Built {
  const product = asked.of ?? "";
  const run = usualRun(book, product);
  const quantities = bottles ?? [
    Math.max(1, Math.round(run / 2)),
    run,
    run * 2,
  ];
  const terms = { leftovers: "charged", goalOn: "full" } as const;
  const found = quoteOf(book, { product, quantities, ...terms });
  const { page, working, placed, names } = quoteSheets({
    contents,
    product: found.product.product,
    quantities,
    channel: found.channel.name,
    ...terms,
    validDays: VALID_DAYS,
    asOf,
    artwork: undefined,
    artworkLife: undefined,
    oneTime: undefined,
    perYear: undefined,
    forecast: undefined,
    existingSheets: [],
  });
  return {
    sheets: [page, working],
    names,
    copy: {
      kind: "quote",
      asked: askedText(asked),
      placed,
      product,
      about: wordsOf(contents, product),
    },
  };
}

function priceList(
  contents: readonly Contents[],
  asked: Asked,
  parties: readonly string[],
  asOf: number | undefined,
): Built {
  const { list, working, names, placed } = priceListSheets({
    contents,
    existingSheets: [],
    ...(asOf === undefined ? {} : { asOf }),
  });
  const owners = texts(contents, "labelOwner").map(sameName);
  const topicOfRow = (table: string, index: number): Topic | undefined => {
    const owner = owners[index] ?? "";
    return table !== "list" ||
      owner === "" ||
      owner === "own" ||
      parties.some((party) => sameName(party) === owner)
      ? undefined
      : "other customers";
  };
  return {
    sheets: [list, working],
    names,
    copy: {
      kind: "prices",
      asked: askedText(asked),
      placed,
      topicOfRow,
      about: parties,
    },
  };
}

/** A product's code, what it is and whose label it bears. */
function wordsOf(
  contents: readonly Contents[],
  product: string,
): readonly string[] {
  const at = texts(contents, "product").findIndex((code) =>
    isSameName(code, product),
  );
  return (["product", "description", "labelOwner"] as const).map(
    (key) => texts(contents, key)[at] ?? "",
  );
}

const texts = (
  contents: readonly Contents[],
  key: "product" | "description" | "labelOwner",
): readonly string[] =>
  bookColumn(contents, "products", key).map((cell) =>
    String(cell ?? "").trim(),
  );
