/** Text that is already markup; anything else is escaped where it is put in. */
export interface Markup {
  readonly markup: string;
}

type Piece = Markup | string | number | readonly Markup[];

/** Markup with everything put into it escaped, so that a buyer's name can never become part of the page. */
export const html = (
  parts: TemplateStringsArray,
  ...pieces: readonly Piece[]
): Markup => ({
  markup: parts
    .map((part, i) => {
      const piece = pieces[i];
      return piece === undefined ? part : `${part}${written(piece)}`;
    })
    .join(""),
});

const written = (piece: Piece): string =>
  typeof piece === "string" || typeof piece === "number"
    ? escaped(String(piece))
    : "markup" in piece
      ? piece.markup
      : piece.map(({ markup }) => markup).join("");

export const escaped = (text: string): string =>
  text.replace(/[&<>"']/g, (letter) => `&#${letter.charCodeAt(0)};`);
