import { bulkOrBottleOf } from "../../src/book/bulk-or-bottle";
import { bookTablesFromCsv } from "../../src/book/from-csv";
import { readBook } from "../../src/book/read";
import { as, type Hours, type Kilograms } from "../../src/measures/quantity";
import { KG_PER_LB } from "../../src/measures/units";
import { demoFolder, replacing } from "../book/csv-folder";

/** The next 5,000 lb of Dark: into 250 mL glass on the small pair, as far as 20 hours of people reach, or into totes. */
type Changes = Parameters<typeof demoFolder>[0];
const ask = (changes: Changes = {}, labour: number | "all it takes" = 20) =>
  bulkOrBottleOf(readBook(bookTablesFromCsv(demoFolder(changes)).tables).book, {
    product: "G250-DK",
    bottles: 2400,
    syrup: as<Kilograms>(5000 * KG_PER_LB),
    labour: labour === "all it takes" ? undefined : as<Hours>(labour),
  });
const wholesale = (answer: ReturnType<typeof ask>) => {
  const split = answer.splits.find(({ name }) => name === "Wholesale to shops");
  if (!split) throw new Error("no wholesale price");
  return split;
};

/** 252 mL at 66.4377 °Bx and 11.0520 lb/gal is 0.73575 lb; 11 lb of purge over 2,400 add 0.00458. */
const LB_EACH = 0.7357546 + 11 / 2400;
/** Contract C-2601 pays 3.08 a lb at 66 °Bx, 3.08 × 66.4377 ÷ 66; brokerage takes 2 %; today's Dark is 2.52. */
const bulkPerLb = (price: number): number =>
  ((price * 66.4377378) / 66) * 0.98 - 2.52;

test("a pound in bulk earns 51.8 ¢ over today's price, and one in wholesale bottles 5.30", () => {
  const answer = ask();
  expect(answer.contract?.contract).toBe("C-2601");
  expect((answer.bulkPerKg ?? 0) * KG_PER_LB).toBeCloseTo(bulkPerLb(3.08), 5);
  // 8.10 less 1 % of marketing and 1 % of returns, less the direct cost of 4.01135: 3.92665 a bottle.
  expect(wholesale(answer).contributionPerKg * KG_PER_LB).toBeCloseTo(
    (8.1 * 0.98 - 4.011347) / LB_EACH,
    4,
  );
});

test("20 hours make 2,823 bottles of 2,090 lb; the other 2,910 lb go in bulk", () => {
  // Four people for 4.25 h (55 min and 2,400 ÷ 720 h) over 2,400 bottles: 0.0070833 h each; 20 ÷ 0.0070833 = 2,823.5.
  const split = wholesale(ask());
  expect([split.bottles, split.limitedBy]).toEqual([2823, "the labour"]);
  expect(split.bottled / KG_PER_LB).toBeCloseTo(2823 * LB_EACH, 2);
  expect(split.inBulk / KG_PER_LB).toBeCloseTo(5000 - 2823 * LB_EACH, 2);
  expect(split.earns).toBeCloseTo(
    2823 * (8.1 * 0.98 - 4.011347) + (5000 - 2823 * LB_EACH) * bulkPerLb(3.08),
    1,
  );
});

test("20 ¢ more under the contract earn 19.7 ¢ on every pound that goes in bulk", () => {
  const changes: Changes = {
    "tote_contracts.csv": replacing("Brix,3.08,", "Brix,3.28,"),
  };
  const more = wholesale(ask(changes)).earns - wholesale(ask()).earns;
  // 2,909.97 lb × 0.20 × 66.4377 ÷ 66 × 0.98.
  expect(more).toBeCloseTo(
    (5000 - 2823 * LB_EACH) * (bulkPerLb(3.28) - bulkPerLb(3.08)),
    1,
  );
});

test("with all the labour it takes, the syrup is the limit: 6,753 bottles", () => {
  // 5,000 ÷ 0.740338 = 6,753.7.
  const split = wholesale(ask({}, "all it takes"));
  expect([split.bottles, split.limitedBy]).toEqual([6753, "the syrup"]);
});

test("without an open contract for the grade there is no answer, and what is missing is named", () => {
  const answer = ask({
    "tote_contracts.csv": (text) =>
      text.replace(/Very Dark\|Dark/g, "Processing"),
  });
  expect(answer.splits).toEqual([]);
  expect(answer.best).toBeUndefined();
  expect(answer.missing).toEqual(["what a pound of Dark brings in bulk"]);
});
