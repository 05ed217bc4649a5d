import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { QuoteAnswer } from "../../../src/apps/cli/quote-answer";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { root } from "../../architecture/project-files";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");
const asked = [
  "quote",
  demo,
  "--product",
  "P250-LOFT",
  "--bottles",
  "300,600,1200",
];
const json = async (...more: readonly string[]): Promise<QuoteAnswer> => {
  const { code, said } = await run([...asked, "--json", ...more]);
  expect([code, said.length]).toEqual([0, 1]);
  return JSON.parse(said.join("")) as QuoteAnswer;
};

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "quote-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

test("a quote comes as one object with exactly these figures", async () => {
  const answer = await json("--artwork", "240");
  expect(Object.keys(answer)).toEqual([
    "product",
    "channel",
    "goal",
    "asOf",
    "goalOn",
    "leftovers",
    "estimateFromSeason",
    "tiers",
    "setUpFees",
    "validUntil",
    "findings",
  ]);
  expect(Object.keys(answer.tiers[0] ?? {})).toEqual([
    "bottles",
    "line",
    "perBottle",
    "directPerBottle",
    "price",
    "priceOnFullCost",
    "priceOnDirectCost",
    "contribution",
    "leftovers",
    "belowMinimum",
  ]);
  expect(answer.setUpFees).toEqual([
    { name: "Artwork and plates", amount: 240, perBottle: [0.8, 0.4, 0.2] },
  ]);
});

test("the day asked for moves the prices' day and the day the quote ends", async () => {
  const answer = await json("--as-of", "2026-11-01", "--valid-days", "14");
  expect([answer.asOf, answer.validUntil]).toEqual([
    "2026-11-01",
    "2026-11-15",
  ]);
});

test("a quantity below a least order names the part, its minimum and its price", async () => {
  const { tiers, findings } = await json();
  expect(tiers[0]?.belowMinimum).toEqual([
    expect.objectContaining({
      part: "BTL-250",
      needed: 305,
      minimum: 504,
      priceEach: 1.42,
    }),
  ]);
  expect(findings[0]).toMatchObject({
    where: "Quote for P250-LOFT, 300 bottles",
    found: "BTL-250: 305 needed, the least order is 504 at 1.42 each, 715.68",
  });
});

test("one-time money is earned back after so many bottles and months", async () => {
  const { tiers } = await json("--one-time", "1500", "--forecast", "2400");
  const { contribution, breakEven } = tiers[1] ?? {};
  expect(breakEven?.bottles).toBe(
    Math.ceil(1500 / (contribution ?? Number.NaN)),
  );
  expect(breakEven?.months).toBeCloseTo(
    (1500 / (contribution ?? Number.NaN) / 2400) * 12,
    9,
  );
});

test("as text it tells the customer's part first and ours after it", async () => {
  const { code, said } = await run([
    ...asked,
    "--leftovers",
    "kept",
    "--artwork",
    "240",
  ]);
  expect(code).toBe(0);
  const text = said.join("\n");
  expect(text).toMatch(
    /^Quote for P250-LOFT, of 2026-11-20, valid until 2026-12-20/,
  );
  expect(text).toContain("Artwork and plates, once: 240.00");
  expect(text).toContain("stay ours");
  expect(text.indexOf("Price a bottle")).toBeLessThan(text.indexOf("For us"));
  expect(text.indexOf("For us")).toBeLessThan(text.indexOf("Full cost"));
});

test("a missing bulk price withholds every price and is named", async () => {
  const answer = await json("--as-of", "2020-01-01");
  expect(
    answer.tiers.map(({ price, perBottle }) => [price, perBottle]),
  ).toEqual(Array(3).fill([null, null]));
  expect(answer.findings[0]?.found).toContain("needs");
});

test("the customer's file holds one page of figures: no formula, no name, no cost", async () => {
  const ours = path.join(folder, "ours.xlsx");
  const theirs = path.join(folder, "theirs.xlsx");
  const { code } = await run([
    ...asked,
    "--artwork",
    "240",
    "--out",
    ours,
    "--page",
    theirs,
  ]);
  expect(code).toBe(0);
  const whole = (await readXlsx(readFileSync(ours), "ours.xlsx")).workbook;
  expect(whole.sheets.slice(0, 2).map(({ name }) => name)).toEqual([
    "Quote P250-LOFT",
    "Quote cost P250-LOFT",
  ]);
  expect(whole.sheets[0]?.print?.fit).toBe("one page");
  const page = (await readXlsx(readFileSync(theirs), "theirs.xlsx")).workbook;
  expect(page.sheets.map(({ name }) => name)).toEqual(["Quote P250-LOFT"]);
  expect(page.names).toEqual([]);
  const cells = page.sheets[0]?.cells ?? [];
  expect(cells.filter(({ formula }) => formula !== undefined)).toEqual([]);
  const values = cells.map(({ value }) => value);
  expect(values).toEqual(expect.arrayContaining([10.82, 240, "Oatloft"]));
  const cost = (await json()).tiers.flatMap(
    ({ perBottle, directPerBottle }) => [perBottle, directPerBottle],
  );
  for (const figure of cost) expect(values).not.toContain(figure);
});

test.each([
  [["--product", "G999", "--bottles", "10"], 'There is no product "G999"'],
  [["--bottles", "10"], "Needs --product"],
  [["--product", "P250-LOFT"], "Needs --bottles"],
  [
    ["--product", "P250-LOFT", "--bottles", "600,600"],
    "The quantity 600 stands twice",
  ],
  [
    ["--product", "P250-LOFT", "--bottles", "600,0"],
    "--bottles: 0 is not a whole number of bottles",
  ],
  [
    ["--product", "P250-LOFT", "--bottles", "1,2,3,4,5,6,7"],
    "7 quantities are more than the 6",
  ],
  [
    ["--product", "P250-LOFT", "--bottles", "600", "--leftovers", "thrown"],
    '--leftovers: "thrown" is neither charged nor kept',
  ],
  [
    ["--product", "P250-LOFT", "--bottles", "600", "--channel", "Moon"],
    'There is no channel "Moon" that sells by the bottle',
  ],
  [
    ["--product", "P250-LOFT", "--bottles", "600", "--artwork", "-1"],
    "--artwork",
  ],
  [
    ["--product", "P250-LOFT", "--bottles", "600", "--forecast", "100"],
    "--per-year and --forecast are for --one-time",
  ],
  [
    [
      "--product",
      "P250-LOFT",
      "--bottles",
      "600",
      "--one-time",
      "9",
      "--per-year",
      "100",
    ],
    "--per-year needs --forecast",
  ],
])(
  "%j is refused in a sentence, and nothing is written",
  async (options, sentence) => {
    const out = path.join(folder, "none.xlsx");
    const { code, said, complained } = await run([
      "quote",
      demo,
      ...options,
      "--out",
      out,
    ]);
    expect([code, said]).toEqual([2, []]);
    expect(complained.join("")).toContain(sentence);
    expect(existsSync(out)).toBe(false);
    expect(readdirSync(folder)).toEqual([]);
  },
);
