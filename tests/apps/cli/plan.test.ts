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
import type { PlanAnswer } from "../../../src/apps/cli/plan-answer";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { runPlanNames } from "../../../src/sheets/run-plan/names";
import { root } from "../../architecture/project-files";
import { barePlanSettings } from "../../book/csv-folder";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");
const asked = [
  "--product",
  "P250-LOFT",
  "--bottles",
  "1,200",
  "--start",
  "2026-11-26T07:00",
];

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "plan-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

test("a run is answered as one object, with these figures among others", async () => {
  const { code, said } = await run(["plan", demo, ...asked, "--json"]);
  expect([code, said.length]).toEqual([0, 1]);
  const answer = JSON.parse(said.join("")) as PlanAnswer;
  expect(answer).toMatchObject({
    product: "P250-LOFT",
    bottles: 1200,
    asOf: "2026-11-20",
    line: { name: "Small pair", ratePerHour: 720 },
    crossoverBottles: 6853,
    start: "2026-11-26T07:00",
    finish: "2026-11-26T09:50",
    kettleFills: 1,
    pallets: 2,
    lotCode: "26330-SP-0700",
    bestBy: "2028-11-26",
  });
  expect(answer.lines.map(({ name }) => name)).toEqual([
    "Small A",
    "Small pair",
    "Big line",
  ]);
  expect(answer.lots).toEqual([
    { lot: "26-03", lb: answer.syrupLb, leftLb: expect.any(Number) },
  ]);
  expect(
    answer.materials.find(({ part }) => part === "LBL-PL-F"),
  ).toMatchObject({
    need: 1250,
    buy: 1250,
    short: 1250,
    orderBy: "2026-11-17",
  });
  expect(answer.findings.length).toBeGreaterThan(0);
});

test("a farm that has not entered them gets no weights, no best-by and no break, and is told which settings are missing", async () => {
  cpSync(demo, folder, { recursive: true });
  const settings = path.join(folder, "farm_settings.csv");
  writeFileSync(settings, barePlanSettings()(readFileSync(settings, "utf8")));
  const { said } = await run(["plan", folder, ...asked, "--json"]);
  const answer = JSON.parse(said.join("")) as PlanAnswer;
  expect(answer).toMatchObject({
    finish: "2026-11-26T09:35",
    bestBy: null,
    load: { caseLb: null, allLb: null },
  });
  const told = answer.findings.map(({ found }) => found).join("; ");
  expect(told).toContain("“Empty case” and “Empty pallet” in Settings");
  expect(told).toContain("“Best-by months” in Settings");
});

test("at a terminal the plan is read from the top: line, hours, kettle with its caution, lots, materials", async () => {
  const { said } = await run(["plan", demo, ...asked]);
  const text = said.join("\n");
  expect(text).toContain(
    "Line: Small pair, 720 an hour, limited by hand cap and invert",
  );
  expect(text).toContain(
    "Saves $426.14 against Big line; even at 6,853 bottles, 572 cases",
  );
  expect(text).toContain("Finish: 2026-11-26 09:50, begun 2026-11-26 07:00");
  expect(text).toContain("Syrup at filling temperature scalds at once.");
  expect(text).toMatch(/LBL-PL-F +1,250 +0 +1,250 +1,250 +2026-11-17/);
});

test("the workbook written holds the plan, worked out, in front of the book", async () => {
  const out = path.join(folder, "plan.xlsx");
  expect((await run(["plan", demo, ...asked, "--out", out])).code).toBe(0);
  const { workbook } = await readXlsx(readFileSync(out), "plan.xlsx");
  expect(workbook.sheets[0]?.name).toBe("Run plan P250-LOFT");
  expect(workbook.sheets[0]?.print).toMatchObject({ fit: "one page" });
  const place = runPlanNames(workbook.names, "P250-LOFT").saved;
  expect(
    workbook.sheets[0]?.cells.find(
      ({ row, column }) => row === place?.row && column === place.column,
    )?.value,
  ).toBeCloseTo(426.14, 2);
});

test("prices of another day are asked for by --as-of, and a day before the first price leaves the line open", async () => {
  const { said } = await run([
    "plan",
    demo,
    ...asked,
    "--as-of",
    "2020-01-01",
    "--json",
  ]);
  const answer = JSON.parse(said.join("")) as PlanAnswer;
  expect([answer.asOf, answer.line, answer.crewHours]).toEqual([
    "2020-01-01",
    null,
    null,
  ]);
  expect(answer.findings[0]?.found).toContain("a bulk price for Amber");
});

test.each([
  [["--product", "P250-LOFT"], /^Needs --bottles\./],
  [["--bottles", "1200"], /^Needs --product\./],
  [["--product", "P250-LOFT", "--bottles", "1.5"], /^--bottles: 1\.5 is not/],
  [
    ["--product", "P250-LOFT", "--bottles", "1200", "--start", "tomorrow"],
    /^--start: "tomorrow" is not a day and a time/,
  ],
  [
    ["--product", "P250-LOFT", "--bottles", "1200", "--as-of", "11/12/2026"],
    /^--as-of: .*could be/,
  ],
  [
    ["--product", "P250-LOFT", "--bottles", "1200", "--line", "Line 9"],
    /^--line: there is no line "Line 9"; the book has Small A, Small pair, Big line\.$/,
  ],
  [["--product", "P999", "--bottles", "10"], /^There is no product "P999"/],
])(
  "%j is refused in one sentence, and nothing is written",
  async (args, says) => {
    const out = path.join(folder, "never.xlsx");
    const { code, said, complained } = await run([
      "plan",
      demo,
      ...args,
      "--out",
      out,
    ]);
    expect([code, said, complained.length]).toEqual([2, [], 1]);
    expect(complained[0]).toMatch(says);
    expect(readdirSync(folder)).toEqual([]);
  },
);
