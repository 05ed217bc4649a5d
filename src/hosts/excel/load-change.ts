import { unusable } from "../../measures/cannot-answer";
import type { Sheet, Workbook } from "../../sheets/workbook";
import type { Change } from "../host";
import { isAble } from "./abilities";
import { loadBeforeFill, type BeforeFill } from "./fills";
import type { Load } from "./in-excel";
import { loadKept, type KeptPart } from "./kept-part";
import { loadNames, loadSheetNames, loadTableNames } from "./read-workbook";
import { cellProperties, formulaIn, storedIn } from "./stored-value";

/** What has to be known before a change is written: the workbook as far as the change touches it. */
export interface Before {
  readonly workbook: Workbook;
  readonly kept: KeptPart;
  /** For each table that grows, what its last row would be entered as. */
  readonly lastRows: ReadonlyMap<string, readonly unknown[]>;
  /** For each rectangle to fill. */
  readonly fills: readonly BeforeFill[];
}

/** Asks for it all in one request, and refuses what Excel would refuse or half do. */
export const loadBefore =
  (change: Change): Load<Before> =>
  (context) => {
    const takeSheets = loadSheetNames(context);
    const takeNames = loadNames(context);
    const takeTables = loadTableNames(context);
    const takeKept = loadKept(context);
    const { protection } = context.workbook;
    protection.load("protected");
    const growing = [...rowsByTable(change)].map(([table, rows]) =>
      loadGrowing(table, rows)(context),
    );
    const filling = (change.fill ?? []).map((fill) =>
      loadBeforeFill(fill)(context),
    );
    return () => {
      if (change.addSheets.length > 0 && protection.protected)
        throw unusable(
          "the workbook is protected against new sheets; take its protection off and try again",
        );
      const grown = growing.map((take) => take());
      const known = new Set(grown.map(({ table }) => table.name.toLowerCase()));
      const fills = filling.map((take) => take());
      const sheets = takeSheets().map((name) => ({
        ...empty,
        name,
        cells: grown
          .filter((g) => g.sheet === name)
          .flatMap(({ cells }) => cells)
          .concat(onSheet(fills, name).flatMap(({ cells }) => cells)),
        merges: onSheet(fills, name).flatMap(({ merges }) => merges),
        tables: grown.filter((g) => g.sheet === name).map(({ table }) => table),
      }));
      // A table's name is taken for names too, wherever the table is.
      const others = takeTables()
        .filter((name) => !known.has(name.toLowerCase()))
        .map((name) => ({ name, refersTo: "" }));
      return {
        workbook: {
          title: "",
          sheets,
          names: [...takeNames(), ...others],
        },
        kept: takeKept(),
        lastRows: new Map(
          grown.map(({ table, lastRow }) => [table.name, lastRow]),
        ),
        fills,
      };
    };
  };

const onSheet = (
  fills: readonly BeforeFill[],
  sheet: string,
): readonly BeforeFill[] => fills.filter(({ name }) => name === sheet);

const empty: Omit<Sheet, "name"> = {
  cells: [],
  tables: [],
  validations: [],
  merges: [],
  widths: {},
  heights: {},
  frozen: { rows: 0, columns: 0 },
};

function rowsByTable({ append }: Change): ReadonlyMap<string, number> {
  const rows = new Map<string, number>();
  for (const { table, rows: added } of append)
    if (added.length > 0)
      rows.set(table, (rows.get(table) ?? 0) + added.length);
  return rows;
}

interface Growing extends Pick<Sheet, "cells"> {
  readonly sheet: string;
  readonly table: Sheet["tables"][number];
  readonly lastRow: readonly unknown[];
}

/** Whether anything is written in these columns from this row on. */
export const reachesBelow = (used: Excel.Range, row: number): boolean =>
  !used.isNullObject && used.rowIndex + used.rowCount > row;

/** The table's place, its last row and what stands in the way below it. */
const loadGrowing =
  (name: string, added: number): Load<Growing> =>
  ({ workbook }) => {
    const table = workbook.tables.getItemOrNullObject(name);
    table.load("name,showTotals");
    const { worksheet, columns, autoFilter } = table;
    worksheet.load("name");
    worksheet.protection.load("protected");
    columns.load("items/name");
    autoFilter.load("isDataFiltered");
    const body = table.getDataBodyRange();
    body.load("rowIndex,columnIndex,rowCount,columnCount");
    const last = body.getLastRow();
    last.load(cellProperties);
    const below = table
      .getRange()
      .getLastRow()
      .getOffsetRange(1, 0)
      .getResizedRange(added - 1, 0);
    const used = below.getUsedRangeOrNullObject(true);
    used.load("rowIndex,columnIndex");
    const wholeColumns = table.getRange().getEntireColumn();
    const everything = wholeColumns.getUsedRangeOrNullObject(true);
    everything.load("rowIndex,rowCount");
    const merged = isAble("mergedAreas")
      ? wholeColumns.getMergedAreasOrNullObject()
      : undefined;
    merged?.areas.load("items/rowIndex,items/columnIndex");
    return () => {
      if (table.isNullObject)
        throw unusable(`there is no table ${name} in this workbook`);
      if (worksheet.protection.protected)
        throw unusable(
          `the sheet "${worksheet.name}" is protected, so the table ${table.name} cannot grow; take the protection off and try again`,
        );
      if (autoFilter.isDataFiltered)
        throw unusable(
          `the table ${table.name} is filtered, so new rows could land among hidden ones; clear its filter and try again`,
        );
      const row = body.rowIndex - 1;
      const column = body.columnIndex;
      const rows = body.rowCount + 1;
      const end = row + rows;
      const afterTable = end + (table.showTotals ? 1 : 0);
      const mergedBelow =
        merged?.isNullObject === false
          ? merged.areas.items.find((area) => area.rowIndex >= afterTable)
          : undefined;
      const isInTheWay =
        mergedBelow && mergedBelow.rowIndex < afterTable + added;
      const blocked = !used.isNullObject
        ? used
        : isInTheWay
          ? mergedBelow
          : undefined;
      // Excel may push what is further down when a table grows, so there must be nothing.
      if (!blocked && (mergedBelow || reachesBelow(everything, afterTable)))
        throw unusable(
          `the table ${table.name} cannot grow without moving what stands below it on the sheet "${worksheet.name}"; put that beside the table or on another sheet`,
        );
      const shown = storedIn(last)[0] ?? [];
      const [entered = []] = last.formulas as unknown[][];
      return {
        sheet: worksheet.name,
        table: {
          name: table.name,
          area: { row, column, rows, columns: body.columnCount },
          columns: columns.items.map((one) => ({ heading: one.name })),
        },
        lastRow: entered,
        cells: [
          ...shown.map((value, c) => {
            const formula = formulaIn(entered[c], last.values[0]?.[c]);
            return {
              row: end - 1,
              column: column + c,
              ...(formula === undefined ? { value } : { formula }),
            };
          }),
          ...(blocked
            ? [
                {
                  row: blocked.rowIndex - (afterTable - end),
                  column: blocked.columnIndex,
                  value: true,
                },
              ]
            : []),
        ],
      };
    };
  };
