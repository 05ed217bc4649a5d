import { newestBulkPrice } from "../../../../src/apps/pane/price/bulk-price";
import {
  readBottles,
  readBulkPrice,
} from "../../../../src/apps/pane/price/bottles";
import { plannedSheet } from "../../../../src/apps/pane/price/build";
import {
  drawnStrips,
  strips,
} from "../../../../src/apps/pane/price/money-shares";
import {
  productsMatching,
  productsOf,
  usualRun,
} from "../../../../src/apps/pane/price/products";
import { centsApart, perBottle, share } from "../../../../src/apps/pane/money";
import type { TableContents } from "../../../../src/hosts/host";
import { demoTables } from "../../../book/csv-folder";

const tables = demoTables();

describe("the newest bulk price", () => {
  const prices: TableContents = {
    name: "BulkPrices",
    sheet: "Bulk prices",
    row: 2,
    column: 1,
    headings: ["Valid from", "Syrup kind", "Price per lb"],
    rows: [
      [46000, "Amber", 2.6],
      [46200, "amber", 2.85],
      [null, "Amber", 9],
      [46100, "Dark", 2.52],
    ],
  };
  test("is the row with the latest day, whatever order rows and columns stand in", () => {
    expect(newestBulkPrice([prices], "Amber")).toMatchObject({
      price: 2.85,
      validFrom: "2026-06-27",
      where: "Bulk prices, D5",
    });
  });
  test("a kind that is not listed has none", () => {
    expect(newestBulkPrice([prices], "Oak")).toBeUndefined();
    expect(newestBulkPrice([], "Amber")).toBeUndefined();
  });
});

describe("picking a product", () => {
  const products = productsOf(tables);
  test("every product of the demo farm can be picked", () => {
    expect(products).toHaveLength(19);
  });
  test.each([
    ["p250", ["P250-LOFT"]],
    ["oak 375", ["B375-OAK"]],
    ["gallon jug amber", ["J128-AM"]],
    ["no such thing", []],
  ])("words %s find it by code, description or label", (typed, codes) => {
    expect(productsMatching(products, typed).map((p) => p.code)).toEqual(codes);
  });
  test("the run offered is the middle one of the runs made, else 1,200", () => {
    expect(usualRun(tables, "G250-AM")).toBe(8400);
    expect(usualRun(tables, "NOTHING")).toBe(1200);
  });
});

describe("building a costing sheet", () => {
  const facts = {
    tables,
    product: "P250-LOFT",
    bottles: 1200,
    sheets: ["Lots"],
  };
  test("says beforehand which sheet and cells it writes, and writes nothing else", () => {
    const { change, writes, sheet } = plannedSheet(facts);
    expect(sheet).toBe("Cost P250-LOFT");
    expect(writes[0]).toMatch(
      /^one new sheet, “Cost P250-LOFT”, cells A1 to [A-Z]+\d+$/,
    );
    expect(change.append).toEqual([]);
    expect(change.addSheets.map((s) => s.name)).toEqual([sheet]);
    expect(change.names.length).toBeGreaterThan(0);
  });
  test("a sheet of that name is not written over", () => {
    expect(() =>
      plannedSheet({ ...facts, sheets: ["cost p250-loft"] }),
    ).toThrow(/exists/);
  });
});

describe("what a person types", () => {
  test("a run size may have its thousands grouped", () => {
    expect(readBottles("1,200")).toBe(1200);
  });
  test.each(["", "0", "12.5", "many", "1,20"])(
    "%j is no run size, and the sentence says so",
    (typed) => {
      expect(() => readBottles(typed)).toThrow(/\S/);
    },
  );
  test.each(["$2.85", "2.85"])("%s is a price a pound", (typed) => {
    expect(readBulkPrice(typed)).toBe(2.85);
  });
  test.each(["0", "-1", "2,85"])("%s is no price a pound", (typed) => {
    expect(() => readBulkPrice(typed)).toThrow(/bulk price/);
  });
});

describe("where the money goes", () => {
  test("shares sum to one, the largest first, what has no figure left out", () => {
    const all = strips([
      { name: "Crew", perBottle: 1 },
      { name: "Syrup", perBottle: 3 },
      { name: "Labels", perBottle: { error: "#VALUE!" } },
      { name: "Heat", perBottle: null },
    ]);
    expect(all.map((s) => [s.name, s.share])).toEqual([
      ["Syrup", 0.75],
      ["Crew", 0.25],
    ]);
  });
  test("many small parts are drawn as one and listed each", () => {
    const parts = Array.from({ length: 12 }, (_, i) => ({
      name: `part ${i}`,
      perBottle: 12 - i,
    }));
    const all = strips(parts);
    const drawn = drawnStrips(all);
    expect(all).toHaveLength(12);
    expect(drawn).toHaveLength(7);
    expect(drawn.reduce((sum, s) => sum + s.share, 0)).toBeCloseTo(1, 12);
  });
});

describe("money in words", () => {
  test("a gap says how many cents and which way", () => {
    // 18.4 ¢: a quarter of a dollar a pound on 0.7343 lb.
    expect(centsApart(4.8579, 4.6743)).toBe("18.4 ¢ more");
    expect(centsApart(4.6743, 4.8579)).toBe("18.4 ¢ less");
    expect(centsApart(1, 1)).toBe("no gap");
    expect(centsApart({ error: "#N/A" }, 1)).toBe("–");
  });
  test("a blank is a dash and an error stays an error", () => {
    expect(perBottle(null)).toBe("–");
    expect(perBottle({ error: "#VALUE!" })).toBe("#VALUE!");
    expect(share(0.3512)).toBe("35.1 %");
    expect(perBottle(-0.5)).toBe("−$0.5000");
  });
});
