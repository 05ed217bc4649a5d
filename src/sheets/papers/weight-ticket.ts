import { isoDate } from "../../measures/read-date";
import { lb, kg, gallonsText, lotsText } from "./figures";
import type { PaperFacts } from "./facts";
import { html } from "./markup";
import { fact, facts, handLines, heading, paper, type Paper } from "./page";

/** What one tote weighed, for the buyer: gross, tare, net, Brix and gallons at 68 °F, and the lots in it. No price. */
export function weightTicket({ farm, ticket }: PaperFacts): Paper {
  const { row, net, gallons, buyer, lots } = ticket;
  const title = "Weight ticket";
  return paper(
    {
      name: `weight-ticket-${row.ticket}`,
      title: `${title} ${row.ticket}`,
      size: "letter",
    },
    html`${heading(title, row.ticket, farm)}
      ${facts([
        fact("Shipped", isoDate(row.shipped)),
        fact("Buyer", buyer || "not recorded"),
        fact("Contract", row.contract),
        fact("Bill of lading", row.billOfLading ?? "not recorded"),
        fact("Tote", row.toteKind ?? "not recorded"),
        fact("Brix at 68 °F", `${row.brix.toFixed(1)} °Bx`),
      ])}
      <table>
        <caption hidden>
          Weights of ${row.ticket}
        </caption>
        <thead>
          <tr>
            <th scope="col">Weight</th>
            <th scope="col" class="figure">Pounds</th>
            <th scope="col" class="figure">Kilograms</th>
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
                <th scope="row">${name}</th>
                <td class="figure">${lb(weight)}</td>
                <td class="figure">${kg(weight)}</td>
              </tr>`,
          )}
          <tr class="sum">
            <th scope="row">Net, syrup</th>
            <td class="figure">${lb(net)}</td>
            <td class="figure">${kg(net)}</td>
          </tr>
        </tbody>
      </table>
      ${facts([
        fact("Gallons at 68 °F", gallonsText(gallons)),
        fact("Lots", lotsText(lots)),
      ])}
      ${handLines(["Scale, and its seal or check date", "Weighed by, date and time", "Received by, date"])}
      <p class="note">
        Kilograms are worked out from pounds. Gallons are worked out from the
        net weight and the Brix at 68 °F, not measured.
      </p>`,
  );
}
