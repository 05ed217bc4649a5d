import { contentsOf } from "../../../book/contents";
import type { LedgerProposal } from "../../../book/ledger/propose";
import type { LedgerReading } from "../../../book/ledger/read-ledger";
import type { Change, Host } from "../../../hosts/host";
import { unusable } from "../../../measures/cannot-answer";
import { cellAddress, sheetReference } from "../../../sheets/address";
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

/** More cells than this take too long one by one; a sheet of our own has no such limit. */
const MOST_ROWS = 400;

/**
 * Writes our columns right of the ledger, into cells that must all be blank. When any of them cannot be written, those
 * that were are taken back. Gives the way to take all of it back.
 */
export async function putAtRight(
  host: Host,
  adoption: Adoption,
  open: OpenBook,
): Promise<() => Promise<string>> {
  const { range } = adoption;
  const { headings, rows } = columnsAtRight(adoption);
  if (rows.length > MOST_ROWS)
    throw unusable(
      `columns right of a ledger of ${rows.length} tickets would take too long; keep ours on a sheet of their own`,
    );
  const first = range.column + range.columns;
  const there = await host.readArea(
    range.sheet,
    range.row,
    first,
    range.rows,
    headings.length,
  );
  const filled = there.findIndex((row) =>
    row.some((cell) => cell !== null && cell !== ""),
  );
  if (filled >= 0)
    throw unusable(
      `${sheetReference(range.sheet)}!${cellAddress(range.row + filled, first)} and its neighbours right of the ledger are in use; keep ours on a sheet of their own`,
    );
  const undone: (() => Promise<void>)[] = [];
  const takeBack = async (): Promise<string> => {
    for (const undo of undone.reverse()) await undo();
    return "the columns right of the ledger";
  };
  const headingRow = Math.max(range.row, (rows[0]?.row ?? range.row + 1) - 1);
  try {
    for (const [c, heading] of headings.entries()) {
      const at = { sheet: range.sheet, row: headingRow, column: first + c };
      await host.setCell(at, `${heading} (worked out)`);
      undone.push(() => host.setCell(at, null));
    }
    for (const { row, formulas } of rows)
      for (const [c, put] of formulas.entries())
        undone.push(
          await host.putFormula(
            { sheet: range.sheet, row, column: first + c },
            put,
          ),
        );
    const memory = memoryChange(adoption, open);
    await host.apply(memory);
    undone.push(async () => void (await host.undo()));
  } catch (problem) {
    await takeBack();
    throw problem;
  }
  return takeBack;
}

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
