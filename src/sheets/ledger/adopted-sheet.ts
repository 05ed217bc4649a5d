import type { Cells } from "../../book/ledger/headings";
import { readLedger, type LedgerReading } from "../../book/ledger/read-ledger";
import type { LedgerRole } from "../../book/ledger/roles";
import { cellAddress, sheetReference } from "../address";
import { look } from "../looks";
import type { Cell, Sheet } from "../workbook";
import { columnsFor, worked } from "./adopted-columns";
import { figureCell, type LedgerRow, type OurCell } from "./adopted-formulas";
import { adoptedSums } from "./adopted-sums";
import type { LedgerRange } from "./ledger-range";

export interface Adoption {
  readonly range: LedgerRange;
  readonly cells: Cells;
  readonly rows: readonly number[];
  readonly how: LedgerReading;
}

/** Two rows above the table say what it is. */
const HEADING_ROW = 2;

/** A sheet of our own that follows a ledger row by row; the ledger itself is not touched. */
export function adoptedSheet(
  adoption: Adoption,
  name: string,
  table: string,
): Sheet {
  const rows = ledgerRowsOf(adoption);
  const columns = columnsFor(adoption.how);
  const area = {
    row: HEADING_ROW,
    column: 0,
    rows: rows.length + 1,
    columns: columns.length,
  };
  const sums = adoptedSums(
    rows.map(({ ticket }) => ticket),
    adoption.how,
    { area, headings: columns.map(({ heading }) => heading) },
    table,
  );
  const cells = rows.flatMap((row, r) =>
    columns.flatMap((column, c): readonly Cell[] => {
      const own = (heading: string): string =>
        cellAddress(
          HEADING_ROW + 1 + r,
          columns.findIndex((one) => one.heading === heading),
        );
      const content = column.content(row, own);
      return content === undefined
        ? []
        : [
            {
              row: HEADING_ROW + 1 + r,
              column: c,
              ...content,
              style: {
                ...look(
                  "formula" in content ? "calculated" : "input",
                  column.format,
                ),
                ...(column.align ? { align: column.align } : {}),
              },
            },
          ];
    }),
  );
  return {
    name,
    cells: [
      {
        row: 0,
        column: 0,
        value: `Totes of ${adoption.range.sheet}`,
        style: look("title"),
      },
      {
        row: 1,
        column: 0,
        value:
          "Follows the ledger row by row. Yellow cells hold what was read of text that no formula can read.",
        style: { ...look("note"), wrap: false },
      },
      ...columns.map(({ heading, format, align }, c) => ({
        row: HEADING_ROW,
        column: c,
        value: heading,
        style: {
          ...look("heading"),
          wrap: true,
          ...(format !== undefined && align === undefined
            ? { align: "right" as const }
            : {}),
        },
      })),
      ...cells,
      ...sums.cells,
    ],
    tables: [
      {
        name: table,
        area,
        columns: columns.map(({ heading }) => ({ heading })),
      },
      ...sums.tables,
    ],
    validations: [],
    merges: [],
    widths: {
      ...Object.fromEntries(columns.map(({ width }, c) => [c, width])),
      ...sums.widths,
    },
    heights: { [HEADING_ROW]: 32 },
    frozen: { rows: HEADING_ROW + 1, columns: 1 },
  };
}

/**
 * Our worked columns as cells right of a ledger, after so many blank columns: a heading over each, and beside every
 * ticket formulas that name cells of the same row.
 */
export function columnsAtRight(
  adoption: Adoption,
  { gap }: { readonly gap: number },
): readonly Cell[] {
  const { range } = adoption;
  const first = range.column + range.columns + gap;
  const rows = ledgerRowsOf(adoption, false);
  const headingRow = Math.max(0, range.row + (rows[0]?.ticket.row ?? 1) - 1);
  return [
    ...worked.map(({ heading }, c) => ({
      row: headingRow,
      column: first + c,
      value: `${heading} (worked out)`,
    })),
    ...rows.flatMap((row) => {
      const sheetRow = range.row + row.ticket.row;
      const own = (heading: string): string => {
        const at = worked.findIndex((one) => one.heading === heading);
        if (at >= 0) return cellAddress(sheetRow, first + at);
        const { basis } = row.ticket;
        if (heading === "Basis") return `"${basis ?? ""}"`;
        return operand(figureCell(row, heading === "Brix" ? "brix" : "price"));
      };
      return worked.map(({ content, format }, c) => ({
        row: sheetRow,
        column: first + c,
        formula: `=${operand(content(row, own))}`,
        ...(format === undefined ? {} : { style: { format } }),
      }));
    }),
  ];
}

function operand(content: OurCell): string {
  if (content === undefined) return '""';
  if ("formula" in content) return content.formula.slice(1);
  return typeof content.value === "number"
    ? String(content.value)
    : `"${content.value}"`;
}

function ledgerRowsOf(
  { range, cells, rows, how }: Adoption,
  withSheet = true,
): readonly LedgerRow[] {
  return readLedger(cells, rows, how).map((ticket) => ({
    ticket,
    how,
    cell: (role) => cells[ticket.row]?.[how.columns[role] ?? -1] ?? null,
    reference: (role: LedgerRole) => {
      const column = how.columns[role];
      if (column === undefined) return undefined;
      const address = cellAddress(
        range.row + ticket.row,
        range.column + column,
      );
      return withSheet ? `${sheetReference(range.sheet)}!${address}` : address;
    },
  }));
}
