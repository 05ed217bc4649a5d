import type { CarriedBalance } from "../../book/season-roll/opening";
import { type DaySerial } from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";
import { amount, printedSheet } from "../binder/printed-page";
import type { Sheet } from "../workbook";

export const openingName = (season: number): string => `Opening ${season}`;

/** The record of a season's opening: every balance as the old book closed with it and the new one opened, frozen. */
export const openingSheet = (
  season: number,
  closing: DaySerial,
  balances: readonly CarriedBalance[],
): Sheet =>
  printedSheet({
    name: openingName(season),
    title: `Opening of season ${season}`,
    asides: [
      `Closing is what the book of ${season - 1} came to on ${isoDate(closing)}, opening what this book's own tables came to when it was made.`,
      `A record: it does not change with the season. What was drawn from a lot before stands as one draw in Lot use, "used before ${season}".`,
    ],
    tables: [
      {
        title: "Carried",
        columns: [
          { label: "What" },
          { label: "Of" },
          { label: "Closing", format: amount },
          { label: "Opening", format: amount },
          { label: "Unit" },
          { label: "Difference", format: amount },
        ],
        rows: balances.map(
          ({ what, name, unit, closing: was, opening: is }) => [
            what,
            name,
            was,
            is,
            unit,
            { formula: "=ROUND({3}-{2},5)" },
          ],
        ),
        none: "Nothing is left, owed or promised.",
      },
    ],
    widths: [34, 34, 14, 14, 10, 12],
    landscape: false,
    foot: `Opening of season ${season}`,
  });
