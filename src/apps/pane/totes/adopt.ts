import { contentsOf } from "../../../book/contents";
import type { LedgerProposal } from "../../../book/ledger/propose";
import type { LedgerReading } from "../../../book/ledger/read-ledger";
import type { Change, TableContents } from "../../../hosts/host";
import {
  adoptedSheet,
  columnsAtRight,
  type Adoption,
} from "../../../sheets/ledger/adopted-sheet";
import {
  rangeText,
  ledgerRange,
  type LedgerRange,
} from "../../../sheets/ledger/ledger-range";
import {
  LEDGER_COLUMNS,
  rememberedRows,
  rememberedSheet,
} from "../../../sheets/ledger/remembered";
import type { OpenBook } from "../open-book";

/** The range somebody points at, in the open workbook. */
export const rangeIn = (
  asked: string,
  { sheets, tables }: OpenBook,
): LedgerRange =>
  ledgerRange(asked, {
    sheets: sheets.map((name) => ({ name })),
    tables: tables.map(({ name, sheet, row, column, headings, rows }) => ({
      name,
      sheet,
      area: { row, column, rows: rows.length + 1, columns: headings.length },
    })),
  });

/** What was proposed, as a reading to start from. */
export const readingOf = ({
  columns,
  understood,
}: LedgerProposal): LedgerReading => ({
  columns,
  weight: understood.weight.is,
  basis: understood.basis?.is,
  currency: understood.currency?.is,
  dates: understood.dates,
});

/** A change that keeps our columns on a sheet of our own and remembers how the ledger is read. */
export function ownSheetChange(
  adoption: Adoption,
  open: OpenBook,
): Change & { readonly sheet: string } {
  const sheet = free(
    `Totes of ${adoption.range.sheet}`.slice(0, 28),
    open.sheets,
    " ",
  );
  const table = free(
    "AdoptedTotes",
    [
      ...open.tables.map(({ name }) => name),
      ...open.names.map(({ name }) => name),
    ],
    "",
  );
  const memory = memoryChange(adoption, open);
  return {
    ...memory,
    sheet,
    says: `the sheet “${sheet}” and how the ledger is read`,
    addSheets: [adoptedSheet(adoption, sheet, table), ...memory.addSheets],
  };
}

/** Only remembers how a ledger is read. */
export function memoryChange({ range, how }: Adoption, open: OpenBook): Change {
  const ledger = rangeText(range);
  const known = contentsOf(open.tables, { name: LEDGER_COLUMNS });
  return {
    says: "how the ledger is read",
    append: known
      ? [{ table: known.name, rows: rememberedRows(ledger, how) }]
      : [],
    addSheets: known ? [] : [rememberedSheet(ledger, how)],
    names: [],
  };
}

/**
 * A change that puts our columns right of the ledger, into cells that must all be blank, and remembers how it is read.
 * Beside a worksheet table one column stays blank: a program may take what is written next to a table into it.
 */
export function atRightChange(adoption: Adoption, open: OpenBook): Change {
  const { range } = adoption;
  const gap = open.tables.some((table) => touchesRight(table, range)) ? 1 : 0;
  return {
    ...memoryChange(adoption, open),
    says: "the columns right of the ledger and how it is read",
    fill: [{ sheet: range.sheet, cells: columnsAtRight(adoption, { gap }) }],
  };
}

/** Whether a table ends where the ledger does, or reaches into what lies right of it. */
const touchesRight = (table: TableContents, range: LedgerRange): boolean =>
  table.sheet === range.sheet &&
  table.column + table.headings.length === range.column + range.columns &&
  table.row < range.row + range.rows &&
  range.row <= table.row + table.rows.length;

function free(
  wanted: string,
  taken: readonly string[],
  before: string,
): string {
  const has = new Set(taken.map((name) => name.toLowerCase()));
  for (let n = 1; ; n += 1) {
    const name = n === 1 ? wanted : `${wanted}${before}${n}`;
    if (!has.has(name.toLowerCase())) return name;
  }
}
