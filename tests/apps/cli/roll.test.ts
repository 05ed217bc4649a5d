import {
  existsSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { CarriedBalance } from "../../../src/book/season-roll/opening";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import { compareWorkbooks } from "../../../src/sheets/compare/compare-workbooks";
import { root } from "../../architecture/project-files";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");
let folder: string;
let next: string;
let answer: {
  readonly closedOn: string;
  readonly balances: readonly CarriedBalance[];
  readonly findings: readonly { readonly found: string }[];
};

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), "roll-"));
  next = path.join(folder, "2027.xlsx");
  const { code, said, complained } = await run([
    "roll",
    demo,
    "--season",
    "2027",
    "--out",
    next,
    "--json",
  ]);
  expect([code, complained, said.length]).toEqual([0, [], 1]);
  answer = JSON.parse(said.join("")) as typeof answer;
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true }));

const workbook = async (file: string) =>
  (await readXlsx(new Uint8Array(readFileSync(file)), "book.xlsx")).workbook;

test("the new book opens with what the old one closed with, read back from the written file", () => {
  expect(answer.closedOn).toBe("2026-12-31");
  expect(answer.balances.length).toBeGreaterThan(40);
  for (const { closing, opening } of answer.balances)
    expect(opening).toBeCloseTo(closing, 5);
});

test("the book's own formulas give the opening pounds", async () => {
  // Source: stock_count.csv, book weight of each lot.
  const lots = (await workbook(next)).sheets.find(
    ({ name }) => name === "Lots",
  );
  const at = (heading: string): number =>
    lots?.cells.find(({ row, value }) => row === 0 && value === heading)
      ?.column ?? -1;
  const rowOf = lots?.cells.find(
    ({ column, value }) => column === at("Lot") && value === "26-03",
  )?.row;
  const left = lots?.cells.find(
    ({ row, column }) => row === rowOf && column === at("Left lb"),
  );
  expect(left?.formula).toBeDefined();
  expect(left?.value).toBeCloseTo(4681, 6);
  const opening = (await workbook(next)).sheets.find(
    ({ name }) => name === "Opening 2027",
  );
  const differences = opening?.cells.filter(
    ({ column, formula }) => column === 5 && formula !== undefined,
  );
  expect(differences).toHaveLength(answer.balances.length);
  for (const { value } of differences ?? []) expect(value).toBe(0);
});

test("the rolled book rolled again to the same season is the same, cell by cell", async () => {
  const again = path.join(folder, "again.xlsx");
  const { code } = await run([
    "roll",
    next,
    "--season",
    "2027",
    "--out",
    again,
  ]);
  expect(code).toBe(0);
  const { changes, unmatched } = compareWorkbooks(
    await workbook(next),
    await workbook(again),
  );
  expect([changes, unmatched]).toEqual([[], []]);
}, 120_000);

test("the old season's book and any other file stay as they are", async () => {
  const before = readFileSync(next);
  for (const [args, says] of [
    [[next, "--season", "2027", "--out", next, "--force"], "stays as it is"],
    [[demo, "--season", "2027", "--out", next], "exists already"],
    [
      [demo, "--season", "2030", "--out", path.join(folder, "a.xlsx")],
      "roll to that one first",
    ],
    [
      [demo, "--season", "next", "--out", path.join(folder, "a.xlsx")],
      "is no year",
    ],
    [[demo, "--out", path.join(folder, "a.xlsx")], "Needs --season"],
    [[demo, "--season", "2027"], "Needs --out"],
  ] as const) {
    const { code, complained } = await run(["roll", ...args]);
    expect([code, complained.join("")]).toEqual([
      2,
      expect.stringContaining(says),
    ]);
  }
  expect(readFileSync(next).equals(before)).toBe(true);
  expect(existsSync(path.join(folder, "a.xlsx"))).toBe(false);
});

test("a file that is no book is refused and nothing is written", async () => {
  const empty = path.join(folder, "empty.xlsx");
  writeFileSync(empty, "no workbook");
  const out = path.join(folder, "b.xlsx");
  const { code } = await run(["roll", empty, "--season", "2027", "--out", out]);
  expect([code, existsSync(out)]).toEqual([2, false]);
});

test("the new book's costs say what they are estimated from, at a terminal, in JSON and as a finding", async () => {
  const asked = ["cost", next, "--product", "G250-AM", "--bottles", "9000"];
  const text = (await run(asked)).said.join("\n");
  expect(text).toContain("Full cost: estimate from season 2026");
  expect(text).toContain("full costs are an estimate from season 2026");
  const json = JSON.parse((await run([...asked, "--json"])).said.join("")) as {
    readonly estimateFromSeason: number | null;
    readonly costPerBottle: { readonly replacement: number };
  };
  expect(json.estimateFromSeason).toBe(2026);
  const old = JSON.parse(
    (await run(["cost", demo, ...asked.slice(2), "--json"])).said.join(""),
  ) as typeof json;
  expect(old.estimateFromSeason).toBeNull();
  expect(json.costPerBottle.replacement).toBeCloseTo(
    old.costPerBottle.replacement,
    9,
  );
  expect((await run(["prices", next])).said.join("\n")).toContain(
    "Full cost: estimate from season 2026",
  );
});

test("a lot traced in the new book ends in what was used before, which is no sale", async () => {
  const { said } = await run(["trace", next, "26-03"]);
  expect(said.join("\n")).toContain(
    "season before used before 2027: 5,725 lb; that season's book says where it went",
  );
});

test("sheets of your own are named and left only when that is agreed", async () => {
  const own = path.join(folder, "own.xlsx");
  const book = await workbook(next);
  const cells = [{ row: 0, column: 0, value: "call Ada about drums" }];
  const plain = { tables: [], validations: [], merges: [], widths: {} };
  writeFileSync(
    own,
    await writeXlsx({
      ...book,
      sheets: [
        ...book.sheets.map((sheet) =>
          sheet.name === "Wages"
            ? {
                ...sheet,
                cells: [...sheet.cells, { row: 40, column: 9, value: "Ada" }],
              }
            : sheet,
        ),
        {
          ...plain,
          name: "My notes",
          cells,
          heights: {},
          frozen: { rows: 0, columns: 0 },
        },
      ],
      names: [{ name: "drum_rent", refersTo: "Wages!$J$41" }],
    }),
  );
  const out = path.join(folder, "left.xlsx");
  const asked = ["roll", own, "--season", "2027", "--out", out];
  const refused = await run(asked);
  expect([refused.code, existsSync(out)]).toEqual([2, false]);
  expect(refused.complained).toEqual([
    "The new book would not hold the sheet “My notes”, what stands beside the tables on “Wages” and the name “drum_rent” of the old one, so nothing was written; add --leave-sheets if they may stay in the old book alone.",
  ]);
  const agreed = await run([...asked, "--leave-sheets", "--json"]);
  expect([agreed.code, existsSync(out)]).toEqual([0, true]);
  expect(
    (JSON.parse(agreed.said.join("")) as { readonly leftBehind: string[] })
      .leftBehind,
  ).toEqual([
    "the sheet “My notes”",
    "what stands beside the tables on “Wages”",
    "the name “drum_rent”",
  ]);
}, 120_000);
