import { emptyBook } from "../../support/excel-wire/book-state";
import { openWire } from "../../support/excel-wire/open-wire";
import type { WireBook } from "../../support/excel-wire/wire-book";

/** What the double of Excel must do for a green test to mean anything. The real client library asks it throughout. */
let book: WireBook;
beforeEach(() => {
  book = openWire(emptyBook());
});

const code = (work: Promise<unknown>): Promise<string> =>
  work.then(
    () => "done",
    (problem: { code: string }) => problem.code,
  );

test("what it does not model fails loudly and is remembered", async () => {
  expect(
    await code(
      Excel.run(async (context) => {
        context.workbook.pivotTables.load("items/name");
        await context.sync();
      }),
    ),
  ).toBe("NotModelled");
  expect(book.wire.holes).toEqual([
    "The wire does not model open Workbook.PivotTables",
  ]);
});

test("the library itself refuses a value that was not loaded, and a feature this Excel lacks", async () => {
  expect(
    await code(
      Excel.run(async (context) => {
        const range = context.workbook.getActiveCell();
        await context.sync();
        return range.values;
      }),
    ),
  ).toBe("PropertyNotLoaded");
  openWire(emptyBook(), { api: "1.12" });
  expect(
    await code(
      Excel.run(async (context) => {
        context.workbook.insertWorksheetsFromBase64("");
        await context.sync();
      }),
    ),
  ).toBe("ApiNotFound");
});

test("an array of another shape is refused, and so is a sheet that is not there", async () => {
  expect(
    await code(
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Sheet1");
        sheet.getRange("A1:B2").values = [[1, 2, 3]];
        await context.sync();
      }),
    ),
  ).toBe("InvalidArgument");
  expect(
    await code(
      Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Lost").load("name");
        await context.sync();
      }),
    ),
  ).toBe("ItemNotFound");
});

test("entered text is read as typing, so that unmarked text shows up as what it became", async () => {
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Sheet1");
    sheet.getRange("A1:A7").values = [
      ["0042"],
      ["3/4"],
      ["TRUE"],
      ["12%"],
      ["=1+1"],
      ["'0042"],
      ["amber"],
    ];
    await context.sync();
  });
  const { cells } = book.sheet("Sheet1");
  expect([...cells.values()].map(({ value }) => typeof value)).toEqual([
    "number",
    "number",
    "boolean",
    "number",
    "number",
    "string",
    "string",
  ]);
});

test("what was done before a failing step stays done, as in Excel, where a batch is no transaction", async () => {
  await code(
    Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      sheet.getRange("A1").values = [[1]];
      context.workbook.worksheets.getItem("Lost").activate();
      sheet.getRange("A2").values = [[2]];
      await context.sync();
    }),
  );
  expect([...book.sheet("Sheet1").cells.keys()]).toEqual(["0,0"]);
});

test("requests and bytes are counted, the giving back of references apart", async () => {
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Sheet1");
    sheet.getRange("A1").values = [["amber"]];
    await context.sync();
    sheet.getRange("A2").values = [["dark"]];
    await context.sync();
  });
  await new Promise((resolve) => setTimeout(resolve, 5));
  expect(book.wire.requests).toHaveLength(2);
  expect(book.wire.sent).toHaveLength(3);
  expect(book.wire.requests[0]?.bytes).toBeGreaterThan(500);
});
