import type { Contents } from "../../book/contents";
import { newestDayFormula } from "../../book/newest-day";
import { USUAL_BILLS } from "../../book/overheads-answer";
import { serialOf } from "../../measures/read-date";
import { calendarOf } from "../../measures/read-date";
import { as, type DaySerial } from "../../measures/quantity";
import {
  bookColumn,
  bookRange,
  bookRows,
  mostOf,
  needBook,
  refuseSheet,
} from "../book-cells";
import { seasonBlock } from "../costing/overheads-block";
import type { ChartDescription } from "../model";
import { figureNames, figurePlaces, type Sources } from "../named-figures";
import { place } from "../place";
import type { NamedPlace } from "../costing/names";
import type { DefinedName, Sheet } from "../workbook";
import { billsBlock } from "./bills-block";
import {
  changeInputs,
  changesBlock,
  hoursBlock,
  machineBlock,
  sizesBlock,
} from "./line-blocks";
import { runRows } from "./run-rows";
import { askedBlock, verdictBlock, waysBlock } from "./ways-block";

export const OVERHEADS_SHEET = "Overheads by driver";

export interface OverheadsSheetQuestion {
  readonly contents: readonly Contents[];
  readonly existingSheets: readonly string[];
  readonly portable?: boolean;
  readonly asOf?: number;
  readonly run?: string;
  readonly bills?: string;
  readonly channel?: string;
}

const sources = {
  run: "run",
  asked: "asked",
  compared: "compared",
  ways: "ways",
  bills: "bills",
  glance: ["adds_up.label", "long_enough"],
  hours: "hours",
  changes: "changes",
  sizes: "sizes",
  runs: "runs",
} as const satisfies Sources<string>;

export type OverheadsKey = keyof typeof sources;

/** Where a workbook keeps its overheads by driver; empty without such a sheet. */
export const overheadsPlaces = (
  names: readonly DefinedName[],
): Partial<Readonly<Record<OverheadsKey, NamedPlace>>> =>
  figurePlaces("overheads", Object.keys(sources) as OverheadsKey[], names);

/**
 * Who carries the season's bills, the same bills under each driver, and what an hour and a change of each line cost,
 * as live formulas into the book. Refuses (#VALUE!) a workbook without the tables, and one that has such a sheet.
 */
export function overheadsSheet(question: OverheadsSheetQuestion): {
  readonly sheet: Sheet;
  readonly names: readonly DefinedName[];
} {
  const { contents, existingSheets, portable = false } = question;
  needBook(contents, "a sheet of overheads");
  refuseSheet(existingSheets, OVERHEADS_SHEET);
  const lines = Math.max(1, bookRows(contents, "lines"));
  const placed = place(
    {
      name: OVERHEADS_SHEET,
      tabColor: "#6f7d4a",
      widths: [
        46, 16, 18, 14, 14, 14, 14, 14, 26, 12, 12, 12, 12, 14, 12, 12, 8,
      ],
      frozenRows: 1,
      charts: [bottleChart],
      print: {
        paper: "letter",
        landscape: true,
        fit: "one page wide",
        headings: { first: 0, rows: 1 },
        foot: OVERHEADS_SHEET,
      },
      blocks: [
        {
          kind: "title",
          content: { formula: '="Overheads of "&{season}&" by driver"' },
        },
        {
          kind: "notes",
          lines: [
            "Yellow cells are yours to change. What a bottle carries of a bill depends on what it is shared by: look at more than one way before a price is set.",
          ],
        },
        askedBlock({
          day: question.asOf ?? newestDayFormula(contents),
          run: question.run,
          bills: question.bills ?? USUAL_BILLS,
          channel: question.channel ?? valuingChannel(contents),
          channels: bookRange(contents, "channels", "channel"),
        }),
        waysBlock,
        { kind: "notes", lines: ["", "", ""] },
        verdictBlock,
        billsBlock(mostOf(bookColumn(contents, "overheads", "season")) + 4),
        hoursBlock(lines),
        changeInputs,
        sizesBlock,
        changesBlock(lines),
        machineBlock,
        seasonBlock(),
        runRows(mostRuns(contents) + 8),
      ],
    },
    { portable },
  );
  return {
    sheet: placed.sheet,
    names: figureNames("overheads", placed, sources),
  };
}

const bottleChart: ChartDescription = {
  kind: "bars",
  title: "The same bills in a bottle, shared each way",
  says: "Cents a bottle of the run carries of the bills compared, as listed under The same bills, shared each way.",
  categories: "{ways.runs.label..ways.revenue.label}",
  series: [
    {
      name: "¢ a bottle",
      values: "{ways.runs.per_bottle..ways.revenue.per_bottle}",
      color: "#6f7d4a",
    },
  ],
  format: "0.0",
  beside: "ways",
  rows: 12,
  columns: 6,
};

/** The first channel that leaves a shop its margin, else the first of all. */
function valuingChannel(contents: readonly Contents[]): string {
  const names = bookColumn(contents, "channels", "channel").map((cell) =>
    String(cell ?? "").trim(),
  );
  const margins = bookColumn(contents, "channels", "buyerMargin").map(Number);
  return names.find((_, i) => (margins[i] ?? 0) > 0) ?? names[0] ?? "";
}

/** Runs of the busiest year; a date that is no number is left to the findings. */
const mostRuns = (contents: readonly Contents[]): number =>
  mostOf(
    bookColumn(contents, "runs", "date").map((cell) => yearOf(cell) ?? null),
  );

function yearOf(cell: unknown): number | undefined {
  if (typeof cell === "number" && cell > serialOf(1900, 3, 1))
    return calendarOf(as<DaySerial>(Math.floor(cell))).year;
  const year = /^(\d{4})-/.exec(String(cell ?? ""))?.[1];
  return year === undefined ? undefined : Number(year);
}
