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
  // Our functions read "3,044 lb" and "1,384 kg" as they stand; a sum does not, nor a decimal comma.
  const written = readWrittenNumber(String(cell));
  const isPlain =
    written !== undefined &&
    !written.decimalComma &&
    role !== "net" &&
    weightUnitIn(written.beside) !== undefined &&
    /^(lbs?|kgs?)$/i.test(written.beside);
  return isPlain ? to : String(withoutNoise(weight / KG_PER_LB));
}
