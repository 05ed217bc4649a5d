/** Something in the book a person should look at, in plain words. */
export interface Finding {
  /** "Lots row 7, Net lb", or "bulk_lots.csv line 7, net_lb". */
  readonly where: string;
  readonly found: string;
  readonly meaning: string;
  readonly todo: string;
  /** Money that hangs on it, in the books' currency, where that can be said: the list goes by it. */
  readonly atStake?: number;
}

/** The finding as one line of text. */
export const findingText = (finding: Finding): string =>
  `${finding.where}: ${finding.found}. ${capital(finding.meaning)}. ${capital(finding.todo)}.`;

/** "A, B and 3 more": a list a person reads to its end. */
export function listed(names: readonly string[], most = 8): string {
  if (names.length <= 1) return names.join("");
  if (names.length > most)
    return `${names.slice(0, most - 1).join(", ")} and ${names.length - most + 1} more`;
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
}

const capital = (sentence: string): string =>
  sentence.charAt(0).toUpperCase() + sentence.slice(1);
