import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import ExcelJS from "exceljs";
import { functionNamed } from "../../src/functions";
import { answer } from "../../src/functions/answer";
import { nativeCall } from "../../src/functions/native-call";
import { CannotAnswer } from "../../src/measures/cannot-answer";
import { convertWithLibreOffice } from "../support/libre-office";

/** Where the tables of net contents step; a random case seldom lands there. */
const edges: readonly (readonly [
  name: string,
  firsts: readonly number[],
  rules: readonly string[],
])[] = [
  [
    "SAMPLE_SIZE",
    [1, 2, 11, 12, 99, 100, 250, 251, 500, 501, 3200, 3201, 99_999],
    ["US", "EU", "OIML"],
  ],
  [
    "SAMPLE_FACTOR",
    [1, 2, 3, 5, 6, 11, 12, 13, 20, 24, 30, 48, 50, 80, 125, 2000],
    ["US", "EU", "OIML"],
  ],
  [
    "ALLOWED_SHORT",
    [
      4.9, 5, 50, 50.1, 100, 100.1, 150, 200, 236, 300, 300.1, 375, 473, 500,
      500.1, 1000, 1000.1, 1892, 4000, 10_000, 10_001, 15_000, 20_050, 50_000,
      50_001,
    ],
    ["EU", "OIML", "Canada", "US"],
  ],
];

const cases = edges.flatMap(([name, firsts, rules]) =>
  rules.flatMap((rule) => firsts.map((first) => ({ name, first, rule }))),
);

let given: readonly unknown[];

beforeAll(async () => {
  const folder = mkdtempSync(join(tmpdir(), "native-contents-"));
  try {
    const file = join(folder, "native-contents.xlsx");
    const book = new ExcelJS.Workbook();
    const sheet = book.addWorksheet("Edges");
    for (const [i, { name, first, rule }] of cases.entries()) {
      sheet.getCell(i + 1, 2).value = first;
      sheet.getCell(i + 1, 3).value = rule;
      sheet.getCell(i + 1, 1).value = {
        formula: nativeCall(named(name), [`B${i + 1}`, `C${i + 1}`]),
      };
    }
    await book.xlsx.writeFile(file);
    const [converted = ""] = convertWithLibreOffice([file], {
      to: "xlsx",
      recalculate: true,
    });
    const read = new ExcelJS.Workbook();
    await read.xlsx.readFile(converted);
    rmSync(dirname(converted), { recursive: true, force: true });
    given = cases.map(
      (_, i) => read.getWorksheet("Edges")?.getCell(i + 1, 1).result,
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}, 240_000);

test.each(cases.map((one, i) => ({ ...one, i })))(
  "$name($first, $rule) and its native form agree, or both give #N/A",
  ({ name, first, rule, i }) => {
    const expected = answered(name, first, rule);
    if (typeof expected === "string")
      expect(given[i]).toEqual({ error: expected });
    else
      expect(Math.abs(Number(given[i]) - expected)).toBeLessThanOrEqual(
        1e-9 * expected,
      );
  },
);

function answered(name: string, first: number, rule: string): number | string {
  try {
    return Number(answer(named(name), [first, rule]));
  } catch (error) {
    if (error instanceof CannotAnswer) return error.code;
    throw error;
  }
}

function named(name: string): NonNullable<ReturnType<typeof functionNamed>> {
  const definition = functionNamed(name);
  if (!definition) throw new Error(`No function ${name}`);
  return definition;
}
