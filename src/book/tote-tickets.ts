import { inPounds } from "../functions/by-weight";
import { answerOrNone } from "../measures/cannot-answer";
import type { DaySerial, Kilograms, Money, Share } from "../measures/quantity";
import { brixShortfall } from "../trade/totes/contract-progress";
import { toteNet } from "../trade/totes/net";
import type { SaleBasis } from "../trade/totes/sale-amount";
import {
  printedGallons,
  ticketAmount,
  usuallyPrinted,
} from "../trade/totes/ticket-amount";
import type { Book, BookRow } from "./book";
import { contractPrice } from "./contract-price";
import { sameName } from "./keys";
import { lotsNamed } from "./source-lots";
import { priceBases } from "./price-bases";

/** One tote that went out, worked out from its own weights and its contract. */
export interface ToteTicket {
  readonly row: BookRow<"toteShipments">;
  readonly contract: BookRow<"toteContracts"> | undefined;
  readonly buyer: string;
  readonly currency: string | undefined;
  readonly basis: SaleBasis | undefined;
  /** Gross less tare; undefined where that is no weight. */
  readonly net: Kilograms | undefined;
  /** At 68 °F, as a ticket prints them. */
  readonly gallons: number | undefined;
  /** What the price counts: pounds, gallons, pounds at 66 °Bx or kilograms. */
  readonly quantity: number | undefined;
  readonly amount: Money | undefined;
  readonly perPound: number | undefined;
  /** Part of the contract's least solids that is missing. */
  readonly brixShortfall: Share;
  readonly grades: readonly string[];
  /** Grades in it that the contract does not take. */
  readonly gradesRefused: readonly string[];
  /** Days from shipping to its return, or to the day asked about while it is out; undefined without a deposit. */
  readonly daysOut: number | undefined;
  readonly isOut: boolean;
  /** What must be entered or corrected before it can be billed. */
  readonly needs: readonly string[];
}

/** The tickets of the totes that had left by a day, in the book's order. */
export function toteTickets(book: Book, day: DaySerial): readonly ToteTicket[] {
  const contracts = new Map(
    book.toteContracts.map((row) => [sameName(row.contract), row]),
  );
  const grades = new Map(
    book.lots.map((row) => [sameName(row.lot), row.grade]),
  );
  return book.toteShipments
    .filter(({ shipped }) => shipped <= day)
    .map((row) =>
      ticketOf(book, row, contracts.get(sameName(row.contract)), {
        grades,
        day,
      }),
    );
}

function ticketOf(
  book: Book,
  row: BookRow<"toteShipments">,
  contract: BookRow<"toteContracts"> | undefined,
  {
    grades,
    day,
  }: {
    readonly grades: ReadonlyMap<string, string>;
    readonly day: DaySerial;
  },
): ToteTicket {
  const net = answerOrNone(() => toteNet(row.gross, row.tare));
  const price = contract && priceBases[contract.basis];
  const agreed = contract && contractPrice(book, contract);
  const billed =
    net === undefined || price === undefined || agreed?.price === undefined
      ? undefined
      : ticketAmount(net, agreed.price, price.basis, row.brix);
  const own = [
    ...new Set(
      lotsNamed(row.sourceLots).flatMap(
        (lot) => grades.get(sameName(lot)) ?? [],
      ),
    ),
  ];
  const allowed = contract?.gradesAllowed?.split("|").map(sameName);
  const isBack = row.returnedOn !== undefined && row.returnedOn <= day;
  const hasDeposit = row.deposit !== undefined && row.deposit > 0;
  return {
    row,
    contract,
    buyer: row.customer ?? contract?.customer ?? "",
    currency: price?.currency ?? row.currency,
    basis: price?.basis,
    net,
    gallons:
      net === undefined
        ? undefined
        : printedGallons(net, row.brix, usuallyPrinted),
    quantity: billed && billed.quantity / (agreed?.gallonsEach ?? 1),
    amount: billed?.amount,
    perPound:
      billed && net !== undefined ? billed.amount / inPounds(net) : undefined,
    brixShortfall: brixShortfall(row.brix, contract?.minimumBrix),
    grades: own,
    gradesRefused:
      allowed === undefined
        ? []
        : own.filter((grade) => !allowed.includes(sameName(grade))),
    daysOut: hasDeposit
      ? (isBack ? (row.returnedOn ?? day) : day) - row.shipped
      : undefined,
    isOut: hasDeposit && !isBack,
    needs: [
      ...(net === undefined ? ["a gross above the tare"] : []),
      ...(contract === undefined
        ? [`a contract ${row.contract} in Tote contracts`]
        : []),
      ...(agreed?.needs === undefined ? [] : [agreed.needs]),
      ...(row.returnedOn !== undefined && row.returnedOn < row.shipped
        ? ["a return that is not before the shipping"]
        : []),
    ],
  };
}
