import { as, type Money, type Share } from "../../measures/quantity";

/** What shop and distributor keep, each as a share of the price they sell at. */
export interface Chain {
  readonly shop: Share;
  readonly distributor: Share;
}

export interface Taken {
  /** What we invoice. */
  readonly invoice: Money;
  readonly broker: Money;
  readonly promotion: Money;
}

/** From the shelf back to our invoice, margin after margin, and what broker and promotion take of the invoice. */
export function fromShelf(
  shelf: Money,
  { shop, distributor }: Chain,
  shares: { readonly broker: Share; readonly promotion: Share },
): Taken {
  const invoice = shelf * (1 - shop) * (1 - distributor);
  return {
    invoice: as<Money>(invoice),
    broker: as<Money>(invoice * shares.broker),
    promotion: as<Money>(invoice * shares.promotion),
  };
}

export const netOf = ({ invoice, broker, promotion }: Taken): Money =>
  as<Money>(invoice - broker - promotion);

/** The shelf price at which shop and distributor keep their margins on our price. */
export const shelfPrice = (ours: Money, { shop, distributor }: Chain): Money =>
  as<Money>(ours / (1 - distributor) / (1 - shop));
