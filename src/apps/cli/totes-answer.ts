import type { Finding } from "../../book/finding";
import type { BookLotBalance } from "../../book/totes-lots";
import { balancePounds, lotFindings } from "../../book/totes-lots";
import { totesFindings } from "../../book/totes-findings";
import type { Totes } from "../../book/totes";
import type { ToteTicket } from "../../book/tote-tickets";
import type { Kilograms } from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";
import type { BuyerAccount } from "../../trade/totes/receivables";
import {
  type ContractAnswer,
  contractAnswer,
  type DisputeAnswer,
  disputeAnswer,
} from "./totes-contracts-answer";

type Figure = number | null;

/** The answer of `totes --json`; a withheld figure is null and a finding says what is missing. */
export interface TotesAnswer {
  readonly asOf: string;
  readonly tickets: readonly {
    readonly ticket: string;
    readonly shipped: string;
    readonly contract: string;
    readonly buyer: string;
    readonly billOfLading: string | null;
    readonly grossLb: number;
    readonly tareLb: number;
    readonly netLb: Figure;
    readonly brix: number;
    /** At 68 °F, as a ticket prints them. */
    readonly gallons: Figure;
    readonly basis: string | null;
    readonly amount: Figure;
    readonly currency: string | null;
    readonly perLb: Figure;
    readonly meetsBrix: boolean;
    readonly gradesRefused: readonly string[];
    readonly daysOut: Figure;
    readonly isOut: boolean;
    /** The largest gross weight on its plate, where it is written down. */
    readonly plateLimitLb: Figure;
    readonly buyerNetLb: Figure;
  }[];
  readonly contracts: readonly ContractAnswer[];
  /** Totes the buyer weighs otherwise, beyond the tolerance. */
  readonly disputes: readonly DisputeAnswer[];
  readonly weights: {
    readonly tolerance: number;
    /** Totes whose weight the buyer has reported. */
    readonly reported: number;
  };
  readonly receivables: readonly {
    readonly buyer: string;
    readonly currency: string;
    readonly balance: number;
    readonly notDue: number;
    readonly late: readonly {
      readonly invoice: string;
      readonly amount: number;
      readonly days: number;
    }[];
    readonly credits: number;
    readonly unapplied: number;
  }[];
  readonly toInvoice: readonly {
    readonly billOfLading: string;
    readonly buyer: string;
    readonly amount: number;
    readonly currency: string;
    readonly dueOn: string | null;
  }[];
  readonly totals: Totes["totals"];
  readonly deposits: Totes["deposits"];
  readonly lots: readonly {
    readonly lot: string;
    readonly receivedLb: number;
    readonly outLb: number;
    readonly leftLb: number;
    readonly countedLb: Figure;
    readonly unexplainedLb: number;
  }[];
  readonly findings: readonly Finding[];
}

export const totesAnswer = (
  totes: Totes,
  lots: readonly BookLotBalance[],
  findings: readonly Finding[],
): TotesAnswer => ({
  asOf: isoDate(totes.asOf),
  tickets: totes.tickets.map(ticketAnswer),
  contracts: totes.contracts.map(contractAnswer),
  disputes: totes.disputes.beyond.map(disputeAnswer),
  weights: {
    tolerance: totes.disputes.tolerance,
    reported: totes.disputes.reported,
  },
  receivables: totes.receivables.accounts.map(accountAnswer),
  toInvoice: totes.toInvoice.map(({ bill, buyer, amount, currency, due }) => ({
    billOfLading: bill,
    buyer,
    amount,
    currency,
    dueOn: due === undefined ? null : isoDate(due),
  })),
  totals: totes.totals,
  deposits: totes.deposits,
  lots: lots.map(({ name, received, out, left, counted, unexplained }) => ({
    lot: name,
    receivedLb: balancePounds(received),
    outLb: balancePounds(out),
    leftLb: balancePounds(left),
    countedLb: counted === undefined ? null : balancePounds(counted),
    unexplainedLb: balancePounds(unexplained),
  })),
  findings: [...totesFindings(totes), ...lotFindings(lots), ...findings],
});

const ticketAnswer = ({
  row,
  buyer,
  currency,
  basis,
  net,
  gallons,
  amount,
  perPound,
  brixShortfall,
  gradesRefused,
  daysOut,
  isOut,
}: ToteTicket): TotesAnswer["tickets"][number] => ({
  ticket: row.ticket,
  shipped: isoDate(row.shipped),
  contract: row.contract,
  buyer,
  billOfLading: row.billOfLading ?? null,
  grossLb: balancePounds(row.gross),
  tareLb: balancePounds(row.tare),
  netLb: net === undefined ? null : balancePounds(net),
  brix: row.brix,
  gallons: gallons ?? null,
  basis: basis ?? null,
  amount: amount ?? null,
  currency: currency ?? null,
  perLb: perPound ?? null,
  meetsBrix: brixShortfall === 0,
  gradesRefused,
  daysOut: daysOut ?? null,
  isOut,
  plateLimitLb: poundsOrNone(row.plateLimit),
  buyerNetLb: poundsOrNone(row.buyerNet),
});

const poundsOrNone = (weight: Kilograms | undefined): Figure =>
  weight === undefined ? null : balancePounds(weight);

const accountAnswer = ({
  buyer,
  currency,
  balance,
  byBand,
  late,
  credits,
  unapplied,
}: BuyerAccount): TotesAnswer["receivables"][number] => ({
  buyer,
  currency,
  balance,
  notDue: byBand["not due"],
  late: late.map(({ bill, balance: open, daysLate }) => ({
    invoice: bill,
    amount: open,
    days: daysLate,
  })),
  credits,
  unapplied,
});
