import type { LedgerReading } from "../../book/ledger/read-ledger";
import type { LedgerRole } from "../../book/ledger/roles";
import { LITRES_PER_IMPERIAL_GALLON } from "../../measures/gallon";
import { LITRES_PER_GALLON } from "../../measures/units";
import {
  dayCell,
  figureCell,
  followed,
  followedName,
  netCell,
  owedCell,
  type LedgerRow,
  type OurCell,
} from "./adopted-formulas";

export interface OurColumn {
  readonly heading: string;
  readonly format?: string;
  readonly width: number;
  /** Right for figures, where nothing is said. */
  readonly align?: "left";
  /** The column is left out where the ledger has nothing of the kind. */
  readonly follows?: LedgerRole;
  /** `own` names the cell of another of our columns in the same row. */
  readonly content: (
    row: LedgerRow,
    own: (heading: string) => string,
  ) => OurCell;
}

const gallons = "Gallons at 68 °F";

/** A price for an imperial gallon, as one for the US gallon our function counts. */
const IN_US_GALLONS = `/(${LITRES_PER_IMPERIAL_GALLON}/${LITRES_PER_GALLON})`;

/** Our columns beside a ledger, every one a formula that follows it. */
export const worked: readonly OurColumn[] = [
  { heading: "Net lb", format: "#,##0.0", width: 11, content: netCell },
  {
    heading: gallons,
    format: "#,##0.00",
    width: 14,
    content: (_, own) => ({
      formula: `=IF(AND(ISNUMBER(${own("Net lb")}),ISNUMBER(${own("Brix")})),${own("Net lb")}/SYRUP.POUNDS_PER_GALLON(${own("Brix")}),"needs weight and Brix")`,
    }),
  },
  {
    heading: "Amount",
    format: "#,##0.00",
    width: 13,
    content: ({ ticket }, own) => ({
      formula: `=IF(AND(ISNUMBER(${own("Net lb")}),ISNUMBER(${own("Price")}),${own("Basis")}<>""),ROUND(SYRUP.SALE_AMOUNT(${own("Net lb")},${own("Price")}${ticket.gallonsEach === undefined ? "" : IN_US_GALLONS},${own("Basis")},${own("Brix")}),2),"needs weight, price and basis")`,
    }),
  },
];

/** The columns of a sheet of our own that follows a ledger read like this. */
export const columnsFor = ({ columns }: LedgerReading): readonly OurColumn[] =>
  all.filter(
    ({ follows }) => follows === undefined || columns[follows] !== undefined,
  );

const all: readonly OurColumn[] = [
  { heading: "Ticket", width: 12, content: (row) => followed(row, "ticket") },
  {
    heading: "Shipped",
    format: "yyyy-mm-dd",
    width: 12,
    align: "left",
    content: dayCell,
  },
  { heading: "Buyer", width: 26, content: (row) => followedName(row, "buyer") },
  {
    heading: "Contract",
    width: 12,
    follows: "contract",
    content: (row) => followedName(row, "contract"),
  },
  {
    heading: "Lot",
    width: 14,
    follows: "lot",
    content: (row) => followed(row, "lot"),
  },
  {
    heading: "Invoice",
    width: 12,
    follows: "invoice",
    content: (row) => followed(row, "invoice"),
  },
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
    follows: "amount",
    format: "#,##0.00",
    width: 13,
    content: (row) => figureCell(row, "amount"),
  },
  {
    heading: "Differs by",
    follows: "amount",
    format: "#,##0.00",
    width: 11,
    content: (_, own) => ({
      formula: `=IF(AND(ISNUMBER(${own("Amount")}),ISNUMBER(${own("Ledger amount")})),ROUND(${own("Ledger amount")}-${own("Amount")},2),"")`,
    }),
  },
  {
    heading: "Owed",
    format: "#,##0.00",
    width: 13,
    follows: "paid",
    content: (row, own) => owedCell(row, own("Amount"), own("Ledger amount")),
  },
];
