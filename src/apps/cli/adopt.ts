import { proposeLedger } from "../../book/ledger/propose";
import { readLedger } from "../../book/ledger/read-ledger";
import {
  ledgerRoles,
  roleLabels,
  type LedgerRole,
} from "../../book/ledger/roles";
import type { Understood } from "../../book/ledger/understanding";
import { isBlank } from "../../functions/read-cell";
import { isoDate } from "../../measures/read-date";
import { KG_PER_LB } from "../../measures/units";
import { cellAddress, columnLetters } from "../../sheets/address";
import { ledgerRange, rangeText } from "../../sheets/ledger/ledger-range";
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
export function adoptAnswer(workbook: Workbook, asked: string): AdoptAnswer {
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
  const { headings, columns, because, rows, passedOver, understood } =
    proposeLedger(cells);
  const tickets = readLedger(cells, rows, {
    columns,
    weight: understood.weight.is,
    basis: understood.basis?.is,
    currency: understood.currency?.is,
    dates: understood.dates,
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

/** The same in words, a line each. */
export const adoptText = (answer: AdoptAnswer): readonly string[] => [
  `${answer.ledger}: ${answer.tickets} tickets, headings in row ${answer.headingRows.join(" and ") || "none"}.`,
  ...answer.columns.map(
    ({ label, column, heading, because }) =>
      `${label}: column ${column}${heading === "" ? "" : ` "${heading}"`}, by its ${because}.`,
  ),
  `Weights are read as ${answer.understood.weights.is}, from ${answer.understood.weights.from}.`,
  ...(answer.understood.price
    ? [
        `Prices are read ${answer.understood.price.is}, from ${answer.understood.price.from}.`,
      ]
    : []),
  ...(answer.understood.currency
    ? [
        `The money is ${answer.understood.currency.is}, from ${answer.understood.currency.from}.`,
      ]
    : []),
  ...(answer.understood.dates === null
    ? []
    : [`Days are written ${answer.understood.dates}.`]),
  ...answer.others.map(
    ({ column, heading }) => `Column ${column} "${heading}" stays as it is.`,
  ),
  ...answer.passedOver.map(
    ({ row, why }) => `Row ${row} is passed over: ${why}.`,
  ),
  ...answer.findings.map(({ cell, says }) => `${cell}: ${says}.`),
];

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

function usedArea({ cells }: Sheet): Area {
  const rows = cells.reduce((last, { row }) => Math.max(last, row + 1), 0);
  const columns = cells.reduce(
    (last, { column }) => Math.max(last, column + 1),
    0,
  );
  return { row: 0, column: 0, rows, columns };
}
