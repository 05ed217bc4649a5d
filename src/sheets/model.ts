import type { Role } from "./looks";
import type { Chart, PrintSetup, Validation } from "./workbook";

/**
 * A worksheet as data, before anything has an address. Formulas name other cells in braces:
 * `{bottles}` a line's cell, `{lots.left}` a whole column of a table, `{lots.received:price}` neighbouring columns,
 * `{row.left}` the cell of that column in the same row (in a comparison: the same column), `{n}` the row's number from 1,
 * `{row_above.left}` the one in the row above (0 in the first row),
 * `{first..last}` everything from one cell to another, `{materials.needs&}` the cells of a column joined with "&".
 */
export interface SheetDescription {
  readonly name: string;
  readonly blocks: readonly Block[];
  /** Column widths in characters, from column A. */
  readonly widths: readonly number[];
  readonly frozenRows: number;
  readonly tabColor?: string;
  readonly charts?: readonly ChartDescription[];
  readonly print?: PrintSetup;
}

/** A chart beside a block; its categories and values name cells in braces as formulas do. */
export interface ChartDescription extends Omit<Chart, "area"> {
  /** The place whose first row it starts at and to whose right it stands. */
  readonly beside: string;
  readonly rows: number;
  readonly columns: number;
}

/** A formula, or two that must agree: `portable` uses only plain worksheet functions. Without it, our functions' native forms stand in. */
export interface Formula {
  readonly formula: string;
  readonly portable?: string;
}

export type Content = string | number | boolean | Formula;

export interface Line {
  readonly name: string;
  readonly label: string;
  readonly unit?: string;
  readonly content: Content | undefined;
  readonly role: Role;
  readonly format?: string;
  readonly hint?: string;
  readonly rule?: Validation["rule"];
  readonly ruleSays?: string;
}

export interface Column {
  readonly name: string;
  readonly label: string;
  readonly role?: Role;
  readonly format?: string;
  readonly content: Content;
  /** One for each row instead, where the rows of a copy differ. */
  readonly contents?: readonly Content[];
}

export type Block =
  | { readonly kind: "title"; readonly content: Content }
  | { readonly kind: "notes"; readonly lines: readonly string[] }
  /** One labelled value a row: label, value, unit, hint. */
  | {
      readonly kind: "lines";
      readonly title: string;
      readonly lines: readonly Line[];
    }
  /** Rows of columns, every row with the same formulas. */
  | {
      readonly kind: "table";
      readonly name: string;
      readonly title: string;
      readonly columns: readonly Column[];
      readonly rows: number;
      readonly total?: {
        readonly label: string;
        readonly columns: readonly string[];
      };
    }
  /** Things side by side, one a column, and what is compared down the rows. */
  | {
      readonly kind: "comparison";
      readonly name: string;
      readonly title: string;
      readonly things: number;
      readonly lines: readonly {
        readonly name: string;
        readonly label: string;
        readonly unit?: string;
        readonly role?: Role;
        readonly format?: string;
        readonly content: Content;
        /** One for each thing instead, where the things of a copy differ. */
        readonly contents?: readonly Content[];
      }[];
    }
  /** Fixed row labels with one formula for each of several columns. */
  | {
      readonly kind: "matrix";
      readonly name: string;
      readonly title: string;
      readonly columns: readonly {
        readonly name: string;
        readonly label: string;
      }[];
      readonly rows: readonly {
        readonly name: string;
        readonly label: string;
        readonly role?: Role;
        readonly format?: string;
        readonly contents: readonly Content[];
      }[];
    };
