import { gridFunctions } from "../../src/apps/grid-functions";
import type { CellPlace } from "../../src/hosts/host";
import {
  openHeadless,
  type HeadlessHost,
} from "../../src/hosts/grid/open-headless";
import { costingSheet } from "../../src/sheets/costing/costing-sheet";
import { costingNames, type CostingKey } from "../../src/sheets/costing/names";
import { farmBook } from "../../src/sheets/farm-book";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { bookTablesFromCsv } from "../../src/book/from-csv";
import { demoFolder, demoTables, replacing } from "../book/csv-folder";
import { demoWorkbook } from "../support/demo-workbook";

const PRODUCT = "P250-LOFT";

async function figures(host: HeadlessHost) {
  const places = costingNames(await host.readNames(), PRODUCT);
  return async (key: CostingKey): Promise<Stored> => {
    const place = places[key];
    if (!place) throw new Error(`the sheet names no ${key}`);
    return (await host.readCell(place)).value;
  };
}

/** The cell of a table by its row's first column, as a person finds it. */
async function tableCell(
  host: HeadlessHost,
  table: string,
  row: string,
  heading: string,
): Promise<CellPlace> {
  const found = (await host.readTables()).find(({ name }) => name === table);
  const r = found?.rows.findIndex((cells) => cells[0] === row) ?? -1;
  const c = found?.headings.indexOf(heading) ?? -1;
  if (!found || r < 0 || c < 0)
    throw new Error(`no ${table} ${row} ${heading}`);
  return {
    sheet: found.sheet,
    row: found.row + 1 + r,
    column: found.column + c,
  };
}

async function withSheet(
  work: (
    host: HeadlessHost,
    figure: (key: CostingKey) => Promise<Stored>,
  ) => Promise<void>,
  workbook: Workbook = demoWorkbook([PRODUCT], 1200),
): Promise<void> {
  const host = await openHeadless(workbook, gridFunctions);
  try {
    await work(host, await figures(host));
  } finally {
    host.dispose();
  }
}

test("bulk up 25 ¢ raises the bottle by 25 ¢ times its pounds, purge included, and the goal price with it", () =>
  withSheet(async (host, figure) => {
    const before = (await figure("full_replacement")) as number;
    const pounds = (await figure("lb_per_bottle")) as number;
    await host.setCell(
      await tableCell(host, "BulkPrices", "Amber", "Price per lb"),
      2.85,
    );
    const after = (await figure("full_replacement")) as number;
    // 0.7358 lb × $0.25 = 18.4 ¢ in the bottle and 11 lb × $0.25 ÷ 1,200 = 0.23 ¢ of purge.
    expect(after - before).toBeCloseTo(0.25 * (pounds + 11 / 1200), 9);
    expect(pounds * 0.25).toBeCloseTo(0.184, 3);
    expect(await figure("bulk_price")).toBe(2.85);
    // What was paid does not move with today's price.
    expect(await figure("full_average")).toBeCloseTo(6.118956, 6);
  }));

test("a dollar more for the packers raises the crew's cost by its loaded hours", () =>
  withSheet(async (host, figure) => {
    const before = (await figure("direct_replacement")) as number;
    await host.setCell(
      await tableCell(host, "Wages", "Capper / packer", "Hourly"),
      19.5,
    );
    // Two packers × $1 × 1.18 × (55/60 h + 1,200/720 h) over 1,200 bottles.
    expect(
      ((await figure("direct_replacement")) as number) - before,
    ).toBeCloseTo((2 * 1.18 * (55 / 60 + 1200 / 720)) / 1200, 9);
  }));

test("9,000 bottles move to the big line, and 1,200 asked onto the big line cost more", () =>
  withSheet(async (host, figure) => {
    const places = costingNames(await host.readNames(), PRODUCT);
    const small = (await figure("direct_replacement")) as number;
    if (places.line) await host.setCell(places.line, "Big line");
    // Scenario: the small pair saves $426.14 of line cost at 1,200; heat and power differ by cents.
    expect(
      ((await figure("direct_replacement")) as number) - small,
    ).toBeCloseTo(426.14 / 1200, 2);
    if (places.line) await host.setCell(places.line, null);
    if (places.bottles) await host.setCell(places.bottles, 9000);
    expect(await figure("chosen_line")).toBe("Big line");
    expect(await figure("limited_by")).toBe("heads");
    expect(await figure("crossover_text")).toBe(
      "Small pair: cheaper below 6,853 bottles; ",
    );
  }));

