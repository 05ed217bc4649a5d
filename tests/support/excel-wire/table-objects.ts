import type { Area } from "../../../src/sheets/workbook";
import type { SheetState, TableState } from "./book-state";
import { overlap, placeKey } from "./book-state";
import { entered } from "./entered";
import {
  enterCell,
  rangeObject,
  refuseProtected,
  type RangeObject,
} from "./range-objects";
import type { WireBook } from "./wire-book";
import {
  badArgument,
  refuseText,
  notFound,
  WireError,
  type WireObject,
} from "./wire-object";

/** The tables of a sheet, or of all sheets. */
export function tableCollection(
  book: WireBook,
  sheets: readonly SheetState[],
): WireObject {
  const all = (): readonly WireObject[] =>
    sheets.flatMap((sheet) =>
      sheet.tables.map((table) => tableObject(book, sheet, table)),
    );
  const found = (name: string): WireObject | null => {
    for (const sheet of sheets)
      for (const table of sheet.tables)
        if (table.name.toLowerCase() === name.toLowerCase())
          return tableObject(book, sheet, table);
    return null;
  };
  return {
    kind: "TableCollection",
    items: all,
    open: {
      "[]": (name: string) => {
        const table = found(name);
        if (!table) throw notFound(name);
        return table;
      },
      GetItemOrNullObject: found,
      Add: (range: RangeObject, hasHeaders: boolean) => {
        refuseText(range);
        return tableObject(
          book,
          range.sheet,
          addTable(book, range.sheet, range.area, hasHeaders),
        );
      },
    },
  };
}

function addTable(
  book: WireBook,
  sheet: SheetState,
  area: Area,
  hasHeaders: boolean,
): TableState {
  refuseProtected(sheet);
  if (!hasHeaders) throw badArgument("tables without headings to make");
  if (area.rows < 2) throw badArgument("a table needs a row below its heading");
  if (
    sheet.tables.some((t) => overlap(t.area, area)) ||
    sheet.merges.some((m) => overlap(m, area))
  )
    throw badArgument("a table overlaps a table or merged cells");
  const headings = Array.from({ length: area.columns }, (_, c) =>
    sheet.cells.get(placeKey(area.row, area.column + c)),
  );
  if (headings.some((cell) => typeof cell?.value !== "string"))
    throw badArgument("a heading that is no text would be changed by Excel");
  const table: TableState = {
    name: `Table${book.state.nextId}`,
    area,
    style: "TableStyleMedium2",
    isFiltered: false,
    showHeaders: true,
    showTotals: false,
  };
  book.state.nextId += 1;
  sheet.tables.push(table);
  return table;
}

function tableObject(
  book: WireBook,
  sheet: SheetState,
  table: TableState,
): WireObject {
  const heading = (c: number): string =>
    String(
      sheet.cells.get(placeKey(table.area.row, table.area.column + c))?.value,
    );
  const body = (): Area => ({
    ...table.area,
    row: table.area.row + 1,
    rows: table.area.rows - 1 - (table.showTotals ? 1 : 0),
  });
  return {
    kind: "Table",
    get: {
      Name: () => table.name,
      ShowHeaders: () => table.showHeaders,
      ShowTotals: () => table.showTotals,
    },
    set: {
      Name: (name: string) => {
        if (!/^[A-Za-z_\\][\w.]*$/.test(name)) throw badArgument("table name");
        if (
          book.state.sheets.some((s) =>
            s.tables.some(
              (t) => t !== table && t.name.toLowerCase() === name.toLowerCase(),
            ),
          ) ||
          book.state.names.some(
            (n) => n.name.toLowerCase() === name.toLowerCase(),
          )
        )
          throw new WireError("InvalidArgument", "The name is taken");
        table.name = name;
      },
      Style: (style: string) => {
        table.style = style;
      },
    },
    open: {
      GetRange: () => rangeObject(book, sheet, table.area),
      GetDataBodyRange: () => rangeObject(book, sheet, body()),
      Worksheet: () => book.sheetObject(sheet),
      Columns: () => ({
        kind: "TableColumnCollection",
        items: () =>
          Array.from({ length: table.area.columns }, (_, c) => ({
            kind: "TableColumn",
            get: { Name: () => heading(c) },
          })),
      }),
      AutoFilter: () => ({
        kind: "AutoFilter",
        get: { IsDataFiltered: () => table.isFiltered },
      }),
      Rows: () => ({
        kind: "TableRowCollection",
        open: {
          Add: (index: number, values: unknown[][]) => {
            if (index !== -1) throw badArgument("rows in the middle");
            addRows(book, sheet, table, values);
            return { kind: "TableRow" };
          },
        },
      }),
    },
  };
}

/** New rows at the end take over looks, number formats and rules of the row above, as a table in Excel does. */
function addRows(
  book: WireBook,
  sheet: SheetState,
  table: TableState,
  values: readonly (readonly unknown[])[],
): void {
  refuseProtected(sheet);
  const { row, column, rows, columns } = table.area;
  const totals = table.showTotals ? 1 : 0;
  if (values.some((given) => given.length !== columns))
    throw badArgument("the rows are not as wide as the table");
  const end = row + rows - totals;
  for (let r = totals; r < values.length + totals; r += 1)
    for (let c = 0; c < columns; c += 1)
      if (sheet.cells.has(placeKey(end + r, column + c)))
        throw badArgument("moving what is below a table is not modelled");
  for (let c = 0; totals > 0 && c < columns; c += 1) {
    const total = sheet.cells.get(placeKey(end, column + c));
    sheet.cells.delete(placeKey(end, column + c));
    if (total)
      sheet.cells.set(placeKey(end + values.length, column + c), total);
  }
  for (const [r, given] of values.entries())
    for (const [c, value] of given.entries()) {
      const above =
        rows > 1 ? sheet.cells.get(placeKey(end - 1, column + c)) : undefined;
      const look = {
        ...(above?.format === undefined ? {} : { format: above.format }),
        ...(above?.looks === undefined ? {} : { looks: above.looks }),
      };
      if (Object.keys(look).length > 0 && r < book.state.rowsTaken)
        sheet.cells.set(placeKey(end + r, column + c), {
          value: null,
          ...look,
        });
      if (entered(value).value !== null)
        enterCell(book.state, sheet, end + r, column + c, value);
    }
  const taken = Math.min(values.length, book.state.rowsTaken);
  table.area = { ...table.area, rows: rows + taken };
  for (const validation of sheet.validations) {
    const { area } = validation;
    if (
      overlap(area, { ...table.area, row: end - 1, rows: 1 }) &&
      area.row > row
    )
      validation.area = { ...area, rows: area.rows + values.length };
  }
}
