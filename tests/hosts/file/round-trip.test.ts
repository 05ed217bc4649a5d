import fc from "fast-check";
import { checkPackage } from "../../../src/hosts/file/check-package";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import type { Cell, Workbook } from "../../../src/sheets/workbook";
import { anyWorkbook } from "./any-workbook";
import { bookOf, fernkettleBook, sheetOf } from "./fernkettle-book";
import { partsOf } from "./packages";

test("a farm's workbook comes back from its file as it went in, and nothing would be lost", async () => {
  const bytes = await writeXlsx(fernkettleBook);
  const { workbook, losses } = await readXlsx(bytes, "fernkettle.xlsx");
  expect(workbook).toEqual(fernkettleBook);
  expect(losses).toEqual([]);
  expect(checkPackage(bytes)).toEqual([]);
});

test("the same workbook gives the same bytes, at any hour", async () => {
  const first = await writeXlsx(fernkettleBook);
  jest.useFakeTimers({ now: new Date("2031-05-06T07:08:09Z") });
  try {
    expect(Buffer.from(await writeXlsx(fernkettleBook)).equals(first)).toBe(
      true,
    );
  } finally {
    jest.useRealTimers();
  }
  const { workbook } = await readXlsx(first, "fernkettle.xlsx");
  expect(Buffer.from(await writeXlsx(workbook)).equals(first)).toBe(true);
});

test("a file asks no program to calculate it again when it is opened", async () => {
  const parts = partsOf(await writeXlsx(fernkettleBook));
  expect(parts["xl/workbook.xml"]).toContain('<calcPr calcId="191029"/>');
  expect(Object.values(parts).join()).not.toContain("fullCalcOnLoad");
});

test("a table without rows is given a blank one, for a file needs it", async () => {
  const columns = [{ heading: "Lot" }, { heading: "lb" }];
  const bytes = await writeXlsx(
    bookOf({
      tables: [
        {
          name: "Lots",
          area: { row: 0, column: 0, rows: 1, columns: 2 },
          columns,
        },
      ],
    }),
  );
  const [sheet] = (await readXlsx(bytes, "lots.xlsx")).workbook.sheets;
  expect(sheet?.tables).toEqual([
    { name: "Lots", area: { row: 0, column: 0, rows: 2, columns: 2 }, columns },
  ]);
  expect(sheet?.cells.map(({ value }) => value)).toEqual(["Lot", "lb"]);
  expect(checkPackage(bytes)).toEqual([]);
});

test("eleven hundred notes on one sheet leave the next sheet's notes shapes of their own", async () => {
  const noted = (count: number): readonly Cell[] =>
    Array.from({ length: count }, (_, row) => ({
      row,
      column: 0,
      note: `Note ${row}`,
    }));
  const book: Workbook = {
    title: "",
    names: [],
    sheets: [
      sheetOf({ name: "Many", cells: noted(1100) }),
      sheetOf({ name: "Few", cells: noted(3) }),
    ],
  };
  const bytes = await writeXlsx(book);
  expect(checkPackage(bytes)).toEqual([]);
  expect((await readXlsx(bytes, "notes.xlsx")).workbook).toEqual(book);
});

test("any workbook comes back from its file as it went in, and no program would object to the file", async () => {
  await fc.assert(
    fc.asyncProperty(anyWorkbook, async (book) => {
      const bytes = await writeXlsx(book);
      const read = await readXlsx(bytes, "any.xlsx");
      expect(read.workbook).toEqual(book);
      expect(read.losses).toEqual([]);
      expect(checkPackage(bytes)).toEqual([]);
    }),
    { numRuns: 150 },
  );
});
