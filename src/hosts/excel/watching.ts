import type { Area } from "../../sheets/workbook";
import type { CellFacts } from "../host";
import { inExcel } from "./in-excel";
import { factsOf } from "./read-workbook";
import { cellProperties } from "./stored-value";

type Event = "edited" | "selected" | "calculated";

/** Excel's events of the whole workbook, registered once, when somebody first listens. */
export class Watching {
  readonly #listeners = new Map<(event: Event) => void, true>();
  #started: Promise<void> | undefined;

  /** Calls back after each of these; returns the way to stop. */
  on(events: readonly Event[], listener: () => void): () => void {
    const hear = (event: Event): void => {
      if (events.includes(event)) listener();
    };
    this.#listeners.set(hear, true);
    this.#started ??= this.#start();
    return () => this.#listeners.delete(hear);
  }

  /** Events heard from now on; rejects when Excel does not let us listen. */
  started(): Promise<void> {
    return (this.#started ??= this.#start());
  }

  #start(): Promise<void> {
    const tell = (event: Event) => async (): Promise<void> => {
      for (const hear of [...this.#listeners.keys()]) hear(event);
    };
    return inExcel(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.onChanged.add(tell("edited"));
      worksheets.onAdded.add(tell("edited"));
      worksheets.onDeleted.add(tell("edited"));
      worksheets.onCalculated.add(tell("calculated"));
      worksheets.onSelectionChanged.add(tell("selected"));
      // Going to another sheet is no change of selection to Excel.
      worksheets.onActivated.add(tell("selected"));
      await context.sync();
    }).catch(() => {
      // Without events the pane still works; it reads again when it is used.
      this.#started = undefined;
    });
  }
}

/** Follows the selected cell: one reading at a time, and one more when something happened meanwhile. */
export function watchSelected(
  watching: Watching,
  listener: (facts: CellFacts, selected: Area) => void,
): () => void {
  let told = "";
  let state: "idle" | "reading" | "again" | "stopped" = "idle";
  const read = async (): Promise<void> => {
    if (state !== "idle") {
      if (state === "reading") state = "again";
      return;
    }
    state = "reading";
    const heard = await readSelected().catch(() => undefined);
    if (now() === "stopped") return;
    const text = JSON.stringify(heard);
    if (heard && text !== told) {
      told = text;
      listener(heard.facts, heard.selected);
    }
    const isDue = now() === "again";
    state = "idle";
    if (isDue) await read();
  };
  const now = (): string => state;
  const stop = watching.on(
    ["selected", "edited", "calculated"],
    () => void read(),
  );
  void read();
  return () => {
    state = "stopped";
    stop();
  };
}

/** The active cell and the rectangle it lies in; nothing when no cells are selected, but a drawing. */
const readSelected = (): Promise<{
  readonly facts: CellFacts;
  readonly selected: Area;
}> =>
  inExcel(
    async (context) => {
      const { workbook } = context;
      const cell = workbook.getActiveCell();
      cell.load(`rowIndex,columnIndex,${cellProperties}`);
      cell.worksheet.load("name");
      const { areas } = workbook.getSelectedRanges();
      areas.load(
        "items/rowIndex,items/columnIndex,items/rowCount,items/columnCount",
      );
      await context.sync();
      const { rowIndex: row, columnIndex: column } = cell;
      const around = areas.items.find(
        (area) =>
          row >= area.rowIndex &&
          row < area.rowIndex + area.rowCount &&
          column >= area.columnIndex &&
          column < area.columnIndex + area.columnCount,
      );
      return {
        facts: factsOf(cell, { sheet: cell.worksheet.name, row, column }),
        selected: around
          ? {
              row: around.rowIndex,
              column: around.columnIndex,
              rows: around.rowCount,
              columns: around.columnCount,
            }
          : { row, column, rows: 1, columns: 1 },
      };
    },
    { waitsForTyping: true },
  );
