import type { Contents } from "../../book/contents";
import { newestDayIn } from "../../book/newest-day";
import { calculate } from "../../hosts/grid/calculate";
import { unusable } from "../../measures/cannot-answer";
import { as, type DaySerial } from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";
import { farmName } from "../../sheets/farm-book";
import { liveSheets } from "../../sheets/handover/asked-sheets";
import type { Audience, Ticks } from "../../sheets/handover/audiences";
import { type Copy, copyFor } from "../../sheets/handover/copy";
import type { Asked } from "../../sheets/handover/read-asked";
import type { SheetToCopy } from "../../sheets/handover/sheet-to-copy";
import { valuesIn } from "../../sheets/handover/values-in";
import { tablesOf } from "../../sheets/tables-of";
import type { Workbook } from "../../sheets/workbook";
import { gridFunctions } from "../grid-functions";

export interface HandoverQuestion {
  readonly asked: readonly Asked[];
  readonly bottles?: readonly number[];
  readonly asOf?: DaySerial;
}

/** The sheets asked for over the book, worked out. */
export interface WorkedOut {
  readonly live: Workbook;
  readonly day: string;
  readonly sheets: readonly SheetToCopy[];
}

/** Builds the sheets asked for and works them out. Refuses (#VALUE!) what the book does not have. */
export async function workedOut(
  contents: readonly Contents[],
  { asked, bottles, asOf }: HandoverQuestion,
): Promise<WorkedOut> {
  const day = asOf ?? newestDayIn(contents);
  if (day === undefined)
    throw unusable(
      "The book has no date, so a copy cannot say what day it is of",
    );
  const built = liveSheets(contents, asked, {
    ...(bottles ? { bottles } : {}),
    ...(asOf === undefined ? {} : { asOf }),
  });
  const { workbook } = await calculate(built.workbook, gridFunctions);
  const values = valuesIn(workbook);
  return {
    live: workbook,
    day: isoDate(as<DaySerial>(day)),
    sheets: built.sheets.map((sheet) => ({
      ...sheet,
      valueAt: values(sheet.placed.description.name),
    })),
  };
}

/** The copy of worked-out sheets for one audience. */
export function handoverCopy(
  { live, day, sheets }: WorkedOut,
  audience: Audience,
  ticks: Ticks,
): Copy {
  // What the book works out in its own tables, a loaded wage for one, is as much its own as what is typed there.
  const contents = tablesOf(live);
  const chosen = sheets.map(({ placed }) => placed.description.name);
  return copyFor({
    contents,
    audience,
    ticks,
    farm: farmName(contents),
    day,
    sheets,
    otherFigures: live.sheets
      .filter(
        ({ name, tables }) => tables.length === 0 && !chosen.includes(name),
      )
      .flatMap(({ cells }) =>
        cells.flatMap(({ value }) =>
          typeof value === "number" ? [value] : [],
        ),
      ),
  });
}
