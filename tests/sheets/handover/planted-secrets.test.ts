import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  handoverCopy,
  workedOut,
  type WorkedOut,
} from "../../../src/apps/cli/handover-copy";
import { readBookFiles } from "../../../src/apps/cli/read-book-files";
import { tableList } from "../../../src/book/book";
import {
  columnAt,
  type Contents,
  contentsOf,
} from "../../../src/book/contents";
import { writeCopy } from "../../../src/hosts/file/leaks/write-copy";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import { farmBook } from "../../../src/sheets/farm-book";
import {
  type Audience,
  audienceNames,
  noTicks,
} from "../../../src/sheets/handover/audiences";
import { readAsked } from "../../../src/sheets/handover/read-asked";
import {
  figuresFound,
  spelledOut,
  wordsFound,
} from "../../support/spelled-out";
import { withOwnColumns, withPlantedParts } from "./planted-parts";
import { type Planted, plantedFolder } from "./planted-tables";

const sheets = [
  "costing:P250-LOFT",
  "prices",
  "quote:P250-LOFT",
  "totes:Oatloft Bakery",
];

/** What nobody of an audience may see of a sheet is refused as a whole. */
const refused: Readonly<Record<Audience, readonly string[]>> = {
  partner: ["totes:Oatloft Bakery"],
  customer: [],
  lender: [],
  broker: ["totes:Oatloft Bakery"],
};

let folder: string;
let planted: Planted;
let book: Uint8Array;
let fromCsv: readonly Contents[];
let fromXlsx: readonly Contents[];
let worked: WorkedOut;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "planted-"));
  const { files, planted: inTables } = plantedFolder();
  planted = inTables;
  for (const [name, text] of files) writeFileSync(join(folder, name), text);
  fromCsv = (await readBookFiles(folder)).contents;
  const kept = fromCsv.map((table) =>
    ["Lots", "Wages"].includes(table.name)
      ? withOwnColumns(table, planted)
      : table,
  );
  book = withPlantedParts(await writeXlsx(farmBook(kept)), planted);
  writeFileSync(join(folder, "book.xlsx"), book);
  fromXlsx = (await readBookFiles(join(folder, "book.xlsx"))).contents;
  worked = await workedOut(fromXlsx, { asked: readAsked(sheets.join(",")) });
  planted.figures.push(...workedFrom(worked));
}, 240_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Figures the book itself works out from planted ones: what an hour costs in all, what a lot cost landed. */
const workedFrom = ({ live }: WorkedOut): readonly number[] =>
  live.sheets
    .filter(({ name }) => ["Wages", "Lots"].includes(name))
    .flatMap(({ cells }) =>
      cells.flatMap(({ formula, value }) =>
        formula !== undefined &&
        typeof value === "number" &&
        String(value).replace(/\D/g, "").length >= 8
          ? [value]
          : [],
      ),
    );

test("far more than 200 secrets are planted, each unlike the others, and the search finds every one in the book itself", () => {
  expect(planted.words.length).toBeGreaterThan(250);
  expect(planted.figures.length).toBeGreaterThan(150);
  expect(new Set(planted.words).size).toBe(planted.words.length);
  const texts = spelledOut(book);
  expect(wordsFound(planted.words, texts)).toEqual(planted.words);
  const calculated = workedFrom(worked);
  const typed = planted.figures.slice(
    0,
    planted.figures.length - calculated.length,
  );
  expect(calculated.length).toBeGreaterThan(30);
  expect(figuresFound(typed, texts)).toEqual(typed);
});

test("the .xlsx book gives the tables its CSV folder gives, the farm's own columns apart", () => {
  for (const [, table] of tableList) {
    const [csv, xlsx] = [fromCsv, fromXlsx].map((given) =>
      contentsOf(given, table),
    );
    if (!csv || !xlsx) continue;
    for (const column of Object.values(table.columns)) {
      if (column.formula !== undefined) continue;
      const of = ({ headings, rows }: Contents) =>
        rows.map((row) => row[columnAt(headings, column)] ?? null);
      if (columnAt(csv.headings, column) >= 0 && csv.rows.length > 0)
        expect([table.name, column.heading, of(xlsx)]).toEqual([
          table.name,
          column.heading,
          of(csv),
        ]);
    }
  }
});

describe.each(audienceNames)("for a %s", (audience) => {
  test.each(sheets)("no planted secret is in a copy of %s", async (asked) => {
    const one = {
      ...worked,
      sheets: worked.sheets.filter((sheet) => sheet.asked === asked),
    };
    if (refused[audience].includes(asked)) {
      expect(() => handoverCopy(one, audience, noTicks)).toThrow(
        /sees nothing of it/,
      );
      return;
    }
    const texts = spelledOut(
      await writeCopy(handoverCopy(one, audience, noTicks)),
    );
    expect(wordsFound(planted.words, texts)).toEqual([]);
    expect(wordsFound(["Zephyrine", "Quill"], texts)).toEqual([]);
    expect(figuresFound(planted.figures, texts)).toEqual([]);
  });
});
