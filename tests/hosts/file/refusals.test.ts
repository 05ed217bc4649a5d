import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import { CannotAnswer } from "../../../src/measures/cannot-answer";
import type { Sheet } from "../../../src/sheets/workbook";
import { bookOf, fernkettleBook } from "./fernkettle-book";
import { withParts } from "./packages";

/** The one sentence a file or workbook is refused with. */
async function refusal(work: Promise<unknown>): Promise<string> {
  const error = await work.then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  expect(error).toBeInstanceOf(CannotAnswer);
  const { message, kind } = error as CannotAnswer;
  expect(kind).toBe("input");
  expect(message).toMatch(/^[^\n]+\.$/);
  return message;
}

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

describe("a file that is no sound workbook is refused in one sentence that names it", () => {
  let good: Uint8Array;
  beforeAll(async () => {
    good = await writeXlsx(fernkettleBook);
  });

  test("nothing in it", async () => {
    expect(await refusal(readXlsx(new Uint8Array(), "lots.xlsx"))).toBe(
      "lots.xlsx is empty.",
    );
  });

  test("plain text with the wrong name", async () => {
    expect(await refusal(readXlsx(bytesOf("Lot,lb\n1,2\n"), "lots.xlsx"))).toBe(
      "lots.xlsx is not an .xlsx workbook.",
    );
  });

  test("an encrypted workbook or one of the older kind", async () => {
    const container = Uint8Array.of(
      0xd0,
      0xcf,
      0x11,
      0xe0,
      0xa1,
      0xb1,
      0x1a,
      0xe1,
      0,
      0,
    );
    expect(await refusal(readXlsx(container, "lots.xlsx"))).toMatch(
      /^lots\.xlsx is locked with a password or /,
    );
  });

  test.each([
    ["the end is missing", (b: Uint8Array) => b.slice(0, b.length - 400)],
    ["only the first bytes arrived", (b: Uint8Array) => b.slice(0, 30)],
    [
      "the middle is damaged",
      (b: Uint8Array) => b.map((x, i) => (i > 400 && i < 900 ? 0 : x)),
    ],
    [
      "there is no workbook in it",
      (b: Uint8Array) => withParts(b, { "_rels/.rels": undefined }),
    ],
    [
      "a sheet is missing",
      (b: Uint8Array) =>
        withParts(b, { "xl/worksheets/sheet2.xml": undefined }),
    ],
    [
      "a part breaks off",
      (b: Uint8Array) =>
        withParts(b, {
          "xl/worksheets/sheet1.xml": (xml) => xml.slice(0, 900),
        }),
    ],
    [
      "a cell has no sensible address",
      (b: Uint8Array) =>
        withParts(b, {
          "xl/worksheets/sheet1.xml": (xml) => xml.replace('r="B2"', 'r="B-2"'),
        }),
    ],
  ])("%s", async (_, damage) => {
    expect(await refusal(readXlsx(damage(good), "lots.xlsx"))).toMatch(
      /^lots\.xlsx is damaged or is not an \.xlsx workbook/,
    );
  });
});

describe("what no file can hold is refused in one sentence that names the place", () => {
  const written = (given: Partial<Sheet>): Promise<string> =>
    refusal(writeXlsx(bookOf(given)));
  const at = { row: 3, column: 1, rows: 1, columns: 1 };

  test("a choice with a comma, or more choices than fit", async () => {
    const list = (choices: readonly string[]): Promise<string> =>
      written({ validations: [{ area: at, rule: { kind: "list", choices } }] });
    expect(await list(["jug, 8 oz"])).toMatch(
      /^Sheet Lots, cell B4: the choice "jug, 8 oz"/,
    );
    expect(
      await list(Array.from({ length: 40 }, (_, i) => `8 oz jug ${i}`)),
    ).toMatch(/^Sheet Lots, cell B4: the choices come to \d+ characters/);
  });

  test("text or a formula that is too long", async () => {
    expect(
      await written({
        cells: [{ row: 3, column: 1, value: "x".repeat(32_768) }],
      }),
    ).toMatch(/^Sheet Lots, cell B4: the text has 32768 characters/);
    expect(
      await written({
        cells: [{ row: 3, column: 1, formula: `=${"1+".repeat(4_100)}1` }],
      }),
    ).toMatch(/^Sheet Lots, cell B4: the formula has 8201 characters/);
  });

  test("a heading that the table does not know", async () => {
    expect(
      await written({
        cells: [{ row: 3, column: 1, value: "pounds" }],
        tables: [
          {
            name: "Lots",
            area: { ...at, rows: 2 },
            columns: [{ heading: "lb" }],
          },
        ],
      }),
    ).toBe(
      'Sheet Lots, row 4: a heading of table Lots shows "pounds" where the table calls the column "lb".',
    );
  });

  test("a sheet name with a forbidden character, and a workbook with nothing to show", async () => {
    expect(await written({ name: "Lots [2025]" })).toContain("Lots [2025]");
    expect(await written({ hidden: true })).toBe(
      "A workbook needs at least one sheet that is not hidden.",
    );
  });
});
