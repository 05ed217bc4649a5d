/** A whole workbook as plain data: what every host can render and read back. It knows no host and no trade word. */
export type CellValue = number | string | boolean | null;

/** A worksheet error as a stored result, for example `{ error: "#N/A" }`. */
export interface ErrorResult {
  readonly error: string;
}

export type Stored = CellValue | ErrorResult;

export type Edge = "thin" | "medium" | "double";

export interface Edges {
  readonly top?: Edge;
  readonly bottom?: Edge;
  readonly left?: Edge;
  readonly right?: Edge;
  /** One colour for all edges, `#rrggbb`. */
  readonly color?: string;
}

/** Colours are `#rrggbb`; `size` is in points; `format` is a worksheet number format. */
export interface CellStyle {
  readonly font?: string;
  readonly size?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly color?: string;
  readonly fill?: string;
  readonly format?: string;
  readonly align?: "left" | "center" | "right";
  readonly wrap?: boolean;
  readonly indent?: number;
  readonly edges?: Edges;
}

/** One cell. Rows and columns count from 0. A formula starts with "=", names our functions `SYRUP.NAME`, and `value` is then its last result. */
export interface Cell {
  readonly row: number;
  readonly column: number;
  readonly value?: Stored;
  readonly formula?: string;
  readonly style?: CellStyle;
  readonly note?: string;
  /** How many cells the answer of this cell's formula fills, this cell first; none when it fills only this one. */
  readonly spills?: Pick<Area, "rows" | "columns">;
  /** The value is part of the answer of a formula that spills into this cell; nothing is typed here. */
  readonly spilled?: true;
}

/** A rectangle; `rows` and `columns` are counts. */
export interface Area {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface TableColumn {
  readonly heading: string;
  /** The formula every row of this column carries, when it is a calculated column. */
  readonly formula?: string;
}

/** A real worksheet table; `area` takes in the heading row. */
export interface Table {
  readonly name: string;
  readonly area: Area;
  readonly columns: readonly TableColumn[];
}

/** What may be typed into an area. `list` holds choices, or `source` a formula that gives them. */
export interface Validation {
  readonly area: Area;
  readonly rule:
    | { readonly kind: "list"; readonly choices: readonly string[] }
    | { readonly kind: "list from"; readonly source: string }
    | {
        readonly kind: "number" | "whole number" | "date";
        readonly min?: number;
        readonly max?: number;
      };
  /** Whether a value outside the rule is refused or only questioned. */
  readonly strict?: boolean;
  readonly message?: string;
}

/** A drawn picture of some cells; references name their sheet: `'Cost P250'!$B$4:$B$9`. */
export interface Chart {
  readonly kind: "bars" | "stacked bars" | "columns" | "lines";
  readonly title: string;
  /** What it shows, in a sentence, for whoever does not see it. */
  readonly says: string;
  readonly categories: string;
  readonly series: readonly ChartSeries[];
  /** What the value axis counts. */
  readonly unit?: string;
  /** Number format of the value axis. */
  readonly format?: string;
  /** The cells it lies over. */
  readonly area: Area;
}

export interface ChartSeries {
  readonly name: string;
  readonly values: string;
  /** `#rrggbb` */
  readonly color: string;
}

/** How a sheet comes out of a printer; the foot of every page carries its number. */
export interface PrintSetup {
  readonly paper: "letter" | "a4";
  readonly landscape: boolean;
  /** Everything on one page, or one page wide and as long as it needs. */
  readonly fit: "one page" | "one page wide";
  /** So many pages side by side where one would be too small to read; each begins with the first column. */
  readonly across?: number;
  /** Rows repeated at the head of every page. */
  readonly headings?: { readonly first: number; readonly rows: number };
  /** Only so many columns print, and so many rows where they are counted: what is beyond is working for the screen. */
  readonly upTo?: { readonly columns: number; readonly rows?: number };
  /** Text at the left of the foot. */
  readonly foot?: string;
  /** Of the words around the page number; English without it. */
  readonly language?: "fr";
}

export interface Sheet {
  readonly name: string;
  readonly cells: readonly Cell[];
  readonly tables: readonly Table[];
  readonly validations: readonly Validation[];
  readonly merges: readonly Area[];
  /** Column widths in characters, by column number. */
  readonly widths: Readonly<Record<number, number>>;
  /** Row heights in points, by row number. */
  readonly heights: Readonly<Record<number, number>>;
  readonly frozen: { readonly rows: number; readonly columns: number };
  readonly hidden?: boolean;
  readonly tabColor?: string;
  readonly charts?: readonly Chart[];
  readonly print?: PrintSetup;
}

/** A defined name for a reference or formula, written without "=". */
export interface DefinedName {
  readonly name: string;
  readonly refersTo: string;
}

export interface Workbook {
  readonly title: string;
  readonly sheets: readonly Sheet[];
  readonly names: readonly DefinedName[];
}
