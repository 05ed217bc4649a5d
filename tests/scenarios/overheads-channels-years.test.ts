import { overheadsBook } from "../../src/apps/cli/year-workbooks";
import type { OverheadsJson } from "../../src/apps/cli/overheads-answer";
import type { ChannelsJson } from "../../src/apps/cli/channels-answer";
import type { YearsJson } from "../../src/apps/cli/years-answer";
import { gridFunctions } from "../../src/apps/grid-functions";
import type { ChannelsQuestion } from "../../src/book/channel-orders";
import { productChannels } from "../../src/book/channel-orders";
import type { Book } from "../../src/book/book";
import { overheadsAnswer } from "../../src/book/overheads-answer";
import { yearsOf } from "../../src/book/year-bridge";
import { calculate } from "../../src/hosts/grid/calculate";
import { as, type Money } from "../../src/measures/quantity";
import { overheadsPlaces } from "../../src/sheets/overheads/overheads-sheet";
import { orderEarned } from "../../src/trade/pricing/web-order";
import { run } from "../apps/cli/array-terminal";
import { demoTables } from "../book/csv-folder";
import { demoBook } from "../support/demo-workbook";

const demo = "sample-workbooks/fernkettle-hollow";
const { book } = demoBook();

const jsonOf = async <J>(...args: readonly string[]): Promise<J> => {
  const { code, said } = await run([...args, "--json"]);
  expect(code).toBe(0);
  return JSON.parse(said.join("")) as J;
};

/** What a way of sharing charges a bottle of the run, in cents. */
const way = (
  { compared }: ReturnType<typeof overheadsAnswer>,
  driver: string,
): number =>
  (100 * (compared.ways.find((one) => one.driver === driver)?.ofRun ?? NaN)) /
  compared.bottles;

// Source: the worked example of the job: 10,600 a year over 13 lots and 18 runs, and RUN-32's 660 bottles.
describe("who carries the certification of 10,600, in RUN-32", () => {
  test("the book: 341.94 for each lot and run, 51.8 ¢ a bottle; by 4,623 gallons 15.3 ¢, 3.4 times less", () => {
    const answer = overheadsAnswer(book, { run: "RUN-32" });
    expect(answer.compared.amount).toBe(10_600); // 7,400 + 3,200
    expect(way(answer, "lots and runs")).toBeCloseTo(51.8, 1);
    expect(way(answer, "gallons packed")).toBeCloseTo(15.3, 1);
    expect(
      way(answer, "lots and runs") / way(answer, "gallons packed"),
    ).toBeCloseTo(3.4, 1);
    // By runs 10,600 ÷ 18 ÷ 660, by 17 products 10,600 ÷ 17 ÷ 660.
    expect(way(answer, "runs")).toBeCloseTo(89.226, 3);
    expect(way(answer, "products")).toBeCloseTo(94.474, 3);
  });

  test("the command says the same, and that lots carry 13 of 31 parts", async () => {
    const answer = await jsonOf<OverheadsJson>(
      "overheads",
      demo,
      "--run",
      "RUN-32",
    );
    const both = answer.compared.ways.find(
      ({ driver }) => driver === "lots and runs",
    );
    expect(both?.each).toBeCloseTo(341.9355, 4);
    expect(both?.perBottle).toBeCloseTo(0.518, 3);
    expect(both?.carriedByLots).toBeCloseTo(13 / 31, 12);
    expect(answer.addsUp).toBe(true);
    expect(answer.gap).toBe(0);
  });

  test("the sheet says it too, and moves when the bill does", async () => {
    const figures = async (perYear: number) => {
      const tables = demoTables().map((table) =>
        table.name === "Overheads"
          ? {
              ...table,
              rows: table.rows.map((row) =>
                row.includes("Quality software, records and training")
                  ? row.map((cell) => (cell === 3200 ? perYear : cell))
                  : row,
              ),
            }
          : table,
      );
      const { workbook } = await calculate(
        overheadsBook(tables, { run: "RUN-32" }),
        gridFunctions,
      );
      const place = overheadsPlaces(workbook.names).ways;
      return workbook.sheets
        .find(({ name }) => name === place?.sheet)
        ?.cells.filter(
          ({ column, row }) =>
            column === (place?.column ?? 0) + 5 &&
            row >= (place?.row ?? 0) &&
            row < (place?.row ?? 0) + (place?.rows ?? 0),
        )
        .map(({ value }) => Number(value));
    };
    const before = await figures(3200);
    expect(before?.[2]).toBeCloseTo(51.8, 1);
    expect(before?.[3]).toBeCloseTo(15.3, 1);
    // 3,100 more ÷ 31 ÷ 660 = 15.1515 ¢ by lots and runs.
    const after = await figures(6300);
    expect((after?.[2] ?? 0) - (before?.[2] ?? 0)).toBeCloseTo(15.1515, 4);
  });

  test("a season without a run on the big line leaves its depreciation to nobody, which is said", () => {
    const idle: Book = {
      ...book,
      runs: book.runs.filter(({ line }) => line !== "Big line"),
    };
    const bill = overheadsAnswer(idle).bills.find(({ gap }) => gap > 0);
    expect([bill?.row.item, bill?.gap, bill?.carried]).toEqual([
      "Big line depreciation",
      9500,
      0,
    ]);
  });
});

