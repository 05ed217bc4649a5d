import { filled } from "../../src/hosts/filled-cells";
import type {
  CellFacts,
  CellPlace,
  Change,
  Host,
  TableContents,
} from "../../src/hosts/host";
import { unusable } from "../../src/measures/cannot-answer";
import type {
  Area,
  Cell,
  DefinedName,
  Sheet,
  Stored,
  Workbook,
} from "../../src/sheets/workbook";

/**
 * An open workbook in memory behind the port: cells, tables and names are real, formulas are kept but not calculated
 * (a formula shows the value stored with it). It counts nothing and forgets nothing.
 */
export interface FakeHost extends Host {
  readonly workbook: () => Workbook;
  readonly onEdit: (listener: () => void) => () => void;
  /** As a person drags over cells. */
  readonly selectArea: (sheet: string, area: Area) => void;
}

interface Held {
  value: Stored;
  formula?: string;
}

export function fakeHost(start: Workbook): FakeHost {
  let book = start;
  let last: { readonly says: string; readonly before: Workbook } | undefined;
  let selected: CellPlace = {
    sheet: start.sheets[0]?.name ?? "",
    row: 0,
    column: 0,
  };
  let area: Area = { row: 0, column: 0, rows: 1, columns: 1 };
  const editListeners = new Set<() => void>();
  type Told = Parameters<Host["watchSelection"]>[0];
  const selectionListeners = new Set<Told>();
  const tellSelection = (): void => {
    for (const tell of selectionListeners) tell(factsOf(book, selected), area);
  };
  const edited = (): void => {
    for (const tell of editListeners) tell();
    tellSelection();
  };
  return {
    place: "a workbook in memory",
    workbook: () => book,
    onEdit: (listener) => {
      editListeners.add(listener);
      return () => editListeners.delete(listener);
    },
    readTables: async () => tablesOf(book),
    sheetNames: async () => book.sheets.map((sheet) => sheet.name),
    readNames: async () => book.names,
    readCell: async (at) => factsOf(book, at),
    readArea: async (sheet, row, column, rows, columns) =>
      Array.from({ length: rows }, (_, r) =>
        Array.from(
          { length: columns },
          (_, c) =>
            factsOf(book, { sheet, row: row + r, column: column + c }).value,
        ),
      ),
    setCell: async (at, value) => {
      book = withCell(book, at, { value });
      edited();
    },
    putFormula: async (at, { formula }) => {
      const { value, formula: before } = factsOf(book, at);
      book = withCell(book, at, { value: null, formula });
      edited();
      return async () => {
        if (factsOf(book, at).formula !== formula)
          throw unusable(`${at.sheet} has been changed since, so it stays`);
        book = withCell(book, at, {
          value,
          ...(before === undefined ? {} : { formula: before }),
        });
        edited();
      };
    },
    apply: async (change) => {
      const before = book;
      book = changed(book, change);
      last = { says: change.says, before };
      edited();
    },
    undo: async () => {
      if (!last) return undefined;
      const { says, before } = last;
      book = before;
      last = undefined;
      edited();
      return says;
    },
    select: async (at) => {
      selected = at;
      area = { row: at.row, column: at.column, rows: 1, columns: 1 };
      tellSelection();
    },
    selectArea: (sheet, chosen) => {
      selected = { sheet, row: chosen.row, column: chosen.column };
      area = chosen;
      tellSelection();
    },
    watchSelection: (listener) => {
      selectionListeners.add(listener);
      listener(factsOf(book, selected), area);
      return () => selectionListeners.delete(listener);
    },
  };
}

function sheetNamed(book: Workbook, name: string): Sheet {
  const sheet = book.sheets.find((s) => s.name === name);
  if (!sheet) throw unusable(`There is no sheet "${name}"`);
  return sheet;
}

function factsOf(book: Workbook, at: CellPlace): CellFacts {
  const cell = cellsOf(sheetNamed(book, at.sheet)).get(
    `${at.row},${at.column}`,
  );
  const held: Held = { value: cell?.value ?? null };
  if (cell?.formula !== undefined) held.formula = cell.formula;
  return { ...at, ...held };
}

/** Sheets never change in place, so an index of their cells can be kept with them. */
const indexes = new WeakMap<Sheet, ReadonlyMap<string, Cell>>();

function cellsOf(sheet: Sheet): ReadonlyMap<string, Cell> {
  const known = indexes.get(sheet);
  if (known) return known;
  const index = new Map(
    sheet.cells.map((cell) => [`${cell.row},${cell.column}`, cell]),
  );
  indexes.set(sheet, index);
  return index;
}

const tablesOf = (book: Workbook): readonly TableContents[] =>
  book.sheets.flatMap((sheet) =>
    sheet.tables.map(({ name, area, columns }) => ({
      name,
      sheet: sheet.name,
      row: area.row,
      column: area.column,
      headings: columns.map((c) => c.heading),
      rows: Array.from({ length: area.rows - 1 }, (_, r) =>
        columns.map(
          (_, c) =>
            factsOf(book, {
              sheet: sheet.name,
              row: area.row + 1 + r,
              column: area.column + c,
            }).value,
        ),
      ),
    })),
  );

const withCell = (
  book: Workbook,
  at: CellPlace,
  holds: Pick<Cell, "value" | "formula">,
): Workbook =>
  withSheet(book, at.sheet, (sheet) => ({
    ...sheet,
    cells: [
      ...sheet.cells.filter((c) => c.row !== at.row || c.column !== at.column),
      { row: at.row, column: at.column, ...holds },
    ],
  }));

function withSheet(
  book: Workbook,
  name: string,
  how: (sheet: Sheet) => Sheet,
): Workbook {
  sheetNamed(book, name);
  return {
    ...book,
    sheets: book.sheets.map((s) => (s.name === name ? how(s) : s)),
  };
}

function changed(book: Workbook, change: Change): Workbook {
  for (const { name } of change.addSheets)
    if (book.sheets.some((s) => s.name === name))
      throw unusable(`There is already a sheet "${name}"`);
  const taken: readonly DefinedName[] = book.names;
  for (const { name } of change.names)
    if (taken.some((n) => n.name === name))
      throw unusable(`There is already a name ${name}`);
  const grown = change.append.reduce(
    (now, { table, rows }) => appended(now, table, rows),
    book,
  );
  const full = (change.fill ?? []).reduce(
    (now, fill) => filled(now, fill).workbook,
    grown,
  );
  return {
    ...full,
    sheets: [...full.sheets, ...change.addSheets],
    names: [...full.names, ...change.names],
  };
}

function appended(
  book: Workbook,
  tableName: string,
  rows: Change["append"][number]["rows"],
): Workbook {
  const sheet = book.sheets.find((s) =>
    s.tables.some((t) => t.name === tableName),
  );
  const table = sheet?.tables.find((t) => t.name === tableName);
  if (!sheet || !table) throw unusable(`There is no table "${tableName}"`);
  const bottom = table.area.row + table.area.rows;
  const cells = rows.flatMap((row, r) =>
    Object.entries(row).map(([heading, value]) => {
      const c = table.columns.findIndex((k) => k.heading === heading);
      if (c < 0)
        throw unusable(`The table ${tableName} has no column "${heading}"`);
      return { row: bottom + r, column: table.area.column + c, value };
    }),
  );
  return withSheet(book, sheet.name, (s) => ({
    ...s,
    cells: [...s.cells, ...cells],
    tables: s.tables.map((t) =>
      t.name === tableName
        ? { ...t, area: { ...t.area, rows: t.area.rows + rows.length } }
        : t,
    ),
  }));
}
