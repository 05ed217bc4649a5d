import { inPounds, perPound } from "../functions/by-weight";
import { answerOrNone } from "../measures/cannot-answer";
import {
  as,
  type Brix,
  type Kilograms,
  type Money,
  type Share,
} from "../measures/quantity";
import { landedPrice, usablePrice } from "../trade/costing/landed";
import { densityInAir, poundsPerGallon } from "../trade/syrup/density";
import {
  type GrowerPrice,
  drumsNet,
  settlement,
} from "../trade/totes/grower-settlement";
import type { BookRow } from "./book";

export interface ReceivingTerms {
  readonly premium: number;
  readonly deductions: number;
  readonly tests: Money;
  readonly filterLoss: Share;
  /** What stays in each drum. */
  readonly heelEach: Kilograms;
}

/** A lot as it came from its grower, worked out from its weights. */
export interface LotReceived {
  readonly lot: string;
  readonly net: Kilograms;
  readonly gallons: number;
  readonly perPound: number;
  readonly pay: Money;
  /** Money a pound; without freight where none was entered. */
  readonly landed: number;
  readonly isBeforeFreight: boolean;
  readonly usable: number | undefined;
  readonly deposits: Money;
  readonly drumsOut: number | undefined;
  /** Pounds in a drum beyond what it can hold, where the size is known. */
  readonly overfilledBy: Kilograms | undefined;
  readonly differsFromTyped: Kilograms;
}

/** Net, gallons, the grower's pay, landed and usable price of a lot. Refuses (#VALUE!) what cannot be settled. */
export function lotReceived(
  row: BookRow<"lots">,
  terms: ReceivingTerms,
): LotReceived {
  const { drums, gross, tareEach } = row;
  const net =
    drums === undefined || gross === undefined || tareEach === undefined
      ? row.net
      : drumsNet(gross, drums, tareEach);
  const price: GrowerPrice = { price: row.pricePerPound, ...terms };
  const { perPound: paid, pay } = settlement(net, price);
  const landed = landedPrice({
    net,
    syrup: pay,
    freight: row.inboundFreight ?? as<Money>(0),
    tests: terms.tests,
  });
  const usable = answerOrNone(() =>
    usablePrice(landed, {
      net,
      filterLoss: terms.filterLoss,
      heel: as<Kilograms>(terms.heelEach * (drums ?? 0)),
    }),
  );
  return {
    lot: row.lot,
    net,
    gallons: inPounds(net) / poundsPerGallon(row.brix),
    perPound: paid,
    pay,
    landed: perPound(landed),
    isBeforeFreight: row.inboundFreight === undefined,
    usable: usable === undefined ? undefined : perPound(usable),
    deposits: as<Money>((row.depositEach ?? 0) * (drums ?? 0)),
    drumsOut: drums === undefined ? undefined : drums - (row.drumsBack ?? 0),
    overfilledBy: overfilled(net, drums, row.drumSize, row.brix),
    differsFromTyped: as<Kilograms>(net - row.net),
  };
}

function overfilled(
  net: Kilograms,
  drums: number | undefined,
  size: number | undefined,
  brix: Brix,
): Kilograms | undefined {
  if (drums === undefined || size === undefined) return undefined;
  const over = net / drums - size * densityInAir(brix);
  return over > 0 ? as<Kilograms>(over) : undefined;
}