/** A book where the product costs what the worked example says, so that only the channels are asked. */
const asked = (over: Partial<ChannelsQuestion> = {}) =>
  productChannels(book, { product: "G250-AM", ...over });

// Source: the worked example of the job: 13.49, shop 38 %, distributor 25 %, broker 5 %, promotion 4 %.
describe("back from a shelf price of 13.49 through a distributor", () => {
  const distributor = (shelf?: number) =>
    asked(shelf === undefined ? {} : { shelf: as<Money>(shelf) }).channels.find(
      ({ channel }) => channel.channel === "Distributor",
    )?.shelf;

  test("the book: we invoice 6.2729, and 5.7083 stays after broker and promotion", () => {
    const taken = distributor();
    expect(taken?.invoice).toBeCloseTo(6.27285, 9);
    expect(taken?.broker).toBeCloseTo(0.3136, 4);
    expect(taken?.promotion).toBeCloseTo(0.2509, 4);
    const cost = asked().cost.full.replacement ?? NaN;
    expect((taken?.left ?? NaN) + cost).toBeCloseTo(5.7083, 4);
  });

  test("the command says the same", async () => {
    const answer = await jsonOf<ChannelsJson>(
      "channels",
      demo,
      "--product",
      "G250-AM",
    );
    const row = answer.channels.find(
      ({ channel }) => channel === "Distributor",
    );
    expect(answer.shelfPrice).toBe(13.49);
    expect(row?.fromShelf?.net).toBeCloseTo(5.7083, 4);
    // At the example's cost of 4.85: 0.8583, 13.7 % of the invoice.
    const left = (row?.fromShelf?.net ?? NaN) - 4.85;
    expect(left / (row?.fromShelf?.invoice ?? NaN)).toBeCloseTo(0.137, 3);
  });

  test("a dollar more on the shelf leaves 42.3 ¢ more", () => {
    // 1.00 × 0.62 × 0.75 × 0.91 = 0.42315.
    expect(
      (distributor(14.49)?.left ?? NaN) - (distributor()?.left ?? NaN),
    ).toBeCloseTo(0.42315, 9);
  });

  test("forward, 6.32 leads to 13.59 on the shelf", () => {
    // 6.32 ÷ 0.75 ÷ 0.62 = 13.5914.
    const row = asked().channels.find(
      ({ channel }) => channel.channel === "Distributor",
    );
    expect(row?.onShelf).toBeCloseTo(13.5914, 4);
  });
});

