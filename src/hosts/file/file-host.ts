import { unusable } from "../../measures/cannot-answer";
import { cellAddress, placeNumber, sheetReference } from "../../sheets/address";
import { tablesOf } from "../../sheets/tables-of";
import type {
  Area,
  Cell,
  CellValue,
  DefinedName,
  Sheet,
  Stored,
  Workbook,
} from "../../sheets/workbook";
import { changedWorkbook } from "../changed-workbook";
import type {
  CellFacts,
  CellPlace,
  Change,
  FormulaForCell,
  Host,
  TableContents,
} from "../host";
import { takenBack, type Done } from "../taken-back";

type Listener = (facts: CellFacts, selected: Area) => void;

/**
 * The port over a workbook read from a file. Nothing calculates here: a result stays as the file has it, and a new
 * formula has none until the file is opened in a program that calculates.
 */
export class FileHost implements Host {
  readonly place = "a workbook file";
  #workbook: Workbook;
  #selected: CellPlace;
  #done: readonly Done[] = [];
  readonly #listeners = new Map<Listener, string>();

  constructor(workbook: Workbook) {
    this.#workbook = workbook;
    const [first] = workbook.sheets;
    if (!first) throw unusable("the workbook has no sheet");
    this.#selected = { sheet: first.name, row: 0, column: 0 };
  }

  currentWorkbook(): Workbook {
    return this.#workbook;
  }

  async readTables(): Promise<readonly TableContents[]> {
    return tablesOf(this.#workbook);
  }

  async sheetNames(): Promise<readonly string[]> {
    return this.#workbook.sheets.map(({ name }) => name);
  }

  async readNames(): Promise<readonly DefinedName[]> {
    return this.#workbook.names;
  }

  async readCell(at: CellPlace): Promise<CellFacts> {
    return this.#facts(at);
  }

  async readArea(
    sheet: string,
    row: number,
    column: number,
    rows: number,
    columns: number,
  ): Promise<readonly (readonly Stored[])[]> {
    const cells = cellMap(this.#sheet(sheet));
    return Array.from({ length: rows }, (_, r) =>
      Array.from(
        { length: columns },
        (_unused, c) =>
          cells.get(placeNumber(row + r, column + c))?.value ?? null,
      ),
    );
  }

  async setCell(at: CellPlace, value: CellValue): Promise<void> {
    if (this.#facts(at).formula !== undefined)
      throw unusable(
        `${sheetReference(at.sheet)}!${cellAddress(at.row, at.column)} holds a formula and is no cell to type in`,
      );
    this.#put(at, value === null ? {} : { value });
    this.#tell();
  }

  async putFormula(
    at: CellPlace,
    { formula, format }: FormulaForCell,
  ): Promise<() => Promise<void>> {
    const { row, column } = at;
    const before = cellMap(this.#sheet(at.sheet)).get(placeNumber(row, column));
    const isFormatted =
      format !== undefined && before?.style?.format === undefined;
    this.#put(at, { formula }, isFormatted ? { format } : {});
    this.#tell();
    return async () => {
      if (this.#facts(at).formula !== formula)
        throw unusable(
          `${at.sheet}, ${cellAddress(row, column)} has been changed since, so it stays`,
        );
      this.#replace(at, before);
      this.#tell();
    };
  }

  async apply(change: Change): Promise<void> {
    const { workbook, growths, fills } = changedWorkbook(
      this.#workbook,
      change,
    );
    this.#workbook = workbook;
    this.#done = [...this.#done, { change, growths, fills, after: workbook }];
    this.#tell();
  }

  async undo(): Promise<string | undefined> {
    const last = this.#done.at(-1);
    if (!last) return undefined;
    this.#workbook = takenBack(this.#workbook, last);
    this.#done = this.#done.slice(0, -1);
    this.#tell();
    return last.change.says;
  }

  async select(at: CellPlace): Promise<void> {
    this.#sheet(at.sheet);
    this.#selected = at;
    this.#tell();
  }

  watchSelection(listener: Listener): () => void {
    this.#listeners.set(listener, "");
    this.#tell();
    return () => this.#listeners.delete(listener);
  }

  #tell(): void {
    const { sheet, row, column } = this.#selected;
    if (!this.#workbook.sheets.some(({ name }) => name === sheet)) return;
    const facts = this.#facts(this.#selected);
    const text = JSON.stringify(facts);
    for (const [listener, told] of [...this.#listeners])
      if (told !== text) {
        this.#listeners.set(listener, text);
        listener(facts, { row, column, rows: 1, columns: 1 });
      }
  }

  #sheet(name: string): Sheet {
    const found = this.#workbook.sheets.find(
      (sheet) => sheet.name.toLowerCase() === name.toLowerCase(),
    );
    if (!found) throw unusable(`there is no sheet "${name}"`);
    return found;
  }

  #facts({ sheet, row, column }: CellPlace): CellFacts {
    const found = this.#sheet(sheet);
    const cell = cellMap(found).get(placeNumber(row, column));
    return {
      sheet: found.name,
      row,
      column,
      value: cell?.value ?? null,
      ...(cell?.formula === undefined ? {} : { formula: cell.formula }),
    };
  }

  /** What a cell holds, its look and note kept. */
  #put(
    at: CellPlace,
    holds: Pick<Cell, "value" | "formula">,
    look: Cell["style"] = {},
  ): void {
    const { row, column } = at;
    const before = cellMap(this.#sheet(at.sheet)).get(placeNumber(row, column));
    const style = { ...before?.style, ...look };
    this.#replace(at, {
      row,
      column,
      ...holds,
      ...(Object.keys(style).length === 0 ? {} : { style }),
      ...(before?.note === undefined ? {} : { note: before.note }),
    });
  }

  #replace({ sheet, row, column }: CellPlace, cell: Cell | undefined): void {
    const old = this.#sheet(sheet);
    const others = old.cells.filter(
      (c) => c.row !== row || c.column !== column,
    );
    const isBlank = cell === undefined || Object.keys(cell).length === 2;
    const now: Sheet = { ...old, cells: isBlank ? others : [...others, cell] };
    this.#workbook = {
      ...this.#workbook,
      sheets: this.#workbook.sheets.map((s) => (s === old ? now : s)),
    };
  }
}

/** Sheets never change in place, so an index of their cells can be kept with them. */
const indexes = new WeakMap<Sheet, ReadonlyMap<number, Cell>>();

function cellMap(sheet: Sheet): ReadonlyMap<number, Cell> {
  const known = indexes.get(sheet);
  if (known) return known;
  const index = new Map(
    sheet.cells.map((cell) => [placeNumber(cell.row, cell.column), cell]),
  );
  indexes.set(sheet, index);
  return index;
}
