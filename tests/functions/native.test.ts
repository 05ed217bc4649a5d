import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import ExcelJS from "exceljs";
import fc from "fast-check";
import { functions } from "../../src/functions";
import { answer } from "../../src/functions/answer";
import type { Answer, Definition } from "../../src/functions/define";
import { nativeCall } from "../../src/functions/native-call";
import { CannotAnswer } from "../../src/measures/cannot-answer";
import { anyArguments } from "../support/any-argument";
import { convertWithLibreOffice } from "../support/libre-office";

/**
 * Every native form against the function itself, worked out by LibreOffice in one workbook: a sheet a function, a band of
 * rows a case. Every second case hands the form a calculation instead of a plain reference.
 */
const CASES = 200;
const BAND = 8;
const SEED = 20_261_125;

interface Case {
  readonly raw: readonly unknown[];
  readonly expected: Answer;
}

const withNative = functions.filter((f) => f.native && !f.gives.spills);
const cases = new Map(withNative.map((f) => [f.name, answerableCases(f)]));
let results: ReadonlyMap<string, readonly unknown[]>;

beforeAll(async () => {
  results = await calculated();
}, 240_000);

/** Fair questions that a native form gives #N/A for; `nativeRefuses` says so on the page. */
const refusedByNative: Readonly<
  Record<string, (raw: readonly unknown[]) => boolean>
> = { LOT_COST: drawsFromLotsOfOneDay };

test("a native form refuses only where its page says so", () => {
  expect(
    functions.filter((f) => f.nativeRefuses).map(({ name }) => name),
  ).toEqual(Object.keys(refusedByNative));
});

test.each(withNative.map((f) => f.name))(
  "%s and its native form agree",
  (name) => {
    const wanted = cases.get(name) ?? [];
    expect(wanted).toHaveLength(CASES);
    let refused = 0;
    for (const [i, { raw, expected }] of wanted.entries()) {
      const given = results.get(name)?.[i];
      if (refusedByNative[name]?.(raw)) {
        refused += 1;
        expect(given).toEqual({ error: "#N/A" });
        continue;
      }
      const agrees =
        typeof expected === "number" && typeof given === "number"
          ? Math.abs(given - expected) <=
            1e-9 * Math.max(Math.abs(given), Math.abs(expected)) + 1e-12
          : given === expected;
      if (!agrees)
        throw new Error(
          `${name}(${JSON.stringify(raw).slice(1, -1)}) is ${String(expected)}, its native form gives ${JSON.stringify(given)}`,
        );
    }
    expect(refused).toBeLessThan(CASES / 4);
  },
);

function drawsFromLotsOfOneDay(raw: readonly unknown[]): boolean {
  const [method, , lots, asOf] = raw as [
    string,
    number,
    readonly (readonly number[])[],
    number | null,
  ];
  const days = lots
    .map(([day = Number.NaN]) => day)
    .filter((day) => day <= (asOf ?? Infinity));
  return method === "oldest first" && new Set(days).size < days.length;
}

function answerableCases(definition: Definition): readonly Case[] {
  const found: Case[] = [];
  for (const raw of fc.sample(anyArguments(definition.args), {
    seed: SEED,
    numRuns: 20_000,
  })) {
    if (found.length === CASES) break;
    const expected = answered(definition, raw);
    if (expected !== undefined) found.push({ raw, expected });
  }
  return found;
}

function answered(
  definition: Definition,
  raw: readonly unknown[],
): Answer | undefined {
  try {
    return answer(definition, raw) as Answer;
  } catch (error) {
    if (error instanceof CannotAnswer) return undefined;
    throw error;
  }
}

async function calculated(): Promise<ReadonlyMap<string, readonly unknown[]>> {
  const folder = mkdtempSync(join(tmpdir(), "native-forms-"));
  try {
    const file = join(folder, "native-forms.xlsx");
    await workbookOfCases().xlsx.writeFile(file);
    const [converted = ""] = convertWithLibreOffice([file], {
      to: "xlsx",
      recalculate: true,
    });
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(converted);
    rmSync(dirname(converted), { recursive: true, force: true });
    return new Map(
      withNative.map(({ name }) => [
        name,
        (cases.get(name) ?? []).map((_, i) =>
          resultOf(book.getWorksheet(name)?.getCell(bandStart(i), 1)),
        ),
      ]),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function workbookOfCases(): ExcelJS.Workbook {
  const book = new ExcelJS.Workbook();
  for (const definition of withNative) {
    const sheet = book.addWorksheet(definition.name);
    for (const [i, { raw }] of (cases.get(definition.name) ?? []).entries()) {
      const texts = writeArguments(sheet, definition, raw, i);
      sheet.getCell(bandStart(i), 1).value = {
        formula: nativeCall(definition, texts),
      };
    }
  }
  return book;
}

/** Puts the arguments of one case in its band, from the second column, and gives the texts that refer to them. */
function writeArguments(
  sheet: ExcelJS.Worksheet,
  definition: Definition,
  raw: readonly unknown[],
  i: number,
): readonly string[] {
  let column = 2;
  return Object.values(definition.args).map((term, a) => {
    const given = raw[a];
    if (given === null) return "";
    const block = Array.isArray(given) ? (given as unknown[][]) : [[given]];
    for (const [r, row] of block.entries())
      for (const [c, value] of row.entries())
        if (value !== null)
          sheet.getCell(bandStart(i) + r, column + c).value =
            value as ExcelJS.CellValue;
    const first = sheet.getCell(bandStart(i), column).address;
    const width = block[0]?.length ?? 1;
    const last = sheet.getCell(
      bandStart(i) + block.length - 1,
      column + width - 1,
    ).address;
    column += width;
    if (Array.isArray(given)) return `${first}:${last}`;
    return i % 2 === 0 ? first : calculation(first, term.kind);
  });
}

const calculation = (cell: string, kind: string): string =>
  ["choice", "text"].includes(kind)
    ? `${cell}&""`
    : kind === "yes or no"
      ? `NOT(NOT(${cell}))`
      : `0+${cell}`;

const bandStart = (i: number): number => 1 + i * BAND;

/** The library's `value` leaves a result of 0 out, its `result` does not. */
const resultOf = (cell: ExcelJS.Cell | undefined): unknown => cell?.result;
