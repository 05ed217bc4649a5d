import { sentenceOf } from "../../../src/apps/pane/open-book";
import { openExcelHost } from "../../../src/hosts/excel/excel-host";
import type { Change } from "../../../src/hosts/host";
import { pictureOf } from "../../support/excel-wire/book-state";
import { loadOffice } from "../../support/excel-wire/load-office";
import { openWire } from "../../support/excel-wire/open-wire";
import type { Fault } from "../../support/excel-wire/wire";
import type { WireBook } from "../../support/excel-wire/wire-book";
import { stateOf } from "../../support/excel-wire/workbook-states";
import { emptySheet, richWorkbook } from "../grid/invented-workbook";
import { nothing } from "./generated-sheets";

/** A change with everything that can be left half done: rows in two tables, a sheet with a table, names. */
const change: Change = {
  ...nothing,
  says: "two lots and the sheet “Totals”",
  append: [
    { table: "Lots", rows: [{ Lot: "D4", "Left lb": 20 }, { Lot: "E5" }] },
    { table: "Empty", rows: [{ First: "a", Second: 1 }, { First: "b" }] },
  ],
  fill: [
    {
      sheet: "Farm settings",
      cells: [
        { row: 30, column: 5, value: "Net" },
        { row: 31, column: 5, formula: "=1+2", style: { format: "0.0" } },
      ],
    },
  ],
  addSheets: [
    {
      ...emptySheet("Totals"),
      widths: { 0: 20 },
      frozen: { rows: 1, columns: 0 },
      merges: [{ row: 6, column: 0, rows: 1, columns: 2 }],
      cells: [
        { row: 0, column: 0, value: "Keg", style: { bold: true } },
        { row: 0, column: 1, value: "Worth" },
        { row: 1, column: 0, value: "K1" },
        { row: 1, column: 1, formula: "=SUM(Lots[Worth])", value: 1 },
      ],
      tables: [
        {
          name: "Kegs",
          area: { row: 0, column: 0, rows: 2, columns: 2 },
          columns: [{ heading: "Keg" }, { heading: "Worth" }],
        },
      ],
      validations: [
        {
          area: { row: 1, column: 0, rows: 1, columns: 1 },
          rule: { kind: "list", choices: ["K1", "K2"] },
        },
      ],
    },
  ],
  names: [{ name: "kegs_worth", refersTo: "Totals!$B$2" }],
};

let book: WireBook;

/** The farm's workbook with a table whose one row is blank, in front of Excel. */
function opened(): WireBook {
  const state = stateOf(richWorkbook);
  state.sheets[0]?.tables.push({
    name: "Empty",
    area: { row: 20, column: 0, rows: 2, columns: 2 },
    style: "",
    isFiltered: false,
    showHeaders: true,
    showTotals: false,
  });
  state.sheets[0]?.cells.set("20,0", { value: "First" });
  state.sheets[0]?.cells.set("20,1", { value: "Second" });
  return openWire(state);
}

afterEach(() => expect(book.wire.holes).toEqual([]));

const everything = (): string =>
  JSON.stringify([pictureOf(book.state), book.state.xmlParts]);

/** One request fails; the workbook is either whole or untouched, and the pane has a sentence. */
async function withFault(
  request: number,
  fault: Fault,
): Promise<{ readonly says: string; readonly isUntouched: boolean }> {
  book = opened();
  const host = await openExcelHost();
  const before = everything();
  book.wire.forget();
  book.wire.faultFor = (n) => (n === request ? fault : undefined);
  const says = await host.apply(change).then(() => "whole", sentenceOf);
  return { says, isUntouched: everything() === before };
}

async function actionsOfTheWrite(): Promise<number> {
  book = opened();
  const host = await openExcelHost();
  book.wire.forget();
  await host.apply(change);
  expect(book.wire.requests).toHaveLength(2);
  return book.wire.requests[1]?.actions ?? 0;
}

