import { html, type Markup } from "./markup";
import { heading, paper, type Paper } from "./page";

/** One fact of a label with the words for where it comes from. */
export interface PrintedFact {
  readonly what: string;
  readonly english: string | undefined;
  readonly french: string | undefined;
  readonly missing: string | undefined;
  readonly sources: readonly string[];
}

/** The facts of a bilingual label on one page, for whoever draws it: both languages beside each other, what is missing named. */
export const labelFactsPage = (about: {
  readonly product: string;
  readonly description: string;
  readonly farm: string;
  readonly facts: readonly PrintedFact[];
  readonly caution: string;
}): Paper =>
  paper(
    {
      name: `label-facts-${about.product}`,
      title: `Label facts for ${about.product}`,
      size: "letter",
      language: "en",
    },
    html`${heading("Label facts", about.product, about.farm)}
      <p class="note">${about.description}. ${about.caution}</p>
      <div class="wide">
        <table>
          <thead>
            <tr>
              <th></th>
              <th>English</th>
              <th>Français</th>
              <th>Source</th>
            </tr>
          </thead>
          <tbody>
            ${about.facts.map(row)}
          </tbody>
        </table>
      </div>`,
  );

const row = ({
  what,
  english = "",
  french = "",
  missing,
  sources,
}: PrintedFact): Markup =>
  html`<tr>
    <th>${what}</th>
    ${
      missing === undefined
        ? html`<td>${english}</td>
            <td lang="fr">${french}</td>`
        : html`<td colspan="2">Missing: ${missing}</td>`
    }
    <td>${sources.join("; ")}</td>
  </tr>`;
