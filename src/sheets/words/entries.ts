import written from "./words.json";

/**
 * One text of ours in both languages. A hole takes what differs from book to book: `{0}` as it was typed, `{0:words}` a
 * text of ours again, `{0:number}` a number. Holes keep their order, so that a formula's pieces do too.
 */
export interface Entry {
  readonly en: string;
  readonly fr: string;
}

/** Where a text stands: a sheet's name; labels, units, hints and headings; what formulas and the book's own choices say; papers. */
export type Part = keyof typeof written;

/** Every text of a part, whatever sheet it belongs to. */
export const entriesOf = (part: Part): readonly Entry[] =>
  Object.values<readonly Entry[]>(written[part]).flat();
