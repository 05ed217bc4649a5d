import { gridFunctions } from "../../src/apps/grid-functions";
import type { QuoteAnswer } from "../../src/apps/cli/quote-answer";
import { quoteOf, type QuoteQuestion } from "../../src/book/quote";
import { readBook } from "../../src/book/read";
import { bookTablesFromCsv } from "../../src/book/from-csv";
import {
  openHeadless,
  type HeadlessHost,
} from "../../src/hosts/grid/open-headless";
import { quoteNames } from "../../src/sheets/quote/names";
import type { Stored } from "../../src/sheets/workbook";
import { run } from "../apps/cli/array-terminal";
import { demoFolder, replacing } from "../book/csv-folder";
import { demoQuote, demoQuoteBook } from "../support/quote-workbook";

/**
 * The worked example's quote for 600 and 1,200 of P250-LOFT (3,182.79 and 5,609.20; 7.86 and 6.92 for a goal of 32 % with
 * 0.5 % of returns) against the same quote from the farm's book. The example holds the goal against the direct cost, so
 * this quote does too; the book knows more than the example says, and each difference is worked by hand here.
 */
const question: QuoteQuestion = {
  product: "P250-LOFT",
  quantities: [300, 600, 1200],
  leftovers: "charged",
  goalOn: "direct",
};
const GOAL_AND_RETURNS = 0.32 + 0.005;
const tierOf = (bottles: number, asked: QuoteQuestion = question) => {
  const found = demoQuote(asked).tiers.find((t) => t.bottles === bottles);
  if (found?.direct === undefined || found.price === undefined)
    throw new Error(`no quote for ${bottles}`);
  return { ...found, direct: found.direct, price: found.price };
};

/** Pounds in a bottle: 252 mL of what is in stock (66.45 °Bx, 11.0526 lb/gal). */
const POUNDS = (252 * 11.05263) / 3785.411784;

const differencesAt600 = {
  // 51 whole cases at the price of their own least order, 2.05, against 50.505 at the 500-piece price of 1.62.
  cases: 51 * 2.05 - (50 / 0.99) * 1.62,
  // Caps 605 against 604.839, bands 613 against 612.245, case labels 104 against 103.093.
  wholePieces:
    (605 - 600 / 0.992) * 0.115 +
    (613 - 600 / 0.98) * 0.034 +
    (104 - 100 / 0.97) * 0.052,
  // One pallet at the ten-piece price 14.50 against the fifty-piece price 12.75.
  pallet: 14.5 - 12.75,
  // Against 252.2 mL at 11.04 lb/gal.
  syrup: (POUNDS - (252.2 * 11.04) / 3785.411784) * 2.6 * 600,
  // 6.5 kW for 600 ÷ 720 h at 0.178, which the example leaves out.
  electricity: 6.5 * (600 / 720) * 0.178,
  // 0.66282 BTU/lb·°F by table (see private-label-book) against 0.66.
  propane:
    ((((POUNDS * 600 + 11) * 0.66282 - 452.319 * 0.66) * 125) / 0.68 / 91_500) *
    2.65,
};

test("600 cost 25.95 more than the example's 3,182.79, and the differences are all of it", () => {
  const whole = tierOf(600).direct * 600 - 3182.79;
  const sum = Object.values(differencesAt600).reduce((a, b) => a + b, 0);
  expect(whole).toBeCloseTo(25.95, 2);
  expect(differencesAt600.cases).toBeCloseTo(22.73, 2);
  expect(Math.abs(whole - sum)).toBeLessThan(0.01);
});

test("so 600 are quoted at 7.92 where the example says 7.86, and 1,200 at 6.99 for 6.92", () => {
  expect(3182.79 / 600 / (1 - GOAL_AND_RETURNS)).toBeCloseTo(7.8587, 4);
  // 25.95 ÷ 600 ÷ 0.675 = 6.4 ¢ more.
  expect(tierOf(600).price).toBe(7.92);
  expect((3182.79 + 25.95) / 600 / (1 - GOAL_AND_RETURNS)).toBeCloseTo(
    7.9228,
    4,
  );
  // 51.81 more for 1,200 (see private-label-book): (5,609.20 + 51.81) ÷ 1,200 ÷ 0.675 = 6.9889.
  expect(tierOf(1200).price).toBe(6.99);
  expect((5609.2 + 51.81) / 1200 / (1 - GOAL_AND_RETURNS)).toBeCloseTo(
    6.9889,
    4,
  );
});

test("1,000 of each label are bought for 600, and 381 of each are left", () => {
  const { leftovers, belowMinimum } = tierOf(600);
  // 600 ÷ 0.97 = 618.6, so 619 are used; 612 bottles come in cartons of 12 where 610 are used.
  expect(leftovers.map(({ part, pieces }) => [part, pieces])).toEqual([
    ["BTL-250", 2],
    ["LBL-PL-F", 381],
    ["LBL-PL-B", 381],
  ]);
  expect(belowMinimum).toEqual([]);
});

test("kept as our stock, the 381 labels and two bottles take 34.1 ¢ off the cost and 51 ¢ off the price", () => {
  const kept = tierOf(600, { ...question, leftovers: "kept" });
  // 381 × (0.29 + 0.24) + 2 × 1.42 = 204.77; ÷ 600 = 0.34128; ÷ 0.675 = 0.5056.
  expect(tierOf(600).direct - kept.direct).toBeCloseTo(204.77 / 600, 9);
  expect(kept.price).toBe(7.42);
});

