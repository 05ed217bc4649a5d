import type { Workbook } from "../../sheets/workbook";
import type { CellPlace } from "../host";
import { GridSession } from "./grid-session";
import { startHeadless } from "./headless-engine";
import { SessionHost, type Selection } from "./session-host";
import type { WorksheetFunction } from "./worksheet-function";

/** A workbook open in the engine without a screen, driven through the port like any other host. */
export class HeadlessHost extends SessionHost {
  constructor(session: GridSession) {
    super("the workbook engine", session, keptSelection());
  }

  currentWorkbook(): Workbook {
    return this.session.currentWorkbook();
  }

  settled(): Promise<void> {
    return this.session.settled();
  }

  dispose(): void {
    this.session.dispose();
  }
}

export async function openHeadless(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
): Promise<HeadlessHost> {
  const session = new GridSession(
    (refusals) => startHeadless(functions, refusals),
    workbook,
  );
  await session.settled();
  return new HeadlessHost(session);
}

function keptSelection(): Selection {
  let selected: CellPlace | undefined;
  const listeners = new Set<() => void>();
  return {
    current: () => selected,
    select: (at) => {
      selected = at;
      for (const listener of [...listeners]) listener();
    },
    watch: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
