import type { Book } from "../book";
import { bookSeason, overheadsOf } from "../book-days";
import { type Finding, listed } from "../finding";
import { isSameName } from "../keys";
import { energyFigure, setting } from "../setting";
import { gathered } from "./gathered";

/** Yearly bills and house figures that a full cost needs. */
export function overheadChecks(book: Book): readonly Finding[] {
  const season = bookSeason(book);
  const current = overheadsOf(book, season);
  return [
    ...(season !== undefined &&
    book.overheads.length > 0 &&
    current.length === 0
      ? [
          {
            where: `${book.overheads[0]?.place ?? ""}, Season`,
            found: `no overheads for ${season}`,
            meaning: `the book speaks of ${season}, so its full cost would carry no overheads at all`,
            todo: `add the bills of ${season} to Overheads`,
          },
        ]
      : []),
    ...gathered(
      current.filter(
        (row) =>
          row.shareToBulk === undefined &&
          /\b(bulk|totes?)\b/i.test(row.note ?? ""),
      ),
      {
        column: "Share to bulk",
        found: (rows) =>
          `blank, though the note speaks of bulk: ${listed(rows.map((row) => `${row.item} ("${row.note ?? ""}")`))}`,
        meaning: "all of the bill is charged to bottles",
        todo: "type the share that tote sales carry, for example 50 %",
      },
    ),
    ...missingFigures(
      "Settings",
      settingsNeeded.filter(
        (name) =>
          setting(book, name) === undefined &&
          !book.settings.some((row) => isSameName(row.setting, name)),
      ),
      book.settings.length > 0,
    ),
    ...missingFigures(
      "Energy",
      energyNeeded.filter(
        (name) =>
          energyFigure(book, name) === undefined &&
          !book.energy.some((row) => isSameName(row.item, name)),
      ),
      book.energy.length > 0,
    ),
  ];
}

const settingsNeeded = [
  "Farm",
  "House pounds per gallon",
  "Pack temperature",
  "Kettle working fill",
  "Kettle left-behind",
  "Count date",
] as const;

const energyNeeded = [
  "Kettle fuel",
  "Propane price",
  "Kettle efficiency",
  "Hold loss",
  "Start temperature",
  "Pack temperature",
] as const;

const missingFigures = (
  table: string,
  names: readonly string[],
  tableIsThere: boolean,
): readonly Finding[] =>
  names.length === 0 || !tableIsThere
    ? []
    : [
        {
          where: `table ${table}`,
          found: `no row for ${listed(names)}`,
          meaning: "sheets that need it will say so instead of giving a figure",
          todo: `add a row with that very name to ${table}`,
        },
      ];