test("a write that fails at any of its steps leaves the workbook as it was", async () => {
  const actions = await actionsOfTheWrite();
  expect(actions).toBeGreaterThan(50);
  for (let beforeAction = 0; beforeAction < actions; beforeAction += 1) {
    const told = await withFault(2, { code: "GeneralException", beforeAction });
    expect({ beforeAction, ...told }).toEqual({
      beforeAction,
      says: "Excel could not do this (Excel says GeneralException). Nothing was kept of it: the workbook is as it was",
      isUntouched: true,
    });
  }
});

test("a failed write leaves a table's totals as they were", async () => {
  for (let beforeAction = 0; beforeAction < 120; beforeAction += 3) {
    book = opened();
    const held = book.sheet("Lot's list");
    const [table] = held.tables;
    if (table) {
      table.area = { ...table.area, rows: 5 };
      table.showTotals = true;
    }
    held.cells.set("4,1", { formula: "=SUBTOTAL(109,[Left lb])", value: 160 });
    const host = await openExcelHost();
    const before = everything();
    book.wire.forget();
    book.wire.faultFor = (n) =>
      n === 2 ? { code: "GeneralException", beforeAction } : undefined;
    const says = await host.apply(change).then(() => "whole", sentenceOf);
    const total = says === "whole" ? "6,1" : "4,1";
    expect(held.cells.get(total)?.formula).toBe("=SUBTOTAL(109,[Left lb])");
    if (says !== "whole") expect(everything()).toBe(before);
  }
});

test("an answer that is lost after the write was done leaves the workbook as it was", async () => {
  const { says, isUntouched } = await withFault(2, { code: "RequestAborted" });
  expect(isUntouched).toBe(true);
  expect(says).toMatch(/^Excel did not answer; .*the workbook is as it was$/);
});

test("a reading that fails before the write changes nothing", async () => {
  const { says, isUntouched } = await withFault(1, {
    code: "InvalidOperationInCellEditMode",
    beforeAction: 0,
  });
  expect(isUntouched).toBe(true);
  expect(says).toBe(
    "A cell is still being typed in; finish it with Enter or leave it with Esc, then try again (Excel says InvalidOperationInCellEditMode)",
  );
});

test("every refusal Excel knows ends in a sentence and an untouched workbook, in the reading and in the write", async () => {
  const codes = Object.values(loadOffice().Excel.ErrorCodes).map(String);
  expect(codes.length).toBeGreaterThan(20);
  for (const code of codes)
    for (const request of [1, 2]) {
      const { says, isUntouched } = await withFault(request, {
        code,
        beforeAction: 20,
      });
      expect({ code, request, isUntouched }).toEqual({
        code,
        request,
        isUntouched: true,
      });
      expect(says).toContain(`(Excel says ${code})`);
      expect(says).toMatch(/^[A-Z][^.]+ \(Excel says \w+\)/);
    }
});

test("the taking back is tried again while Excel is busy", async () => {
  book = opened();
  const host = await openExcelHost();
  const before = everything();
  book.wire.forget();
  book.wire.faultFor = (n) =>
    n === 2
      ? { code: "GeneralException", beforeAction: 40 }
      : n === 3
        ? { code: "ServiceNotAvailable", beforeAction: 0 }
        : undefined;
  await expect(host.apply(change)).rejects.toThrow("the workbook is as it was");
  expect(everything()).toBe(before);
});

test("when Excel is gone for good the pane says what may be left, and says so again when it is next opened", async () => {
  book = opened();
  const host = await openExcelHost();
  book.wire.forget();
  book.wire.faultFor = (n) =>
    n >= 2
      ? { code: "ServiceNotAvailable", beforeAction: n === 2 ? 45 : 0 }
      : undefined;
  const left =
    "look for the sheet “Totals”, 2 rows at the end of Lots, 2 rows at the end of Empty, the cells 'Farm settings'!F31:F32, names from kegs_worth on";
  await expect(host.apply(change)).rejects.toThrow(
    `Part of two lots and the sheet “Totals” may be left in the workbook, because Excel did not let it be taken out either: ${left}`,
  );
  book.wire.faultFor = () => undefined;
  const again = await openExcelHost();
  expect(again.inExcel.unfinished).toBe(
    `two lots and the sheet “Totals” may be half written from before: ${left}`,
  );
});

