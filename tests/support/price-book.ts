import { pricesBook } from "../../src/apps/cli/prices-workbook";
import { gridFunctions } from "../../src/apps/grid-functions";
import type { Contents } from "../../src/book/contents";
import { calculate } from "../../src/hosts/grid/calculate";
import {
  channelColumns,
  listColumns,
} from "../../src/sheets/prices/list-columns";
import { priceListNames } from "../../src/sheets/prices/names";
import { moveColumns } from "../../src/sheets/what-if/moves-block";
import { whatIfNames } from "../../src/sheets/what-if/names";
import type {
  Area,
  CellValue,
  Stored,
  Workbook,
} from "../../src/sheets/workbook";

/** The book with its price list and what-if sheet, worked out; some cells changed first. */
export const workedOut = async (
  contents: readonly Contents[],
  changes: readonly Changed[] = [],
): Promise<Workbook> =>
  (await calculate(withValues(pricesBook(contents), changes), gridFunctions))
    .workbook;

export interface Changed {
  readonly sheet: string;
  /** The label left of the cell. */
  readonly label: string;
  readonly value: CellValue;
}

function withValues(book: Workbook, changes: readonly Changed[]): Workbook {
  return {
    ...book,
    sheets: book.sheets.map((sheet) => {
      const own = changes.filter((change) => change.sheet === sheet.name);
      if (own.length === 0) return sheet;
      const rows = own.map(({ label, value }) => {
        const found = sheet.cells.find(
          (cell) => cell.column === 0 && cell.value === label,
        );
        if (!found) throw new Error(`no "${label}" on ${sheet.name}`);
        return { row: found.row, value };
      });
      return {
        ...sheet,
        cells: sheet.cells.map((cell) => {
          const change = rows.find(
            ({ row }) => cell.row === row && cell.column === 1,
          );
          if (!change) return cell;
          const { formula: _, ...rest } = cell;
          return { ...rest, value: change.value };
        }),
      };
    }),
  };
}

export type Row = Readonly<Record<string, Stored>>;

/** The rows of the price list by its columns; `channel` gives a channel's figures. */
export function listRows(workbook: Workbook): readonly (Row & {
  readonly channel: (name: string) => Row;
})[] {
  const { list, channels } = priceListNames(workbook.names);
  if (!list || !channels) throw new Error("no price list");
  const headings = valuesOf(workbook, channels)[0] ?? [];
  return rowsOf(workbook, list, listColumns).map(({ cells, row }) =>
    Object.assign(row, {
      channel: (name: string): Row => {
        const first = headings.indexOf(`${name}: price`);
        if (first < 0) throw new Error(`no channel ${name}`);
        return named(cells.slice(first), channelColumns);
      },
    }),
  );
}

/** The rows of the what-if sheet by its columns; `at` gives what is left at each step of bulk. */
export function moveRows(
  workbook: Workbook,
): readonly (Row & { readonly at: readonly Stored[] })[] {
  const { moves } = whatIfNames(workbook.names);
  if (!moves) throw new Error("no what-if sheet");
  return rowsOf(workbook, moves, moveColumns).map(({ cells, row }) =>
    Object.assign(row, {
      at: cells.slice(moveColumns.length, moveColumns.length + 9),
    }),
  );
}

const rowsOf = (
  workbook: Workbook,
  place: Area & { readonly sheet: string },
  columns: readonly string[],
) =>
  valuesOf(workbook, place)
    .filter(([first]) => typeof first === "string" && first !== "")
    .map((cells) => ({ cells, row: named(cells, columns) }));

const named = (
  cells: readonly Stored[],
  columns: readonly string[],
): Record<string, Stored> =>
  Object.fromEntries(columns.map((name, i) => [name, cells[i] ?? null]));

export function valuesOf(
  workbook: Workbook,
  { sheet, row, column, rows, columns }: Area & { readonly sheet: string },
): readonly (readonly Stored[])[] {
  const cells = new Map(
    workbook.sheets
      .find(({ name }) => name === sheet)
      ?.cells.map((cell) => [`${cell.row},${cell.column}`, cell.value ?? null]),
  );
  return Array.from({ length: rows }, (_, r) =>
    Array.from(
      { length: columns },
      (__, c) => cells.get(`${row + r},${column + c}`) ?? null,
    ),
  );
}
