import type { Sheet, Table, Workbook } from "../../sheets/workbook";
import type { CellPlace } from "../host";
import { references, type Reference } from "../formula-references";

export interface FormulaCell extends CellPlace {
  readonly formula: string;
}

/** Which formula cells each formula cell needs. Sheets, names, tables and headings are matched without regard to case. */
export function formulaNeeds(
  workbook: Workbook,
): ReadonlyMap<FormulaCell, readonly FormulaCell[]> {
  const book = new FormulaIndex(workbook);
  return new Map(
    book.cells.map((cell) => [
      cell,
      [
        ...new Set(
          references(cell.formula).flatMap((reference) =>
            book.cellsOf(reference, cell, new Set()),
          ),
        ),
      ],
    ]),
  );
}

interface Rectangle {
  readonly sheet: string;
  readonly fromRow: number;
  readonly toRow: number;
  readonly fromColumn: number;
  readonly toColumn: number;
}

class FormulaIndex {
  readonly cells: readonly FormulaCell[];
  /** By sheet, then column: the formula cells from top to bottom. */
  readonly #bySheet = new Map<string, Map<number, FormulaCell[]>>();
  readonly #tables = new Map<
    string,
    { readonly sheet: Sheet; readonly table: Table }
  >();
  readonly #names: ReadonlyMap<string, string>;

  constructor(workbook: Workbook) {
    this.cells = workbook.sheets.flatMap((sheet) =>
      sheet.cells.flatMap(({ row, column, formula }) =>
        formula === undefined
          ? []
          : [{ sheet: sheet.name, row, column, formula }],
      ),
    );
    for (const cell of this.cells) {
      const columns = entry(this.#bySheet, plain(cell.sheet), () => new Map());
      entry(columns, cell.column, () => []).push(cell);
    }
    for (const columns of this.#bySheet.values())
      for (const column of columns.values())
        column.sort((a, b) => a.row - b.row);
    for (const sheet of workbook.sheets)
      for (const table of sheet.tables)
        this.#tables.set(plain(table.name), { sheet, table });
    this.#names = new Map(
      workbook.names.map(({ name, refersTo }) => [plain(name), refersTo]),
    );
  }

  cellsOf(
    reference: Reference,
    from: FormulaCell,
    seenNames: ReadonlySet<string>,
  ): readonly FormulaCell[] {
    switch (reference.kind) {
      case "area":
        return this.#within({
          ...reference,
          sheet: reference.sheet ?? from.sheet,
        });
      case "table": {
        const held = this.#tables.get(plain(reference.table));
        const place =
          held && tableArea(held.sheet, held.table, reference, from);
        return place ? this.#within(place) : [];
      }
      case "name": {
        const key = plain(reference.name);
        const refersTo = this.#names.get(key);
        if (refersTo === undefined) {
          const whole = this.#tables.get(key);
          return whole
            ? this.cellsOf(
                { kind: "table", table: reference.name, part: "data" },
                from,
                seenNames,
              )
            : [];
        }
        if (seenNames.has(key)) return [];
        return references(refersTo).flatMap((inner) =>
          this.cellsOf(inner, from, new Set([...seenNames, key])),
        );
      }
    }
  }

  #within(area: Rectangle): readonly FormulaCell[] {
    const columns = this.#bySheet.get(plain(area.sheet));
    if (!columns) return [];
    return [...columns]
      .filter(
        ([column]) => column >= area.fromColumn && column <= area.toColumn,
      )
      .flatMap(([, cells]) => rowsBetween(cells, area.fromRow, area.toRow));
  }
}

function tableArea(
  sheet: Sheet,
  table: Table,
  reference: Extract<Reference, { readonly kind: "table" }>,
  from: FormulaCell,
): Rectangle | undefined {
  if (reference.part === "headings") return undefined;
  const { area } = table;
  const headings = table.columns.map((column) => plain(column.heading));
  const [first, last] = reference.columns ?? [];
  const start = first === undefined ? 0 : headings.indexOf(plain(first));
  const end =
    last === undefined ? area.columns - 1 : headings.indexOf(plain(last));
  if (start < 0 || end < 0) return undefined;
  const thisRow = reference.part === "this row";
  return {
    sheet: sheet.name,
    fromColumn: area.column + start,
    toColumn: area.column + end,
    fromRow: thisRow ? from.row : area.row + 1,
    toRow: thisRow ? from.row : area.row + area.rows - 1,
  };
}

function rowsBetween(
  cells: readonly FormulaCell[],
  from: number,
  to: number,
): readonly FormulaCell[] {
  const start = firstAtLeast(cells, from);
  const end = firstAtLeast(cells, to + 1);
  return cells.slice(start, end);
}

function firstAtLeast(cells: readonly FormulaCell[], row: number): number {
  let low = 0;
  let high = cells.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((cells[middle]?.row ?? 0) < row) low = middle + 1;
    else high = middle;
  }
  return low;
}

const plain = (name: string): string => name.trim().toLowerCase();

function entry<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
}
