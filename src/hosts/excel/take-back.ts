import { unusable } from "../../measures/cannot-answer";
import { digestOf, type Kept, type WriteRecord } from "../../sheets/kept";
import type { Cell } from "../../sheets/workbook";
import { inputs, onlyOneLeft, rowsChanged, typedIn } from "../taken-back";
import { loadEmptied, loadFillChanged } from "./fills";
import type { Load } from "./in-excel";
import { keep, loadKept } from "./kept-part";
import { reachesBelow } from "./load-change";
import { sheetOrNone } from "./read-workbook";
import { loadIsSettled, settled } from "./settling";
import { cellProperties, formulaIn, storedIn } from "./stored-value";
import { rowsDigest } from "./write-change";

/** Refuses when somebody has typed over what the write put in, or when it cannot go. */
export const loadTypedOver =
  (record: WriteRecord): Load<void> =>
  (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name,items/visibility");
    const sheets = record.sheets.map(({ name, digest }) => {
      const sheet = sheetOrNone(context, name);
      const used = sheet.getUsedRangeOrNullObject(true);
      used.load(`rowIndex,columnIndex,${cellProperties}`);
      return () => {
        if (sheet.isNullObject) return;
        if (digestOf(inputs(cellsIn(used))) !== digest) throw typedIn(name);
      };
    });
    const growths = record.growths.map((growth) => {
      const table = context.workbook.tables.getItemOrNullObject(growth.table);
      table.load("name,showTotals");
      const body = table.getDataBodyRange();
      body.load(`rowIndex,columnIndex,rowCount,${cellProperties}`);
      const everything = table
        .getRange()
        .getEntireColumn()
        .getUsedRangeOrNullObject(true);
      everything.load("rowIndex,rowCount");
      return () => {
        if (table.isNullObject) throw rowsChanged(growth.table);
        const end = body.rowIndex + body.rowCount + (table.showTotals ? 1 : 0);
        if (reachesBelow(everything, end))
          throw unusable(
            `the rows added to ${growth.table} stay, because taking them out would move what now stands below them`,
          );
        const from = growth.offset - 1;
        const rows = cellsIn(body).filter(
          ({ row }) => row >= body.rowIndex + from,
        );
        const expected = Math.max(from + growth.rows, growth.rowsBefore - 1);
        if (
          body.rowCount !== expected ||
          rowsDigest([corner(body, from), ...rows]) !== growth.digest
        )
          throw rowsChanged(growth.table);
      };
    });
    const fills = (record.fills ?? []).map((fill) =>
      loadFillChanged(fill, cellsIn)(context),
    );
    return () => {
      for (const check of [...sheets, ...growths, ...fills]) check();
      const added = new Set(record.sheets.map(({ name }) => name));
      const stays = worksheets.items.some(
        ({ name, visibility }) => !added.has(name) && visibility === "Visible",
      );
      if (added.size > 0 && !stays) throw onlyOneLeft();
    };
  };

/**
 * Takes out whatever of the write is there. Two requests: what is there, and out with it. `kept` is what the workbook
 * remembers then; undefined when it remembered nothing before.
 */
export async function takeOut(
  context: Excel.RequestContext,
  record: WriteRecord,
  kept: Kept | undefined,
  how: { readonly hasFailed?: boolean } = {},
): Promise<void> {
  const { workbook } = context;
  const sheets = record.sheets.map(({ name }) => sheetOrNone(context, name));
  const names = record.names.map((name) => {
    const item = workbook.names.getItemOrNullObject(name);
    item.load("name");
    return item;
  });
  const tables = record.growths.map(({ table: name }) => {
    const table = workbook.tables.getItemOrNullObject(name);
    table.load("name,showTotals");
    const body = table.getDataBodyRange();
    body.load("rowCount");
    return { table, body };
  });
  const fills = (record.fills ?? []).map((fill) => loadEmptied(fill)(context));
  const part = loadKept(context);
  await context.sync();
  workbook.application.suspendApiCalculationUntilNextSync();
  for (const [i, growth] of record.growths.entries()) {
    const found = tables[i];
    if (!found || found.table.isNullObject) continue;
    const leftOut = shrink(found.body, growth);
    // Blank before the write, so whatever of it landed below the table may be cleared; below its totals nothing lands.
    if (how.hasFailed && leftOut > 0 && !found.table.showTotals)
      found.body
        .getRow(0)
        .getOffsetRange(growth.rowsBefore - 1, 0)
        .getResizedRange(leftOut - 1, 0)
        .clear("Contents");
  }
  for (const empty of fills) empty();
  for (const name of names) if (!name.isNullObject) name.delete();
  for (const sheet of sheets) if (!sheet.isNullObject) sheet.delete();
  keep(context, kept, part());
  const isSettled = loadIsSettled(context);
  await context.sync();
  await settled(context, isSettled);
}

/** The table as long as it was; tells how many of the new rows were not in it. */
function shrink(
  body: Excel.Range,
  { offset, rows, rowsBefore, firstRow }: WriteRecord["growths"][number],
): number {
  const stay = rowsBefore - 1;
  const extra = body.rowCount - stay;
  if (extra > 0)
    body
      .getRow(stay)
      .getResizedRange(extra - 1, 0)
      .delete("Up");
  if (firstRow) body.getRow(0).formulas = [[...firstRow]];
  return offset - 1 + rows - stay - Math.max(0, extra);
}

function cellsIn(range: Excel.Range): readonly Cell[] {
  if (range.isNullObject) return [];
  return storedIn(range).flatMap((row, r) =>
    row.flatMap((value, c): readonly Cell[] => {
      const formula = formulaIn(range.formulas[r]?.[c], range.values[r]?.[c]);
      const place = {
        row: range.rowIndex + r,
        column: range.columnIndex + c,
      };
      if (formula !== undefined) return [{ ...place, formula }];
      return value === null || value === "" ? [] : [{ ...place, value }];
    }),
  );
}

/** The first cell of the rows, blank, so that rows count from it whether or not it holds something. */
const corner = (body: Excel.Range, from: number): Cell => ({
  row: body.rowIndex + from,
  column: body.columnIndex,
});
