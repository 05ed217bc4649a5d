import type { DaySerial } from "../../measures/quantity";
import type { Book, BookRow } from "../book";
import { sameName } from "../keys";
import { bookReceivables } from "../tote-receivables";
import { toteTickets } from "../tote-tickets";

/** Rows of the tote tables that go into the next season's book. */
export interface TotesKept {
  readonly contracts: Book["toteContracts"];
  readonly shipments: Book["toteShipments"];
  readonly invoices: Book["invoices"];
  readonly payments: Book["payments"];
}

/**
 * A contract is carried whole, with its totes, their invoices and payments, or not at all: half of one would look like
 * totes that were never billed. It is carried while it runs, while a tote of it is out or not billed, and while an invoice
 * of it is open, paid too much or younger than the closing day.
 */
export function totesKept(book: Book, closing: DaySerial): TotesKept {
  const unapplied = new Set(
    bookReceivables(book, closing, "by hand").unapplied.map(
      ({ receipt }) => receipt.receipt,
    ),
  );
  const later = book.payments.filter(
    ({ paidOn, receipt }) => paidOn > closing || unapplied.has(receipt),
  );
  const { contracts, bills } = grown(book, {
    contracts: namesOf(
      book.toteContracts.filter(({ end }) => end >= closing),
      ({ contract }) => contract,
    ),
    bills: new Set([
      ...openBills(book, closing),
      ...totesUnsettled(book, closing),
      ...namesOf(later, ({ billOfLading }) => billOfLading),
    ]),
  });
  return {
    contracts: book.toteContracts.filter(({ contract }) =>
      contracts.has(sameName(contract)),
    ),
    shipments: book.toteShipments.filter((row) => bills.has(billOf(row))),
    invoices: book.invoices.filter(({ billOfLading }) =>
      bills.has(sameName(billOfLading)),
    ),
    payments: book.payments.filter(
      (row) =>
        later.includes(row) ||
        (row.billOfLading !== undefined &&
          bills.has(sameName(row.billOfLading))),
    ),
  };
}

function openBills(book: Book, closing: DaySerial): readonly string[] {
  const settled = new Set(
    bookReceivables(book, closing, "by hand")
      .invoices.filter(
        ({ balance, overpaid }) => balance === 0 && overpaid === 0,
      )
      .map(({ bill }) => sameName(bill)),
  );
  return book.invoices
    .map(({ billOfLading }) => sameName(billOfLading))
    .filter((bill) => !settled.has(bill));
}

/** Bills of totes that are out, that were never invoiced, or that left after the closing day. */
function totesUnsettled(book: Book, closing: DaySerial): readonly string[] {
  const invoiced = namesOf(book.invoices, ({ billOfLading }) => billOfLading);
  const out = new Set(
    toteTickets(book, closing)
      .filter(({ isOut }) => isOut)
      .map(({ row }) => row.ticket),
  );
  return book.toteShipments
    .filter(
      (row) =>
        row.shipped > closing ||
        out.has(row.ticket) ||
        !invoiced.has(billOf(row)),
    )
    .map(billOf);
}

interface Names {
  readonly contracts: Set<string>;
  readonly bills: Set<string>;
}

/** Adds every bill of a contract and every contract of a bill until nothing new comes in. */
function grown(book: Book, { contracts, bills }: Names): Names {
  const pairs = [
    ...book.toteShipments.map(
      (row) => [sameName(row.contract), billOf(row)] as const,
    ),
    ...book.invoices.flatMap(({ contract, billOfLading }) =>
      contract === undefined
        ? []
        : [[sameName(contract), sameName(billOfLading)] as const],
    ),
  ];
  for (;;) {
    const before = contracts.size + bills.size;
    for (const [contract, bill] of pairs) {
      if (!contracts.has(contract) && !bills.has(bill)) continue;
      contracts.add(contract);
      bills.add(bill);
    }
    if (contracts.size + bills.size === before) return { contracts, bills };
  }
}

/** A tote without a bill of lading is billed by its ticket. */
const billOf = (row: BookRow<"toteShipments">): string =>
  sameName(row.billOfLading ?? row.ticket);

const namesOf = <R>(
  rows: readonly R[],
  name: (row: R) => string | undefined,
): Set<string> =>
  new Set(
    rows.flatMap((row) => {
      const own = name(row);
      return own === undefined ? [] : [sameName(own)];
    }),
  );
