import { bookTables } from "../../../book/book";
import type { Column } from "../../../book/table";
import { readCell } from "../../../functions/read-cell";
import type { TableContents, TableRows } from "../../../hosts/host";
import { gallonIn, withWhereToSay } from "../../../book/gallon";
import type { Gallon } from "../../../measures/gallon";
import { CannotAnswer, unusable } from "../../../measures/cannot-answer";
import { readNumber } from "../../../measures/read-number";
import { fromHouse, unitNamed } from "../../../measures/units";
import type { CellValue } from "../../../sheets/workbook";
import type { CellTerm } from "../../../terms/term";
import { readBottles } from "../price/bottles";
import { tableRows } from "../table-rows";
import type { Draft } from "./draft";
import { productFields, slots } from "./slots";

/** The rows a draft becomes. */
export interface NewRows {
  readonly product: string;
  readonly bottles: number;
  readonly products: TableRows;
  readonly materials: TableRows;
  readonly prices: TableRows;
}

/** Sentences by field name ("product", "parts.container", "prices.Farm counter", "bottles"). */
export type Troubles = Readonly<Record<string, string>>;

/** Reads the whole form; every field that cannot be used gets its own sentence, and then there are no rows. */
export function readDraft(
  draft: Draft,
  tables: readonly TableContents[],
): { readonly rows?: NewRows; readonly troubles: Troubles } {
  const troubles: Record<string, string> = {};
  const read = <T>(field: string, how: () => T): T | undefined => {
    try {
      return how();
    } catch (problem) {
      if (!(problem instanceof CannotAnswer)) throw problem;
      troubles[field] = withWhereToSay(problem.message);
      return undefined;
    }
  };
  const gallon = gallonIn(tables);
  const code = draft.fields.product.trim();
  const products: Record<string, CellValue> = {};
  const columns: Readonly<Record<string, Column>> = bookTables.products.columns;
  for (const field of productFields) {
    const column = columns[field];
    if (!column) continue;
    const value = read(field, () =>
      cellOf(column, draft.fields[field], gallon),
    );
    if (value !== undefined && value !== null) products[column.heading] = value;
  }
  if (
    tableRows(tables, "Products").some((r) => sameCode(r.text("Product"), code))
  )
    troubles["product"] = `There is already a product ${code}.`;
  const materials = slots.flatMap((slot): readonly MaterialRow[] => {
    const { part, quantity } = draft.parts[slot.key];
    const field = `parts.${slot.key}`;
    if (part === "") {
      if ("needed" in slot)
        troubles[field] = `Choose a ${slot.label.toLowerCase()}.`;
      return [];
    }
    const pieces = read(field, () =>
      readCell(
        bookTables.productMaterials.columns.quantity.term,
        needed(quantity, "Type how many."),
        slot.label,
      ),
    );
    return typeof pieces === "number"
      ? [{ Product: code, Part: part, Quantity: pieces, Per: slot.per }]
      : [];
  });
  const from = read("pricesFrom", () =>
    readCell(
      bookTables.prices.columns.validFrom.term,
      needed(draft.pricesFrom, "Type a date such as 2026-11-25."),
      "Valid from",
    ),
  );
  const prices = Object.entries(draft.prices).flatMap(([channel, typed]) => {
    if (typed.trim() === "") return [];
    const price = read(`prices.${channel}`, () =>
      readCell(bookTables.prices.columns.price.term, typed, channel),
    );
    return typeof price === "number" && typeof from === "number"
      ? [{ Product: code, Channel: channel, Price: price, "Valid from": from }]
      : [];
  });
  const bottles = read("bottles", () => readBottles(draft.bottles));
  if (Object.keys(troubles).length > 0 || bottles === undefined)
    return { troubles };
  return {
    troubles,
    rows: {
      product: code,
      bottles,
      products: [products],
      materials: together(materials),
      prices,
    },
  };
}

function needed(typed: string, sentence: string): string {
  if (typed.trim() === "") throw unusable(sentence);
  return typed.trim();
}

/**
 * The value for the worksheet: the term checks it, and a quantity is then written in the column's own unit.
 * Blank stays blank where it may.
 */
function cellOf(column: Column, typed: string, gallon: Gallon): CellValue {
  const written = typed.trim();
  if (written === "") {
    if (column.mayBeBlank || column.blankIs !== undefined) return null;
    throw unusable(
      `Needed: ${column.term.about}, like ${column.term.example}.`,
    );
  }
  const read = readCell(column.term, written, column.term.label, gallon);
  return asWritten(column.term, read, written);
}

function asWritten(term: CellTerm, read: unknown, written: string): CellValue {
  if (term.kind === "yes or no") return read === true ? "yes" : "no";
  if (term.kind === "quantity" && typeof read === "number")
    return inStatedUnit(term.unit, written, read);
  return typeof read === "number" || typeof read === "string" ? read : written;
}

/** A plain number is already in the stated unit and is kept to the last digit typed; "12 fl oz" is turned into it. */
function inStatedUnit(unit: string, written: string, house: number): CellValue {
  return /^[\d.,\s]+$/.test(written)
    ? readNumber(written, unit)
    : Number(fromHouse(house, unitNamed(unit)).toPrecision(10));
}

/** The same part twice in the same place is one row with both quantities. */
function together(rows: readonly MaterialRow[]): readonly MaterialRow[] {
  return rows.reduce<readonly MaterialRow[]>((all, row) => {
    const same = all.find((r) => r.Part === row.Part && r.Per === row.Per);
    return same
      ? all.map((r) =>
          r === same ? { ...r, Quantity: r.Quantity + row.Quantity } : r,
        )
      : [...all, row];
  }, []);
}

type MaterialRow = {
  readonly Product: string;
  readonly Part: string;
  readonly Quantity: number;
  readonly Per: string;
};

const sameCode = (a: string, b: string): boolean =>
  a.toLowerCase() === b.toLowerCase() && a !== "";
