import type { CellValue, DefinedName, Sheet, Stored } from "../sheets/workbook";

/** One worksheet table as read: rows of raw values in the order of its headings. A formula gives its result. */
export interface TableContents {
  readonly name: string;
  readonly sheet: string;
  /** Where the heading row starts; rows and columns count from 0. */
  readonly row: number;
  readonly column: number;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly Stored[])[];
}

export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** What a cell holds and, where one of our functions refused, the sentence it gave. */
export interface CellFacts extends CellPlace {
  readonly formula?: string;
  readonly value: Stored;
  readonly refusal?: string;
}

/** New rows for a table, by heading; a heading left out stays blank (or takes the column's own formula). */
export type TableRows = readonly Readonly<Record<string, CellValue>>[];

/** One user action's writes: rows appended to tables and sheets added, all or nothing. */
export interface Change {
  readonly says: string;
  readonly append: readonly {
    readonly table: string;
    readonly rows: TableRows;
  }[];
  readonly addSheets: readonly Sheet[];
  readonly names: readonly DefinedName[];
}

/** The port the pane talks to. A host is one open workbook somewhere: in the grid, in Excel, in a file. */
export interface Host {
  /** Plain words for where we are, for example "the workbench". */
  readonly place: string;
  readTables(): Promise<readonly TableContents[]>;
  sheetNames(): Promise<readonly string[]>;
  readNames(): Promise<readonly DefinedName[]>;
  /** Facts of one cell, by place. */
  readCell(at: CellPlace): Promise<CellFacts>;
  /** Results of a rectangle on one sheet, as stored, row by row. */
  readArea(
    sheet: string,
    row: number,
    column: number,
    rows: number,
    columns: number,
  ): Promise<readonly (readonly Stored[])[]>;
  /** Types a value into one cell that is an input; waits until everything that follows from it has settled. */
  setCell(at: CellPlace, value: CellValue): Promise<void>;
  /** Carries out a change as a whole and waits until it has settled. Refuses, with a sentence, a sheet or name that exists. */
  apply(change: Change): Promise<void>;
  /** Takes back the last applied change of this session, if it can; says what it took back. */
  undo(): Promise<string | undefined>;
  select(at: CellPlace): Promise<void>;
  /** Calls back with the facts of the selected cell, now and whenever selection or its value changes; returns the way to stop. */
  watchSelection(listener: (facts: CellFacts) => void): () => void;
}
