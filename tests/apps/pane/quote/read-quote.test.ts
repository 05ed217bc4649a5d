import { gridFunctions } from "../../../../src/apps/grid-functions";
import {
  plannedBulkOrBottle,
  plannedQuote,
} from "../../../../src/apps/pane/quote/build";
import { readBulk } from "../../../../src/apps/pane/quote/read-bulk";
import { readQuote } from "../../../../src/apps/pane/quote/read-quote";
import {
  openHeadless,
  type HeadlessHost,
} from "../../../../src/hosts/grid/open-headless";
import { farmBook } from "../../../../src/sheets/farm-book";
import { demoTables } from "../../../book/csv-folder";
import { demoQuote, loftQuestion } from "../../../support/quote-workbook";

const product = "P250-LOFT";
let host: HeadlessHost;
beforeAll(async () => {
  host = await openHeadless(farmBook(demoTables()), gridFunctions);
}, 60_000);
afterAll(() => host.dispose());

const asked = async () => ({
  tables: await host.readTables(),
  sheets: await host.sheetNames(),
  product,
});
const { quantities } = loftQuestion;

test("a workbook without a quote has none to read", async () => {
  const names = await host.readNames();
  expect(await readQuote(host, names, product)).toBeUndefined();
  expect(await readBulk(host, names, product)).toBeUndefined();
});

test("the quote built from the pane is read back as the trade has it", async () => {
  const { change, sheet, writes } = plannedQuote({
    ...(await asked()),
    quantities,
    leftovers: "charged",
  });
  expect(sheet).toBe("Quote P250-LOFT");
  expect(writes[0]).toMatch(/^the sheet “Quote P250-LOFT”, A1 to [A-Z]+\d+$/);
  await host.apply(change);
  const quote = await readQuote(host, await host.readNames(), product);
  const { tiers, validUntil } = demoQuote({
    product,
    quantities,
    leftovers: "charged",
    goalOn: "full",
  });
  expect(
    quote?.tiers.map(({ bottles, price, line, below }) => [
      bottles.value,
      price,
      line,
      below.length,
    ]),
  ).toEqual(
    tiers.map(({ bottles, price, cost, belowMinimum }) => [
      bottles,
      price,
      cost.choice.chosen?.line.name,
      belowMinimum.length,
    ]),
  );
  expect(quote?.cell.valid_until?.value).toBe(validUntil);
  expect(quote?.cell.channel?.value).toBe("Private label");
  // The one check that does not hold is the least order of glass for 300.
  expect(quote?.checks.map(({ says }) => says)).toEqual([
    "see Below a least order",
  ]);
}, 120_000);

test("its second sheet of the same name is refused in a sentence", async () => {
  const facts = await asked();
  expect(() =>
    plannedQuote({ ...facts, quantities, leftovers: "kept" }),
  ).toThrow("The sheet “Quote P250-LOFT” exists".replace(/[“”]/g, '"'));
});

test("no open contract takes Amber, so the comparison asks what a pound brings, and then answers", async () => {
  await host.apply(plannedBulkOrBottle(await asked()).change);
  const names = await host.readNames();
  const before = await readBulk(host, names, product);
  expect(before?.cell.best?.value).toBe(
    "withheld: needs what a pound of Amber brings in bulk; ",
  );
  expect(before?.ways).toEqual([]);
  const place = before?.cell.tote_price?.place;
  if (!place) throw new Error("no price to type");
  await host.setCell(place, 3);
  const after = await readBulk(host, names, product);
  // 3.00 less 2 % of brokerage, less the 2.60 a pound costs today.
  expect(after?.cell.bulk_per_lb?.value).toBeCloseTo(0.34, 9);
  expect(after?.ways.map(({ channel }) => channel)).toEqual(["Private label"]);
  expect(after?.cell.best?.value).toMatch(/^Private label, 6,7\d\d bottles$/);
}, 120_000);