test("with the season's overheads the same 600 need 10.82", () => {
  // Overheads of 600: see the costing; the goal is then held against the full cost, as on every costing sheet.
  const { full = 0, priceOn } = tierOf(600);
  expect(priceOn.full).toBe(10.82);
  expect(full / (1 - GOAL_AND_RETURNS)).toBeCloseTo(10.82, 2);
});

test("bulk 10 ¢ a pound dearer: 452.47 lb cost 45.25 more, and 600 are quoted at 8.03", () => {
  const { tables } = bookTablesFromCsv(
    demoFolder({
      "farm_settings.csv": replacing(
        '"Replacement price, Amber",2.6',
        '"Replacement price, Amber",2.7',
      ),
    }),
  );
  const dearer = quoteOf(readBook(tables).book, question).tiers[1];
  // 0.735789 × 600 + 11 = 452.473 lb; ÷ 600 × 0.10 = 7.54 ¢; (5.3479 + 0.0754) ÷ 0.675 = 8.0345.
  expect(POUNDS * 600 + 11).toBeCloseTo(452.473, 2);
  expect((dearer?.direct ?? 0) * 600 - tierOf(600).direct * 600).toBeCloseTo(
    45.247,
    2,
  );
  expect(dearer?.price).toBe(8.03);
});

describe("on the sheet", () => {
  let host: HeadlessHost;
  const figure = async (label: string, quantity: number): Promise<Stored> => {
    const places = quoteNames(await host.readNames(), "P250-LOFT");
    const { tiers } = places;
    if (!tiers) throw new Error("no quote");
    const cells = await host.readArea(
      tiers.sheet,
      tiers.row,
      tiers.column,
      tiers.rows,
      tiers.columns,
    );
    return cells.find(([name]) => name === label)?.[quantity] ?? null;
  };
  const type = async (
    key: "quantities" | "leftovers" | "goal_on" | "artwork",
    value: number | string | null,
    row = 0,
  ): Promise<void> => {
    const place = quoteNames(await host.readNames(), "P250-LOFT")[key];
    if (!place) throw new Error(`no ${key}`);
    await host.setCell({ ...place, row: place.row + row }, value);
  };
  const PRICE = "Price to quote, a bottle";
  beforeAll(async () => {
    host = await openHeadless(demoQuoteBook(question), gridFunctions);
  }, 120_000);
  afterAll(() => host.dispose());

  test("600 stand at 7.92, and every input moves it as worked by hand", async () => {
    expect([await figure(PRICE, 2), await figure(PRICE, 3)]).toEqual([
      7.92, 6.99,
    ]);
    await type("leftovers", "kept");
    expect(await figure(PRICE, 2)).toBe(7.42);
    await type("leftovers", "charged");
    await type("goal_on", "full");
    expect(await figure(PRICE, 2)).toBe(10.82);
    await type("goal_on", "direct");
    // The first quantity becomes 1,200, so it costs what the third does.
    await type("quantities", 1200);
    expect(await figure(PRICE, 1)).toBe(6.99);
    await type("quantities", 300);
    expect(await figure(PRICE, 1)).toBe(10.77);
    expect(String(await figure("Below a least order", 1))).toBe(
      "BTL-250: 305 needed, the least order is 504 at 1.42 each, 715.68; ",
    );
    await type("artwork", 240);
    expect(await figure("Artwork and plates, if spread over bottles", 2)).toBe(
      0.4,
    );
  });

  test("a dollar more for the packers' hour goes through every quantity", async () => {
    const table = (await host.readTables()).find(
      ({ name }) => name === "Wages",
    );
    const row =
      table?.rows.findIndex(([role]) => role === "Capper / packer") ?? -1;
    const column = table?.headings.indexOf("Hourly") ?? -1;
    if (!table || row < 0 || column < 0) throw new Error("no packers");
    const before = (await figure("Direct cost of a bottle", 2)) as number;
    await host.setCell(
      {
        sheet: table.sheet,
        row: table.row + 1 + row,
        column: table.column + column,
      },
      19.5,
    );
    // Two packers × $1 × 1.18 × (55/60 + 600/720 h) ÷ 600.
    expect(
      ((await figure("Direct cost of a bottle", 2)) as number) - before,
    ).toBeCloseTo((2 * 1.18 * (55 / 60 + 600 / 720)) / 600, 9);
  });

  test("the customer's page holds no cost, margin, wage or lot", async () => {
    const { offer } = quoteNames(await host.readNames(), "P250-LOFT");
    if (!offer) throw new Error("no page");
    const page = (await host.readArea(offer.sheet, 0, 0, 40, 8))
      .flat()
      .filter((cell): cell is string => typeof cell === "string")
      .join(" ");
    expect(page).toContain("Price a bottle");
    expect(page).not.toMatch(
      /\bcost|margin|goal|wage|lot\b|line|overhead|leftover.*worth/i,
    );
  });
});

test("the command line says the same", async () => {
  const { code, said } = await run([
    "quote",
    "sample-workbooks/fernkettle-hollow",
    "--product",
    "p250-loft",
    "--bottles",
    "300,600,1200",
    "--goal-on",
    "direct",
    "--json",
  ]);
  expect(code).toBe(0);
  const answer = JSON.parse(said.join("")) as QuoteAnswer;
  expect(
    answer.tiers.map(({ bottles, line, price }) => [bottles, line, price]),
  ).toEqual([
    [300, "Small pair", 10.77],
    [600, "Small pair", 7.92],
    [1200, "Small pair", 6.99],
  ]);
  expect(answer.validUntil).toBe("2026-12-20");
});