// Source: the worked example of the job: cost 4.85, 0.45 an order of 2, fees 9.5 %, marketing 4 %, returns 1 %.
describe("a craft marketplace that shall leave 52 %", () => {
  const priced = (price: number): Book => ({
    ...book,
    prices: [
      ...book.prices,
      ...book.prices.slice(0, 1).map((row) => ({
        ...row,
        channel: "Craft marketplace",
        price: as<Money>(price),
      })),
    ],
    // Delivery is left out of the example.
    channels: book.channels.map((row) =>
      row.channel === "Craft marketplace"
        ? { ...row, outboundFreight: as<Money>(0) }
        : row,
    ),
  });
  const left = (price: number, cost: number): number => {
    const row = productChannels(priced(price), {
      product: "G250-AM",
    }).channels.find(({ channel }) => channel.channel === "Craft marketplace");
    if (!row?.terms) throw new Error("the channel has no terms");
    const order = orderEarned({ ...row.terms, cost: as<Money>(cost) }, 2);
    return order.left / order.goods;
  };

  test("at 15.149 an order of two leaves 52 % of its goods", () => {
    // (4.85 + 0.225) ÷ 0.335 = 15.149.
    expect(left(15.1493, 4.85)).toBeCloseTo(0.52, 4);
  });

  test("with a cost 50 ¢ higher the same price leaves 48.7 %", () => {
    // 0.52 − 0.50 ÷ 15.1493 = 0.4870.
    expect(left(15.1493, 5.35)).toBeCloseTo(0.487, 4);
  });
});

describe("the 250 mL amber bottle, 2025 against 2026", () => {
  const product = (of: Book) => yearsOf(of, { product: "G250-AM" }).products[0];

  test("drew 6,272 lb at 2.3761 and then 4,997 lb at 2.3631 and 3,963 lb at 2.8435: 14.9 ¢ of syrup price", () => {
    const bridge = product(book)?.bridge;
    // (4,997 × 2.36312 + 3,963 × 2.84348) ÷ 8,960 = 2.57558; less 2.37610; × 6,272 ÷ 8,400 lb.
    expect(bridge?.steps[0]?.change).toBeCloseTo(0.149, 3);
    // 1.1 mL more: 253.2 against 252.1, at 66.2 and 66.1 °Bx.
    expect(bridge?.steps[1]?.change).toBeCloseTo(0.0091, 4);
    // 5 people: 127.44 × (9.6 ÷ 12,000 − 7.75 ÷ 8,400).
    expect(bridge?.steps[4]?.change).toBeCloseTo(-0.0156, 4);
  });

  test("the steps add up to the change exactly", () => {
    for (const { bridge } of yearsOf(book).products) {
      if (!bridge) continue;
      const sum = bridge.steps.reduce((total, { change }) => total + change, 0);
      expect(sum).toBeCloseTo(bridge.after - bridge.before, 12);
    }
  });

  test("the certification 3,100 dearer this season is 0.8 ¢ a bottle, under bills of both seasons", () => {
    const dearer: Book = {
      ...book,
      overheads: book.overheads.map((row) =>
        row.item.startsWith("Certification") && row.season === 2026
          ? { ...row, perYear: as<Money>(row.perYear + 3100) }
          : row,
      ),
    };
    const step = (of: Book): number =>
      product(of)?.bridge?.steps.find(
        ({ name }) => name === "Overheads of both seasons",
      )?.change ?? NaN;
    // 3,100 ÷ 31 ÷ 12,000.
    expect(step(dearer) - step(book)).toBeCloseTo(0.0083333, 7);
  });

  test("the command says the same, and that 2025 has fewer bills", async () => {
    const answer = await jsonOf<YearsJson>(
      "years",
      demo,
      "--product",
      "G250-AM",
    );
    expect(answer.products[0]?.change).toBeCloseTo(
      (product(book)?.bridge?.after ?? NaN) -
        (product(book)?.bridge?.before ?? NaN),
      12,
    );
    expect(answer.findings[0]?.found).toBe("2 bills for 2025 and 10 for 2026");
  });
});
