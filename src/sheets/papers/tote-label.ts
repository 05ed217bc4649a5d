import { isoDate } from "../../measures/read-date";
import type { ElementString } from "../../trade/codes/gs1-elements";
import type { PaperFacts } from "./facts";
import { kg, lb, lotsText } from "./figures";
import { html } from "./markup";
import { fact, facts, heading, paper, type Paper } from "./page";
import type { ToteCodes } from "./tote-codes";

/** Draws the bars of one code as SVG; whoever may use a bar code library passes it in. */
export type DrawBars = (code: ElementString) => string;

/** The label on a tote: who, what, which lot, its weights, and its bar codes with their text beneath. */
export function toteLabel(
  { farm, ticket }: PaperFacts,
  { lot, codes, missing }: ToteCodes,
  draw: DrawBars,
): Paper {
  const { row, net, buyer, lots, grades } = ticket;
  return paper(
    {
      name: `tote-label-${row.ticket}`,
      title: `Tote label ${row.ticket}`,
      size: "half letter",
    },
    html`${heading(["Maple syrup", ...grades].join(", "), row.ticket, farm)}
    ${facts([
      fact("To", buyer || "not recorded"),
      fact("Shipped", isoDate(row.shipped)),
      fact("Lot", lot),
      fact("Brix at 68 °F", `${row.brix.toFixed(1)} °Bx`),
      fact("Net", `${lb(net)} (${kg(net)})`),
      fact("Gross", `${lb(row.gross)} (${kg(row.gross)})`),
      fact("Tare", lb(row.tare)),
      ...(lots.length > 1 ? [fact("Made of", lotsText(lots))] : []),
    ])}
    ${codes.map(
      (code) =>
        html`<figure class="bars">
          ${{ markup: draw(code) }}
          <figcaption>${code.text}</figcaption>
        </figure>`,
    )}
    ${missing.map((what) => html`<p class="note">Bar code left off: needs ${what}.</p>`)}`,
  );
}
