import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { manyProducts } from "../../src/apps/cli/bench/many-products";
import { pricesBook } from "../../src/apps/cli/prices-workbook";
import type { Contents } from "../../src/book/contents";
import { priceList } from "../../src/book/price-list";
import { readBook } from "../../src/book/read";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../src/hosts/file/write-xlsx";
import { as, type Money } from "../../src/measures/quantity";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { noticeOf } from "../../src/trade/pricing/notice";
import { costMove } from "../../src/trade/pricing/bulk-move";
import { answerOrNone } from "../../src/measures/cannot-answer";
import { KG_PER_LB } from "../../src/measures/units";
import { bookTablesFromCsv } from "../../src/book/from-csv";
import { demoFolder, demoTables } from "../book/csv-folder";
import { agree, differences } from "../support/agreement";
import { convertWithLibreOffice } from "../support/libre-office";
import { listRows, moveRows, workedOut } from "../support/price-book";

const ofPrices = (name: string): boolean =>
  ["Price list", "Price working", "What if"].includes(name);

async function recalculated(contents: readonly Contents[]): Promise<Workbook> {
  const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-agreement-"));
  const file = join(folder, "prices.xlsx");
  writeFileSync(file, await writeXlsx(pricesBook(contents, { plain: true })));
  const [converted] = convertWithLibreOffice([file], {
    to: "xlsx",
    recalculate: true,
  });
  return (await readXlsx(readFileSync(converted ?? ""), "prices.xlsx"))
    .workbook;
}

/** Every figure of the list that the trade answers too. */
function againstTrade(
  contents: readonly Contents[],
  workbook: Workbook,
): readonly string[] {
  const list = priceList(readBook(contents).book);
  const rows = new Map(listRows(workbook).map((row) => [row["product"], row]));
  const moves = new Map(moveRows(workbook).map((row) => [row["product"], row]));
  const wrong: string[] = [];
  const check = (
    what: string,
    found: Stored | undefined,
    wanted: Stored | undefined,
  ): void => {
    const expected = wanted ?? "withheld";
    if (!agree(found, expected))
      wrong.push(
        `${what}: ${JSON.stringify(found)} against ${JSON.stringify(expected)}`,
      );
  };
  for (const { product, bottles, cost, channels } of list.products) {
    const code = product.product;
    const row = rows.get(code);
    if (!row) {
      wrong.push(`${code} is not on the list`);
      continue;
    }
    check(`${code} run`, row["bottles"], bottles);
    check(`${code} line`, row["line"], cost.choice.chosen?.line.name ?? "");
    check(`${code} full`, row["full"], cost.full.replacement);
    check(`${code} average`, row["average"], cost.full.average);
    check(`${code} oldest`, row["oldest"], cost.full.oldestFirst);
    check(`${code} direct`, row["direct"], cost.direct.replacement);
    check(`${code} direct average`, row["direct_average"], cost.direct.average);
    check(
      `${code} direct oldest`,
      row["direct_oldest"],
      cost.direct.oldestFirst,
    );
    const named = (holds: (c: (typeof channels)[number]) => boolean): string =>
      channels
        .filter(holds)
        .map((c) => `${c.channel}; `)
        .join("");
    check(
      `${code} under`,
      row["also"],
      named((c) => c.underGoal),
    );
    check(
      `${code} losing`,
      row["losing"],
      named((c) => (c.kept ?? 0) < 0),
    );
    const kinks = named((c) => c.rung?.isKink === true);
    if (String(row["flags"]).includes("dearer an ounce") !== (kinks !== ""))
      wrong.push(`${code} kinks: ${String(row["flags"])} against ${kinks}`);
    for (const c of channels) {
      const found = row.channel(c.channel);
      check(`${code} ${c.channel} price`, found["price"], c.price ?? "");
      if (c.price === undefined) continue;
      check(`${code} ${c.channel} margin`, found["margin"], c.margin);
      check(`${code} ${c.channel} markup`, found["markup"], c.markup);
      check(`${code} ${c.channel} kept`, found["kept"], c.kept);
    }
    const counter = channels[0];
    const drawn = cost.syrupPerBottle;
    const aged = /oak/i.test(product.syrupKind);
    if (
      !counter?.price ||
      drawn === undefined ||
      aged ||
      cost.full.replacement === undefined
    )
      continue;
    const purge = cost.choice.chosen?.line.purge ?? 0;
    const move = costMove(as(drawn + purge / bottles), as(0.25 / KG_PER_LB));
    const { price, terms } = counter;
    const full = cost.full.replacement;
    const notice = answerOrNone(() =>
      noticeOf(
        {
          cost: full,
          price,
          shares: terms.shares,
          fixedPerBottle: terms.fixedPerBottle,
        },
        move,
        as<Money>(0.99),
      ),
    );
    const moved = moves.get(code);
    check(`${code} then`, moved?.["new_cost"], full + move);
    check(
      `${code} money`,
      moved?.["hold_money"],
      notice?.inMoney ?? "below cost now",
    );
    check(
      `${code} percent`,
      moved?.["hold_percent"],
      notice?.inPercent ?? "below cost now",
    );
    check(
      `${code} asked`,
      moved?.["ask_percent"],
      notice?.asked.inPercent ?? "below cost now",
    );
  }
  return wrong;
}

