import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { root } from "../../architecture/project-files";
import { run } from "./array-terminal";

const book = path.join(root, "sample-workbooks/fernkettle-hollow");
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "handover-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

test("a partner's costing is written with a list of what was kept, removed and fixed", async () => {
  const out = path.join(folder, "partner.xlsx");
  const { code, said } = await run([
    "handover",
    book,
    "--for",
    "partner",
    "--sheets",
    "costing:P250-LOFT",
    "--hide",
    "overheads",
    "--out",
    out,
    "--json",
  ]);
  expect(code).toBe(0);
  const answer = JSON.parse(said.join("")) as {
    readonly sheets: readonly {
      readonly inputs: readonly string[];
      readonly removed: readonly {
        readonly what: string;
        readonly why: string;
      }[];
      readonly fixed: readonly {
        readonly what: string;
        readonly why: string;
      }[];
    }[];
    readonly looked: { readonly figures: number; readonly names: number };
  };
  const [sheet] = answer.sheets;
  expect(sheet?.removed).toContainEqual(
    expect.objectContaining({ what: "Crew, loaded wages", why: "wages" }),
  );
  // Overheads are shared by the bottle, so without them the run can no longer be tried.
  expect(sheet?.inputs).not.toContain("Bottles in this run");
  expect(sheet?.fixed).toContainEqual(
    expect.objectContaining({
      what: "Bottles in this run",
      why: expect.stringMatching(/follows it through/),
    }),
  );
  expect(answer.looked.figures).toBeGreaterThan(500);
  const { workbook, losses } = await readXlsx(
    readFileSync(out),
    "partner.xlsx",
  );
  expect(losses).toEqual([]);
  expect(workbook.names).toEqual([]);
  const formulas = workbook.sheets.flatMap(({ cells }) =>
    cells.flatMap(({ formula }) => formula ?? []),
  );
  expect(formulas.length).toBeGreaterThan(50);
  expect(
    formulas.filter((formula) => /SYRUP|\[\d|\.xls/i.test(formula)),
  ).toEqual([]);
}, 240_000);

test.each([
  [
    ["--for", "friend", "--sheets", "prices"],
    /^--for: "friend" is none of partner, customer, lender, broker/,
  ],
  [["--for", "broker", "--sheets", "costing"], /says not of what/],
  [["--for", "broker", "--sheets", "stock:A"], /is none of costing:PRODUCT/],
  [["--for", "broker", "--sheets", "prices,prices"], /names prices twice/],
  [
    ["--for", "broker", "--sheets", "prices", "--show", "secrets"],
    /^--show: "secrets" is none of/,
  ],
  [["--for", "broker", "--sheets", "prices", "--pdf"], /^--pdf needs --out/],
  [["--for", "broker", "--sheets", "costing:NO-SUCH"], /NO-SUCH/],
])("%j is refused in one sentence and writes nothing", async (args, says) => {
  const out = path.join(folder, "refused.xlsx");
  const { code, complained } = await run(["handover", book, ...args]);
  expect(code).toBe(2);
  expect(complained.join("\n")).toMatch(says);
  expect(existsSync(out)).toBe(false);
});
