import { CellValueType } from "@univerjs/core";
import { unusable } from "../../measures/cannot-answer";
import { cellAddress, sheetReference } from "../../sheets/address";
import type {
  Area,
  CellValue,
  DefinedName,
  Stored,
  Workbook,
} from "../../sheets/workbook";
import type {
  CellFacts,
  CellPlace,
  Change,
  FormulaForCell,
  Host,
  TableContents,
} from "../host";
import { changedWorkbook } from "../changed-workbook";
import { makeRoom, withFormula } from "./formula-cell";
import type { GridSession } from "./grid-session";
import { namesFromGrid } from "./names-resource";
import { rangeToArea } from "./ranges";
import { valueToGrid } from "./stored-value";
import { takenBack, type Done } from "../taken-back";

/** Where the selected cell is kept: by the screen, or by ourselves where there is none. */
export interface Selection {
  current(): CellPlace | undefined;
  /** The rectangle selected with it; the cell alone where nothing else is known. */
  area?(): Area | undefined;
  select(at: CellPlace): void;
  watch(listener: () => void): () => void;
}

/** The port over an open session. */
export class SessionHost implements Host {
  readonly place: string;
  protected readonly session: GridSession;
  readonly #selection: Selection;
  readonly #watchers = new Set<() => void>();
  #done: readonly Done[] = [];

  constructor(place: string, session: GridSession, selection: Selection) {
    this.place = place;
    this.session = session;
    this.#selection = selection;
  }

  async readTables(): Promise<readonly TableContents[]> {
    await this.session.settled();
    const { book } = this.session;
    const names = new Map(
      book.facade
        .getSheets()
        .map((sheet) => [sheet.getSheetId(), sheet.getSheetName()]),
    );
    return book.facade.getTableList().flatMap((table) => {
      const sheet = names.get(table.subUnitId);
      if (sheet === undefined) return [];
      const { row, column, rows, columns } = rangeToArea(table.range);
      const [shown = [], ...body] = this.#area(
        sheet,
        row,
        column,
        rows,
        columns,
      );
      const headings = shown.map((heading, c) =>
        typeof heading === "string" && heading !== ""
          ? heading
          : (table.columns[c]?.displayName ?? ""),
      );
      return [{ name: table.name, sheet, row, column, headings, rows: body }];
    });
  }

  async sheetNames(): Promise<readonly string[]> {
    return this.session.book.sheetNames();
  }

  async readNames(): Promise<readonly DefinedName[]> {
    return namesFromGrid(
      this.session.book.facade.getDefinedNames().map((name) => ({
        name: name.getName(),
        formulaOrRefString: name.getFormulaOrRefString(),
      })),
    );
  }

  async readCell(at: CellPlace): Promise<CellFacts> {
    await this.session.settled();
    return this.session.facts(at);
  }

  async readArea(
    sheet: string,
    row: number,
    column: number,
    rows: number,
    columns: number,
  ): Promise<readonly (readonly Stored[])[]> {
    await this.session.settled();
    return this.#area(sheet, row, column, rows, columns);
  }

  async setCell(at: CellPlace, value: CellValue): Promise<void> {
    const sheet = this.session.book.sheet(at.sheet);
    if (this.session.facts(at).formula !== undefined)
      throw unusable(
        `${sheetReference(at.sheet)}!${cellAddress(at.row, at.column)} holds a formula and is no cell to type in`,
      );
    makeRoom(sheet, at);
    sheet.getRange(at.row, at.column).setValue({
      v: null,
      t: CellValueType.STRING,
      ...valueToGrid(value),
      f: null,
      si: null,
      p: null,
    });
    await this.#settledAndTold();
  }

  async putFormula(
    at: CellPlace,
    put: FormulaForCell,
  ): Promise<() => Promise<void>> {
    await this.session.settled();
    const putBack = withFormula(this.session, at, put);
    await this.#settledAndTold();
    return async () => {
      await this.session.settled();
      putBack();
      await this.#settledAndTold();
    };
  }

  async apply(change: Change): Promise<void> {
    await this.session.settled();
    const { workbook, growths, fills } = changedWorkbook(
      this.session.currentWorkbook(),
      change,
    );
    await this.#show(workbook);
    this.#done = [
      ...this.#done,
      { change, growths, fills, after: this.session.currentWorkbook() },
    ];
  }

  async undo(): Promise<string | undefined> {
    const last = this.#done.at(-1);
    if (!last) return undefined;
    await this.session.settled();
    await this.#show(takenBack(this.session.currentWorkbook(), last));
    this.#done = this.#done.slice(0, -1);
    return last.change.says;
  }

  async select(at: CellPlace): Promise<void> {
    this.session.book.sheet(at.sheet);
    this.#selection.select(at);
  }

  watchSelection(
    listener: (facts: CellFacts, selected: Area) => void,
  ): () => void {
    let told = "";
    const tell = (): void => {
      const at = this.#selection.current();
      if (!at || !this.session.book.sheetNames().includes(at.sheet)) return;
      const facts = this.session.facts(at);
      const { row, column } = at;
      const alone = { row, column, rows: 1, columns: 1 };
      const selected = this.#selection.area?.() ?? alone;
      const text = JSON.stringify([facts, selected]);
      if (text === told) return;
      told = text;
      listener(facts, selected);
    };
    const stops = [this.#selection.watch(tell), this.session.onSettled(tell)];
    this.#watchers.add(tell);
    tell();
    return () => {
      this.#watchers.delete(tell);
      for (const stop of stops) stop();
    };
  }

  /** A listener has heard the news before the one who made it goes on. */
  async #settledAndTold(): Promise<void> {
    await this.session.settled();
    for (const tell of [...this.#watchers]) tell();
  }

  /** Another workbook takes the place of this one; what was applied before cannot be taken back any more. */
  protected async replaced(workbook: Workbook): Promise<void> {
    await this.session.replace(workbook);
    this.#done = [];
  }

  async #show(workbook: Workbook): Promise<void> {
    const at = this.#selection.current();
    await this.session.replace(workbook);
    if (at && this.session.book.sheetNames().includes(at.sheet))
      this.#selection.select(at);
    await this.#settledAndTold();
  }

  #area(
    name: string,
    row: number,
    column: number,
    rows: number,
    columns: number,
  ): readonly (readonly Stored[])[] {
    const { book } = this.session;
    const sheet = book.sheet(name);
    return Array.from({ length: rows }, (_, r) =>
      Array.from({ length: columns }, (_, c) =>
        book.value(sheet, row + r, column + c),
      ),
    );
  }
}
