import type { BookTrace } from "../../../book/totes-trace";
import { bookTables } from "../../../book/book";
import { contentsOf } from "../../../book/contents";
import type { Change } from "../../../hosts/host";
import type { DaySerial } from "../../../measures/quantity";
import { addedToteSheets } from "../../../sheets/totes/added-sheets";
import { recallSheet } from "../../../sheets/totes/recall-sheet";
import { toteSheets } from "../../../sheets/totes/totes-sheets";
import type { OpenBook } from "../open-book";

/** A change that adds the tote register and its sheets, and the tables a workbook lacks for them. */
export function toteSheetsChange({ tables, sheets }: OpenBook): Change {
  const isFarmBook = contentsOf(tables, bookTables.toteShipments) !== undefined;
  const added = isFarmBook
    ? toteSheets({ contents: tables, existingSheets: sheets })
    : addedToteSheets(tables, sheets);
  return {
    says: "the tote register and its sheets",
    append: [],
    addSheets: added.sheets,
    names: added.names,
  };
}

/** A change that adds the recall list of a trace, under a name that is free. */
export function recallChange(
  found: BookTrace,
  asOf: DaySerial,
  startedAt: Date,
  { sheets }: OpenBook,
): Change & { readonly sheet: string } {
  const made = recallSheet({
    found,
    asOf,
    startedAt: worksheetTime(startedAt),
  });
  const taken = new Set(sheets.map((name) => name.toLowerCase()));
  let sheet = made.name;
  for (let n = 2; taken.has(sheet.toLowerCase()); n += 1)
    sheet = `${made.name.slice(0, 27)} ${n}`;
  return {
    says: `the sheet “${sheet}”`,
    append: [],
    addSheets: [{ ...made, name: sheet }],
    names: [],
    sheet,
  };
}

/** Day and time as a worksheet counts them, by this computer's clock. */
const worksheetTime = (at: Date): number =>
  (at.getTime() - at.getTimezoneOffset() * 60_000) / 86_400_000 + 25_569;
