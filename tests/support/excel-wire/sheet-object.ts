import { areasOf } from "./addresses";
import type { SheetState } from "./book-state";
import { chartCollection } from "./chart-objects";
import {
  rangeObject,
  rangeOf,
  refuseProtected,
  type RangeObject,
} from "./range-objects";
import { tableCollection } from "./table-objects";
import { wholeSheet, type WireBook } from "./wire-book";
import { refuseText, WireError, type WireObject } from "./wire-object";

export function sheetObject(book: WireBook, sheet: SheetState): WireObject {
  return {
    kind: "Worksheet",
    get: {
      Id: () => sheet.id,
      Name: () => sheet.name,
      Visibility: () => sheet.visibility,
      Position: () => book.state.sheets.indexOf(sheet),
    },
    set: {
      Name: (name: string) => {
        sheet.name = name;
      },
      TabColor: (color: string) => {
        sheet.tabColor = color;
      },
      Visibility: (visibility: SheetState["visibility"]) => {
        sheet.visibility = visibility;
      },
    },
    open: {
      GetRange: (address?: string) =>
        address
          ? rangeOf(book, sheet, address)
          : rangeObject(book, sheet, wholeSheet),
      GetRangeByIndexes: (
        row: number,
        column: number,
        rows: number,
        columns: number,
      ) => rangeObject(book, sheet, { row, column, rows, columns }),
      GetCell: (row: number, column: number) =>
        rangeObject(book, sheet, { row, column, rows: 1, columns: 1 }),
      GetRanges: (address: string) => book.areasObject(sheet, areasOf(address)),
      GetUsedRangeOrNullObject: () =>
        rangeObject(book, sheet, wholeSheet).open?.[
          "GetUsedRangeOrNullObject"
        ]?.() ?? null,
      Tables: () => tableCollection(book, [sheet]),
      Charts: () => chartCollection(sheet),
      Protection: () => ({
        kind: "WorksheetProtection",
        get: { Protected: () => sheet.isProtected },
      }),
      FreezePanes: () => freezeObject(sheet),
      PageLayout: () => pageObject(sheet),
    },
    call: {
      Activate: () => {
        if (sheet.visibility !== "Visible")
          throw new WireError("InvalidOperation", "The sheet is hidden");
        book.select(sheet.name, { row: 0, column: 0, rows: 1, columns: 1 });
      },
      Delete: () => {
        if (sheet.visibility === "VeryHidden")
          throw new WireError("InvalidOperation", "The sheet is very hidden");
        book.deleteSheet(sheet);
      },
    },
  };
}

function freezeObject(sheet: SheetState): WireObject {
  return {
    kind: "WorksheetFreezePanes",
    call: {
      FreezeRows: (rows: number) => {
        sheet.frozen = { rows, columns: 0 };
      },
      FreezeColumns: (columns: number) => {
        sheet.frozen = { rows: 0, columns };
      },
      FreezeAt: (at: RangeObject) => {
        refuseText(at);
        const { row, column, rows, columns } = at.area;
        sheet.frozen = { rows: row + rows, columns: column + columns };
      },
    },
  };
}

function pageObject(sheet: SheetState): WireObject {
  const keep = (name: string) => (value: unknown) => {
    refuseProtected(sheet);
    sheet.page[name] = value;
  };
  return {
    kind: "PageLayout",
    set: {
      Orientation: keep("orientation"),
      PaperSize: keep("paperSize"),
      Zoom: keep("zoom"),
    },
    call: {
      SetPrintTitleRows: (rows: string) => keep("titleRows")(rows),
      SetPrintTitleColumns: (columns: string) => keep("titleColumns")(columns),
      SetPrintArea: (area: string) => keep("printArea")(area),
    },
    open: {
      HeadersFooters: () => ({
        kind: "HeaderFooterGroup",
        open: {
          DefaultForAllPages: () => ({
            kind: "HeaderFooter",
            set: {
              LeftFooter: keep("leftFooter"),
              RightFooter: keep("rightFooter"),
            },
          }),
        },
      }),
    },
  };
}
