import type { CellContent } from "../../book/contents";
import { readWrittenNumber } from "../../book/ledger/written-number";
import { weightUnitIn } from "../../book/ledger/written-units";
import type {
  LedgerReading,
  LedgerTicket,
} from "../../book/ledger/read-ledger";
import type { LedgerRole } from "../../book/ledger/roles";
import { isBlank } from "../../functions/read-cell";
import { KG_PER_LB } from "../../measures/units";
import { withoutNoise } from "../../measures/exact";

/** What goes into a cell of ours: a formula that follows the ledger's cell, or the value read of a cell no formula can read. */
export type OurCell =
  | { readonly formula: string }
  | { readonly value: number | string }
  | undefined;

/** One row of somebody's ledger: its cells, how they were read, and how a formula names them. */
export interface LedgerRow {
  readonly ticket: LedgerTicket;
  readonly cell: (role: LedgerRole) => CellContent;
  readonly reference: (role: LedgerRole) => string | undefined;
  readonly how: LedgerReading;
}

/** Follows a cell as it stands; what was blank stays blank. */
export function followed(
  { cell, reference }: LedgerRow,
  role: LedgerRole,
): OurCell {
  const to = reference(role);
  return to === undefined || isBlank(cell(role))
    ? undefined
    : { formula: `=IF(${to}="","",${to})` };
}

/** The same for a name, without outer and doubled spaces, so that one buyer written in two ways is one. */
export function followedName(
  { cell, reference }: LedgerRow,
  role: "buyer" | "contract",
): OurCell {
  const to = reference(role);
  return to === undefined || isBlank(cell(role))
    ? undefined
    : { formula: `=TRIM(${to})` };
}

/** What a ledger writes where something is not paid; a blank says the same. */
const NOT_PAID = ["no", "non", "open", "unpaid"];

/** What is owed for a row: what the ledger asks, else what the weights make; nothing once it says that it is paid. */
export function owedCell(
  { reference, how }: LedgerRow,
  amount: string,
  ledgerAmount: string,
): OurCell {
  const paid = reference("paid");
  if (paid === undefined) return undefined;
  const worked = `IF(ISNUMBER(${amount}),${amount},"needs an amount")`;
  const asked =
    how.columns.amount === undefined
      ? worked
      : `IF(ISNUMBER(${ledgerAmount}),${ledgerAmount},${worked})`;
  const isOpen = NOT_PAID.map((word) => `LOWER(TRIM(${paid}))="${word}"`);
  return { formula: `=IF(OR(${paid}="",${isOpen.join(",")}),${asked},0)` };
}

/** A figure that formulas can use: the cell itself where it holds a number, else what was read of its text. */
export function figureCell(
  row: LedgerRow,
  role: "brix" | "price" | "amount",
): OurCell {
  if (typeof row.cell(role) === "number") return followed(row, role);
  const value = row.ticket[role];
  return value === undefined ? undefined : { value };
}

export function dayCell(row: LedgerRow): OurCell {
  if (typeof row.cell("date") === "number") return followed(row, "date");
  const { date } = row.ticket;
  return date === undefined ? undefined : { value: date };
}

/** Pounds net: gross less tare where both are there, else the ledger's own net. */
export function netCell(row: LedgerRow): OurCell {
  const [gross, tare, net] = [
    poundsOf(row, "gross"),
    poundsOf(row, "tare"),
    poundsOf(row, "net"),
  ];
  if (gross !== undefined && tare !== undefined)
    return { formula: `=SYRUP.TOTE_NET(${gross},${tare})` };
  return net === undefined ? undefined : { formula: `=${net}` };
}

function poundsOf(
  row: LedgerRow,
  role: "gross" | "tare" | "net",
): string | undefined {
  const [cell, to, weight] = [
    row.cell(role),
    row.reference(role),
    row.ticket[role],
  ];
  if (to === undefined || weight === undefined) return undefined;
  const isInKg = weightUnitIn(String(row.cell("unit") ?? "")) ?? row.how.weight;
  if (typeof cell === "number")
    return isInKg === "kg" ? `${to}/${KG_PER_LB}` : to;
  const written = readWrittenNumber(String(cell));
  const unit = written?.beside.toLowerCase() ?? "";
  // "3,044 lb" is read by the worksheet itself; a decimal comma it reads in one country and not in the next.
  if (
    written === undefined ||
    written.decimalComma ||
    !/^(lbs?|kgs?)$/.test(unit)
  )
    return String(withoutNoise(weight / KG_PER_LB));
  const number = `NUMBERVALUE(SUBSTITUTE(LOWER(${to}),"${unit}",""),".",",")`;
  return unit.startsWith("kg") ? `${number}/${KG_PER_LB}` : number;
}
