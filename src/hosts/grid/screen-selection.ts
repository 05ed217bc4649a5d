import "@univerjs/sheets-ui/facade";
import { SheetsSelectionsService } from "@univerjs/sheets";
import { ScrollToRangeOperation } from "@univerjs/sheets-ui";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { CellPlace } from "../host";
import type { GridSession } from "./grid-session";
import { areaToRange, rangeToArea } from "./ranges";
import type { Selection } from "./session-host";

/** The selection as the person at the screen sees it. */
export function screenSelection(session: GridSession): Selection {
  const service = session.engine.univer
    .__getInjector()
    .get(SheetsSelectionsService);
  return {
    current: (): CellPlace | undefined => {
      const cell = service.getCurrentLastSelection()?.primary;
      if (!cell) return undefined;
      return {
        sheet: session.book.facade.getActiveSheet().getSheetName(),
        row: cell.actualRow,
        column: cell.actualColumn,
      };
    },
    area: () => {
      const range = service.getCurrentLastSelection()?.range;
      if (!range) return undefined;
      // A whole row or column is selected without its ends.
      const sheet = session.book.facade.getActiveSheet();
      return rangeToArea({
        startRow: range.startRow || 0,
        startColumn: range.startColumn || 0,
        endRow: range.endRow >= 0 ? range.endRow : sheet.getMaxRows() - 1,
        endColumn:
          range.endColumn >= 0 ? range.endColumn : sheet.getMaxColumns() - 1,
      });
    },
    select: (at) => {
      const sheet = session.book.sheet(at.sheet);
      session.book.facade.setActiveSheet(sheet);
      sheet.getRange(at.row, at.column).activate();
      reveal(session, sheet, at);
    },
    watch: (listener) => {
      const watching = service.selectionChanged$.subscribe(listener);
      return () => watching.unsubscribe();
    },
  };
}

/** What shows anyway when a sheet is not scrolled, in most windows. */
const atTheTop = { rows: 12, columns: 5 };

function reveal(session: GridSession, sheet: FWorksheet, at: CellPlace): void {
  const { ySplit, xSplit } = sheet.getFreeze();
  const start = at.row < ySplit + atTheTop.rows;
  // With frozen rows of uneven height the grid puts a row near the top half under them; not scrolled, it stands right.
  if (start && at.column < xSplit + atTheTop.columns) {
    sheet.scrollToCell(ySplit, xSplit);
    return;
  }
  void session.engine.api.executeCommand(ScrollToRangeOperation.id, {
    range: areaToRange({
      row: Math.max(0, at.row - 2),
      column: Math.max(0, at.column - 1),
      rows: Math.min(at.row, 2) + 2,
      columns: Math.min(at.column, 1) + 1,
    }),
  });
}
