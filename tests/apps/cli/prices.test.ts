import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { CostAnswer } from "../../../src/apps/cli/cost-answer";
import type { PricesAnswer } from "../../../src/apps/cli/prices-answer";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { root } from "../../architecture/project-files";
import { listRows } from "../../support/price-book";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");

const answerOf = async (...args: readonly string[]): Promise<PricesAnswer> => {
  const { code, said } = await run(["prices", demo, "--json", ...args]);
  expect([code, said.length]).toEqual([0, 1]);
  return JSON.parse(said.join("")) as PricesAnswer;
};

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "prices-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

test("the list speaks of the book's newest day and of bulk on that day", async () => {
  const { asOf, bulkPrices, products } = await answerOf();
  // Source: sample-workbooks/fernkettle-hollow/farm_settings.csv, its count date and replacement prices.
  expect([asOf, bulkPrices]).toEqual([
    "2026-11-20",
    { Amber: 2.6, Dark: 2.52 },
  ]);
  expect(products).toHaveLength(19);
  expect(Object.keys(products[0] ?? {})).toEqual([
    "product",
    "bottles",
    "line",
    "cost",
    "direct",
    "needs",
    "channels",
  ]);
});

test("a product costs on the list what it costs by itself at its usual run", async () => {
  const { products } = await answerOf();
  for (const product of ["P250-LOFT", "J128-AM", "B375-OAK"]) {
    const listed = products.find((p) => p.product === product);
    const { said } = await run(["cost", demo, "--product", product, "--json"]);
    const alone = JSON.parse(said.join("")) as CostAnswer;
    expect(listed?.bottles).toBe(alone.bottles);
    expect(listed?.cost).toEqual(alone.costPerBottle);
    expect(listed?.direct).toEqual(alone.directPerBottle);
  }
});

test("findings speak of products together, name their channel and say what to do", async () => {
  const { findings } = await answerOf();
  const own = findings.filter(({ where }) => where.startsWith("Price list"));
  expect(own.length).toBeGreaterThan(0);
  expect(own.length).toBeLessThan(12);
  expect(own).toContainEqual(
    expect.objectContaining({
      where:
        "Price list, G750-AM, N050-AM, J128-AM and I250-SMK in Distributor",
      found: "sold below cost",
    }),
  );
});

test("before the prices of spring 2026 no channel has one, and another day's bulk holds", async () => {
  const { asOf, products } = await answerOf("--as-of", "2026-04-30");
  expect(asOf).toBe("2026-04-30");
  expect(products.flatMap(({ channels }) => channels)).toEqual([]);
});

test("a date that is none, and a share that could be either, are refused by their option", async () => {
  const day = await run(["prices", demo, "--as-of", "20.11.2026"]);
  expect([day.code, day.said]).toEqual([2, []]);
  expect(day.complained.join()).toMatch(/^--as-of: /);
  const share = await run(["prices", demo, "--moved", "5"]);
  expect(share.complained.join()).toMatch(/^--moved: 5 reads as 500 %/);
});

test("against the book as it was, a dearer glass shows in every product that is filled in it", async () => {
  const dearer = path.join(folder, "dearer");
  const { cpSync, writeFileSync } = await import("node:fs");
  cpSync(demo, dearer, { recursive: true });
  const file = path.join(dearer, "packaging_price_breaks.csv");
  const text = readFileSync(file, "utf8");
  expect(text).toContain("BTL-250,504,1.42");
  // Ten cents more at both breaks a run of 1,500 or 12,000 could take.
  writeFileSync(
    file,
    text.replace(
      /^(BTL-250,\d+),([\d.]+)$/gm,
      (_, head: string, price: string) =>
        `${head},${(Number(price) + 0.1).toFixed(3)}`,
    ),
  );
  const { code, said } = await run([
    "prices",
    dearer,
    "--json",
    "--against",
    demo,
    "--moved",
    "1 %",
  ]);
  expect(code).toBe(0);
  const { moved = [] } = JSON.parse(said.join("")) as PricesAnswer;
  const over = moved.filter(({ over: is }) => is).map(({ product }) => product);
  expect(over).toContain("P250-LOFT");
  expect(over).not.toContain("J128-AM");
  const loft = moved.find(({ product }) => product === "P250-LOFT");
  // 1,500 ÷ 0.985 = 1,522.8, in cartons of 12 1,524 bottles: 1,524 × 0.10 ÷ 1,500 = 0.1016 more.
  expect((loft?.now ?? 0) - (loft?.before ?? 0)).toBeCloseTo(0.1016, 4);
});

test("at a terminal those under their goal come first, the furthest first", async () => {
  const { said } = await run(["prices", demo]);
  expect(said[0]).toBe("Price list on 2026-11-20");
  expect(said.find((line) => line.startsWith("Under their goal"))).toMatch(
    /^Under their goal: 19 of 19: N050-AM, J128-AM, /,
  );
});

test("the workbook it writes holds the same figures", async () => {
  const out = path.join(folder, "prices.xlsx");
  expect((await run(["prices", demo, "--out", out])).code).toBe(0);
  const { workbook } = await readXlsx(readFileSync(out), "prices.xlsx");
  const { products } = await answerOf();
  const rows = listRows(workbook);
  expect(rows.map((row) => row["product"])).toEqual(
    products.map(({ product }) => product),
  );
  for (const [i, { cost }] of products.entries())
    if (cost.replacement !== null)
      expect(rows[i]?.["full"]).toBeCloseTo(cost.replacement, 9);
}, 240_000);
