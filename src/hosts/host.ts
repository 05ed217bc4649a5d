import type {
  Area,
  Cell,
  CellValue,
  Chart,
  DefinedName,
  Sheet,
  Stored,
} from "../sheets/workbook";

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

/** Values and formulas for cells of a sheet that is there; the rectangle around them must be blank. */
export interface Fill {
  readonly sheet: string;
  /** At least one; a number format is taken by a cell that has none of its own. */
  readonly cells: readonly Cell[];
}

/** One user action's writes: rows appended to tables, blank cells filled and sheets added, all or nothing. */
export interface Change {
  readonly says: string;
  readonly append: readonly {
    readonly table: string;
    readonly rows: TableRows;
  }[];
  readonly fill?: readonly Fill[];
  readonly addSheets: readonly Sheet[];
  readonly names: readonly DefinedName[];
}

/** A formula for one cell, and the number format a cell without one of its own then gets. */
export interface FormulaForCell {
  readonly formula: string;
  readonly format?: string;
}

/** How long work is told of and stopped. A host that is done at once uses neither. */
export interface Work {
  /** Called with the share done so far, 0 to 1. */
  readonly tell?: (share: number) => void;
  readonly signal?: AbortSignal;
}

/** What is remembered with the workbook itself. */
export type Settings = Readonly<Record<string, CellValue>>;

/** What only a workbook in Excel can do. */
export interface InExcel {
  /** What this Excel is too old for, a sentence each. */
  readonly missing: readonly string[];
  /** Set when an earlier write was cut off and may have left something half done. */
  readonly unfinished: string | undefined;
  readSettings(): Promise<Settings>;
  saveSettings(settings: Settings): Promise<void>;
  addChart(sheet: string, chart: Chart): Promise<void>;
  /** Opens a workbook file as a new workbook of its own; this one stays as it is. */
  openAsNewWorkbook(file: Uint8Array): Promise<void>;
  /** Takes in the sheets of a file after the last sheet, and says what they are called here. */
  insertSheets(file: Uint8Array): Promise<readonly string[]>;
  /** Enters every formula with our functions anew, for cells stuck at #NAME?. */
  repair(): Promise<Repaired>;
}

export interface Repaired {
  readonly formulas: number;
  /** Sheets that were left alone because they are protected. */
  readonly leftAlone: readonly string[];
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
  /**
   * Puts a formula into one cell over whatever it holds, and waits until everything that follows from it has settled.
   * Gives the way to put the cell back as it was, which refuses, with a sentence, once somebody has changed the cell.
   */
  putFormula(at: CellPlace, put: FormulaForCell): Promise<() => Promise<void>>;
  /** Carries out a change as a whole and waits until it has settled. Refuses, with a sentence, a sheet or name that exists. */
  apply(change: Change, work?: Work): Promise<void>;
  /** Takes back the last applied change of this session, if it can; says what it took back. */
  undo(): Promise<string | undefined>;
  select(at: CellPlace): Promise<void>;
  /** Calls back with the facts of the selected cell and the rectangle selected with it, now and whenever selection or value changes; returns the way to stop. */
  watchSelection(
    listener: (facts: CellFacts, selected: Area) => void,
  ): () => void;
  readonly inExcel?: InExcel;
}