test("a failed taking back leaves the sheet and the way to take it back later", async () => {
  book = opened();
  const host = await openExcelHost();
  const before = JSON.stringify(pictureOf(book.state));
  await host.apply(change);
  const after = everything();
  book.wire.forget();
  book.wire.faultFor = (n) =>
    n === 1 ? { code: "GeneralException", beforeAction: 0 } : undefined;
  await expect(host.undo()).rejects.toThrow("Excel could not do this");
  expect(everything()).toBe(after);
  book.wire.faultFor = () => undefined;
  expect(await host.undo()).toBe(change.says);
  expect(JSON.stringify(pictureOf(book.state))).toBe(before);
});

test("slow answers and a person who goes to other sheets meanwhile change nothing about what is written where", async () => {
  book = opened();
  const host = await openExcelHost();
  await host.apply(change);
  const straight = everything();

  book = opened();
  const slow = await openExcelHost();
  let turn = 0;
  book.wire.meanwhile = async () => {
    await new Promise((resolve) => setTimeout(resolve, 20));
    turn += 1;
    book.select(turn % 2 ? "Lot's list" : "Farm settings", {
      row: turn,
      column: 1,
      rows: 1,
      columns: 1,
    });
  };
  await slow.apply(change);
  expect(everything()).toBe(straight);
});

test("two writes asked for at once are done one after the other", async () => {
  book = opened();
  const host = await openExcelHost();
  book.wire.meanwhile = () =>
    new Promise((resolve) => setTimeout(resolve, Math.random() * 20));
  const one = (Lot: string): Promise<void> =>
    host.apply({
      ...nothing,
      says: Lot,
      append: [{ table: "Lots", rows: [{ Lot }] }],
    });
  await Promise.all(["D4", "E5", "F6"].map(one));
  const table = (await host.readTables()).find(({ name }) => name === "Lots");
  expect(table?.rows.slice(3).map(([lot]) => lot)).toEqual(["D4", "E5", "F6"]);
  for (const lot of ["F6", "E5", "D4"]) expect(await host.undo()).toBe(lot);
});

test("a table somebody deletes between reading and writing is said to be gone, and nothing else is lost", async () => {
  book = opened();
  const host = await openExcelHost();
  book.wire.forget();
  book.wire.meanwhile = (n) => {
    if (n === 2) book.sheet("Lot's list").tables.length = 0;
  };
  await expect(host.apply(change)).rejects.toThrow(
    "Something this needs is no longer in the workbook; it may have been renamed or deleted just now",
  );
  expect(book.sheetOrNone("Totals")).toBeUndefined();
  expect(book.state.names.map(({ name }) => name)).not.toContain("kegs_worth");
});

test("a write that is done stays done when Excel no longer says how far its calculation is", async () => {
  book = opened();
  const host = await openExcelHost();
  book.state.calculationState = "Calculating";
  book.wire.forget();
  book.wire.faultFor = (n) =>
    n >= 3 ? { code: "ServiceNotAvailable", beforeAction: 0 } : undefined;
  await host.apply(change);
  expect(book.sheetOrNone("Totals")).toBeDefined();
});

test("rows that Excel leaves out of their table are noticed, and all of them are taken out again", async () => {
  book = opened();
  const host = await openExcelHost();
  const before = everything();
  book.state.rowsTaken = 1;
  await expect(host.apply(change)).rejects.toThrow(
    "Excel left 1 of the rows out of the table Lots. Nothing was kept of it: the workbook is as it was",
  );
  expect(everything()).toBe(before);
});

test("a cell is waited for until Excel has worked out what follows from it", async () => {
  book = opened();
  const host = await openExcelHost();
  book.state.calculationState = "Calculating";
  let done = false;
  book.wire.forget();
  book.wire.meanwhile = (n) => {
    if (n === 4) book.state.calculationState = "Done";
  };
  const write = host
    .setCell({ sheet: "Lot's list", row: 1, column: 1 }, 40)
    .then(() => {
      done = true;
    });
  await new Promise((resolve) => setTimeout(resolve, 60));
  expect(done).toBe(false);
  await write;
  expect(book.wire.requests).toHaveLength(4);
});
