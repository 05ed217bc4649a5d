import { contentsOf, type Contents } from "../../book/contents";
import type { LedgerReading } from "../../book/ledger/read-ledger";
import {
  ledgerRoles,
  roleLabels,
  type LedgerRole,
} from "../../book/ledger/roles";
import { saleBases } from "../../trade/totes/sale-amount";
import { look } from "../looks";
import type { Cell, CellValue, Sheet } from "../workbook";

/** The table in which a workbook remembers which column of a ledger is what; people can read and correct it. */
export const LEDGER_COLUMNS = "LedgerColumns";
const SHEET = "Ledger columns";
const headings = ["Ledger", "What", "Column", "Read as"] as const;

type Row = readonly [
  ledger: string,
  what: string,
  column: number | null,
  readAs: string | null,
];

export type RememberedRows = readonly Readonly<Record<string, CellValue>>[];

/** What is to be remembered, a row for each part; columns are counted from 1 in the ledger's range. */
export const rememberedRows = (
  ledger: string,
  how: LedgerReading,
): RememberedRows =>
  rowsOf(ledger, how).map((row) =>
    Object.fromEntries(headings.map((heading, i) => [heading, row[i] ?? null])),
  );

/** The sheet that remembers, for a workbook that has none yet. */
export function rememberedSheet(ledger: string, how: LedgerReading): Sheet {
  const rows = rowsOf(ledger, how);
  return {
    name: SHEET,
    cells: [
      ...headings.map((value, column): Cell => ({
        row: 0,
        column,
        value,
        style: look("heading"),
      })),
      ...rows.flatMap((row, r) =>
        row.map((value, column): Cell => ({
          row: r + 1,
          column,
          value,
          style: look("input"),
        })),
      ),
    ],
    tables: [
      {
        name: LEDGER_COLUMNS,
        area: {
          row: 0,
          column: 0,
          rows: rows.length + 1,
          columns: headings.length,
        },
        columns: headings.map((heading) => ({ heading })),
      },
    ],
    validations: [],
    merges: [],
    widths: { 0: 30, 1: 18, 2: 9, 3: 16 },
    heights: {},
    frozen: { rows: 1, columns: 0 },
  };
}

/** How a ledger was said to be read, the last time it was adopted; undefined for one that never was. */
export function remembered(
  tables: readonly Contents[],
  ledger: string,
): LedgerReading | undefined {
  const table = contentsOf(tables, { name: LEDGER_COLUMNS });
  const rows = (table?.rows ?? []).filter((row) => row[0] === ledger);
  if (rows.length === 0) return undefined;
  // Adopted again, the later rows count.
  const said = new Map(rows.map((row) => [String(row[1]), row]));
  const readAs = (what: string): string => String(said.get(what)?.[3] ?? "");
  return {
    columns: Object.fromEntries(
      ledgerRoles.flatMap((role): (readonly [LedgerRole, number])[] => {
        const column = said.get(roleLabels[role][0])?.[2];
        return typeof column === "number" && column > 0
          ? [[role, column - 1]]
          : [];
      }),
    ),
    weight: readAs("Weights") === "kg" ? "kg" : "lb",
    basis: saleBases.find((basis) => basis === readAs("Prices")),
    currency: (["USD", "CAD"] as const).find(
      (money) => money === readAs("Money"),
    ),
    dates: (["day first", "month first"] as const).find(
      (order) => order === readAs("Days"),
    ),
  };
}

const rowsOf = (
  ledger: string,
  { columns, weight, basis, currency, dates }: LedgerReading,
): readonly Row[] => [
  ...ledgerRoles.map((role): Row => {
    const column = columns[role];
    return [
      ledger,
      roleLabels[role][0],
      column === undefined ? null : column + 1,
      null,
    ];
  }),
  [ledger, "Weights", null, weight],
  [ledger, "Prices", null, basis ?? null],
  [ledger, "Money", null, currency ?? null],
  [ledger, "Days", null, dates ?? null],
];
