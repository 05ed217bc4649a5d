import type { Gallon } from "../measures/gallon";
import { isBlank } from "../functions/read-cell";
import { columnAt, columnWords, type Contents, placeOf } from "./contents";
import type { Finding } from "./finding";
import { termNamed } from "./named-value";
import { rowSchema } from "./row-schema";
import type { Table } from "./table";
import { questions } from "./questions";
import type { AnyRow } from "./any-row";
import { cellTodo, shown, whyUnusable } from "./wording";

export interface TableReading {
  readonly rows: readonly AnyRow[];
  /** Rows that could not be used, with their raw cells. */
  readonly leftOut: readonly AnyRow[];
  readonly findings: readonly Finding[];
}

/**
 * Reads one table's rows. A cell that cannot be used is a finding; its row is left out, or, where the cell may be
 * blank, kept with that cell as not entered. Rows wholly blank are skipped, columns that are not ours ignored.
 */
export function readTable(
  table: Table,
  contents: Contents,
  gallon?: Gallon,
): TableReading {
  const missing = missingColumns(table, contents);
  if (missing.length > 0) return { rows: [], leftOut: [], findings: missing };
  const schema = rowSchema(table, gallon);
  const findings: Finding[] = [];
  const read: (readonly [AnyRow, Cells])[] = [];
  const leftOut: AnyRow[] = [];
  const places = placesOf(table, contents);
  for (const [i, row] of contents.rows.entries()) {
    const cells = cellsOf(places, row);
    if (Object.values(cells).every(isBlank)) continue;
    const place = placeOf(contents, i);
    const { values, bad } = readRow(table, schema, cells);
    findings.push(
      ...bad.map((cell) =>
        badCell(table, contents, place, cells, cell, values !== undefined),
      ),
    );
    if (values) read.push([{ ...values, place }, cells]);
    else leftOut.push({ ...cells, place });
  }
  findings.push(...questions(table, contents, read, gallon));
  return { rows: read.map(([row]) => row), leftOut, findings };
}

interface BadCell {
  readonly key: string;
  readonly message: string;
}

interface RowReading {
  /** Undefined when a cell that may not be blank cannot be used. */
  readonly values: Cells | undefined;
  readonly bad: readonly BadCell[];
}

/** Reads a row; where only cells that may be blank are bad, reads it again without them. */
function readRow(
  table: Table,
  schema: ReturnType<typeof rowSchema>,
  cells: Cells,
): RowReading {
  const result = schema.safeParse(infer(table, cells));
  if (result.success) return { values: result.data, bad: [] };
  const bad = result.error.issues.map(({ path, message }) => ({
    key: String(path[0]),
    message,
  }));
  if (!bad.every(({ key }) => table.columns[key]?.mayBeBlank))
    return { values: undefined, bad };
  const blanks = Object.fromEntries(bad.map(({ key }) => [key, null]));
  const again = readRow(table, schema, { ...cells, ...blanks });
  return { values: again.values, bad: [...bad, ...again.bad] };
}

function badCell(
  table: Table,
  contents: Contents,
  place: string,
  cells: Cells,
  { key, message }: BadCell,
  kept: boolean,
): Finding {
  const column = table.columns[key];
  if (column === undefined)
    throw new Error(`No column "${key}" in the table ${table.name}`);
  const term =
    (column.byName && termNamed(column.byName, Object.values(cells)[0])) ??
    column.term;
  return {
    where: `${place}, ${columnWords(contents, column)}`,
    found: shown(cells[key]),
    meaning: `${whyUnusable(column, term, cells[key], message)}; ${kept ? "the cell counts as not entered" : "the whole row is left out"} until it is put right`,
    todo: cellTodo(term),
  };
}

type Cells = Readonly<Record<string, unknown>>;

/** Which of the contents' columns is which of ours, -1 for one that is not there; found once for all rows. */
const placesOf = (
  table: Table,
  contents: Contents,
): readonly (readonly [key: string, at: number])[] =>
  Object.entries(table.columns).flatMap(([key, column]) =>
    column.formula === undefined
      ? [[key, columnAt(contents.headings, column)] as const]
      : [],
  );

function cellsOf(
  places: ReturnType<typeof placesOf>,
  row: Contents["rows"][number],
): Cells {
  const cells: Record<string, unknown> = {};
  for (const [key, at] of places) cells[key] = at < 0 ? null : row[at];
  return cells;
}

function infer(table: Table, cells: Cells): Cells {
  const filled: Record<string, unknown> = { ...cells };
  for (const [key, column] of Object.entries(table.columns)) {
    if (column.inferred && isBlank(filled[key]))
      filled[key] = column.inferred((other) => filled[other]);
  }
  return filled;
}

function missingColumns(table: Table, contents: Contents): readonly Finding[] {
  return Object.values(table.columns)
    .filter(
      (column) =>
        column.formula === undefined &&
        !column.mayBeBlank &&
        column.blankIs === undefined &&
        column.inferred === undefined &&
        columnAt(contents.headings, column) < 0,
    )
    .map((column) => ({
      where: contents.from?.file ?? contents.sheet,
      found: `no column "${column.heading}"`,
      meaning: `nothing in the table ${table.name} can be used without it: ${column.term.about}`,
      todo: `add a column headed ${column.heading}, or give the right column that heading`,
    }));
}
