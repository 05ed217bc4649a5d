import { quoteFindings } from "../../src/book/quote-findings";
import { quoteOf, type QuoteQuestion } from "../../src/book/quote";
import { bookTablesFromCsv } from "../../src/book/from-csv";
import { readBook } from "../../src/book/read";
import { demoFolder, replacing } from "./csv-folder";

type Changes = Parameters<typeof demoFolder>[0];
const found = (asked: Partial<QuoteQuestion>, changes: Changes = {}) =>
  quoteFindings(
    quoteOf(readBook(bookTablesFromCsv(demoFolder(changes)).tables).book, {
      product: "P250-LOFT",
      quantities: [600],
      leftovers: "charged",
      goalOn: "direct",
      ...asked,
    }),
  ).map(({ where, found: what, meaning }) => `${where}: ${what}. ${meaning}`);

test("600 at the price in the book are under the goal, and that is all there is to say", () => {
  expect(found({})).toEqual([
    "Prices, P250-LOFT in Private label: the price in the book is 7.20. the goal needs 7.92 at 600 bottles",
  ]);
});

test("where the price in the book meets the goal, nothing is said", () => {
  expect(
    found(
      {},
      {
        "current_prices.csv": replacing(
          "P250-LOFT,Private label,7.2",
          "P250-LOFT,Private label,7.95",
        ),
      },
    ),
  ).toEqual([]);
});

test("a quantity the stock does not cover is named with what there is", () => {
  // 0.7358 lb a bottle: 200,000 bottles need 147,000 lb.
  expect(found({ quantities: [600, 200_000] })).toContainEqual(
    expect.stringMatching(
      /^Quote for P250-LOFT: [\d,]+ lb of suitable syrup is in stock\. it does not cover 200,000 bottles$/,
    ),
  );
});

test("what is missing is named once for all quantities, and no price is given", () => {
  const said = found(
    { quantities: [300, 600] },
    {
      "packaging_price_breaks.csv": (text) =>
        text.replace(/^CAP-28,.*\n/gm, ""),
    },
  );
  expect(said[0]).toBe(
    "Quote for P250-LOFT: needs a price for CAP-28. its prices are withheld; a blank is never counted as zero",
  );
  expect(said.filter((one) => one.includes("CAP-28"))).toHaveLength(1);
});

test("a goal that takes the whole price is said, with the channel", () => {
  expect(
    found(
      {},
      { "channels.csv": replacing("Private label,32,", "Private label,99.6,") },
    ),
  ).toEqual([
    "Quote for P250-LOFT: the goal and the shares of Private label take the whole price. no price works",
  ]);
});
