import { unusable } from "../measures/cannot-answer";
import type { Sheet, Workbook } from "../sheets/workbook";
import type { Change } from "./host";
import { filled, type Filled } from "./filled-cells";
import { grown, type Growth } from "./table-growth";

/** A workbook after a change, and what it takes to take that change back. */
export interface Changed {
  readonly workbook: Workbook;
  readonly growths: readonly Growth[];
  readonly fills: readonly Filled[];
}

/** Carries out the whole change on the model, or refuses the whole with a sentence. */
export function changedWorkbook(workbook: Workbook, change: Change): Changed {
  refuseTaken(workbook, change);
  let now: Workbook = {
    ...workbook,
    sheets: [...workbook.sheets, ...change.addSheets],
    names: [...workbook.names, ...change.names],
  };
  const growths: Growth[] = [];
  for (const { table, rows } of change.append) {
    if (rows.length === 0) continue;
    const { workbook: next, growth } = grown(now, table, rows);
    now = next;
    growths.push(growth);
  }
  const fills: Filled[] = [];
  for (const fill of change.fill ?? []) {
    const done = filled(now, fill);
    now = done.workbook;
    fills.push(done.filled);
  }
  return { workbook: now, growths, fills };
}

function refuseTaken(workbook: Workbook, change: Change): void {
  refuseTwice(
    workbook.sheets.map((sheet) => sheet.name),
    change.addSheets.map((sheet) => sheet.name),
    (name) => `there is already a sheet "${name}"`,
  );
  refuseTwice(
    [...workbook.names.map(({ name }) => name), ...tableNames(workbook.sheets)],
    [...change.names.map(({ name }) => name), ...tableNames(change.addSheets)],
    (name) => `the name ${name} is already taken in this workbook`,
  );
}

const tableNames = (sheets: readonly Sheet[]): readonly string[] =>
  sheets.flatMap((sheet) => sheet.tables.map((table) => table.name));

function refuseTwice(
  held: readonly string[],
  added: readonly string[],
  sentence: (name: string) => string,
): void {
  const taken = new Set(held.map((name) => name.toLowerCase()));
  for (const name of added) {
    if (taken.has(name.toLowerCase())) throw unusable(sentence(name));
    taken.add(name.toLowerCase());
  }
}
