import { openExcelHost } from "../../../src/hosts/excel/excel-host";
import type { Change } from "../../../src/hosts/host";
import {
  pictureOf,
  type SheetState,
} from "../../support/excel-wire/book-state";
import { openWire } from "../../support/excel-wire/open-wire";
import type { WireBook } from "../../support/excel-wire/wire-book";
import { stateOf } from "../../support/excel-wire/workbook-states";
import { emptySheet, richWorkbook } from "../grid/invented-workbook";
import { nothing } from "./generated-sheets";

const lots = "Lot's list";
const settings = "Farm settings";
const rows: Change = {
  ...nothing,
  says: "a lot",
  append: [{ table: "Lots", rows: [{ Lot: "D4", "Left lb": 20 }] }],
};
const sheet: Change = {
  ...nothing,
  says: "the sheet “Totals”",
  addSheets: [
    { ...emptySheet("Totals"), cells: [{ row: 0, column: 0, value: 3 }] },
  ],
  names: [{ name: "times", refersTo: "Totals!$A$1" }],
};

let book: WireBook;
beforeEach(() => {
  book = openWire(stateOf(richWorkbook));
});
afterEach(() => expect(book.wire.holes).toEqual([]));

/** Refused with this sentence, and nothing is different afterwards. */
async function refused(
  act: (host: Awaited<ReturnType<typeof openExcelHost>>) => Promise<unknown>,
  sentence: string,
): Promise<void> {
  const host = await openExcelHost();
  const before = JSON.stringify(pictureOf(book.state));
  await expect(act(host)).rejects.toThrow(sentence);
  expect(JSON.stringify(pictureOf(book.state))).toBe(before);
  expect(book.state.xmlParts).toEqual([]);
}

test("nothing is written outside what the change names", async () => {
  const host = await openExcelHost();
  const untouched = (): unknown =>
    book.state.sheets
      .filter(({ name }) => name !== "Totals")
      .map((held) => [
        held.name,
        [...held.cells].filter(
          ([key]) => !(held.name === lots && key.startsWith("4,")),
        ),
        { ...held, cells: undefined, tables: undefined },
      ]);
  const before = JSON.stringify(untouched());
  await host.apply({ ...sheet, append: rows.append });
  expect(JSON.stringify(untouched())).toBe(before);
  expect(book.sheet(lots).cells.get("4,0")?.value).toBe("D4");
});

test("a protected sheet is left alone, with a sentence, but its unlocked cells may be typed in", async () => {
  const held = book.sheet(lots);
  held.isProtected = true;
  await refused(
    (host) => host.apply(rows),
    'the sheet "Lot\'s list" is protected, so the table Lots cannot grow; take the protection off and try again',
  );
  await refused(
    (host) => host.setCell({ sheet: lots, row: 1, column: 1 }, 5),
    'the sheet "Lot\'s list" is protected; take its protection off to change B2',
  );
  held.cells.set("1,1", { value: 100, unlocked: true });
  const host = await openExcelHost();
  await host.setCell({ sheet: lots, row: 1, column: 1 }, 5);
  expect(held.cells.get("1,1")?.value).toBe(5);
});

test("a workbook protected against new sheets gets none", async () => {
  book.state.isProtected = true;
  await refused(
    (host) => host.apply(sheet),
    "the workbook is protected against new sheets; take its protection off and try again",
  );
});

test("a filtered table is read whole and does not grow while it is filtered", async () => {
  const [table] = book.sheet(lots).tables;
  if (table) table.isFiltered = true;
  const host = await openExcelHost();
  expect((await host.readTables())[0]?.rows).toHaveLength(3);
  await refused(
    (own) => own.apply(rows),
    "the table Lots is filtered, so new rows could land among hidden ones; clear its filter and try again",
  );
});

test("a table with a row of totals is read and grows without it", async () => {
  const held = book.sheet(lots);
  const [table] = held.tables;
  if (table) {
    table.area = { ...table.area, rows: 5 };
    table.showTotals = true;
  }
  held.cells.set("4,1", { formula: "=SUBTOTAL(109,[Left lb])", value: 160 });
  const host = await openExcelHost();
  expect((await host.readTables())[0]?.rows).toHaveLength(3);
  await host.apply(rows);
  expect((await host.readTables())[0]?.rows[3]).toEqual(["D4", 20, null, 0]);
  expect(held.cells.get("5,1")?.formula).toBe("=SUBTOTAL(109,[Left lb])");
  expect(await host.undo()).toBe("a lot");
  expect((await host.readTables())[0]?.rows).toHaveLength(3);
  expect(held.cells.get("4,1")?.formula).toBe("=SUBTOTAL(109,[Left lb])");
});

