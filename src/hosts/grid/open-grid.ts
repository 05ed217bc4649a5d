import { LifecycleService, LifecycleStages } from "@univerjs/core";
import { filter, firstValueFrom } from "rxjs";
import type { Workbook } from "../../sheets/workbook";
import type { CellFacts, Change, Host } from "../host";
import { watchEdits } from "./edits";
import { GridSession } from "./grid-session";
import { startOnScreen } from "./screen-engine";
import { screenSelection } from "./screen-selection";
import { SessionHost } from "./session-host";
import type { WorksheetFunction } from "./worksheet-function";

/** The grid on a page: the port, and what a page needs besides. */
export interface GridHost extends Host {
  /** Shows another workbook in place of this one; nothing applied before can be taken back after that. */
  replaceWorkbook(workbook: Workbook): Promise<void>;
  /** The workbook as it now stands, values as precise as calculated. */
  currentWorkbook(): Workbook;
  /** Calls back after each change to the workbook, by hand or through the port; returns the way to stop. */
  onEdit(listener: () => void): () => void;
  settled(): Promise<void>;
  /** Every cell that has no answer together with the sentence that says why. */
  refusals(): readonly (CellFacts & { readonly sentence: string })[];
  setDark(dark: boolean): void;
  dispose(): void;
}

/** Resolves when the grid is drawn and every formula is calculated. */
export async function openGrid(options: {
  readonly container: HTMLElement;
  readonly workbook: Workbook;
  readonly functions: readonly WorksheetFunction[];
  readonly dark?: boolean;
}): Promise<GridHost> {
  const { container, workbook, functions, dark = false } = options;
  const session = new GridSession(
    (refusals) => startOnScreen(container, functions, refusals, dark),
    workbook,
  );
  await rendered(session);
  await session.settled();
  return new ScreenHost(session);
}

class ScreenHost extends SessionHost implements GridHost {
  readonly #listeners = new Set<() => void>();
  readonly #stopWatching: () => void;
  #replacing = false;

  constructor(session: GridSession) {
    super("the workbench", session, screenSelection(session));
    this.#stopWatching = watchEdits(
      session.engine,
      () => session.book.id,
      () => {
        if (!this.#replacing) this.#tell();
      },
    );
  }

  async replaceWorkbook(workbook: Workbook): Promise<void> {
    this.#replacing = true;
    try {
      await this.replaced(workbook);
    } finally {
      this.#replacing = false;
    }
  }

  override async apply(change: Change): Promise<void> {
    await super.apply(change);
    this.#tell();
  }

  override async undo(): Promise<string | undefined> {
    const says = await super.undo();
    if (says !== undefined) this.#tell();
    return says;
  }

  currentWorkbook(): Workbook {
    return this.session.currentWorkbook();
  }

  onEdit(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  settled(): Promise<void> {
    return this.session.settled();
  }

  refusals(): ReturnType<GridSession["refusals"]> {
    return this.session.refusals();
  }

  setDark(dark: boolean): void {
    this.session.engine.api.toggleDarkMode(dark);
  }

  dispose(): void {
    this.#stopWatching();
    this.session.dispose();
  }

  #tell(): void {
    for (const listener of [...this.#listeners]) listener();
  }
}

/** Resolves when the grid of a session is drawn. */
export async function rendered(session: GridSession): Promise<void> {
  const lifecycle = session.engine.univer.__getInjector().get(LifecycleService);
  await firstValueFrom(
    lifecycle.lifecycle$.pipe(
      filter((stage) => stage >= LifecycleStages.Rendered),
    ),
  );
}