describe("the demo farm's price list", () => {
  const contents = demoTables();
  let live: Workbook;
  beforeAll(async () => {
    live = await workedOut(contents);
  }, 240_000);

  test("holds the costs, prices and holding prices of the trade", () => {
    expect(againstTrade(contents, live)).toEqual([]);
  });

  test("is the same in LibreOffice, made to recalculate its portable twin", async () => {
    expect(differences(live, await recalculated(contents), ofPrices)).toEqual(
      [],
    );
  }, 240_000);

  test("is the same when its file is read back", async () => {
    const { workbook } = await readXlsx(await writeXlsx(live), "prices.xlsx");
    expect(differences(live, workbook, ofPrices)).toEqual([]);
  });
});

describe("a book with holes in it", () => {
  // No price of the 28 mm cap and of the glass band, no bulk price of Dark, no wages, and a price below cost.
  const contents = bookTablesFromCsv(
    demoFolder({
      "packaging_price_breaks.csv": (text) =>
        text.replace(/^(CAP-28|BAND-28),.*\n/gm, ""),
      "farm_settings.csv": (text) =>
        text.replace(/^"Replacement price, Dark".*\n/m, ""),
      "current_prices.csv": (text) =>
        text.replace("G750-AM,Distributor,14.35", "G750-AM,Distributor,9.05"),
    }),
  ).tables;
  let live: Workbook;
  beforeAll(async () => {
    live = await workedOut(contents);
  }, 240_000);

  test("withholds what the trade withholds", () => {
    expect(againstTrade(contents, live)).toEqual([]);
  });

  test("names what is missing", () => {
    const flags = (code: string): string =>
      String(listRows(live).find(({ product }) => product === code)?.["flags"]);
    expect(flags("G250-AM")).toContain(
      "withheld, needs a price for CAP-28; and 1 more of its parts",
    );
    expect(flags("J32-DK")).toContain("withheld, needs a bulk price for Dark");
    expect(flags("J128-AM")).not.toContain("withheld");
  });

  test("is the same in LibreOffice", async () => {
    expect(differences(live, await recalculated(contents), ofPrices)).toEqual(
      [],
    );
  }, 240_000);
});

describe("a generated book", () => {
  test("of 38 products: the grid holds the figures of the trade, and LibreOffice those of the grid", async () => {
    const contents = manyProducts(demoTables(), 38);
    const live = await workedOut(contents);
    expect(againstTrade(contents, live)).toEqual([]);
    expect(differences(live, await recalculated(contents), ofPrices)).toEqual(
      [],
    );
  }, 480_000);

  test("of 60 products: LibreOffice holds the figures of the trade", async () => {
    const contents = manyProducts(demoTables(), 60);
    const workbook = await recalculated(contents);
    expect(listRows(workbook)).toHaveLength(60);
    expect(againstTrade(contents, workbook)).toEqual([]);
  }, 480_000);
});
