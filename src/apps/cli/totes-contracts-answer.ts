import type { ToteContract } from "../../book/tote-contracts";
import { balancePounds } from "../../book/totes-lots";
import type { WeighedTote } from "../../book/weight-disputes";
import { inPounds } from "../../functions/by-weight";
import { as, type Kilograms } from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";

type Figure = number | null;

/** How far a contract has come, and its price with its freight. */
export interface ContractAnswer {
  readonly contract: string;
  readonly buyer: string;
  readonly contractLb: number;
  readonly shippedLb: number;
  readonly leftLb: number;
  readonly totesLeft: Figure;
  readonly overIfFullLb: Figure;
  readonly endsOn: string;
  readonly daysLeft: number;
  readonly shareShipped: number;
  readonly shareOfTime: number;
  readonly meanBrix: Figure;
  readonly brixShortfall: number;
  readonly amount: number;
  readonly currency: string;
  /** The price a pound on both footings, in the contract's own money; what is not entered is named. */
  readonly freight: {
    readonly pricePerLb: Figure;
    readonly holds: "dock" | "delivered" | null;
    readonly freightPerLb: Figure;
    readonly dockPerLb: Figure;
    readonly deliveredPerLb: Figure;
    readonly needs: readonly string[];
  };
}

/** A tote the buyer weighs otherwise; every figure is the buyer's less ours. */
export interface DisputeAnswer {
  readonly ticket: string;
  readonly contract: string;
  readonly buyer: string;
  readonly ourNetLb: number;
  readonly buyerNetLb: number;
  readonly differenceLb: number;
  readonly differenceShare: number;
  readonly money: number;
  readonly currency: string | null;
}

export const contractAnswer = ({
  row,
  progress,
  amount,
  currency,
  freight,
}: ToteContract): ContractAnswer => ({
  contract: row.contract,
  buyer: row.customer,
  contractLb: balancePounds(row.weight),
  shippedLb: balancePounds(progress.shipped),
  leftLb: balancePounds(progress.left),
  totesLeft: progress.totesLeft ?? null,
  overIfFullLb:
    progress.overIfFull === undefined ? null : inPounds(progress.overIfFull),
  endsOn: isoDate(row.end),
  daysLeft: progress.daysLeft,
  shareShipped: progress.shareShipped,
  shareOfTime: progress.shareOfTime,
  meanBrix: progress.meanBrix ?? null,
  brixShortfall: progress.brixShortfall,
  amount,
  currency,
  freight: {
    pricePerLb: freight.perPound ?? null,
    holds: row.delivery ?? null,
    freightPerLb: freight.perPoundFreight ?? null,
    dockPerLb: freight.bothWays?.dock ?? null,
    deliveredPerLb: freight.bothWays?.delivered ?? null,
    needs: freight.needs,
  },
});

export const disputeAnswer = ({
  ticket,
  theirs,
  difference,
}: WeighedTote): DisputeAnswer => ({
  ticket: ticket.row.ticket,
  contract: ticket.row.contract,
  buyer: ticket.buyer,
  ourNetLb: balancePounds(as<Kilograms>(theirs - difference.weight)),
  buyerNetLb: balancePounds(theirs),
  differenceLb: balancePounds(difference.weight),
  differenceShare: difference.share,
  money: difference.money,
  currency: ticket.currency ?? null,
});
