import type { packingTerms } from "../../terms/book-packing";

export type PartKind = (typeof packingTerms.partKind.choices)[number];

/** First match wins: "Plain case for jugs" is a case and "Jug with cap" a container. Common practice, no source. */
const words: readonly (readonly [RegExp, PartKind])[] = [
  [/\bcase label/i, "case label"],
  [/\blabels?\b/i, "label"],
  [/\b(case|carton)s?\b/i, "case"],
  [/\btotes?\b/i, "tote"],
  [/\bpallets?\b/i, "pallet"],
  [/\b(bottle|jug|jar|flask|tin)s?\b/i, "container"],
  [/\b(band|sleeve)s?\b/i, "band"],
  [/\b(cap|stopper|cork|lid|closure)s?\b/i, "closure"],
  [/\bink\b/i, "ink"],
  [/\b(beans?|chiles?|peppers?|spices?|chips?)\b/i, "ingredient"],
];

/** The sort of part its description speaks of; "other" when it speaks of none. */
export const kindOfPart = (description: unknown): PartKind =>
  words.find(([word]) => word.test(String(description ?? "")))?.[1] ?? "other";

/** A container, or a part with none on hand, is bought for each run; the rest comes from stock. */
export function howBought(
  description: unknown,
  kind: unknown,
  onHand: unknown,
): "for each run" | "from stock" {
  const sort = String(kind ?? "").trim() || kindOfPart(description);
  const none = Number(onHand ?? NaN) === 0 && String(onHand).trim() !== "";
  return sort.toLowerCase() === "container" || none
    ? "for each run"
    : "from stock";
}
