import type { Workbook } from "../../sheets/workbook";
import { GridSession } from "./grid-session";
import { rendered } from "./open-grid";
import { startOnScreen } from "./screen-engine";
import type { WorksheetFunction } from "./worksheet-function";

/** Fills in the results of a workbook's formulas in a grid that nobody sees; a page has no engine without a screen. */
export async function workedOutUnseen(options: {
  readonly container: HTMLElement;
  readonly workbook: Workbook;
  readonly functions: readonly WorksheetFunction[];
}): Promise<Workbook> {
  const { container, workbook, functions } = options;
  const session = new GridSession(
    (refusals) => startOnScreen(container, functions, refusals, false),
    workbook,
  );
  try {
    await rendered(session);
    await session.settled();
    // Beside an open grid the first calculation of a second one may begin long after it is drawn.
    session.settling.calculateAll();
    await session.settled();
    return session.currentWorkbook();
  } finally {
    session.dispose();
  }
}
