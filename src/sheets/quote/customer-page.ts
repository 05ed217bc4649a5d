import { setting } from "../costing/book-references";
import type { Content, Line, SheetDescription } from "../model";

/** A cell of the sheet with the costs, as this page refers to it. */
export type Working = (name: string) => string;

const said = (
  name: string,
  label: string,
  formula: string,
  more: Partial<Pick<Line, "format" | "unit">> = {},
): Line => ({
  name,
  label,
  role: "calculated",
  content: { formula: `=${formula}` },
  ...more,
});

/** As text, so that it stands under the other words of the page. */
const day = (cell: string): string => `TEXT(${cell},"yyyy-mm-dd")`;

/** Text of a cell that may be blank. */
const orElse = (cell: string, other: string): string =>
  `IF(${cell}="","${other}",${cell})`;

/**
 * The page the customer gets: quantities, prices, set-up fees and terms. No cost, wage, lot or margin is on it, and nothing
 * is typed here; all of it comes from the sheet with the costs.
 */
export function describePage(
  name: string,
  product: string,
  count: number,
  w: Working,
): SheetDescription {
  const tier = (row: string, i: number): string => w(`tiers.${row}.t${i + 1}`);
  const across = (formula: (i: number) => string): readonly Content[] =>
    Array.from({ length: count }, (_, i) => ({ formula: `=${formula(i)}` }));
  const priced = (i: number, formula: string): string =>
    `IF(ISNUMBER({offer.price.t${i + 1}}),${formula},"")`;
  return {
    name,
    tabColor: "#24543a",
    widths: [34, 18, 18, 18, 18, 18, 18],
    frozenRows: 0,
    print: {
      paper: "letter",
      landscape: count > 4,
      fit: "one page",
      foot: `Quote for ${product}`,
    },
    blocks: [
      {
        kind: "title",
        content: { formula: `="Quote: "&${w("description")}` },
      },
      {
        kind: "lines",
        title: "This quote",
        lines: [
          said("from", "From", `IFERROR(${setting("Farm")}&"","")`),
          said("for", "For", orElse(w("customer"), "–")),
          said("what", "In each bottle", w("declared")),
          said("dated", "Date", day(w("as_of"))),
          said("until", "Prices stand until", day(w("valid_until"))),
        ],
      },
      {
        kind: "matrix",
        name: "offer",
        title: "What we offer",
        columns: Array.from({ length: count }, (_, i) => ({
          name: `t${i + 1}`,
          label: `Quantity ${i + 1}`,
        })),
        rows: [
          {
            name: "bottles",
            label: "Bottles",
            format: "#,##0",
            contents: across((i) => tier("bottles", i)),
          },
          {
            name: "cases",
            label: "Cases",
            format: "#,##0",
            contents: across((i) => w(`q${i + 1}_cases`)),
          },
          {
            name: "price",
            label: "Price a bottle",
            role: "result",
            format: "#,##0.00",
            contents: across(
              (i) =>
                `IF(ISNUMBER(${tier("price", i)}),${tier("price", i)},"on request")`,
            ),
          },
          {
            name: "case_price",
            label: "A full case comes to",
            format: "#,##0.00",
            contents: across((i) =>
              priced(i, `{offer.price.t${i + 1}}*${w("per_case")}`),
            ),
          },
          {
            name: "total",
            label: "All bottles come to",
            format: "#,##0.00",
            contents: across((i) =>
              priced(i, `{offer.price.t${i + 1}}*{offer.bottles.t${i + 1}}`),
            ),
          },
          {
            name: "with_fees",
            label: "In all, with set-up fees",
            role: "result",
            format: "#,##0.00",
            contents: across((i) =>
              priced(i, `{offer.total.t${i + 1}}+N({fee})`),
            ),
          },
        ],
      },
      {
        kind: "lines",
        title: "Set-up fees, once",
        lines: [
          said(
            "fee",
            "Artwork and plates",
            `IF(ISNUMBER(${w("artwork")}),${w("artwork")},"not in this quote")`,
            { format: "#,##0.00" },
          ),
        ],
      },
      {
        kind: "lines",
        title: "Terms",
        lines: [
          said(
            "money",
            "Prices are in",
            `IFERROR(${setting("Books money")}&"","")`,
          ),
          said("delivery", "Delivery", orElse(w("delivery"), "to be agreed")),
          said("lead", "Ready in", orElse(w("lead"), "to be agreed")),
          said(
            "pay",
            "Payment",
            `IF(N(INDEX(Channels[Payment days],${w("channel_row")}))>0,"within "&INDEX(Channels[Payment days],${w("channel_row")})&" days","on delivery")`,
          ),
          said(
            "left",
            "Labels and containers left over",
            `IF(${w("leftovers")}="kept","stay with us and are not charged","are in the price and yours")`,
          ),
        ],
      },
      {
        kind: "notes",
        lines: [
          "Quantities and prices belong together: another quantity has another price.",
          "The volume in each bottle is that at 68 °F.",
        ],
      },
    ],
  };
}
