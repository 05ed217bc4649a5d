import { isoDate } from "../../measures/read-date";
import type { ElementString } from "../../trade/codes/gs1-elements";
import type { PaperFacts } from "./facts";
import type { Language } from "../words/language";
import { sayIn } from "../words/say";
import { figuresIn } from "./figures";
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
  language: Language = "en",
): Paper {
  const say = sayIn(language);
  const { words } = say;
  const { lb, kg, brix, lots: inWords } = figuresIn(say);
  const { row, net, buyer, lots, grades } = ticket;
  return paper(
    {
      name: `${words("tote-label")}-${row.ticket}`,
      title: words(`Tote label ${row.ticket}`),
      size: "half letter",
      language,
    },
    html`${heading([words("Maple syrup"), ...grades.map(say.choice)].join(", "), row.ticket, farm)}
    ${facts([
      fact(words("To"), buyer || words("not recorded")),
      fact(words("Shipped"), isoDate(row.shipped)),
      fact(words("Lot"), lot),
      fact(words("Brix at 68 °F"), brix(row.brix)),
      fact(words("Net"), `${lb(net)} (${kg(net)})`),
      fact(words("Gross"), `${lb(row.gross)} (${kg(row.gross)})`),
      fact(words("Tare"), lb(row.tare)),
      ...(lots.length > 1 ? [fact(words("Made of"), inWords(lots))] : []),
    ])}
    ${codes.map(
      (code) =>
        html`<figure class="bars">
          ${{ markup: draw(code) }}
          <figcaption>${code.text}</figcaption>
        </figure>`,
    )}
    ${missing.map((what) => html`<p class="note">${words(`Bar code left off: needs ${what}.`)}</p>`)}`,
  );
}
