import { unanswerable } from "../../measures/cannot-answer";
import { leftOf } from "../../measures/exact";
import { as, type Kilograms } from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";
import type { PaperFacts, PaperTicket } from "./facts";
import type { Language } from "../words/language";
import { sayIn } from "../words/say";
import { figuresIn } from "./figures";
import { html } from "./markup";
import {
  byHand,
  fact,
  facts,
  handLines,
  heading,
  paper,
  type Paper,
} from "./page";

/**
 * What a truck takes: every tote of the load with its weights, and their sums; carrier, seal and freight class are filled
 * in by hand. A ticket without a bill of lading has no answer (#N/A), nor has a load for two buyers or of two days.
 */
export function billOfLading(
  { farm, ticket, load }: PaperFacts,
  language: Language = "en",
): Paper {
  const say = sayIn(language);
  const { words } = say;
  const { lb, kg, lots: inWords } = figuresIn(say);
  const number = ticket.row.billOfLading;
  if (number === undefined)
    throw unanswerable(
      `bill of lading: ${ticket.row.ticket} has none; enter its number in the row first`,
    );
  const other = load.find(
    (one) =>
      one.buyer !== ticket.buyer || one.row.shipped !== ticket.row.shipped,
  );
  if (other)
    throw unanswerable(
      `bill of lading: ${number} stands on ${ticket.row.ticket} for ${ticket.buyer} on ${isoDate(ticket.row.shipped)} and on ${other.row.ticket} for ${other.buyer} on ${isoDate(other.row.shipped)}; one load has one buyer and one day`,
    );
  const title = words("Bill of lading");
  const sum = (of: (one: PaperTicket) => Kilograms): Kilograms =>
    as<Kilograms>(-leftOf(0, load.map(of)));
  return paper(
    {
      name: `${words("bill-of-lading")}-${number}`,
      title: `${title} ${number}`,
      size: "letter",
      language,
    },
    html`${heading(title, number, farm)}
      ${facts([
        fact(words("Shipped"), isoDate(ticket.row.shipped)),
        fact(words("From"), farm || words("not recorded")),
        fact(words("To"), ticket.buyer || words("not recorded")),
        fact(
          words("Contract"),
          [...new Set(load.map(({ row }) => row.contract))].join(", "),
        ),
        fact(words("Goods"), words("Maple syrup in totes")),
        fact(
          words("Pieces"),
          words(`${load.length} ${load.length === 1 ? "tote" : "totes"}`),
        ),
      ])}
      <div class="wide">
        <table>
          <caption hidden>
            ${words(`Totes on ${number}`)}
          </caption>
          <thead>
            <tr>
              <th scope="col">${words("Tote")}</th>
              <th scope="col">${words("Lots")}</th>
              <th scope="col" class="figure">${words("Gross")}</th>
              <th scope="col" class="figure">${words("Tare")}</th>
              <th scope="col" class="figure">${words("Net")}</th>
            </tr>
          </thead>
          <tbody>
            ${load.map(
              ({ row, net, lots }) =>
                html`<tr>
                  <th scope="row">${row.ticket}</th>
                  <td>${inWords(lots)}</td>
                  <td class="figure">${lb(row.gross)}</td>
                  <td class="figure">${lb(row.tare)}</td>
                  <td class="figure">${lb(net)}</td>
                </tr>`,
            )}
            <tr class="sum">
              <th scope="row">${words("All")}</th>
              <td></td>
              <td class="figure">${lb(sum(({ row }) => row.gross))}</td>
              <td class="figure">${lb(sum(({ row }) => row.tare))}</td>
              <td class="figure">${lb(sum(({ net }) => net))}</td>
            </tr>
          </tbody>
        </table>
      </div>
      <p class="note">
        ${words(`For the carrier: gross ${kg(sum(({ row }) => row.gross))}, ${lb(sum(({ row }) => row.gross))}.`)}
      </p>
      <section class="hands">
        ${["Carrier and truck", "Seal", "Freight class, if the carrier asks", "Freight paid by", "Delivery address", "Delivery asked for on"].map((name) => byHand(words(name)))}
      </section>
      ${handLines(["Shipper, date", "Driver, date, pieces taken", "Received by, date, pieces and damage"].map(words))}
      <p class="note">
        ${words("Carriage is under the terms agreed with the carrier. Keep a signed copy with the weight tickets.")}
      </p>`,
  );
}
