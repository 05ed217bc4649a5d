import { quoteBook } from "../../src/apps/cli/quote-workbook";
import { readBook } from "../../src/book/read";
import { quoteOf, type QuoteQuestion } from "../../src/book/quote";
import { as, type Money } from "../../src/measures/quantity";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import type { NamedPlace } from "../../src/sheets/costing/names";
import { demoTables } from "../book/csv-folder";

/** The quote of Bonus B and its neighbours: three quantities of the private label, with everything typed in. */
export const loftQuestion: QuoteQuestion = {
  product: "P250-LOFT",
  quantities: [300, 600, 1200],
  leftovers: "charged",
  goalOn: "full",
  artwork: as<Money>(240),
  spent: {
    oneTime: as<Money>(1500),
    fixedPerYear: as<Money>(1200),
    forecastPerYear: 2400,
  },
};

export const demoQuote = (question: QuoteQuestion) =>
  quoteOf(readBook(demoTables()).book, question);

export const demoQuoteBook = (question: QuoteQuestion, plain = false) =>
  quoteBook(demoTables(), question, plain);

/** The value of a place's cell, counted from its corner. */
export function valueIn(
  { sheets }: Workbook,
  place: NamedPlace | undefined,
  row = 0,
  column = 0,
): Stored | undefined {
  if (!place) throw new Error("no such name");
  return sheets
    .find(({ name }) => name === place.sheet)
    ?.cells.find(
      (cell) =>
        cell.row === place.row + row && cell.column === place.column + column,
    )?.value;
}

/** A figure of a matrix by the words before it. */
export function figureOf(
  workbook: Workbook,
  place: NamedPlace | undefined,
  label: string,
  column: number,
): Stored | undefined {
  if (!place) throw new Error("no such name");
  for (let row = 0; row < place.rows; row += 1)
    if (valueIn(workbook, place, row) === label)
      return valueIn(workbook, place, row, column);
  throw new Error(`no row "${label}"`);
}
