import { costingBook } from "../../src/apps/cli/costing-workbook";
import { pricesBook } from "../../src/apps/cli/prices-workbook";
import { quoteBook } from "../../src/apps/cli/quote-workbook";
import { channelsBook } from "../../src/apps/cli/year-workbooks";
import { gridFunctions } from "../../src/apps/grid-functions";
import { costingFacts } from "../../src/book/costing-facts";
import { priceList } from "../../src/book/price-list";
import { quoteOf, type QuoteQuestion } from "../../src/book/quote";
import { readBook } from "../../src/book/read";
import { calculate } from "../../src/hosts/grid/calculate";
import { costingNames, type CostingKey } from "../../src/sheets/costing/names";
import { quoteNames } from "../../src/sheets/quote/names";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { bottleCost } from "../../src/trade/costing/bottle-cost";
import { agree, differences, recalculated } from "../support/agreement";
import { listRows } from "../support/price-book";
import { figureOf, valueIn } from "../support/quote-workbook";
import { begunTables, rolledTables } from "../support/rolled-season";

/** A book just rolled, and the same after one run of its season. */
const fresh = rolledTables();
const begun = begunTables();
const quoted: QuoteQuestion = {
  product: "P250-LOFT",
  quantities: [600, 1200],
  leftovers: "charged",
  goalOn: "full",
};
/** Two products: one drawn from lots, one from oak barrels, whose Brix only a run has measured. */
const runs = [
  { product: "G250-AM", bottles: 9000 },
  { product: "B375-OAK", bottles: 480 },
];
const books = {
  costings: (plain: boolean) => costingBook(begun, runs, plain),
  "costings of a book just rolled": (plain: boolean) =>
    costingBook(fresh, runs, plain),
  quote: (plain: boolean) => quoteBook(begun, quoted, plain),
  channels: (plain: boolean) =>
    channelsBook(begun, { product: "G250-AM", bottles: 9000 }, plain),
  prices: (plain: boolean) => pricesBook(begun, { plain }),
} as const;
type Which = keyof typeof books;
const all = Object.keys(books) as readonly Which[];

const live = new Map<Which, Workbook>();
let office: ReadonlyMap<Which, Workbook>;

beforeAll(async () => {
  for (const which of all)
    live.set(
      which,
      (await calculate(books[which](false), gridFunctions)).workbook,
    );
  office = await recalculated<Which>(
    Object.fromEntries(
      all.map((which) => [which, books[which](true)]),
    ) as Record<Which, Workbook>,
  );
}, 400_000);

test.each(all)(
  "LibreOffice, made to recalculate the plain twin of the %s, gives every figure of the grid",
  (which) =>
    expect(differences(live.get(which), office.get(which))).toEqual([]),
);

const bookOf = (which: Which): Workbook => {
  const book = live.get(which);
  if (!book) throw new Error(`${which} is not worked out`);
  return book;
};
const says = (which: Which, label: string): readonly Stored[] =>
  bookOf(which).sheets.flatMap(({ cells }) =>
    cells
      .filter(({ value }) => value === label)
      .map(
        ({ row, column }) =>
          cells.find((c) => c.row === row && c.column === column + 1)?.value ??
          null,
      ),
  );

test.each([
  ["costings", begun],
  ["costings of a book just rolled", fresh],
] as const)("the trade gives the sheet's cost: %s", (which, contents) => {
  const { book } = readBook(contents);
  for (const run of runs) {
    const cost = bottleCost(costingFacts(book, run).bottle);
    const names = costingNames(bookOf(which).names, run.product);
    const figure = (key: CostingKey) => valueIn(bookOf(which), names[key]);
    expect(cost.overhead).toBeGreaterThan(0);
    for (const [shown, known] of [
      [figure("overhead"), cost.overhead],
      [figure("full_replacement"), cost.full.replacement],
    ] as const)
      expect([shown, agree(shown, known ?? null)]).toEqual([shown, true]);
    expect(cost.estimateFrom).toBe(2026);
    expect(figure("full_basis")).toBe("estimate from season 2026");
  }
});

test("every sheet that shows a full cost says what it is estimated from", () => {
  const label = "Overheads are this season's own";
  for (const which of all) {
    const told = says(which, label);
    expect(told.length).toBeGreaterThan(0);
    for (const one of told) expect(one).toBe("estimate from season 2026");
  }
});

test("the trade gives the price list's costs and the quote's", () => {
  const { book } = readBook(begun);
  const rows = new Map(
    listRows(bookOf("prices")).map((row) => [row["product"], row]),
  );
  for (const { product, bottles, cost } of priceList(book).products) {
    const row = rows.get(product.product);
    expect([product.product, row?.["bottles"]]).toEqual([
      product.product,
      bottles,
    ]);
    expect([
      product.product,
      agree(row?.["full"], cost.full.replacement),
    ]).toEqual([product.product, true]);
  }
  quoteOf(book, quoted).tiers.forEach(({ full }, i) => {
    const shown = figureOf(
      bookOf("quote"),
      quoteNames(bookOf("quote").names, quoted.product).tiers,
      "Full cost of a bottle",
      i + 1,
    );
    expect([shown, agree(shown, full)]).toEqual([shown, true]);
  });
});
