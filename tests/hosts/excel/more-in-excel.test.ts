import { openExcelHost } from "../../../src/hosts/excel/excel-host";
import type { CellFacts } from "../../../src/hosts/host";
import type { Area, Chart } from "../../../src/sheets/workbook";
import { pictureOf } from "../../support/excel-wire/book-state";
import { openWire } from "../../support/excel-wire/open-wire";
import type { WireBook } from "../../support/excel-wire/wire-book";
import { stateOf } from "../../support/excel-wire/workbook-states";
import { bookOf, emptySheet, richWorkbook } from "../grid/invented-workbook";
import { nothing } from "./generated-sheets";

let book: WireBook;
beforeEach(() => {
  book = openWire(stateOf(richWorkbook));
});
afterEach(() => expect(book.wire.holes).toEqual([]));

const totals = {
  ...nothing,
  says: "the sheet “Totals”",
  addSheets: [
    { ...emptySheet("Totals"), cells: [{ row: 0, column: 0, value: 3 }] },
  ],
};

describe("what is kept with the workbook", () => {
  test("settings come back as they were saved, in a part with our own namespace", async () => {
    const host = await openExcelHost();
    expect(await host.inExcel.readSettings()).toEqual({});
    const settings = {
      unit: 'gal <US> & "lb"',
      rows: 12,
      tips: false,
      x: null,
    };
    await host.inExcel.saveSettings(settings);
    expect(book.state.xmlParts).toHaveLength(1);
    expect(book.state.xmlParts[0]?.xml).toMatch(
      /^<kept xmlns="urn:tare-and-tally:kept-with-the-workbook" version="1">/,
    );
    const again = await openExcelHost();
    expect(await again.inExcel.readSettings()).toEqual(settings);
  });

  test("Excel may write the part anew, with a declaration, character references or a CDATA section", async () => {
    const host = await openExcelHost();
    await host.inExcel.saveSettings({ unit: "a<b" });
    const [part] = book.state.xmlParts;
    const xml = part?.xml ?? "";
    for (const written of [
      `<?xml version="1.0"?>\n${xml.replace(/"(?=[^>]*$)/g, "&#x22;")}`,
      xml
        .replace(/>\{/, "><![CDATA[{")
        .replace(/\}<\/kept>/, "}]]></kept>")
        .replace("&lt;", "<"),
    ]) {
      if (part) part.xml = written;
      expect(await host.inExcel.readSettings()).toEqual({ unit: "a<b" });
    }
  });

  test("a damaged part counts as nothing kept; one of a newer version is left alone", async () => {
    const host = await openExcelHost();
    await host.inExcel.saveSettings({ unit: "gal" });
    const [part] = book.state.xmlParts;
    const good = part?.xml ?? "";
    if (part) part.xml = good.replace("settings", "settinks");
    expect(await host.inExcel.readSettings()).toEqual({});

    const newer = good.replace('version="1"', 'version="2"');
    if (part) part.xml = newer;
    await expect(host.inExcel.saveSettings({ unit: "L" })).rejects.toThrow(
      "A newer Tare & Tally has kept its settings in this workbook",
    );
    if (part) part.xml = good;
    book.state.xmlParts.push({ id: "{copied}", xml: good });
    await expect(host.inExcel.saveSettings({ unit: "L" })).rejects.toThrow(
      "or they are there twice; they stay as they are",
    );
    book.state.xmlParts.pop();
    if (part) part.xml = newer;
    await host.apply(totals);
    expect(await host.undo()).toBe(totals.says);
    expect(part?.xml).toBe(newer);
  });

  test("a write can be taken back after the pane was closed and opened again, but not what was typed over", async () => {
    const before = JSON.stringify(pictureOf(book.state));
    await (await openExcelHost()).apply(totals);
    expect(await (await openExcelHost()).undo()).toBe(totals.says);
    expect(JSON.stringify(pictureOf(book.state))).toBe(before);

    await (await openExcelHost()).apply(totals);
    book.type("Totals", 4, 4, "mine");
    await expect((await openExcelHost()).undo()).rejects.toThrow(
      'the sheet "Totals" has been typed in since it was added, so it stays',
    );
  });
});

