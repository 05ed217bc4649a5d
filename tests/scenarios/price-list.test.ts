import {
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { PricesAnswer } from "../../src/apps/cli/prices-answer";
import { pricedProduct, priceList } from "../../src/book/price-list";
import { readBook } from "../../src/book/read";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { run } from "../apps/cli/array-terminal";
import { root } from "../architecture/project-files";
import { demoFolder } from "../book/csv-folder";
import { bookTablesFromCsv } from "../../src/book/from-csv";
import { listRows, moveRows, workedOut } from "../support/price-book";

/**
 * The worked scenarios of the job through the farm's whole book: its CSV files, the price list and the what-if sheet,
 * and the command line. The bottle is G250-AM, 12,000 on the big line. So that the scenario's own round cost stands in
 * the book, bulk Amber is set to the price at which the bottle costs just that.
 */
const BOTTLE = "G250-AM";

type Edits = Readonly<Record<string, (text: string) => string>>;

const amber =
  (price: number) =>
  (text: string): string =>
    replaced(
      text,
      /("Replacement price, Amber"),[^,]+/,
      `$1,${price.toFixed(12)}`,
    );

const priceIn =
  (prices: Readonly<Record<string, number>>) =>
  (text: string): string =>
    Object.entries(prices).reduce((all, [channel, price]) => {
      const row = new RegExp(`^${BOTTLE},${channel},.*$`, "m");
      const line = `${BOTTLE},${channel},${price},2026-05-01`;
      return row.test(all)
        ? all.replace(row, line)
        : `${all.trimEnd()}\n${line}\n`;
    }, text);

function replaced(text: string, what: RegExp, by: string): string {
  if (!what.test(text)) throw new Error(`no ${String(what)} in the demo file`);
  return text.replace(what, by);
}

const contentsOf = (edits: Edits) =>
  bookTablesFromCsv(demoFolder(edits)).tables;

const costAt = (price: number): number => {
  const list = priceList(
    readBook(contentsOf({ "farm_settings.csv": amber(price) })).book,
  );
  return pricedProduct(list, BOTTLE)?.cost.full.replacement ?? Number.NaN;
};

/** The bulk price at which the bottle costs so much: its cost is a straight line over bulk. */
function bulkFor(cost: number): number {
  const [low, high] = [costAt(3), costAt(4)];
  return 3 + (cost - low) / (high - low);
}

async function asked(
  edits: Edits,
  ...options: readonly string[]
): Promise<PricesAnswer> {
  const folder = mkdtempSync(path.join(tmpdir(), "prices-"));
  const demo = path.join(root, "sample-workbooks/fernkettle-hollow");
  try {
    for (const name of readdirSync(demo).filter((n) => n.endsWith(".csv"))) {
      const text = readFileSync(path.join(demo, name), "utf8");
      writeFileSync(path.join(folder, name), edits[name]?.(text) ?? text);
    }
    const { code, said, complained } = await run([
      "prices",
      folder,
      "--json",
      ...options,
    ]);
    expect([code, complained]).toEqual([0, []]);
    return JSON.parse(said.join("")) as PricesAnswer;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const channelOf = (answer: PricesAnswer, channel: string) => {
  const found = answer.products
    .find(({ product }) => product === BOTTLE)
    ?.channels.find((one) => one.channel === channel);
  if (!found) throw new Error(`no price in ${channel}`);
  return found;
};

const onSheet = (
  workbook: Workbook,
  channel: string,
): Readonly<Record<string, Stored>> => {
  const row = listRows(workbook).find(({ product }) => product === BOTTLE);
  if (!row) throw new Error(`${BOTTLE} is not on the sheet`);
  return row.channel(channel);
};

const number = (value: Stored | undefined): number =>
  typeof value === "number" ? value : Number.NaN;

describe("a bottle that costs 4.85", () => {
  // 6.27285 = 13.49 × (1 − 38 %) × (1 − 25 %), the invoice of scenario 15.
  const prices = {
    Distributor: 6.27285,
    "Craft marketplace": 15.15,
    "Own web shop": 15.14,
  };
  let edits: Edits;
  let answer: PricesAnswer;
  let workbook: Workbook;
  beforeAll(async () => {
    edits = {
      "farm_settings.csv": amber(bulkFor(4.85)),
      "current_prices.csv": priceIn(prices),
    };
    answer = await asked(edits);
    workbook = await workedOut(contentsOf(edits));
  }, 240_000);

  test("costs 4.85 in the answer and on the sheet", () => {
    expect(
      answer.products.find((p) => p.product === BOTTLE)?.cost.replacement,
    ).toBeCloseTo(4.85, 9);
    expect(
      number(
        listRows(workbook).find(({ product }) => product === BOTTLE)?.["full"],
      ),
    ).toBeCloseTo(4.85, 9);
  });

  // Source: scenario 15 of the job: 0.8583 of 6.2729 is left, 13.7 % of the invoice.
  test("back from a shelf at 13.49 leaves 13.7 % of the distributor's invoice", () => {
    expect(number(onSheet(workbook, "Distributor")["kept"])).toBeCloseTo(
      0.1368,
      4,
    );
    expect(
      channelOf(answer, "Distributor").marginAfterChannelCosts,
    ).toBeCloseTo(0.8583 / 6.27285, 4);
    expect(channelOf(answer, "Distributor").underGoal).toBe(true);
  });

  test("a dollar more on the shelf makes that 19.0 %", async () => {
    // 14.49 × 0.62 × 0.75 = 6.73785; 1 − 0.09 − 4.85 ÷ 6.73785 = 0.1902.
    const more = await asked({
      ...edits,
      "current_prices.csv": priceIn({ ...prices, Distributor: 6.73785 }),
    });
    expect(channelOf(more, "Distributor").marginAfterChannelCosts).toBeCloseTo(
      0.1902,
      4,
    );
  });

  // Source: scenario 17 of the job: 5.075 ÷ 0.335 = 15.149.
  test("keeps 52 % on the craft marketplace at 15.15", () => {
    const craft = channelOf(answer, "Craft marketplace");
    expect(craft.marginAfterChannelCosts).toBeCloseTo(0.52, 4);
    expect([craft.goal, craft.underGoal, craft.priceForGoal]).toEqual([
      0.52,
      false,
      15.99,
    ]);
    expect(number(onSheet(workbook, "Craft marketplace")["kept"])).toBeCloseTo(
      0.52,
      4,
    );
  });

  test("a cent less, or 0.65 an order, falls under it; 86 % no price reaches", async () => {
    const cheaper = await asked({
      ...edits,
      "current_prices.csv": priceIn({ ...prices, "Craft marketplace": 15.14 }),
    });
    expect(channelOf(cheaper, "Craft marketplace").underGoal).toBe(true);
    // (4.85 + 0.325) ÷ 0.335 = 15.4478, so 15.15 leaves 1 − 0.145 − 5.175 ÷ 15.15 = 51.3 %.
    const dearerOrder = await asked({
      ...edits,
      "channels.csv": (text) =>
        replaced(text, /^(Craft marketplace,52,0,0,0,9\.5),0\.45/m, "$1,0.65"),
    });
    expect(
      channelOf(dearerOrder, "Craft marketplace").marginAfterChannelCosts,
    ).toBeCloseTo(0.5134, 4);
    const tooMuch = await asked({
      ...edits,
      "channels.csv": (text) =>
        replaced(text, /^Craft marketplace,52/m, "Craft marketplace,86"),
    });
    expect(channelOf(tooMuch, "Craft marketplace").priceForGoal).toBeNull();
  });
});

describe("margin is not markup: a bottle that costs 5.20", () => {
  let edits: Edits;
  let answer: PricesAnswer;
  let workbook: Workbook;
  beforeAll(async () => {
    edits = {
      "farm_settings.csv": amber(bulkFor(5.2)),
      // Scenario 14 of the job: 5.20 ÷ 0.65 and 5.20 × 1.35.
      "current_prices.csv": priceIn({
        "Farm counter": 8,
        "Own web shop": 7.02,
      }),
    };
    answer = await asked(edits);
    workbook = await workedOut(contentsOf(edits));
  }, 240_000);

  test("at 8.00 the margin is 35 % and the markup 53.8 %", () => {
    const counter = channelOf(answer, "Farm counter");
    expect(
      [counter.margin, counter.markup].map((v) => Number(v?.toFixed(3))),
    ).toEqual([0.35, 0.538]);
    const cells = onSheet(workbook, "Farm counter");
    expect(number(cells["margin"])).toBeCloseTo(0.35, 9);
    expect(number(cells["markup"])).toBeCloseTo(0.538, 3);
  });

  test("at 7.02 the markup is 35 % and the margin 25.9 %", () => {
    const web = channelOf(answer, "Own web shop");
    expect([web.margin, web.markup].map((v) => Number(v?.toFixed(3)))).toEqual([
      0.259, 0.35,
    ]);
    const cells = onSheet(workbook, "Own web shop");
    expect(number(cells["margin"])).toBeCloseTo(0.259, 3);
    expect(number(cells["markup"])).toBeCloseTo(0.35, 9);
  });

  test("at 10.40 the margin is 50 % and the markup 100 %", async () => {
    // 5.20 of 10.40 is half; 5.20 on 5.20 is all of it again.
    const doubled = await asked({
      ...edits,
      "current_prices.csv": priceIn({ "Farm counter": 10.4 }),
    });
    const counter = channelOf(doubled, "Farm counter");
    expect(counter.margin).toBeCloseTo(0.5, 9);
    expect(counter.markup).toBeCloseTo(1, 9);
  });
});

describe("bulk up 25 ¢ a pound", () => {
  // 252 mL of what is in stock, 66.448 °Bx and 11.05263 lb/gal, and 60 lb of purge over 12,000 bottles.
  const pounds = (252 * 11.05263) / 3785.411784 + 60 / 12000;
  // The same of a gallon jug: 3,806 mL, and 11 lb over 360 jugs.
  const jugPounds = (3806 * 11.05263) / 3785.411784 + 11 / 360;
  let full: number;
  let edits: Edits;
  let workbook: Workbook;
  beforeAll(async () => {
    full = costAt(2.6);
    edits = {
      // A margin of 42 % and nothing for the channel, as in bonus A of the job.
      "current_prices.csv": priceIn({ "Farm counter": full / 0.58 }),
      "channels.csv": (text) =>
        replaced(
          text,
          /^Farm counter,58,0,0,0,2\.7,0\.1,item \+ sales tax,2,0\.5/m,
          "Farm counter,58,0,0,0,0,0,item + sales tax,0,0",
        ),
    };
    workbook = await workedOut(contentsOf(edits));
  }, 240_000);

  const moved = (product: string) => {
    const row = moveRows(workbook).find((one) => one["product"] === product);
    if (!row) throw new Error(`${product} is not on the sheet`);
    return row;
  };

  // Source: bonus A: 0.7343 lb, 18.4 ¢ without the purge and at 11.03 lb/gal.
  test("a bottle costs 18.5 ¢ more with its purge, the example's 18.4 ¢ without", () => {
    expect(number(moved(BOTTLE)["cents"])).toBeCloseTo(pounds * 25, 3);
    expect(pounds * 25).toBeCloseTo(18.52, 2);
    expect(((252 * 11.03) / 3785.41) * 25).toBeCloseTo(18.36, 2);
  });

  test("a gallon jug costs 2.79 more with its purge, the example's 2.77 without", () => {
    expect(number(moved("J128-AM")["cents"])).toBeCloseTo(jugPounds * 25, 2);
    expect(jugPounds * 0.25).toBeCloseTo(2.786, 3);
    expect(((3806 * 11.03) / 3785.41) * 0.25).toBeCloseTo(2.77, 2);
  });

  test("to hold the money the price rises by the same, to hold 42 % by that ÷ 0.58", () => {
    const row = moved(BOTTLE);
    const price = full / 0.58;
    expect(number(row["left"])).toBeCloseTo(0.42, 9);
    expect(number(row["hold_money"]) - price).toBeCloseTo(pounds * 0.25, 5);
    // 0.1852 ÷ 0.58 = 0.3193; the example's 0.1836 ÷ 0.58 is 0.317.
    expect(number(row["hold_percent"]) - price).toBeCloseTo(0.3193, 4);
    expect(0.1836 / 0.58).toBeCloseTo(0.317, 3);
  });

  test("the book with the dearer bulk, asked at the command line, costs what the what-if sheet says", async () => {
    const dearer = await asked({ ...edits, "farm_settings.csv": amber(2.85) });
    const cost = dearer.products.find((p) => p.product === BOTTLE)?.cost
      .replacement;
    expect(cost).toBeCloseTo(number(moved(BOTTLE)["new_cost"]), 9);
    expect(dearer.bulkPrices["Amber"]).toBeCloseTo(2.85, 9);
  });

  test("40 ¢ instead moves the bottle by 29.6 ¢", () => {
    // 0.740789 × 40; it is the last of the steps of ten cents.
    const at = moved(BOTTLE).at.map(number);
    const price = full / 0.58;
    expect(at[8]).toBeCloseTo(1 - (full + pounds * 0.4) / price, 6);
    expect(pounds * 40).toBeCloseTo(29.63, 2);
  });
});
