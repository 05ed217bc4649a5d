import type { Block, Content, Line } from "../model";
import type { Stored } from "../workbook";
import { tryRule } from "./audiences";
import { type FigureFate, isBlank } from "./fates";
import { figureId } from "./figures";
import type { SheetToCopy } from "./sheet-to-copy";

/** What is kept of a sheet's blocks. */
export class Kept {
  readonly #from: SheetToCopy;
  readonly #fates: ReadonlyMap<string, FigureFate>;
  readonly #rows = new Map<string, readonly number[]>();
  /** Texts of "" that a live formula reads; a blank in their place would count as 0. */
  readonly #hasLive: boolean;
  /** What live formulas name, rows of their own table by the table's name. */
  readonly #named: ReadonlySet<string>;

  constructor(from: SheetToCopy, fates: readonly FigureFate[]) {
    this.#from = from;
    this.#fates = new Map(fates.map((one) => [one.figure.id, one]));
    this.#hasLive = fates.some(({ fate }) => fate === "live");
    this.#named = new Set(fates.flatMap(namedBy));
  }

  original(name: string, index: number): FigureFate | undefined {
    const rows = this.#rows.get(name.split(".")[0] ?? "");
    return this.#fates.get(figureId(name, rows?.[index] ?? index));
  }

  block(block: Block): readonly Block[] {
    switch (block.kind) {
      case "title":
        return [{ ...block, content: this.#title() }];
      case "notes":
        return [];
      case "lines": {
        const lines = block.lines.flatMap((line) => this.#line(line));
        return lines.length === 0 ? [] : [{ ...block, lines }];
      }
      case "table":
        return this.#table(block);
      case "comparison": {
        const lines = block.lines
          .filter((line) => this.#isKept(`${block.name}.${line.name}`, 0))
          .map((line) => ({
            ...line,
            contents: Array.from({ length: block.things }, (_, i) =>
              this.#content(`${block.name}.${line.name}`, i),
            ),
          }));
        return lines.length === 0 ? [] : [{ ...block, lines }];
      }
      case "matrix": {
        const name = (row: string, column: string): string =>
          `${block.name}.${row}.${column}`;
        const columns = block.columns.filter((column) =>
          block.rows.some((row) =>
            this.#isKept(name(row.name, column.name), 0),
          ),
        );
        const rows = block.rows
          .filter((row) =>
            columns.some((column) =>
              this.#isKept(name(row.name, column.name), 0),
            ),
          )
          .map((row) => ({
            ...row,
            contents: columns.map((column) =>
              this.#content(name(row.name, column.name), 0),
            ),
          }));
        return rows.length === 0 ? [] : [{ ...block, columns, rows }];
      }
    }
  }

  #table(block: Extract<Block, { readonly kind: "table" }>): readonly Block[] {
    const every = Array.from({ length: block.rows }, (_, i) => i);
    const columns = block.columns.filter((column) =>
      every.some((i) => this.#isKept(`${block.name}.${column.name}`, i)),
    );
    const rows = every.filter((i) =>
      columns.some((column) => this.#isKept(`${block.name}.${column.name}`, i)),
    );
    this.#rows.set(block.name, rows);
    const filled = columns.filter(
      (column) =>
        this.#named.has(`${block.name}.${column.name}`) ||
        !this.#isEmpty(`${block.name}.${column.name}`, rows),
    );
    if (rows.length === 0 || filled.length === 0) return [];
    const totals = (block.total?.columns ?? []).filter(
      (name) =>
        filled.some((column) => column.name === name) &&
        every.every((i) => {
          const fate = this.#fates.get(
            figureId(`${block.name}.${name}`, i),
          )?.fate;
          return fate !== "removed";
        }),
    );
    const { total, ...rest } = block;
    return [
      {
        ...rest,
        rows: rows.length,
        columns: filled.map((column) => ({
          ...column,
          contents: rows.map((i) =>
            this.#content(`${block.name}.${column.name}`, i),
          ),
        })),
        ...(total && totals.length > 0
          ? { total: { ...total, columns: totals } }
          : {}),
      },
    ];
  }

  /** A column with nothing in it that nothing can bring to life. */
  #isEmpty(name: string, rows: readonly number[]): boolean {
    return rows.every((i) => {
      const one = this.#fates.get(figureId(name, i));
      return (
        one !== undefined &&
        one.fate !== "live" &&
        one.fate !== "input" &&
        isBlank(this.#value(one))
      );
    });
  }

  #line(line: Line): readonly Line[] {
    const one = this.#fates.get(figureId(line.name, 0));
    if (!one || !this.#isKept(line.name, 0)) return [];
    const { rule: own, ruleSays, hint, ...rest } = line;
    // A list kept in another sheet stays at the farm.
    const rule = own?.kind === "list from" ? undefined : own;
    const tried = tryRule(this.#from.kind, line.name);
    const isInput = one.fate === "input";
    return [
      {
        ...rest,
        content: this.#content(line.name, 0),
        role: isInput
          ? "input"
          : line.role === "input"
            ? "calculated"
            : line.role,
        ...(hint !== undefined && one.fate !== "fixed" ? { hint } : {}),
        ...(isInput && (rule ?? tried?.rule)
          ? { rule: rule ?? tried?.rule ?? { kind: "number" } }
          : {}),
        ...(isInput && (ruleSays ?? tried?.says)
          ? { ruleSays: ruleSays ?? tried?.says ?? "" }
          : {}),
      },
    ];
  }

  #isKept(name: string, index: number): boolean {
    const fate = this.#fates.get(figureId(name, index))?.fate;
    return fate !== undefined && fate !== "removed" && fate !== "blank";
  }

  #title(): Content {
    const one = [...this.#fates.values()].find(
      ({ figure }) => figure.name === "title",
    );
    return one ? this.#contentOf(one) : "";
  }

  #content(name: string, index: number): Content {
    const one = this.#fates.get(figureId(name, index));
    return one ? this.#contentOf(one) : "";
  }

  #contentOf(one: FigureFate): Content {
    if (one.fate === "removed" || one.fate === "blank") return "";
    if (one.fate === "live" && one.formula !== undefined)
      return { formula: withRowNumber(one.formula, one.figure.index) };
    const value = this.#value(one);
    if (typeof value === "object" && value !== null)
      return { formula: "=NA()" };
    if (isBlank(value))
      return one.fate === "fixed" &&
        this.#hasLive &&
        one.figure.role !== "input"
        ? { formula: '=""' }
        : "";
    return value ?? "";
  }

  #value({ figure }: FigureFate): Stored {
    return this.#from.valueAt(figure.row, figure.column);
  }
}

const namedBy = ({
  fate,
  figure,
  formula = "",
}: FigureFate): readonly string[] =>
  fate === "live"
    ? [...formula.matchAll(/\{([\w.]+)/g)].map(([, name = ""]) =>
        name.replace(/^row(_above)?\./, `${figure.self?.table ?? ""}.`),
      )
    : [];

/** The row's number at the farm; the copy's rows may be fewer. */
const withRowNumber = (formula: string, index: number): string =>
  formula.replace(/\{n\}/g, String(index + 1));
