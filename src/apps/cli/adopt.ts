import { gallonIn } from "../../book/gallon";
import { ledgerGallon } from "../../book/ledger/ledger-gallon";
import { proposeLedger } from "../../book/ledger/propose";
import { readLedger } from "../../book/ledger/read-ledger";
import {
  ledgerRoles,
  roleLabels,
  type LedgerRole,
} from "../../book/ledger/roles";
import type { Understood } from "../../book/ledger/understanding";
import { isBlank } from "../../functions/read-cell";
import { unusable } from "../../measures/cannot-answer";
import { isoDate } from "../../measures/read-date";
import { KG_PER_LB } from "../../measures/units";
import { cellAddress, columnLetters } from "../../sheets/address";
import type { HiddenLines } from "../../hosts/file/hidden-lines";
import {
  ledgerRange,
  rangeText,
  type LedgerRange,
} from "../../sheets/ledger/ledger-range";
import { tablesOf } from "../../sheets/tables-of";
import type { Area, Sheet, Stored, Workbook } from "../../sheets/workbook";

/** The answer of `totes WORKBOOK --adopt SHEET!RANGE --json`: what each column is taken to be, and how it is read. */
export interface AdoptAnswer {
  readonly ledger: string;
  readonly headingRows: readonly number[];
  readonly columns: readonly {
    readonly what: LedgerRole;
    readonly label: string;
    readonly column: string;
    readonly heading: string;
    readonly because: string;
  }[];
  /** Columns of the ledger that are none of these; they stay as they are. */
  readonly others: readonly {
    readonly column: string;
    readonly heading: string;
  }[];
  /** What the sheet does not show; it is read like the rest. */
  readonly hidden: {
    readonly columns: readonly string[];
    readonly rows: readonly number[];
  };
  readonly understood: {
    readonly weights: Understood<string>;
    readonly price: Understood<string> | null;
    readonly currency: Understood<string> | null;
    readonly dates: string | null;
  };
  readonly tickets: number;
  readonly first: Readonly<Record<string, string | number | null>> | null;
  readonly passedOver: readonly {
    readonly row: number;
    readonly why: string;
  }[];
  readonly findings: readonly {
    readonly cell: string;
    readonly says: string;
  }[];
}

/** Looks at a ledger in a workbook and says what it understands; nothing is written. */
export function adoptAnswer(
  workbook: Workbook,
  asked: string,
  hiddenIn: (range: LedgerRange) => HiddenLines = () => noneHidden,
): AdoptAnswer {
  const range = ledgerRange(asked, {
    sheets: workbook.sheets.map((sheet) => ({
      name: sheet.name,
      used: usedArea(sheet),
    })),
    tables: workbook.sheets.flatMap((sheet) =>
      sheet.tables.map(({ name, area }) => ({ name, sheet: sheet.name, area })),
    ),
  });
  const cells = cellsIn(workbook, range.sheet, range);
  const proposal = proposeLedger(cells);
  const { headings, columns, because, rows, passedOver, understood } = proposal;
  if (Object.keys(columns).length === 0)
    throw unusable(
      `${rangeText(range)} holds no column that could be of a tote ticket; take in the headings and the rows below them`,
    );
  const tickets = readLedger(cells, rows, {
    columns,
    weight: understood.weight.is,
    basis: understood.basis?.is,
    currency: understood.currency?.is,
    dates: understood.dates,
    gallon: ledgerGallon(proposal, gallonIn(tablesOf(workbook))),
  });
  const heading = (column: number): string =>
    headings.columns[column]?.all ?? "";
  const letters = (column: number): string =>
    columnLetters(range.column + column);
  const used = new Set(Object.values(columns));
  const [first] = tickets;
  const pounds = (weight: number | undefined): number | null =>
    weight === undefined ? null : Math.round((weight / KG_PER_LB) * 1e6) / 1e6;
  return {
    ledger: rangeText(range),
    headingRows: Array.from(
      { length: headings.rows },
      (_, i) => range.row + headings.first + i + 1,
    ),
    columns: ledgerRoles.flatMap((what) => {
      const column = columns[what];
      return column === undefined
        ? []
        : [
            {
              what,
              label: roleLabels[what].join(" / "),
              column: letters(column),
              heading: heading(column),
              because: because[what] ?? "values",
            },
          ];
    }),
    others: headings.columns.flatMap((_, column) =>
      used.has(column) || cells.every((row) => isBlank(row[column]))
        ? []
        : [{ column: letters(column), heading: heading(column) }],
    ),
    hidden: hiddenOf(range, hiddenIn(range)),
    understood: {
      weights: understood.weight,
      price: understood.basis ?? null,
      currency: understood.currency ?? null,
      dates: understood.dates ?? null,
    },
    tickets: tickets.length,
    first: first
      ? {
          ticket: first.ticket ?? null,
          date: first.date === undefined ? null : isoDate(first.date),
          buyer: first.buyer ?? null,
          grossLb: pounds(first.gross),
          tareLb: pounds(first.tare),
          netLb: pounds(first.net),
          brix: first.brix ?? null,
          price: first.price ?? null,
          basis: first.basis ?? null,
          currency: first.currency ?? null,
          lot: first.lot ?? null,
          invoice: first.invoice ?? null,
          paid: first.paid ?? null,
        }
      : null,
    passedOver: passedOver.map(({ row, why }) => ({
      row: range.row + row + 1,
      why,
    })),
    findings: tickets.flatMap(({ row, unread }) =>
      unread.map(({ role, says }) => ({
        cell: cellAddress(range.row + row, range.column + (columns[role] ?? 0)),
        says: `${roleLabels[role][0]}: ${says}`,
      })),
    ),
  };
}

const noneHidden: HiddenLines = { rows: [], columns: [] };

const hiddenOf = (
  range: LedgerRange,
  { rows, columns }: HiddenLines,
): AdoptAnswer["hidden"] => ({
  columns: columns
    .filter((c) => c >= range.column && c < range.column + range.columns)
    .map(columnLetters),
  rows: rows
    .filter((r) => r >= range.row && r < range.row + range.rows)
    .map((r) => r + 1),
});

function cellsIn(
  workbook: Workbook,
  name: string,
  area: Area,
): readonly (readonly Stored[])[] {
  const sheet = workbook.sheets.find((one) => one.name === name);
  const grid = Array.from({ length: area.rows }, () =>
    new Array<Stored>(area.columns).fill(null),
  );
  for (const { row, column, value } of sheet?.cells ?? []) {
    const [r, c] = [row - area.row, column - area.column];
    const line = grid[r];
    if (line && c >= 0 && c < area.columns) line[c] = value ?? null;
  }
  return grid;
}

/** From the first cell that holds something to the last; of no rows on a blank sheet. */
function usedArea({ cells }: Sheet): Area {
  let [top, left, bottom, right] = [Infinity, Infinity, -1, -1];
  for (const { row, column, value } of cells) {
    if (isBlank(value)) continue;
    top = Math.min(top, row);
    left = Math.min(left, column);
    bottom = Math.max(bottom, row);
    right = Math.max(right, column);
  }
  return bottom < 0
    ? { row: 0, column: 0, rows: 0, columns: 0 }
    : {
        row: top,
        column: left,
        rows: bottom - top + 1,
        columns: right - left + 1,
      };
}
