import type { Contents } from "../../book/contents";
import { quoteOf, type QuoteQuestion, VALID_DAYS } from "../../book/quote";
import { readBook } from "../../book/read";
import { writeXlsx } from "../../hosts/file/write-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { farmBook } from "../../sheets/farm-book";
import { portable } from "../../sheets/portable";
import { quoteSheets } from "../../sheets/quote/quote-sheets";
import type { Language } from "../../sheets/words/language";
import { pageIn } from "../../sheets/words/french-page";
import type { Workbook } from "../../sheets/workbook";
import { gridFunctions } from "../grid-functions";

/** A quote as two files' bytes. */
export interface QuoteFiles {
  /** The farm book with the customer's page first and the costs behind it second: ours. */
  readonly whole: Uint8Array;
  /** The page alone, figures instead of formulas: nothing in it leads back to a cost. */
  readonly page: Uint8Array;
}

export async function quoteFiles(
  contents: readonly Contents[],
  question: QuoteQuestion,
  language: Language = "en",
): Promise<QuoteFiles> {
  const { workbook } = await calculate(
    quoteBook(contents, question),
    gridFunctions,
  );
  return {
    whole: await writeXlsx(workbook),
    page: await writeXlsx(pageAlone(workbook, language)),
  };
}

function pageAlone({ sheets }: Workbook, language: Language): Workbook {
  const [first] = sheets;
  if (!first) throw new Error("A quote has its page first");
  const page = pageIn(first, language);
  return {
    title: page.name,
    sheets: [
      { ...page, cells: page.cells.map(({ formula: _, ...cell }) => cell) },
    ],
    names: [],
  };
}

/** The same as a workbook whose formulas have no results yet; `plain` holds none of our functions. */
export function quoteBook(
  contents: readonly Contents[],
  question: QuoteQuestion,
  plain = false,
): Workbook {
  const quote = quoteOf(readBook(contents).book, question);
  const book = farmBook(contents);
  const { page, working, names } = quoteSheets({
    contents,
    product: quote.product.product,
    quantities: question.quantities,
    channel: quote.channel.name,
    leftovers: question.leftovers,
    goalOn: question.goalOn,
    validDays: question.validDays ?? VALID_DAYS,
    asOf: question.asOf,
    artwork: question.artwork,
    artworkLife: question.artworkLife,
    oneTime: question.spent?.oneTime,
    // None is a blank cell, not a typed 0.
    perYear: question.spent?.fixedPerYear || undefined,
    forecast: question.spent?.forecastPerYear,
    existingSheets: [],
    portable: plain,
  });
  const live: Workbook = {
    ...book,
    sheets: [page, working, ...book.sheets],
    names: [...book.names, ...names],
  };
  return plain ? portable(live) : live;
}