test("a cap without a price withholds every total and is named", () => {
  const { tables } = bookTablesFromCsv(
    demoFolder({
      "packaging_price_breaks.csv": (text) =>
        text.replace(/^CAP-28,.*\r?\n/gm, ""),
    }),
  );
  const book = farmBook(tables);
  const { sheet, names } = costingSheet({
    contents: tables,
    product: PRODUCT,
    bottles: 1200,
    existingSheets: [],
  });
  return withSheet(
    async (host, figure) => {
      expect(await figure("missing")).toBe("a price for CAP-28; ");
      for (const key of [
        "full_replacement",
        "full_average",
        "direct_oldest",
        "case_replacement",
      ] as const)
        expect(await figure(key)).toEqual({ error: "#VALUE!" });
      const place = costingNames(await host.readNames(), PRODUCT).parts;
      if (!place) throw new Error("the sheet names no parts");
      const refused = await host.readCell({
        ...place,
        row: place.row + 2,
        column: 1,
      });
      expect(refused.refusal).toContain("needs CAP-28");
    },
    { ...book, sheets: [...book.sheets, sheet], names },
  );
});

test("a run larger than the stock keeps today's cost and withholds what was paid", () =>
  withSheet(async (host, figure) => {
    const places = costingNames(await host.readNames(), PRODUCT);
    if (places.bottles) await host.setCell(places.bottles, 20_000);
    expect(typeof (await figure("full_replacement"))).toBe("number");
    expect(typeof (await figure("full_oldest"))).toBe("object");
    const checks = places.checks;
    const told =
      checks &&
      (await host.readArea(
        checks.sheet,
        checks.row,
        checks.column,
        checks.rows,
        2,
      ));
    // 20,000 × 0.7358 lb + 60 lb purge − 9,809 lb of Amber left.
    expect(JSON.stringify(told)).toMatch(/short by 4,96\d lb of Amber/);
  }));

test("a costing sheet added to an open book is worked out at once, and taken back as a whole", async () => {
  const host = await openHeadless(farmBook(demoTables()), gridFunctions);
  try {
    const before = await host.sheetNames();
    const { sheet, names } = costingSheet({
      contents: await host.readTables(),
      product: PRODUCT,
      bottles: 1200,
      existingSheets: before,
    });
    await host.apply({
      says: "the sheet",
      append: [],
      addSheets: [sheet],
      names,
    });
    expect(await (await figures(host))("full_replacement")).toBeCloseTo(
      6.085456,
      6,
    );
    expect(await host.undo()).toBe("the sheet");
    expect(await host.sheetNames()).toEqual(before);
    expect(await host.readNames()).toEqual([]);
  } finally {
    host.dispose();
  }
});

test("a product the book does not have and a sheet that exists are refused in a sentence", () => {
  const ask = (product: string, existingSheets: readonly string[]) => () =>
    costingSheet({
      contents: demoTables(),
      product,
      bottles: 100,
      existingSheets,
    });
  expect(ask("G999", [])).toThrow('There is no product "G999" in Products');
  expect(ask(PRODUCT, ["cost p250-loft"])).toThrow(
    'The sheet "cost p250-loft" exists',
  );
});

test("lines and rows in another order change nothing", () => {
  const { tables } = bookTablesFromCsv(
    demoFolder({
      "sku_materials.csv": reversed,
      "packaging_price_breaks.csv": reversed,
      "bulk_lots.csv": reversed,
      "yearly_overheads.csv": reversed,
      "wages.csv": replacing("Line lead,26,18,30.68\n", ""),
    }),
  );
  const book = farmBook(tables);
  const { sheet, names } = costingSheet({
    contents: tables,
    product: PRODUCT,
    bottles: 1200,
    existingSheets: [],
  });
  return withSheet(
    async (_, figure) => {
      expect(await figure("full_replacement")).toBeCloseTo(6.085456, 6);
      expect(await figure("full_oldest")).toBeCloseTo(6.094181, 6);
    },
    { ...book, sheets: [...book.sheets, sheet], names },
  );
});

function reversed(text: string): string {
  const [heading = "", ...rows] = text.trimEnd().split(/\r?\n/);
  return [heading, ...rows.reverse()].join("\n");
}
