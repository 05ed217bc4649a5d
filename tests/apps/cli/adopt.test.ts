import {
  existsSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { adoptAnswer } from "../../../src/apps/cli/adopt";
import { adoptText } from "../../../src/apps/cli/adopt-text";
import { hiddenLines } from "../../../src/hosts/file/hidden-lines";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import type { Workbook } from "../../../src/sheets/workbook";
import { inventedLedgers } from "../../book/ledgers/ledgers";
import { crowdedWorkbook } from "../../hosts/file/crowded-workbook";
import { before, withParts } from "../../hosts/file/packages";
import { run } from "./array-terminal";

async function fileOf(index: number): Promise<Workbook> {
  const cells = inventedLedgers[index]?.cells ?? [];
  const workbook: Workbook = {
    title: "A ledger",
    names: [],
    sheets: [
      {
        name: "Ventes 2026",
        // The ledger does not start in the sheet's first cell.
        cells: cells.flatMap((row, r) =>
          row.flatMap((value, c) =>
            value === null ? [] : [{ row: r + 2, column: c + 1, value }],
          ),
        ),
        tables: [],
        validations: [],
        merges: [],
        widths: {},
        heights: {},
        frozen: { rows: 0, columns: 0 },
      },
    ],
  };
  return (await readXlsx(await writeXlsx(workbook), "ledger.xlsx")).workbook;
}

test("a French ledger in a file is understood, with units, money and first ticket shown", async () => {
  const answer = adoptAnswer(await fileOf(1), "'Ventes 2026'!B3:L17");
  expect(answer).toMatchObject({
    ledger: "'Ventes 2026'!B3:L17",
    headingRows: [3],
    tickets: 14,
    understood: {
      weights: { is: "kg", from: "the heading" },
      price: { is: "per kg", from: "the heading" },
      currency: { is: "CAD", from: "the heading" },
      dates: "day first",
    },
    first: {
      ticket: "B2001",
      date: "2026-03-12",
      buyer: "Oatloft Bakery",
      price: 8.95,
      currency: "CAD",
    },
    findings: [],
  });
  // Hand arithmetic: 1,375.5 kg ÷ 0.45359237.
  expect(answer.first?.["grossLb"]).toBeCloseTo(3032.4584, 4);
  expect(answer.columns.find(({ what }) => what === "gross")).toEqual({
    what: "gross",
    label: "Gross weight / Poids brut",
    column: "E",
    heading: "Poids brut (kg)",
    because: "heading",
  });
});

test("rows that are no tickets are named by the sheet's own row numbers", async () => {
  const answer = adoptAnswer(await fileOf(3), "Ventes 2026");
  expect(answer.tickets).toBe(12);
  expect(answer.passedOver.map(({ why }) => why)).toContain("a total");
  expect(answer.passedOver.map(({ why }) => why)).toContain("headings again");
  const text = adoptText(answer).join("\n");
  expect(text).toContain("Row 7 is passed over: a total.");
  expect(text).toContain(
    'Gross weight / Poids brut: column E "Gross", by its heading.',
  );
});

test("the command answers in one line of JSON, or in words, and writes nothing", async () => {
  const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-adopt-"));
  const file = join(folder, "ledger.xlsx");
  writeFileSync(file, await writeXlsx(await fileOf(0)));
  const before = readFileSync(file);
  const asked = [file, "--adopt", "'Ventes 2026'!B3:M18"];
  const json = await run(["totes", ...asked, "--json"]);
  expect(json).toMatchObject({ code: 0, complained: [] });
  expect(json.said).toHaveLength(1);
  expect(JSON.parse(json.said[0] ?? "")).toMatchObject({
    tickets: 12,
    understood: { currency: { is: "USD" } },
  });
  const words = await run(["totes", ...asked]);
  expect(words.said[0]).toBe(
    "'Ventes 2026'!B3:M18: 12 tickets, headings in row 6.",
  );
  expect(readFileSync(file)).toEqual(before);
  const refused = await run(["totes", file, "--adopt", "Nowhere!A1:B2"]);
  expect(refused.code).toBe(2);
  expect(refused.complained.join(" ")).toContain('there is no sheet "Nowhere"');
  rmSync(folder, { recursive: true });
});

test.each([
  ["Nowhere!A1:B9", 'there is no sheet "Nowhere"; there are Ventes 2026'],
  ["Totes", "is no table and no range"],
])("%s is refused in a sentence", async (asked, says) => {
  const workbook = await fileOf(0);
  expect(() => adoptAnswer(workbook, asked)).toThrow(says);
});

/** A ledger in a table under merged titles, on a sheet whose name needs quotes, beside a blank sheet and one of words. */
async function awkwardFile(): Promise<Workbook> {
  const [sales] = (await fileOf(0)).sheets;
  if (!sales) throw new Error("no sheet");
  const bare = { ...sales, cells: [], tables: [], merges: [] };
  return {
    title: "",
    names: [],
    sheets: [
      {
        ...sales,
        name: "Joe's 'own' sales",
        merges: [{ row: 2, column: 1, rows: 1, columns: 12 }],
        tables: [
          {
            name: "Sales",
            area: { row: 5, column: 1, rows: 13, columns: 12 },
            columns: (inventedLedgers[0]?.cells[3] ?? []).map((heading) => ({
              heading: String(heading),
            })),
          },
        ],
      },
      { ...bare, name: "Empty" },
      {
        ...bare,
        name: "Words",
        cells: [
          { row: 0, column: 0, value: "Dear all" },
          { row: 1, column: 1, value: "see you" },
        ],
      },
    ],
  };
}

const OWN = "'Joe''s ''own'' sales'";

test.each([
  ["Sales", `${OWN}!B6:M18`],
  ["sales", `${OWN}!B6:M18`],
  ["Joe's 'own' sales", `${OWN}!A1:M18`],
  ["Joe's 'own' sales!B3:M18", `${OWN}!B3:M18`],
  [`${OWN}!$M$18:$B$3`, `${OWN}!B3:M18`],
  [`${OWN}!B3:M1048576`, `${OWN}!B3:M18`],
])("%s is the same twelve tickets", async (asked, ledger) => {
  expect(adoptAnswer(await awkwardFile(), asked)).toMatchObject({
    ledger,
    headingRows: [6],
    tickets: 12,
  });
});

test.each([
  [`${OWN}!B3`, '"B3" is no range of several rows and columns'],
  [
    `${OWN}!Z1:AB20`,
    `${OWN}!Z1:AB20 is blank; what the sheet holds is in ${OWN}!B3:M18`,
  ],
  ["Empty", 'the sheet "Empty" is blank'],
  ["Empty!A1:D9", 'the sheet "Empty" is blank'],
  ["Words!A1:C5", "Words!A1:C2 holds no column that could be of a tote ticket"],
  [`${OWN}!A0:C4`, '"A0:C4" lies outside a sheet'],
  [`${OWN}!A1:XFE4`, '"A1:XFE4" lies outside a sheet'],
  [`${OWN}!A1:C9999999`, '"A1:C9999999" lies outside a sheet'],
  [`${OWN}!B:M`, '"B:M" is no range of several rows and columns'],
  ["", '"" is no table and no range'],
])("%s is refused with what is the matter", async (asked, says) => {
  const workbook = await awkwardFile();
  expect(() => adoptAnswer(workbook, asked)).toThrow(says);
});

test("hidden columns and rows are read, and said to be hidden", async () => {
  const bytes = withParts(await writeXlsx(await fileOf(6)), {
    "xl/worksheets/sheet1.xml": (xml) =>
      before(
        "<sheetData>",
        '<cols><col min="3" max="5" width="9" hidden="1"/></cols>',
      )(xml.replace(/<cols>.*?<\/cols>/, "")).replace(
        '<row r="5"',
        '<row r="5" hidden="1"',
      ),
  });
  const { workbook } = await readXlsx(bytes, "ledger.xlsx");
  const answer = adoptAnswer(workbook, "'Ventes 2026'!B3:N12", (range) =>
    hiddenLines(bytes, range.sheet, range.column + range.columns),
  );
  expect(answer.hidden).toEqual({ columns: ["C", "D", "E"], rows: [5] });
  expect(answer.tickets).toBe(9);
  expect(adoptText(answer)).toEqual(
    expect.arrayContaining([
      "Column C is hidden; it is read like the others.",
      "Row 5 is hidden; what stands there is read like the rest.",
    ]),
  );
});

test("in a stranger's workbook with macros and charts a table is looked at by its name", async () => {
  const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-adopt-"));
  const file = join(folder, "routes.xlsm");
  writeFileSync(file, await crowdedWorkbook());
  const { code, said } = await run([
    "totes",
    file,
    "--adopt",
    "Weighed",
    "--json",
  ]);
  expect(code).toBe(0);
  expect(JSON.parse(said[0] ?? "")).toMatchObject({
    ledger: "'Scale ''n yard'!A1:C3",
    tickets: 2,
    first: { ticket: "W-1", grossLb: 3044, netLb: 2912 },
    hidden: { columns: [], rows: [] },
  });
  rmSync(folder, { recursive: true });
});

test.each<[string, (whole: Uint8Array) => Uint8Array, string]>([
  ["cut short", (whole) => whole.slice(0, whole.length / 2), "is damaged"],
  [
    "locked with a password",
    () => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]),
    "is locked with a password",
  ],
  [
    "with a part that does not match its checksum",
    (whole) => {
      const broken = whole.slice();
      const view = new DataView(broken.buffer);
      for (let at = broken.length - 46; at > 0; at -= 1)
        if (view.getUint32(at, true) === 0x02014b50) {
          view.setUint32(at + 16, 1, true);
          break;
        }
      return broken;
    },
    "does not match its checksum",
  ],
])(
  "a file %s is named, by every command that reads it",
  async (_, damage, says) => {
    const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-adopt-"));
    const file = join(folder, "ledger.xlsx");
    const out = join(folder, "new.xlsx");
    writeFileSync(file, damage(await writeXlsx(await fileOf(0))));
    for (const asked of [
      ["--adopt", "'Ventes 2026'!B3:M18"],
      ["--add", "--out", out],
      ["--json"],
    ]) {
      const { code, said, complained } = await run(["totes", file, ...asked]);
      expect({ code, said }).toEqual({ code: 2, said: [] });
      expect(complained).toHaveLength(1);
      expect(complained[0]).toMatch(/ledger\.xlsx/);
      expect(complained[0]).toContain(says);
    }
    expect(existsSync(out)).toBe(false);
    rmSync(folder, { recursive: true });
  },
);
