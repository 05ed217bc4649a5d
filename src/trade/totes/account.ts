import type { DaySerial, Money } from "../../measures/quantity";

export interface Invoice {
  readonly bill: string;
  readonly buyer: string;
  readonly currency: string;
  readonly day: DaySerial;
  readonly due: DaySerial;
  readonly amount: Money;
}

export interface Receipt {
  readonly receipt: string;
  readonly buyer: string;
  readonly currency: string;
  readonly day: DaySerial;
  readonly amount: Money;
  /** The invoice it pays, where it names one. */
  readonly bill: string | undefined;
}

/** Tells accounts apart: one for each buyer and money. */
export const accountKey = (of: {
  readonly buyer: string;
  readonly currency: string;
}): string => `${of.buyer}\u0000${of.currency}`;
