import type { Area, Stored } from "../../../src/sheets/workbook";
import type { Entered } from "./entered";

/** The workbook behind the wire: plain data that the objects of the wire read and change. */
export interface BookState {
  readonly sheets: SheetState[];
  readonly names: { name: string; formula: string }[];
  readonly xmlParts: { id: string; xml: string }[];
  active: string;
  selected: { sheet: string; area: Area };
  isProtected: boolean;
  calculationMode: "Automatic" | "Manual";
  calculationState: "Done" | "Calculating";
  /** What a formula comes to; the wire calculates nothing itself. */
  result: ResultOf;
  nextId: number;
  /** How many of the rows added at once a table takes in; the rest lands below it, as Excel has done (office-js issue 3191). */
  rowsTaken: number;
  /** Sheets whose cells were changed and of which nobody has been told yet. */
  readonly touched: Set<string>;
  /** Files opened as workbooks of their own. */
  readonly opened: string[];
  /** How many times calculation and screen were held back. */
  readonly held: { calculation: number; screen: number };
}

export type ResultOf = (
  sheet: string,
  row: number,
  column: number,
  formula: string,
) => Stored | undefined;

export interface CellState extends Entered {
  readonly format?: string;
  readonly looks?: Readonly<Record<string, unknown>>;
  readonly note?: string;
  readonly unlocked?: boolean;
}

export interface SheetState {
  readonly id: string;
  name: string;
  visibility: "Visible" | "Hidden" | "VeryHidden";
  tabColor: string;
  isProtected: boolean;
  readonly cells: Map<string, CellState>;
  readonly tables: TableState[];
  merges: Area[];
  validations: ValidationState[];
  readonly widths: Map<number, number>;
  readonly heights: Map<number, number>;
  frozen: { rows: number; columns: number };
  readonly charts: ChartState[];
  readonly page: Record<string, unknown>;
}

export interface TableState {
  name: string;
  area: Area;
  style: string;
  isFiltered: boolean;
  showHeaders: boolean;
  showTotals: boolean;
}

export interface ValidationState {
  area: Area;
  rule: object;
  errorAlert?: object;
  prompt?: object;
}

export interface ChartState {
  name: string;
  type: string;
  title: string;
  series: {
    name: string;
    values: string;
    categories: string;
    color: string;
  }[];
  from: string;
  to: string;
  readonly more: Record<string, unknown>;
}

export const emptyBook = (result: ResultOf = () => undefined): BookState => ({
  sheets: [newSheet("sheet-1", "Sheet1")],
  names: [],
  xmlParts: [],
  active: "Sheet1",
  selected: {
    sheet: "Sheet1",
    area: { row: 0, column: 0, rows: 1, columns: 1 },
  },
  isProtected: false,
  calculationMode: "Automatic",
  calculationState: "Done",
  result,
  nextId: 2,
  rowsTaken: Infinity,
  touched: new Set(),
  opened: [],
  held: { calculation: 0, screen: 0 },
});

export const newSheet = (id: string, name: string): SheetState => ({
  id,
  name,
  visibility: "Visible",
  tabColor: "",
  isProtected: false,
  cells: new Map(),
  tables: [],
  merges: [],
  validations: [],
  widths: new Map(),
  heights: new Map(),
  frozen: { rows: 0, columns: 0 },
  charts: [],
  page: {},
});

export const placeKey = (row: number, column: number): string =>
  `${row},${column}`;

export const covers = (area: Area, row: number, column: number): boolean =>
  row >= area.row &&
  row < area.row + area.rows &&
  column >= area.column &&
  column < area.column + area.columns;

export const overlap = (a: Area, b: Area): boolean =>
  a.row < b.row + b.rows &&
  b.row < a.row + a.rows &&
  a.column < b.column + b.columns &&
  b.column < a.column + a.columns;

/** Everything there is to know, as one comparable value: what was there before must be there after. */
export const pictureOf = (book: BookState): unknown => ({
  names: [...book.names].sort((a, b) => a.name.localeCompare(b.name)),
  sheets: book.sheets.map(({ cells, widths, heights, ...sheet }) => ({
    ...sheet,
    cells: Object.fromEntries([...cells].sort()),
    widths: Object.fromEntries(widths),
    heights: Object.fromEntries(heights),
  })),
});
