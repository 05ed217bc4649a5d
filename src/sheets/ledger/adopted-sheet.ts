import type { Cells } from "../../book/ledger/headings";
import { readLedger, type LedgerReading } from "../../book/ledger/read-ledger";
import type { LedgerRole } from "../../book/ledger/roles";
import { cellAddress, sheetReference } from "../address";
import { look } from "../looks";
import type { Cell, Sheet } from "../workbook";
import {
  dayCell,
  figureCell,
  followed,
  netCell,
  type LedgerRow,
  type OurCell,
} from "./adopted-formulas";
import type { LedgerRange } from "./ledger-range";

export interface Adoption {
  readonly range: LedgerRange;
  readonly cells: Cells;
  readonly rows: readonly number[];
  readonly how: LedgerReading;
}

interface OurColumn {
  readonly heading: string;
  readonly format?: string;
  readonly width: number;
  /** `own` names the cell of another of our columns in the same row. */
  readonly content: (
    row: LedgerRow,
    own: (heading: string) => string,
  ) => OurCell;
}

const gallons = "Gallons at 68 °F";

/** Our columns beside a ledger, every one a formula that follows it. */
const worked: readonly OurColumn[] = [
  { heading: "Net lb", format: "#,##0.0", width: 11, content: netCell },
  {
    heading: gallons,
    format: "#,##0.00",
    width: 12,
    content: (_, own) => ({
      formula: `=IF(AND(ISNUMBER(${own("Net lb")}),ISNUMBER(${own("Brix")})),${own("Net lb")}/SYRUP.POUNDS_PER_GALLON(${own("Brix")}),"needs weight and Brix")`,
    }),
  },
  {
    heading: "Amount",
    format: "#,##0.00",
    width: 13,
    content: (_, own) => ({
      formula: `=IF(AND(ISNUMBER(${own("Net lb")}),ISNUMBER(${own("Price")}),${own("Basis")}<>""),SYRUP.SALE_AMOUNT(${own("Net lb")},${own("Price")},${own("Basis")},${own("Brix")}),"needs weight, price and basis")`,
    }),
  },
];

const columns: readonly OurColumn[] = [
  { heading: "Ticket", width: 12, content: (row) => followed(row, "ticket") },
  { heading: "Shipped", format: "yyyy-mm-dd", width: 11, content: dayCell },
  { heading: "Buyer", width: 26, content: (row) => followed(row, "buyer") },
  { heading: "Lot", width: 14, content: (row) => followed(row, "lot") },
  { heading: "Invoice", width: 12, content: (row) => followed(row, "invoice") },
  {
    heading: "Brix",
    format: "0.0",
    width: 8,
    content: (row) => figureCell(row, "brix"),
  },
  {
    heading: "Price",
    format: "0.00##",
    width: 9,
    content: (row) => figureCell(row, "price"),
  },
  {
    heading: "Basis",
    width: 13,
    content: ({ ticket }) =>
      ticket.basis === undefined ? undefined : { value: ticket.basis },
  },
  {
    heading: "Currency",
    width: 12,
    content: ({ ticket }) =>
      ticket.currency === undefined ? undefined : { value: ticket.currency },
  },
  ...worked,
  {
    heading: "Ledger amount",
    format: "#,##0.00",
    width: 13,
    content: (row) => figureCell(row, "amount"),
  },
  {
    heading: "Differs by",
    format: "#,##0.00",
    width: 11,
    content: (_, own) => ({
      formula: `=IF(AND(ISNUMBER(${own("Amount")}),ISNUMBER(${own("Ledger amount")})),ROUND(${own("Ledger amount")}-${own("Amount")},2),"")`,
    }),
  },
];

/** Two rows above the table say what it is. */
const HEADING_ROW = 2;

/** A sheet of our own that follows a ledger row by row; the ledger itself is not touched. */
export function adoptedSheet(
  adoption: Adoption,
  name: string,
  table: string,
): Sheet {
  const rows = ledgerRowsOf(adoption);
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
              style: look(
                "formula" in content ? "calculated" : "input",
                column.format,
              ),
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
      ...columns.map(({ heading }, c) => ({
        row: HEADING_ROW,
        column: c,
        value: heading,
        style: { ...look("heading"), wrap: true },
      })),
      ...cells,
    ],
    tables: [
      {
        name: table,
        area: {
          row: HEADING_ROW,
          column: 0,
          rows: rows.length + 1,
          columns: columns.length,
        },
        columns: columns.map(({ heading }) => ({ heading })),
      },
    ],
    validations: [],
    merges: [],
    widths: Object.fromEntries(columns.map(({ width }, c) => [c, width])),
    heights: { [HEADING_ROW]: 32 },
    frozen: { rows: HEADING_ROW + 1, columns: 1 },
  };
}

/** Our worked columns for cells right of a ledger, by the ledger's own row; each formula names cells of the same sheet. */
export function columnsAtRight(adoption: Adoption): {
  readonly headings: readonly string[];
  readonly rows: readonly {
    readonly row: number;
    readonly formulas: readonly {
      readonly formula: string;
      readonly format: string;
    }[];
  }[];
} {
  const first = adoption.range.column + adoption.range.columns;
  return {
    headings: worked.map(({ heading }) => heading),
    rows: ledgerRowsOf(adoption, false).map((row) => {
      const sheetRow = adoption.range.row + row.ticket.row;
      const own = (heading: string): string => {
        const at = worked.findIndex((one) => one.heading === heading);
        if (at >= 0) return cellAddress(sheetRow, first + at);
        const { basis } = row.ticket;
        if (heading === "Basis") return `"${basis ?? ""}"`;
        return operand(figureCell(row, heading === "Brix" ? "brix" : "price"));
      };
      return {
        row: sheetRow,
        formulas: worked.map(({ content, format = "General" }) => ({
          formula: `=${operand(content(row, own))}`,
          format,
        })),
      };
    }),
  };
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
