import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { adoptAnswer, adoptText } from "../../../src/apps/cli/adopt";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import type { Workbook } from "../../../src/sheets/workbook";
import { inventedLedgers } from "../../book/ledgers/ledgers";
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
