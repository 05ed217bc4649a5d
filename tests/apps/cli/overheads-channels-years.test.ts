import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { ChannelsJson } from "../../../src/apps/cli/channels-answer";
import type { YearsJson } from "../../../src/apps/cli/years-answer";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { root } from "../../architecture/project-files";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "year-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

test.each([
  [
    ["overheads", demo, "--run", "RUN-99"],
    /^There is no run "RUN-99" in 2026; /,
  ],
  [
    ["overheads", demo, "--bills", "tea"],
    /^No bill of 2026 is called or shared by "tea"; /,
  ],
  [["overheads", demo, "--channel", "Moon"], /^There is no channel "Moon"; /],
  [["overheads"], /^Needs a farm book/],
  [["channels", demo], /^Needs --product SKU/],
  [["channels", demo, "--product", "P999"], /^There is no product "P999"; /],
  [
    ["channels", demo, "--product", "G250-AM", "--orders", "1,x"],
    /^--orders: needs whole bottles/,
  ],
  [
    ["channels", demo, "--product", "G250-AM", "--mailer=-1"],
    /^--mailer: needs a price/,
  ],
  [["years", demo, "--product", "P999"], /^There is no product "P999"; /],
  [["years", demo, "--season", "26"], /^--season: needs a year/],
  [
    ["years", demo, "--season", "2026", "--against", "2026"],
    /^against: 2026 is the season itself/,
  ],
] as const)("%j is refused in one sentence", async (args, sentence) => {
  const { code, said, complained } = await run(args);
  expect([code, said, complained.length]).toEqual([2, [], 1]);
  expect(complained[0]).toMatch(sentence);
});

test("a seasons' workbook of all products is refused before anything is read or written", async () => {
  const out = path.join(folder, "never.xlsx");
  const { code, complained } = await run(["years", demo, "--out", out]);
  expect(code).toBe(2);
  expect(complained[0]).toMatch(/^--out needs --product/);
  expect(readdirSync(folder)).toEqual([]);
});

test("seasons can be turned round, and every change with them", async () => {
  const answer = async (...more: readonly string[]): Promise<YearsJson> => {
    const { said } = await run([
      "years",
      demo,
      "--product",
      "G250-AM",
      ...more,
      "--json",
    ]);
    return JSON.parse(said.join("")) as YearsJson;
  };
  const there = await answer();
  const back = await answer("--season", "2025", "--against", "2026");
  expect(back.products[0]?.change).toBeCloseTo(
    -(there.products[0]?.change ?? NaN),
    12,
  );
});

test("a product that was not run in one season says so instead of a change", async () => {
  const { said } = await run(["years", demo]);
  expect(said).toContain("J08-AM: needs a run of J08-AM in 2026");
});

test("larger orders leave more where a bottle earns its cost, and 2.00 for a mailer comes off each once", async () => {
  const orders = async (...more: readonly string[]) => {
    const { said } = await run([
      "channels",
      demo,
      "--product",
      "G250-AM",
      "--orders",
      "1,2,3,12",
      ...more,
      "--json",
    ]);
    const answer = JSON.parse(said.join("")) as ChannelsJson;
    return (
      answer.channels
        .find(({ channel }) => channel === "Own web shop")
        ?.orders.map(({ left }) => left) ?? []
    );
  };
  const without = await orders();
  expect(without).toHaveLength(4);
  expect(without).toEqual([...without].sort((a, b) => a - b));
  const withMailer = await orders("--mailer", "2");
  withMailer.forEach((left, i) =>
    expect((without[i] ?? NaN) - left).toBeCloseTo(2, 9),
  );
});

test("the workbook of a product's channels holds them and its costing, on the day asked for", async () => {
  const out = path.join(folder, "channels.xlsx");
  const { code } = await run([
    "channels",
    demo,
    "--product",
    "G250-AM",
    "--as-of",
    "2026-06-30",
    "--out",
    out,
  ]);
  expect([code, existsSync(out)]).toEqual([0, true]);
  const { workbook } = await readXlsx(readFileSync(out), "channels.xlsx");
  expect(workbook.sheets.slice(0, 2).map(({ name }) => name)).toEqual([
    "Channels G250-AM",
    "Cost G250-AM",
  ]);
  const costing = workbook.sheets[1];
  const label = costing?.cells.find(({ value }) => value === "Prices as of");
  const day = costing?.cells.find(
    ({ row, column }) =>
      row === label?.row && column === (label?.column ?? 0) + 1,
  );
  expect(day?.value).toBe(46203); // 30 June 2026
});

test("findings come with the money at stake, the most first", async () => {
  const { said } = await run(["findings", demo, "--json"]);
  const { findings } = JSON.parse(said.join("")) as {
    readonly findings: readonly { readonly atStake?: number }[];
  };
  expect(findings.length).toBeGreaterThan(9);
  const stakes = findings.flatMap(({ atStake }) => atStake ?? []);
  expect(stakes).toEqual([...stakes].sort((a, b) => b - a));
});
