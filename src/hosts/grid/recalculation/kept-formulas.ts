import type { IFormulaData } from "@univerjs/engine-formula";
import type { ParsedFormula } from "./formula-patterns";
import {
  cellKey,
  holds,
  isOneCell,
  ReadAreas,
  type ReadArea,
  type SheetArea,
} from "./read-areas";

/** A formula of a cell as the engine has it: one that is shared is moved from where it was written. */
export interface GivenFormula {
  readonly f: string;
  readonly x?: number;
  readonly y?: number;
}

/** What tells a formula that stands in no cell, such as a validation's: its name, and how far it is moved. */
export interface Beside {
  readonly id: string;
  readonly x: number;
  readonly y: number;
}

/** A formula kept from one calculation to the next, and what it reads. */
export interface KeptFormula extends ParsedFormula {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly given: GivenFormula;
  readonly beside?: Beside;
  readonly reads: readonly ReadArea<KeptFormula>[];
}

export type Unread = Omit<KeptFormula, "reads">;

/** What only the engine can do for a formula. */
export interface FormulaReading {
  parse(given: GivenFormula, beside: Beside | undefined): ParsedFormula;
  areas(formula: Unread): readonly SheetArea[];
}

type Sheets = Exclude<IFormulaData[string], null | undefined | void>;
type Matrix = Exclude<Sheets[string], null | undefined | void>;

/** Which formula stands where and who reads what. Only formulas that have changed are looked at again. */
export class KeptFormulas {
  readonly areas = new ReadAreas<KeptFormula>();
  readonly #reading: FormulaReading;
  readonly #cells = new Map<string, Map<number, KeptFormula>>();
  readonly #beside = new Map<string, KeptFormula>();
  #unforeseeable = 0;
  #changes = 0;

  constructor(reading: FormulaReading) {
    this.#reading = reading;
  }

  /** How many formulas say only when worked out what they read. */
  get unforeseeable(): number {
    return this.#unforeseeable;
  }

  /** How many formulas have come or gone so far. */
  get changes(): number {
    return this.#changes;
  }

  *all(): Generator<KeptFormula> {
    for (const held of this.#cells.values()) yield* held.values();
    yield* this.#beside.values();
  }

  in(area: SheetArea): readonly KeptFormula[] {
    const held = this.#cells.get(area.sheet);
    if (!held) return [];
    if (!isOneCell(area))
      return [...held.values()].filter(({ row, column }) =>
        holds(area, row, column),
      );
    const one = held.get(cellKey(area.fromRow, area.fromColumn));
    return one ? [one] : [];
  }

  takeIn(sheets: Sheets): void {
    for (const sheet of this.#cells.keys())
      if (!sheets[sheet]) this.#takeInSheet(sheet, {});
    for (const [sheet, matrix] of Object.entries(sheets))
      if (matrix) this.#takeInSheet(sheet, matrix);
  }

  takeInBeside(
    given: Iterable<{
      readonly sheet: string;
      readonly given: GivenFormula;
      readonly beside: Beside;
    }>,
  ): void {
    const gone = new Map(this.#beside);
    for (const one of given) {
      const { id, x, y } = one.beside;
      const name = JSON.stringify([one.sheet, id, x, y]);
      const known = gone.get(name);
      if (known && isSame(known.given, one.given)) {
        gone.delete(name);
        continue;
      }
      // The engine takes a formula without a cell to stand just before the first one.
      const place = { row: y - 1, column: x - 1 };
      this.#beside.set(name, this.#read({ ...one, ...place }));
    }
    for (const [name, formula] of gone) {
      this.#unread(formula);
      if (this.#beside.get(name) === formula) this.#beside.delete(name);
    }
  }

  #takeInSheet(sheet: string, matrix: Matrix): void {
    const held = this.#cells.get(sheet) ?? new Map<number, KeptFormula>();
    this.#cells.set(sheet, held);
    let standing = 0;
    for (const rowText in matrix) {
      const row = Number(rowText);
      const columns = matrix[row] ?? {};
      for (const columnText in columns) {
        const column = Number(columnText);
        const given = columns[column];
        if (!given) continue;
        standing += 1;
        const at = cellKey(row, column);
        const known = held.get(at);
        if (known && isSame(known.given, given)) continue;
        if (known) this.#unread(known);
        held.set(at, this.#read({ sheet, row, column, given: { ...given } }));
      }
    }
    if (standing === held.size) return;
    for (const [at, formula] of held)
      if (!matrix[formula.row]?.[formula.column]) {
        this.#unread(formula);
        held.delete(at);
      }
  }

  #read(
    formula: Pick<KeptFormula, "sheet" | "row" | "column" | "given" | "beside">,
  ): KeptFormula {
    const parsed = this.#reading.parse(formula.given, formula.beside);
    const unread: Unread = { ...formula, ...parsed };
    const reads: ReadArea<KeptFormula>[] = [];
    const kept: KeptFormula = { ...unread, reads };
    for (const area of this.#reading.areas(unread))
      reads.push(this.areas.add(area, kept));
    if (parsed.pattern.isUnforeseeable) this.#unforeseeable += 1;
    this.#changes += 1;
    return kept;
  }

  #unread(formula: KeptFormula): void {
    for (const read of formula.reads) this.areas.remove(read, formula);
    if (formula.pattern.isUnforeseeable) this.#unforeseeable -= 1;
    this.#changes += 1;
  }
}

const isSame = (a: GivenFormula, b: GivenFormula): boolean =>
  a.f === b.f && (a.x ?? 0) === (b.x ?? 0) && (a.y ?? 0) === (b.y ?? 0);
