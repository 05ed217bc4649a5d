import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import { root } from "../../architecture/project-files";
import { withCell } from "../../sheets/compare/edited";
import { run } from "./array-terminal";

const sent = path.join(root, "sample-workbooks/costing-p250-loft-plain.xlsx");
const SHEET = "Cost P250-LOFT";
let folder: string;
let returned: string;

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), "compare-"));
  returned = path.join(folder, "back.xlsx");
  const { workbook } = await readXlsx(
    new Uint8Array(readFileSync(sent)),
    "sent.xlsx",
  );
  const bottles = workbook.sheets
    .find(({ name }) => name === SHEET)
    ?.cells.find(({ value }) => value === "Bottles in this run");
  writeFileSync(
    returned,
    await writeXlsx(
      withCell(workbook, SHEET, {
        row: bottles?.row ?? 0,
        column: 1,
        value: 2400,
      }),
    ),
  );
});
afterAll(() => rmSync(folder, { recursive: true }));

test("what came back changed is told as one object, or a line a change", async () => {
  const { code, said } = await run(["compare", sent, returned, "--json"]);
  expect(code).toBe(0);
  const answer = JSON.parse(said.join("")) as {
    readonly changes: readonly object[];
    readonly unmatched: readonly string[];
  };
  expect(answer.unmatched).toEqual([]);
  expect(answer.changes).toEqual([
    expect.objectContaining({
      sheet: SHEET,
      cell: expect.stringMatching(/^B\d+$/),
      kind: "changed",
      was: 1200,
      now: 2400,
    }),
  ]);
  const plain = await run(["compare", sent, returned]);
  expect(plain.said).toEqual([
    expect.stringMatching(
      /^Cost P250-LOFT, B\d+ \(Bottles in this run\): changed, from 1200 to 2400$/,
    ),
  ]);
});

test("a copy that was not touched says so", async () => {
  expect(await run(["compare", sent, sent])).toMatchObject({
    code: 0,
    said: ["Nothing was changed."],
  });
});

test("a missing file or a third one is refused in one sentence", async () => {
  expect(await run(["compare", sent, "nowhere.xlsx"])).toMatchObject({
    code: 2,
    complained: ["nowhere.xlsx: there is no such file."],
  });
  expect((await run(["compare", sent])).complained[0]).toMatch(
    /^Needs two workbooks/,
  );
});