describe("a chart", () => {
  const chart: Chart = {
    kind: "columns",
    title: "Lots",
    says: "What is left of each lot",
    categories: "'Lot''s list'!$A$2:$A$4",
    series: [
      { name: "Left", values: "'Lot''s list'!$B$2:$B$4", color: "#5b3a21" },
    ],
    area: { row: 6, column: 0, rows: 10, columns: 4 },
  };

  test("is put where it is meant to be", async () => {
    const host = await openExcelHost();
    await host.inExcel.addChart("Lot's list", chart);
    expect(book.sheet("Lot's list").charts).toMatchObject([
      { title: "Lots", from: "'Lot''s list'!A7", to: "'Lot''s list'!D16" },
    ]);
  });

  test("is not put on a protected sheet, nor left there half drawn", async () => {
    const host = await openExcelHost();
    const held = book.sheet("Lot's list");
    book.wire.forget();
    book.wire.faultFor = (n) =>
      n === 2 ? { code: "GeneralException", beforeAction: 20 } : undefined;
    await expect(host.inExcel.addChart("Lot's list", chart)).rejects.toThrow(
      "Excel could not do this",
    );
    expect(held.charts).toEqual([]);
    book.wire.faultFor = () => undefined;
    held.isProtected = true;
    await expect(host.inExcel.addChart("Lot's list", chart)).rejects.toThrow(
      "is protected, so no chart can be put on it",
    );
  });
});

describe("a file", () => {
  const file = Buffer.from("Cost P250\nFarm settings");

  test("is opened as a workbook of its own, and this one stays as it is", async () => {
    const host = await openExcelHost();
    const before = JSON.stringify(pictureOf(book.state));
    await host.inExcel.openAsNewWorkbook(file);
    expect(book.state.opened).toEqual([file.toString("base64")]);
    expect(JSON.stringify(pictureOf(book.state))).toBe(before);
  });

  test("gives its sheets after our own, under the names Excel gives them", async () => {
    const host = await openExcelHost();
    expect(await host.inExcel.insertSheets(file)).toEqual([
      "Cost P250",
      "Farm settings (2)",
    ]);
  });

  test("gives no sheets to an Excel that cannot take them", async () => {
    book = openWire(stateOf(richWorkbook), { api: "1.12" });
    const host = await openExcelHost();
    await expect(host.inExcel.insertSheets(file)).rejects.toThrow(
      "This Excel cannot take in sheets from a file",
    );
  });
});

test("repair enters our formulas anew, and those only", async () => {
  book = openWire(
    stateOf(
      bookOf([
        { row: 0, column: 0, formula: "=SYRUP.DENSITY(B1)", value: 1 },
        { row: 1, column: 0, formula: "=_xldudf_SYRUP_DENSITY(B2)", value: 1 },
        { row: 2, column: 0, formula: "=SUM(B1:B2)", value: 132 },
        { row: 3, column: 0, value: "=SYRUP.DENSITY(B1) as text" },
        { row: 0, column: 2, formula: "=ROUND(SYRUP.DENSITY(B1),2)", value: 1 },
      ]),
    ),
  );
  const sheet = book.sheet("Work");
  const entered: string[] = [];
  book.state.result = (_, row, column) => {
    entered.push(`${row},${column}`);
    return undefined;
  };
  const host = await openExcelHost();
  book.wire.forget();
  entered.length = 0;
  book.wire.meanwhile = (n) => {
    if (n === 3) entered.length = 0;
  };
  expect(await host.inExcel.repair()).toEqual({ formulas: 3, leftAlone: [] });
  expect(book.wire.requests).toHaveLength(3);
  // Each was entered once; what follows are the results asked for after the request.
  expect(entered.slice(0, 3).sort()).toEqual(["0,0", "0,2", "1,0"]);
  expect(sheet.cells.get("3,0")?.value).toBe("=SYRUP.DENSITY(B1) as text");
  sheet.isProtected = true;
  expect(await host.inExcel.repair()).toEqual({
    formulas: 0,
    leftAlone: ["Work"],
  });
});

describe("what the user does", () => {
  test("the selected cell is told now, with its rectangle, and again when it changes", async () => {
    const host = await openExcelHost();
    const heard: (readonly [CellFacts, Area])[] = [];
    const stop = host.watchSelection((...told) => void heard.push(told));
    await until(() => heard.length === 1);
    book.select("Lot's list", { row: 1, column: 3, rows: 2, columns: 1 });
    await until(() => heard.length === 2);
    book.type("Lot's list", 1, 3, 5);
    await until(() => heard.length === 3);
    stop();
    book.select("Farm settings", { row: 0, column: 0, rows: 1, columns: 1 });
    await new Promise((resolve) => setTimeout(resolve, 20));
    const work =
      "=Lots[[#This Row],[Left lb]]*Lots[[#This Row],[Price per lb]]";
    const at = { sheet: "Lot's list", row: 1, column: 3 };
    expect(heard).toEqual([
      [
        { sheet: "Farm settings", row: 0, column: 0, value: "Farm settings" },
        { row: 0, column: 0, rows: 1, columns: 1 },
      ],
      [
        { ...at, value: 250, formula: work },
        { row: 1, column: 3, rows: 2, columns: 1 },
      ],
      [
        { ...at, value: 5 },
        { row: 1, column: 3, rows: 2, columns: 1 },
      ],
    ]);
  });

  test("an edit is heard of, a selection is not one", async () => {
    const host = await openExcelHost();
    let edits = 0;
    const stop = host.onEdit(() => {
      edits += 1;
    });
    await host.listening();
    book.select("Lot's list", { row: 1, column: 1, rows: 1, columns: 1 });
    book.type("Lot's list", 1, 1, 40);
    await until(() => edits === 1);
    stop();
    book.type("Lot's list", 1, 1, 41);
    await new Promise((resolve) => setTimeout(resolve, 10));
    expect(edits).toBe(1);
  });
});

