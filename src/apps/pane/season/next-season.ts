import type { Contents } from "../../../book/contents";
import { newestDayIn } from "../../../book/newest-day";
import type { CarriedBalance } from "../../../book/season-roll/opening";
import {
  openingOf,
  rollSeason,
  type SeasonRoll,
} from "../../../book/season-roll/roll-season";
import { calendarOf } from "../../../measures/read-date";
import { as, type DaySerial } from "../../../measures/quantity";
import { isBookTable } from "../../../sheets/season-roll/left-behind";
import { nextBook } from "../../../sheets/season-roll/next-book";
import { openingName } from "../../../sheets/season-roll/opening-sheet";
import { tablesOf } from "../../../sheets/tables-of";
import { sentenceOf, type OpenBook } from "../open-book";
import { sentence } from "../sentence";
import { fileOf, type WorkOut } from "../work-out";

/** The seasons a book can be rolled to, the likelier first; none for a book without a date. */
export function seasonsToOpen(tables: readonly Contents[]): readonly number[] {
  const newest = newestDayIn(tables);
  if (newest === undefined) return [];
  const { year } = calendarOf(as<DaySerial>(newest));
  return [year + 1, year];
}

/** What a roll would bring, or the sentence that says why there can be none: differences stop it. */
export type PlannedRoll =
  | {
      readonly roll: SeasonRoll;
      readonly balances: readonly CarriedBalance[];
    }
  | { readonly trouble: string };

export function plannedRoll(
  tables: readonly Contents[],
  season: number,
): PlannedRoll {
  try {
    const roll = rollSeason(tables, season);
    return { roll, balances: openingOf(roll, roll.contents) };
  } catch (problem) {
    // The pane has no options to name.
    return {
      trouble: sentence(sentenceOf(problem).replace(/^--season /, "Season ")),
    };
  }
}

/** Sheets of the workbook with no table of the book on them: they are not carried. */
export const sheetsLeft = (
  { sheets, tables }: Pick<OpenBook, "sheets" | "tables">,
  season: number,
): readonly string[] => {
  const carried = tables.filter(isBookTable).map(({ sheet }) => sheet);
  return sheets.filter(
    (name) => !carried.includes(name) && name !== openingName(season),
  );
};

/** The new book's file; its opening figures are read once more from these very bytes. */
export async function nextBookFile(
  roll: SeasonRoll,
  workOut: WorkOut | undefined,
): Promise<Uint8Array> {
  const bytes = await fileOf(nextBook(roll), workOut);
  const { readXlsx } = await import("../../../hosts/file/read-xlsx");
  const { workbook } = await readXlsx(bytes, "the new book");
  openingOf(roll, tablesOf(workbook));
  return bytes;
}