test("what stands below a table is never pushed or written over, be it a value or merged cells", async () => {
  book.sheet(lots).cells.set("4,2", { value: "keep me" });
  await refused(
    (host) => host.apply(rows),
    "the table Lots cannot grow by 1 rows: 'Lot''s list'!C5 below it is in use",
  );
  book.sheet(lots).cells.delete("4,2");
  book.sheet(lots).merges.push({ row: 4, column: 0, rows: 1, columns: 3 });
  await refused(
    (host) => host.apply(rows),
    "the table Lots cannot grow by 1 rows",
  );
});

test("what stands further below a table is not moved either", async () => {
  const sentence =
    'the table Lots cannot grow without moving what stands below it on the sheet "Lot\'s list"; put that beside the table or on another sheet';
  book.sheet(lots).cells.set("9,2", { value: "keep me here" });
  await refused((host) => host.apply(rows), sentence);
  book.sheet(lots).cells.delete("9,2");
  book.sheet(lots).merges.push({ row: 9, column: 0, rows: 1, columns: 3 });
  await refused((host) => host.apply(rows), sentence);
  book.sheet(lots).merges.pop();
  book.sheet(lots).cells.set("9,6", { value: "beside the table" });
  const host = await openExcelHost();
  await host.apply(rows);
  expect(book.sheet(lots).cells.get("9,6")?.value).toBe("beside the table");
  book.type(lots, 9, 2, "put here since");
  await expect(host.undo()).rejects.toThrow(
    "the rows added to Lots stay, because taking them out would move what now stands below them",
  );
});

test("a cell under merged cells is not typed in, because what is typed there is lost", async () => {
  await refused(
    (host) => host.setCell({ sheet: settings, row: 0, column: 1 }, "lost"),
    "'Farm settings'!B1 lies under merged cells; what they show is in A1",
  );
  const host = await openExcelHost();
  await host.setCell({ sheet: settings, row: 0, column: 0 }, "Our farm");
  expect(book.sheet(settings).cells.get("0,0")?.value).toBe("Our farm");
});

test("a workbook in another country's Excel gets the same formulas, formats and numbers", async () => {
  const host = await openExcelHost();
  await host.apply({
    ...nothing,
    says: "a sheet",
    addSheets: [
      {
        ...emptySheet("Work"),
        cells: [
          { row: 0, column: 0, value: 1234.5, style: { format: "#,##0.00" } },
          { row: 0, column: 1, value: "1.234,5" },
          { row: 0, column: 2, formula: '=IF(A1>1.5,"a","b")' },
        ],
        validations: [
          {
            area: { row: 1, column: 0, rows: 1, columns: 1 },
            rule: { kind: "number", min: 0.5, max: 1.5 },
          },
        ],
      },
    ],
  });
  const { cells, validations } = book.sheet("Work");
  expect(cells.get("0,0")).toMatchObject({ value: 1234.5, format: "#,##0.00" });
  expect(cells.get("0,1")?.value).toBe("1.234,5");
  expect(cells.get("0,2")?.formula).toBe('=IF(A1>1.5,"a","b")');
  expect(validations[0]?.rule).toEqual({
    decimal: { operator: "Between", formula1: 0.5, formula2: 1.5 },
  });
});

test("a hidden sheet is read and written but not shown", async () => {
  const held: SheetState = book.sheet("Put away");
  const at = { sheet: "Put away", row: 0, column: 0 };
  const host = await openExcelHost();
  await host.setCell(at, 7);
  expect((await host.readCell(at)).value).toBe(7);
  await expect(host.select(at)).rejects.toThrow(
    'the sheet "Put away" is hidden; unhide it to go to A1',
  );
  expect(held.visibility).toBe("Hidden");
  expect(book.state.active).toBe(settings);
});

test("a name of the workbook that is in use is not taken, in whatever case", async () => {
  await refused(
    (host) =>
      host.apply({ ...sheet, names: [{ name: "BULK_price", refersTo: "1" }] }),
    "the name BULK_price is already taken in this workbook",
  );
});

test("an added sheet that is the only one to be seen stays", async () => {
  const host = await openExcelHost();
  await host.apply(sheet);
  for (const held of book.state.sheets)
    if (held.name !== "Totals") held.visibility = "Hidden";
  await expect(host.undo()).rejects.toThrow(
    "the added sheet is the only one left, so it has to stay",
  );
  expect(book.sheetOrNone("Totals")).toBeDefined();
});

test("a formula typed over since it was put in stays, and one that was not gives the cell back", async () => {
  const host = await openExcelHost();
  const at = { sheet: settings, row: 3, column: 0 };
  const putBack = await host.putFormula(at, {
    formula: "=1+1",
    format: "0.00",
  });
  expect(book.sheet(settings).cells.get("3,0")).toMatchObject({
    formula: "=1+1",
    format: "0.00",
  });
  await putBack();
  expect(book.sheet(settings).cells.get("3,0")).toMatchObject({
    value: "0042",
  });
  book.type(settings, 3, 0, "mine");
  await expect(putBack()).rejects.toThrow(
    "Farm settings, A4 has been changed since, so it stays",
  );
});
