import { fromHouse, unitNamed } from "../../measures/units";
import type { Book } from "../book";
import { isAgedKind } from "../aged-syrup";
import { newestDay } from "../newest-day";
import { bulkPrice } from "../bulk-price";
import { type Finding, listed } from "../finding";
import { sameName } from "../keys";
import { figure, gathered } from "./gathered";

/** What a product's cost needs and the book does not say. */
export function packingChecks(book: Book): readonly Finding[] {
  const names = (rows: readonly { readonly product: string }[]): string =>
    listed(rows.map((row) => row.product));
  const priced = new Set(book.partPrices.map((price) => sameName(price.part)));
  const packed = new Set(
    book.productMaterials.map((row) => sameName(row.product)),
  );
  return [
    ...gathered(
      book.parts.filter((part) => !priced.has(sameName(part.part))),
      {
        column: "Part",
        found: (rows) => `no price for ${listed(rows.map((row) => row.part))}`,
        meaning: "the cost of every product packed with it is withheld",
        todo: "add its price breaks to Part prices",
      },
    ),
    ...gathered(
      book.products.filter((row) => !packed.has(sameName(row.product))),
      {
        column: "Product",
        found: (rows) => `no materials for ${names(rows)}`,
        meaning: "its cost would lack bottle, cap, label and case",
        todo: "add its parts to Product materials",
      },
    ),
    ...gathered(
      book.products.filter((row) => row.fill < row.declared * (1 - 1e-9)),
      {
        column: "Fill mL at 68 °F",
        found: (rows) =>
          `filled below the label: ${listed(rows.map((row) => `${row.product} (${millilitres(row.fill)} of ${millilitres(row.declared)} mL)`))}`,
        meaning: "the bottle would hold less than its label promises",
        todo: "correct the fill, or the declared volume",
      },
    ),
    ...unpricedKinds(book),
    ...linesWithoutCrew(book),
  ];
}

function unpricedKinds(book: Book): readonly Finding[] {
  const day = newestDay(book);
  const unpriced = book.products.filter(
    (row) =>
      bulkPrice(book, row.syrupKind, day) === undefined &&
      !(isAgedKind(row.syrupKind) && book.oakBarrels.length > 0),
  );
  const kinds = [...new Set(unpriced.map((row) => row.syrupKind))];
  return kinds.flatMap((kind) =>
    gathered(
      unpriced.filter((row) => row.syrupKind === kind),
      {
        column: "Syrup kind",
        found: () => `no bulk price for ${kind} on the book's day`,
        meaning: `${listed(unpriced.filter((row) => row.syrupKind === kind).map((row) => row.product))} cannot be costed at today's price`,
        todo: `add a row for ${kind} to Bulk prices`,
      },
    ),
  );
}

function linesWithoutCrew(book: Book): readonly Finding[] {
  const manned = new Set(book.crew.map((row) => sameName(row.line)));
  return gathered(
    book.lines.filter((row) => !manned.has(sameName(row.line))),
    {
      column: "Line",
      found: (rows) => `no crew for ${listed(rows.map((row) => row.line))}`,
      meaning: "labour on the line cannot be costed",
      todo: "add the line's roles to Crew",
    },
  );
}

const millilitres = (litres: number): string =>
  figure(fromHouse(litres, unitNamed("mL")), 2);
