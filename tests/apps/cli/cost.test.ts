import {
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { CostAnswer } from "../../../src/apps/cli/cost-answer";
import { root } from "../../architecture/project-files";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");
const asked = ["--product", "P250-LOFT", "--bottles", "1200"];

const jsonOf = async (place: string): Promise<CostAnswer> => {
  const { code, said } = await run(["cost", place, ...asked, "--json"]);
  expect([code, said.length]).toEqual([0, 1]);
  return JSON.parse(said.join("")) as CostAnswer;
};

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "cost-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

describe("1,200 bottles of the inn's 250 mL label", () => {
  let answer: CostAnswer;
  beforeAll(async () => {
    answer = await jsonOf(demo);
  });

  test("come as one object with exactly these figures", () => {
    const keysOf = (thing: object | null | undefined): readonly string[] =>
      Object.keys(thing ?? {});
    expect(keysOf(answer)).toEqual([
      "product",
      "bottles",
      "line",
      "syrup",
      "parts",
      "directPerBottle",
      "overheadPerBottle",
      "costPerBottle",
      "estimateFromSeason",
      "perCase",
      "prices",
      "findings",
    ]);
    expect(keysOf(answer.line)).toEqual([
      "name",
      "ratePerHour",
      "limitedBy",
      "crossoverBottles",
      "otherLine",
    ]);
    expect(keysOf(answer.syrup)).toEqual([
      "lbPerBottle",
      "replacement",
      "average",
      "oldestFirst",
    ]);
    expect(keysOf(answer.prices[0])).toEqual([
      "channel",
      "price",
      "margin",
      "goal",
      "markup",
      "marginAfterChannelCosts",
      "marginOnDirectCost",
      "priceForGoal",
      "underGoal",
    ]);
  });

  // Source: the worked example of the job, by hand from the demo farm's records.
  test("are made on the small pair, which the hand capping limits", () => {
    expect(answer.line).toEqual({
      name: "Small pair",
      ratePerHour: 720,
      limitedBy: "hand cap and invert",
      crossoverBottles: 6853,
      otherLine: "Big line",
    });
    expect(answer.directPerBottle.replacement).toBeCloseTo(4.7175, 4);
  });

  test("cost the sum of their parts, a case as many bottles as it holds", () => {
    const parts = answer.parts.map(({ perBottle }) => perBottle ?? Number.NaN);
    const sum = parts.reduce((total, part) => total + part, 0);
    const full = answer.costPerBottle.replacement ?? Number.NaN;
    expect(sum).toBeCloseTo(full, 12);
    expect(
      (answer.directPerBottle.replacement ?? 0) +
        (answer.overheadPerBottle ?? 0),
    ).toBeCloseTo(full, 12);
    // Source: sample-workbooks/fernkettle-hollow/skus.csv, 12 bottles to the case.
    expect(answer.perCase).toBeCloseTo(12 * full, 9);
  });

  test("keep what the price leaves after the cost", () => {
    const [charged, ...more] = answer.prices.filter((p) => p.price !== null);
    expect([charged?.channel, more]).toEqual(["Private label", []]);
    const full = answer.costPerBottle.replacement ?? Number.NaN;
    expect(charged?.price).toBe(7.2);
    expect(charged?.margin).toBeCloseTo(1 - full / 7.2, 12);
    expect(charged?.markup).toBeCloseTo(7.2 / full - 1, 12);
    expect(charged?.underGoal).toBe(true);
  });
});

test("a folder, the book made of it and its costing workbook give the same answer", async () => {
  const book = path.join(folder, "farm.xlsx");
  const costing = path.join(folder, "costing.xlsx");
  expect((await run(["book", demo, "--out", book])).code).toBe(0);
  expect((await run(["cost", demo, ...asked, "--out", costing])).code).toBe(0);
  const [fromFolder, fromBook, fromCosting] = await Promise.all(
    [demo, book, costing].map(jsonOf),
  );
  // A finding stands where the person can look it up, which differs; what it says does not.
  expect(withoutPlaces(fromBook)).toEqual(withoutPlaces(fromFolder));
  expect(withoutPlaces(fromCosting)).toEqual(withoutPlaces(fromFolder));
  expect(fromFolder?.findings.map(({ where }) => where).join()).toContain(
    "bulk_lots.csv line ",
  );
  expect(fromBook?.findings.map(({ where }) => where).join()).toContain(
    "Lots row ",
  );
});

const withoutPlaces = (answer: CostAnswer | undefined) => ({
  ...answer,
  findings: answer?.findings.map(({ where: _, ...said }) => said),
});

test("without a product every product is costed, and no finding is lost or told twice", async () => {
  const { code, said } = await run(["cost", demo, "--json"]);
  expect(code).toBe(0);
  const { products, findings } = JSON.parse(said.join("")) as {
    readonly products: readonly CostAnswer[];
    readonly findings: CostAnswer["findings"];
  };
  expect(products).toHaveLength(19);
  expect(new Set(findings.map((f) => JSON.stringify(f))).size).toBe(
    findings.length,
  );
  expect(products.map((p) => p.costPerBottle.replacement)).not.toContain(null);
});

/** The demo farm without a replacement price for Dark, which is also what lies in its barrels. */
function withoutDark(): string {
  const farm = path.join(folder, "farm");
  cpSync(demo, farm, { recursive: true });
  const settings = path.join(farm, "farm_settings.csv");
  const lines = readFileSync(settings, "utf8").split("\n");
  const kept = lines.filter(
    (line) => !line.includes("Replacement price, Dark"),
  );
  expect(kept).toHaveLength(lines.length - 1);
  writeFileSync(settings, kept.join("\n"));
  return farm;
}

const ofDark = ["G250-DK", "G375-DK", "J32-DK", "J64-DK"];
const ofOak = ["B250-OAK", "B375-OAK"];

test("without a bulk price for Dark, its bottles and the oak's are withheld, and only that is named", async () => {
  const { said } = await run(["cost", withoutDark(), "--json"]);
  const { products, findings } = JSON.parse(said.join("")) as {
    readonly products: readonly CostAnswer[];
    readonly findings: CostAnswer["findings"];
  };
  const withheld = products
    .filter((p) => p.costPerBottle.replacement === null)
    .map(({ product }) => product);
  expect(withheld).toEqual(expect.arrayContaining([...ofDark, ...ofOak]));
  for (const product of withheld)
    expect(
      findings
        .filter(({ where }) => where === `Costing of ${product}`)
        .map(({ found }) => found),
    ).toEqual(["needs a bulk price for Dark"]);
});

test("at a terminal every product has its line, and a withheld total its reason", async () => {
  const { said } = await run(["cost", withoutDark()]);
  expect(
    said.filter((line) => / withheld /.test(line)).length,
  ).toBeGreaterThanOrEqual(ofDark.length + ofOak.length);
  expect(
    said.filter((line) => /^- Costing of B250-OAK: needs/.test(line)),
  ).toHaveLength(1);
  expect(said.find((line) => line.startsWith("P250-LOFT"))).toMatch(
    /Small pair +1 of 1 prices$/,
  );
});

test("at a terminal a channel without a price has none, and columns stay apart", async () => {
  const { said } = await run(["cost", demo, ...asked]);
  const channel = (name: string): string | undefined =>
    said.find((line) => line.startsWith(name));
  expect(channel("Farm counter")).toMatch(
    /^Farm counter +– +– +58\.0 % +– +\d+\.99$/,
  );
  expect(channel("Private label")).toMatch(
    /^Private label +7\.20 +[\d.]+ % +32\.0 % +[\d.]+ % +\d+\.99 +under its goal$/,
  );
});

test("a run that is no whole number of bottles is refused by its option", async () => {
  for (const bottles of ["1.5", "0", "=-5", "many", "1,2"]) {
    const option = bottles.startsWith("=")
      ? [`--bottles${bottles}`]
      : ["--bottles", bottles];
    const { code, said, complained } = await run(["cost", demo, ...option]);
    expect([code, said, complained.length]).toEqual([2, [], 1]);
    expect(complained[0]).toMatch(/^--bottles: /);
  }
});

test("a thousand may be written with its comma", async () => {
  const args = ["--product", "P250-LOFT", "--bottles", "1,200", "--json"];
  const { said } = await run(["cost", demo, ...args]);
  expect((JSON.parse(said.join("")) as CostAnswer).bottles).toBe(1200);
});

test("an unknown product is refused with those the book has, before anything is written", async () => {
  const out = path.join(folder, "never.xlsx");
  const { code, said, complained } = await run([
    "cost",
    demo,
    "--product",
    "P999",
    "--out",
    out,
  ]);
  expect([code, said]).toEqual([2, []]);
  expect(complained).toEqual([
    expect.stringMatching(
      /^There is no product "P999"; the book has G250-AM, /,
    ),
  ]);
  expect(readdirSync(folder)).toEqual([]);
});
