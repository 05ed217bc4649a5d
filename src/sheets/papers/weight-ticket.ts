import { isoDate } from "../../measures/read-date";
import type { Language } from "../words/language";
import { sayIn } from "../words/say";
import { figuresIn } from "./figures";
import type { PaperFacts } from "./facts";
import { html } from "./markup";
import { fact, facts, handLines, heading, paper, type Paper } from "./page";

/** What one tote weighed, for the buyer: gross, tare, net, Brix and gallons at 68 °F, and the lots in it. No price. */
export function weightTicket(
  { farm, ticket }: PaperFacts,
  language: Language = "en",
): Paper {
  const say = sayIn(language);
  const { words } = say;
  const { lb, kg, brix, gallons: inGallons, lots: inWords } = figuresIn(say);
  const { row, net, gallons, buyer, lots } = ticket;
  const title = words("Weight ticket");
  return paper(
    {
      name: `${words("weight-ticket")}-${row.ticket}`,
      title: `${title} ${row.ticket}`,
      size: "letter",
      language,
    },
    html`${heading(title, row.ticket, farm)}
      ${facts([
        fact(words("Shipped"), isoDate(row.shipped)),
        fact(words("Buyer"), buyer || words("not recorded")),
        fact(words("Contract"), row.contract),
        fact(
          words("Bill of lading"),
          row.billOfLading ?? words("not recorded"),
        ),
        fact(
          words("Tote"),
          row.toteKind ? say.choice(row.toteKind) : words("not recorded"),
        ),
        fact(words("Brix at 68 °F"), brix(row.brix)),
      ])}
      <table>
        <caption hidden>
          ${words(`Weights of ${row.ticket}`)}
        </caption>
        <thead>
          <tr>
            <th scope="col">${words("Weight")}</th>
            <th scope="col" class="figure">${words("Pounds")}</th>
            <th scope="col" class="figure">${words("Kilograms")}</th>
          </tr>
        </thead>
        <tbody>
          ${(
            [
              ["Gross, full tote", row.gross],
              ["Tare, this very tote empty", row.tare],
            ] as const
          ).map(
            ([name, weight]) =>
              html`<tr>
                <th scope="row">${words(name)}</th>
                <td class="figure">${lb(weight)}</td>
                <td class="figure">${kg(weight)}</td>
              </tr>`,
          )}
          <tr class="sum">
            <th scope="row">${words("Net, syrup")}</th>
            <td class="figure">${lb(net)}</td>
            <td class="figure">${kg(net)}</td>
          </tr>
        </tbody>
      </table>
      ${facts([
        fact(words("Gallons at 68 °F"), inGallons(gallons)),
        fact(words("Lots"), inWords(lots)),
      ])}
      ${handLines(["Scale, and its seal or check date", "Weighed by, date and time", "Received by, date"].map(words))}
      <p class="note">
        ${words("Kilograms are worked out from pounds. Gallons are worked out from the net weight and the Brix at 68 °F, not measured.")}
      </p>`,
  );
}
