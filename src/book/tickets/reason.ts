/** Something about a pasted ticket that a person must know before it is posted. */
export interface Reason {
  /** Refused: it cannot be posted so. Asked: it can, once somebody says that the reading is right. */
  readonly kind: "asked" | "refused";
  readonly says: string;
  readonly offers: readonly Offer[];
  /** The reading is open until one of the offers is taken. */
  readonly mustChoose?: true;
}

/** A way to put it right: what to write into which cells of the line. */
export interface Offer {
  readonly label: string;
  readonly cells: Readonly<Record<number, string>>;
}

export const refused = (
  says: string,
  offers: readonly Offer[] = [],
): Reason => ({ kind: "refused", says, offers });

export const asked = (says: string, offers: readonly Offer[] = []): Reason => ({
  kind: "asked",
  says,
  offers,
});