async function until(isSo: () => boolean): Promise<void> {
  for (let i = 0; i < 100 && !isSo(); i += 1)
    await new Promise((resolve) => setTimeout(resolve, 5));
}

test("everything the pane does works in the oldest Excel that is allowed, which refuses whatever came later", async () => {
  book = openWire(stateOf(richWorkbook), { api: "1.9" });
  const host = await openExcelHost();
  const at = { sheet: "Farm settings", row: 3, column: 4 };
  const before = JSON.stringify(pictureOf(book.state));
  await host.readTables();
  await host.readNames();
  await host.readArea("Lot's list", 0, 0, 2, 2);
  await host.apply({
    ...totals,
    append: [{ table: "Lots", rows: [{ Lot: "D4" }] }],
    names: [{ name: "times", refersTo: "Totals!$A$1" }],
    addSheets: totals.addSheets.map((sheet) => ({
      ...sheet,
      print: { paper: "a4", landscape: false, fit: "one page" } as const,
    })),
  });
  await host.undo();
  await host.setCell({ ...at, column: 5 }, 1);
  await host.setCell({ ...at, column: 5 }, null);
  const putBack = await host.putFormula(at, { formula: "=1+1" });
  await putBack();
  await host.select({ ...at, row: 0, column: 0 });
  const heard: CellFacts[] = [];
  const stop = host.watchSelection((facts) => void heard.push(facts));
  await until(() => heard.length === 1);
  stop();
  await host.inExcel.repair();
  await host.inExcel.openAsNewWorkbook(Buffer.from("x"));
  expect(JSON.stringify(pictureOf(book.state))).toBe(before);
  await host.inExcel.saveSettings({ unit: "L" });
  await host.inExcel.addChart("Lot's list", {
    kind: "lines",
    title: "Lots",
    says: "What is left of each lot",
    categories: "'Lot''s list'!$A$2:$A$4",
    series: [
      { name: "Left", values: "'Lot''s list'!$B$2:$B$4", color: "#5b3a21" },
    ],
    area: { row: 6, column: 0, rows: 10, columns: 4 },
  });
  expect(host.inExcel.missing).toHaveLength(3);
});

test("questions asked at once travel together, and a wrong one takes no other with it", async () => {
  const host = await openExcelHost();
  book.wire.forget();
  const [names, wrong, gone, facts] = await Promise.allSettled([
    host.readNames(),
    host.readArea("Lot's list", -1, 0, 1, 1),
    host.readArea("Lost", 0, 0, 1, 1),
    host.readCell({ sheet: "Lot's list", row: 1, column: 1 }),
  ]);
  expect(names).toMatchObject({ status: "fulfilled" });
  expect(wrong).toMatchObject({
    reason: { message: "Excel could not do this (Excel says InvalidArgument)" },
  });
  expect(gone).toMatchObject({
    reason: { message: 'there is no sheet "Lost"' },
  });
  expect(facts).toMatchObject({ status: "fulfilled", value: { value: 100 } });
  expect(book.wire.requests).toHaveLength(5);
});

test("two thousand five hundred rows go in as portions no Excel loses rows of, in one request", async () => {
  const host = await openExcelHost();
  book.wire.forget();
  await host.apply({
    ...nothing,
    says: "many lots",
    append: [
      {
        table: "Lots",
        rows: Array.from({ length: 2500 }, (_, i) => ({ Lot: `L${i}` })),
      },
    ],
  });
  expect(book.wire.requests).toHaveLength(2);
  expect(book.sheet("Lot's list").tables[0]?.area.rows).toBe(2504);
  expect(book.sheet("Lot's list").cells.get("2503,0")?.value).toBe("L2499");
  expect(await host.undo()).toBe("many lots");
  expect(book.sheet("Lot's list").tables[0]?.area.rows).toBe(4);
});
