import { plannedPrices } from "../../../../src/apps/pane/prices/build";
import { movedSentence } from "../../../../src/apps/pane/prices/bulk-inputs";
import {
  type ListedPrices,
  listedMatching,
  type ListedProduct,
  readPriceList,
} from "../../../../src/apps/pane/prices/price-list";
import {
  costLine,
  goalLine,
} from "../../../../src/apps/pane/prices/product-list";
import { readWhatIf } from "../../../../src/apps/pane/what-if/what-if";
import { farmBook } from "../../../../src/sheets/farm-book";
import type { Workbook } from "../../../../src/sheets/workbook";
import { demoTables } from "../../../book/csv-folder";
import { fakeHost } from "../../../support/fake-host";
import { workedOut } from "../../../support/price-book";

describe("the demo book's list as the pane reads it", () => {
  let workbook: Workbook;
  let list: ListedPrices;
  beforeAll(async () => {
    workbook = await workedOut(demoTables());
    const read = await readPriceList(fakeHost(workbook), workbook.names);
    if (!read) throw new Error("no list");
    list = read;
  }, 240_000);

  test("the furthest under its goal comes first, every product once", () => {
    const gaps = list.products.map(
      ({ left, goal }) => Number(left) - Number(goal),
    );
    expect(gaps).toEqual([...gaps].sort((a, b) => a - b));
    expect(new Set(list.products.map(({ product }) => product)).size).toBe(19);
    expect(list.products[0]).toMatchObject({
      product: "N050-AM",
      worst: "Distributor",
      belowCost: ["Distributor"],
    });
  });

  test("nothing is wrong with the sheets, and a glance counts what is", () => {
    expect(list.checks).toEqual([]);
    expect(list.glance.map(({ what }) => what)).toEqual([
      "Under their goal",
      "Below cost",
      "Withheld",
      "Kinks in a size ladder",
    ]);
    expect(list.glance[0]?.says).toBe("19 of 19 products in some channel");
  });

  test("a row's place is the row of its product on the sheet", async () => {
    const row = list.products.find(({ product }) => product === "J128-AM");
    if (!row) throw new Error("no jug");
    expect((await fakeHost(workbook).readCell(row.place)).value).toBe(
      "J128-AM",
    );
  });

  test("the what-if sheet is read with its inputs, steps and every product", async () => {
    const whatIf = await readWhatIf(fakeHost(workbook), workbook.names);
    expect(whatIf?.inputs.bulk.value).toBe(0.25);
    expect(whatIf?.inputs.channel.value).toBe("Farm counter");
    expect(whatIf?.products).toHaveLength(19);
    expect(
      whatIf?.steps.map((step) => Number(Number(step).toFixed(9))),
    ).toEqual([-0.4, -0.3, -0.2, -0.1, 0, 0.1, 0.2, 0.3, 0.4]);
    const row = whatIf?.products.find(({ product }) => product === "G250-AM");
    expect(row?.steps[4]).toBeCloseTo(Number(row?.left), 12);
  });
});

test("a workbook without a list has none, and is offered the sheets it would get", async () => {
  const book = farmBook(demoTables());
  expect(await readPriceList(fakeHost(book), book.names)).toBeUndefined();
  const { change, writes } = plannedPrices({
    tables: await fakeHost(book).readTables(),
    sheets: book.sheets.map(({ name }) => name),
  });
  expect(change.addSheets.map(({ name }) => name)).toEqual([
    "Price list",
    "What if",
    "Price working",
  ]);
  expect(change.append).toEqual([]);
  expect(writes[0]).toMatch(/^the sheet “Price list”, A1 to [A-Z]+\d+$/);
});

test("a sheet of that name is never written over", async () => {
  const book = farmBook(demoTables());
  const tables = await fakeHost(book).readTables();
  for (const name of ["price list", "WHAT IF", "Price working"])
    expect(() => plannedPrices({ tables, sheets: [name] })).toThrow(
      `The sheet "${name}" exists`,
    );
});

test("a workbook without products, or without a table, says so", async () => {
  const tables = await fakeHost(farmBook(demoTables())).readTables();
  expect(() =>
    plannedPrices({
      tables: tables.filter(({ name }) => name !== "Channels"),
      sheets: [],
    }),
  ).toThrow("The workbook has no Channels table");
  expect(() =>
    plannedPrices({
      tables: tables.map((table) =>
        table.name === "Products" ? { ...table, rows: [] } : table,
      ),
      sheets: [],
    }),
  ).toThrow("Products has no row");
});

const listed = (changes: Partial<ListedProduct>): ListedProduct => ({
  product: "G250-AM",
  description: "Amber glass",
  full: 4.4681,
  average: 4.5014,
  oldest: "withheld",
  direct: 3.5407,
  worst: "Distributor",
  left: 0.203,
  goal: 0.3,
  isUnder: true,
  under: ["Own web shop", "Distributor"],
  belowCost: [],
  flags: "under goal: Own web shop; Distributor; ",
  place: { sheet: "Price list", row: 9, column: 0 },
  ...changes,
});

test("a row says its cost three ways, and where it stands", () => {
  expect(costLine(listed({}))).toBe(
    "Direct $3.5407 · average 3.3 ¢ more · oldest first withheld",
  );
  expect(goalLine(listed({}))).toBe(
    "Distributor: 20.3 % left, goal 30 %; under in 1 more channel",
  );
  expect(goalLine(listed({ isUnder: false, left: 0.31, under: [] }))).toBe(
    "Meets every goal. Closest in Distributor: 31 % left, goal 30 %.",
  );
  expect(goalLine(listed({ worst: "" }))).toBe("No price in any channel yet.");
  expect(
    costLine(
      listed({
        full: "withheld",
        flags: "withheld, needs a price for CAP-28; ",
      }),
    ),
  ).toBe("withheld, needs a price for CAP-28; ");
});

test("products are found by words of their code, description and flags", () => {
  const all = [
    listed({}),
    listed({ product: "J32-DK", description: "Dark jug", flags: "" }),
  ];
  const found = (typed: string) =>
    listedMatching(all, typed).map(({ product }) => product);
  expect(found("dark 32")).toEqual(["J32-DK"]);
  expect(found("web")).toEqual(["G250-AM"]);
  expect(found("")).toEqual(["G250-AM", "J32-DK"]);
});

test("a new bulk price tells which prices crossed their goal", () => {
  const of = (...under: readonly string[]): ListedPrices => ({
    sheet: "Price list",
    asOf: 46346,
    glance: [],
    checks: [],
    products: [listed({ under })],
  });
  expect(movedSentence(of(), of())).toBe("No price crosses its goal.");
  expect(movedSentence(of(), of("Distributor"))).toBe(
    "G250-AM in Distributor falls under its goal.",
  );
  expect(movedSentence(of("Farm counter", "Distributor"), of())).toBe(
    "2 prices meet their goal again, G250-AM in Farm counter among them.",
  );
});
