import { openingOf, type SeasonRoll } from "../../book/season-roll/roll-season";
import { farmBook } from "../farm-book";
import type { Workbook } from "../workbook";
import { openingSheet } from "./opening-sheet";

/** The next season's book with the record of its opening. Refuses (#VALUE!) a book that would not open as the old one closes. */
export function nextBook(rolled: SeasonRoll): Workbook {
  const { season, closingDay, contents } = rolled;
  const book = farmBook(contents);
  const opening = openingSheet(season, closingDay, openingOf(rolled, contents));
  return { ...book, sheets: [...book.sheets, opening] };
}
