import { toCents } from "../../measures/money";
import type { Money } from "../../measures/quantity";
import { accountKey, type Invoice, type Receipt } from "./account";

/** What becomes of a receipt that names no invoice: somebody matches it by hand, or it pays what has been due longest. */
export const matchings = ["by hand", "oldest first"] as const;
export type Matching = (typeof matchings)[number];

export interface AppliedReceipts {
  /** Received for each invoice, in their order; may be more than its amount. */
  readonly paid: readonly number[];
  readonly unapplied: readonly {
    readonly receipt: Receipt;
    readonly left: Money;
    readonly reason: string;
  }[];
}

/**
 * Sets receipts against invoices. A receipt that names an invoice pays that one and no other, and only when buyer and
 * money are the invoice's own.
 */
export function applied(
  invoices: readonly Invoice[],
  receipts: readonly Receipt[],
  matching: Matching,
): AppliedReceipts {
  const paid = invoices.map(() => 0);
  const places = new Map(invoices.map(({ bill }, i) => [bill, i]));
  const unapplied: AppliedReceipts["unapplied"][number][] = [];
  const unnamed = new Map<string, Receipt[]>();
  for (const receipt of receipts) {
    if (receipt.bill === undefined) {
      const own = unnamed.get(accountKey(receipt)) ?? [];
      own.push(receipt);
      unnamed.set(accountKey(receipt), own);
      continue;
    }
    const place = places.get(receipt.bill);
    const invoice = place === undefined ? undefined : invoices[place];
    const reason = misfit(receipt, invoice);
    if (reason === undefined && place !== undefined)
      paid[place] = (paid[place] ?? 0) + receipt.amount;
    else
      unapplied.push({ receipt, left: receipt.amount, reason: reason ?? "" });
  }
  const oldest =
    matching === "oldest first" ? byDueDay(invoices) : new Map<string, never>();
  for (const [key, own] of unnamed) {
    const open = { places: oldest.get(key) ?? [], next: 0 };
    for (const receipt of own) {
      const left = payOff(receipt.amount, open, invoices, paid);
      if (left > 0)
        unapplied.push({
          receipt,
          left,
          reason:
            matching === "oldest first"
              ? "more than was owed"
              : "names no invoice",
        });
    }
  }
  return { paid, unapplied };
}

function misfit(
  receipt: Receipt,
  invoice: Invoice | undefined,
): string | undefined {
  if (!invoice) return `there is no invoice ${receipt.bill ?? ""} yet`;
  if (invoice.buyer !== receipt.buyer)
    return `invoice ${invoice.bill} is ${invoice.buyer}'s`;
  return invoice.currency === receipt.currency
    ? undefined
    : `invoice ${invoice.bill} is in ${invoice.currency}`;
}

/** The places of every account's invoices by due day, those of one day as listed. */
function byDueDay(
  invoices: readonly Invoice[],
): ReadonlyMap<string, readonly number[]> {
  const places = new Map<string, number[]>();
  invoices.forEach((invoice, place) => {
    const own = places.get(accountKey(invoice));
    if (own) own.push(place);
    else places.set(accountKey(invoice), [place]);
  });
  const due = (place: number): number => invoices[place]?.due ?? 0;
  for (const own of places.values()) own.sort((a, b) => due(a) - due(b));
  return places;
}

/** Pays the open invoices from the next on and gives what is left of the money. */
function payOff(
  amount: Money,
  open: { readonly places: readonly number[]; next: number },
  invoices: readonly Invoice[],
  paid: number[],
): Money {
  let left: Money = amount;
  while (left > 0) {
    const place = open.places[open.next];
    if (place === undefined) break;
    const owed = toCents((invoices[place]?.amount ?? 0) - (paid[place] ?? 0));
    const taken = Math.max(0, Math.min(owed, left));
    paid[place] = toCents((paid[place] ?? 0) + taken);
    left = toCents(left - taken);
    if (taken >= owed) open.next += 1;
  }
  return left;
}
