import type { CellTerm, ValueOf } from "../terms/term";

/** One column of a farm-book table, said once: how it is headed, read, checked, written and shown. */
export interface Column {
  /** Letters, digits, spaces, "%" and "°" only: other signs break a formula that names the column. */
  readonly heading: string;
  readonly term: CellTerm;
  /** The column's name in the CSV file; a calculated column may have one too, which is then not read. */
  readonly csv?: string;
  /** Other headings that mean this column. */
  readonly aliases?: readonly string[];
  readonly mayBeBlank?: true;
  /** What a blank counts as, typed as a person would; `sayBlank` tells the reader so. */
  readonly blankIs?: string;
  readonly sayBlank?: true;
  /** What a blank or missing cell is taken to be, from the row's other cells by key; always one of the term's own values. */
  readonly inferred?: (cell: (key: string) => unknown) => string;
  /** The CSV writes this share in percent: 18 for 18 %. */
  readonly csvPercent?: true;
  /** The value's meaning depends on the row's own name (first column): settings and energy figures. */
  readonly byName?: Readonly<Record<string, CellTerm>>;
  /** Where the same name must exist, as "Parts.part"; any one of them will do. */
  readonly refersTo?: readonly [string, ...string[]];
  /** What is usual in the trade, in the stated unit; a value outside is kept and questioned. Common practice, no source. */
  readonly usual?: readonly [number, number];
  /** A calculated column: the formula of every row. */
  readonly formula?: (own: (heading: string) => string) => string;
  /** Worksheet number format and width in characters, where the term's own do not fit. */
  readonly format?: string;
  readonly width?: number;
}

export type Columns = Readonly<Record<string, Column>>;

/** A farm-book table, declared once; sheets, CSV reading, findings and row types all follow from it. */
export interface Table<C extends Columns = Columns> {
  /** The worksheet table's name; formulas use it. */
  readonly name: string;
  readonly sheet: string;
  readonly about: string;
  readonly csv: string;
  /** A farm may do without it: neither a CSV folder nor a book must have it. */
  readonly optional?: true;
  /** Only a season's roll writes it: a book without it lacks nothing, and a new one gets no sheet for it. */
  readonly comesFromRoll?: true;
  /** A book without it lacks nothing, and gets no sheet for it. */
  readonly onlyWhereKept?: true;
  /** Columns that together name a row; two rows with the same are a finding. */
  readonly key: readonly string[];
  readonly columns: C;
}

/** A number, text or yes/no whose meaning the row's name decides. */
export type Loose = number | string | boolean;

type Cell<T> = T extends { readonly byName: unknown }
  ? Loose
  : T extends { readonly term: infer Term }
    ? ValueOf<Term>
    : never;

type Value<T> = T extends { readonly mayBeBlank: true }
  ? Cell<T> | undefined
  : Cell<T>;

type Entered<C> = {
  readonly [
    K in keyof C as C[K] extends { readonly formula: unknown } ? never : K
  ]: Value<C[K]>;
};

/** One row as read: the entered columns in house units, and its place for people, as "Lots row 7". */
export type RowOf<T> =
  T extends Table<infer C> ? Entered<C> & { readonly place: string } : never;

export const declareTable = <
  const C extends Columns,
  const K extends readonly (keyof C & string)[],
>(
  table: Omit<Table<C>, "key"> & { readonly key: K },
): Table<C> => table;

/** The same row's cell in a formula of this table: "Lots[[#This Row],[Net lb]]". */
export const ownCell =
  (table: string) =>
  (heading: string): string =>
    `${table}[[#This Row],[${heading}]]`;
