import {
  openHeadless,
  type HeadlessHost,
} from "../../../src/hosts/grid/open-headless";
import type { CellFacts, Change } from "../../../src/hosts/host";
import type { Workbook } from "../../../src/sheets/workbook";
import {
  bookOf,
  emptySheet,
  richWorkbook,
  standIns,
} from "./invented-workbook";

let host: HeadlessHost;
const open = async (workbook: Workbook): Promise<HeadlessHost> => {
  host = await openHeadless(workbook, standIns);
  return host;
};
afterEach(() => host.dispose());

const nothing: Change = { says: "", append: [], addSheets: [], names: [] };
const lots = "Lot's list";

describe("a workbook open in the engine", () => {
  test("is read back as the same workbook after the engine has had it", async () => {
    await open(richWorkbook);
    expect(host.currentWorkbook()).toEqual(richWorkbook);
  });

  test("tells its sheets, names and tables with results in place of formulas", async () => {
    await open(richWorkbook);
    expect(await host.sheetNames()).toEqual(
      richWorkbook.sheets.map((s) => s.name),
    );
    expect(await host.readNames()).toEqual(richWorkbook.names);
    expect(await host.readTables()).toEqual([
      {
        name: "Lots",
        sheet: lots,
        row: 0,
        column: 0,
        headings: ["Lot", "Left lb", "Price per lb", "Worth"],
        rows: [
          ["A1", 100, 2.5, 250],
          ["B2", 50, 3.25, 162.5],
          ["C3", 10, 1.1, 11],
        ],
      },
    ]);
  });

  test("works out what follows from a typed value before it says it is done", async () => {
    await open(richWorkbook);
    await host.setCell({ sheet: lots, row: 1, column: 1 }, 40);
    expect(await host.readArea(lots, 1, 0, 1, 4)).toEqual([
      ["A1", 40, 2.5, 100],
    ]);
    await host.setCell({ sheet: lots, row: 1, column: 1 }, null);
    expect(await host.readArea(lots, 1, 1, 1, 3)).toEqual([[null, 2.5, 0]]);
    await host.setCell({ sheet: lots, row: 1, column: 0 }, "=1+1");
    expect(await host.readCell({ sheet: lots, row: 1, column: 0 })).toEqual({
      sheet: lots,
      row: 1,
      column: 0,
      value: "=1+1",
    });
  });

  test("refuses to type over a formula and to read a sheet that is not there", async () => {
    await open(richWorkbook);
    await expect(
      host.setCell({ sheet: lots, row: 1, column: 3 }, 5),
    ).rejects.toThrow(
      "'Lot''s list'!D2 holds a formula and is no cell to type in",
    );
    await expect(
      host.readCell({ sheet: "Lost", row: 0, column: 0 }),
    ).rejects.toThrow('there is no sheet "Lost"');
  });

  test("a refusal's sentence comes with the cell and goes when the cell calculates well", async () => {
    await open(
      bookOf([{ row: 0, column: 1, formula: "=SYRUP.SHARE_LEFT(A1)" }]),
    );
    const at = { sheet: "Work", row: 0, column: 1 };
    expect(await host.readCell(at)).toEqual({
      ...at,
      formula: "=SYRUP.SHARE_LEFT(A1)",
      value: { error: "#VALUE!" },
      refusal: "needs tare",
    });
    const heard: CellFacts[] = [];
    const stop = host.watchSelection((facts) => heard.push(facts));
    await host.select(at);
    await host.setCell({ ...at, column: 0 }, 2000);
    await host.setCell({ ...at, column: 0 }, 12);
    stop();
    await host.setCell({ ...at, column: 0 }, 13);
    expect(heard.map((f) => [f.value, f.refusal])).toEqual([
      [{ error: "#VALUE!" }, "needs tare"],
      [{ error: "#N/A" }, "tare: 2000 lb is beyond the scale"],
      [12, undefined],
    ]);
  });

  test("formulas that read a spilled answer follow it when it shrinks", async () => {
    await open(
      bookOf([
        { row: 0, column: 0, value: 5 },
        { row: 0, column: 1, formula: "=SYRUP.LADDER(A1)" },
        { row: 0, column: 5, formula: "=SUM(B1:B9)" },
        { row: 1, column: 5, formula: "=B5+0" },
      ]),
    );
    expect(await host.readArea("Work", 0, 5, 2, 1)).toEqual([[15], [5]]);
    await host.setCell({ sheet: "Work", row: 0, column: 0 }, 2);
    expect(await host.readArea("Work", 0, 5, 2, 1)).toEqual([[3], [0]]);
    expect(await host.readArea("Work", 0, 1, 3, 2)).toEqual([
      [1, "step 1"],
      [2, "step 2"],
      [null, null],
    ]);
  });

  test("a formula that comes to need its own result is an error with a sentence", async () => {
    await open(
      bookOf([
        { row: 0, column: 0, formula: "=B1+1" },
        { row: 0, column: 1, formula: "=A1" },
      ]),
    );
    expect(
      await host.readCell({ sheet: "Work", row: 0, column: 0 }),
    ).toMatchObject({
      value: { error: "#VALUE!" },
      refusal:
        "A1 needs its own result, so it has no answer: A1 needs B1 needs A1",
    });
  });
});

describe("typing at the edges of a table", () => {
  const book: Workbook = {
    ...richWorkbook,
    names: [{ name: "left_over", refersTo: "SUM(Lots[Left lb])" }],
    sheets: richWorkbook.sheets.map((sheet) => ({
      ...sheet,
      validations:
        sheet.name === lots
          ? [
              {
                area: { row: 1, column: 1, rows: 3, columns: 1 },
                rule: { kind: "number", min: 0 },
              },
            ]
          : [],
      cells: [
        ...sheet.cells,
        ...(sheet.name === lots
          ? [{ row: 0, column: 8, formula: "=SUM(Lots[Left lb])+left_over" }]
          : []),
      ],
    })),
  };

  test("a row typed just below belongs to the table, with its formula and rule", async () => {
    await open(book);
    await host.setCell({ sheet: lots, row: 4, column: 1 }, 7);
    await host.setCell({ sheet: lots, row: 4, column: 2 }, 3);
    expect((await host.readTables())[0]?.rows[3]).toEqual([null, 7, 3, 21]);
    expect(await host.readArea(lots, 0, 8, 1, 1)).toEqual([[2 * 167]]);
    expect(host.currentWorkbook().sheets[1]?.validations[0]?.area.rows).toBe(4);
  });

  test("a row that is emptied again is given up", async () => {
    await open(book);
    await host.setCell({ sheet: lots, row: 4, column: 1 }, 7);
    await host.setCell({ sheet: lots, row: 4, column: 1 }, null);
    expect((await host.readTables())[0]?.rows).toHaveLength(3);
    expect(await host.readArea(lots, 4, 3, 1, 1)).toEqual([[null]]);
  });

  test("a heading typed over is the column's new name in formulas and names", async () => {
    await open(book);
    await host.setCell({ sheet: lots, row: 0, column: 1 }, "Stock lb");
    await host.setCell({ sheet: lots, row: 1, column: 1 }, 200);
    const [table] = await host.readTables();
    expect(table?.headings[1]).toBe("Stock lb");
    expect(table?.rows[0]?.[3]).toBe(500);
    expect(
      await host.readCell({ sheet: lots, row: 0, column: 8 }),
    ).toMatchObject({
      formula: "=SUM(Lots[Stock lb])+left_over",
      value: 2 * 260,
    });
    expect(await host.readNames()).toEqual([
      { name: "left_over", refersTo: "SUM(Lots[Stock lb])" },
    ]);
    const now = host.currentWorkbook().sheets[1];
    expect(now?.tables[0]?.columns.map((c) => c.heading)).toEqual([
      "Lot",
      "Stock lb",
      "Price per lb",
      "Worth",
    ]);
    expect(now?.tables[0]?.columns[3]?.formula).toBe(
      "=Lots[[#This Row],[Stock lb]]*Lots[[#This Row],[Price per lb]]",
    );
  });

  test.each([[null], ["lot"], ["Left [lb]"]])(
    "the heading %j cannot be used and is put back",
    async (heading) => {
      await open(book);
      await host.setCell({ sheet: lots, row: 0, column: 1 }, heading);
      expect((await host.readTables())[0]?.headings[1]).toBe("Left lb");
      expect(host.currentWorkbook().sheets[1]?.cells[1]?.value).toBe("Left lb");
    },
  );
});

describe("a change", () => {
  const change: Change = {
    ...nothing,
    says: "two lots and a sheet of totals",
    append: [
      {
        table: "lots",
        rows: [{ Lot: "D4", "left lb": 20, "Price per lb": 2 }, { Lot: "E5" }],
      },
    ],
    addSheets: [
      {
        ...emptySheet("Totals"),
        cells: [
          { row: 0, column: 0, value: 3 },
          { row: 0, column: 1, formula: "=SUM(Lots[Worth])*times" },
        ],
      },
    ],
    names: [{ name: "times", refersTo: "Totals!$A$1" }],
  };

  test("grows the table with its formulas, looks and validations, and is taken back as one", async () => {
    const before: Workbook = {
      ...richWorkbook,
      sheets: richWorkbook.sheets.map((sheet) =>
        sheet.name === lots
          ? {
              ...sheet,
              validations: [
                {
                  area: { row: 1, column: 1, rows: 3, columns: 1 },
                  rule: { kind: "number", min: 0 },
                },
              ],
            }
          : sheet,
      ),
    };
    await open(before);
    await host.apply(change);
    const [table] = await host.readTables();
    expect(table?.rows.slice(3)).toEqual([
      ["D4", 20, 2, 40],
      ["E5", null, null, 0],
    ]);
    expect(await host.readArea("Totals", 0, 1, 1, 1)).toEqual([
      [(250 + 162.5 + 11 + 40) * 3],
    ]);
    const grown = host.currentWorkbook().sheets[1];
    expect(grown?.cells.find((c) => c.row === 5 && c.column === 3)).toEqual({
      row: 5,
      column: 3,
      formula: "=Lots[[#This Row],[Left lb]]*Lots[[#This Row],[Price per lb]]",
      value: 0,
      style: { format: "0.00" },
    });
    expect(grown?.validations[0]?.area.rows).toBe(5);

    expect(await host.undo()).toBe("two lots and a sheet of totals");
    expect(host.currentWorkbook()).toEqual(before);
    expect(await host.undo()).toBeUndefined();
  });

  test("what was typed elsewhere since stays when the change is taken back", async () => {
    await open(richWorkbook);
    await host.apply(change);
    await host.setCell({ sheet: lots, row: 1, column: 1 }, 1);
    await host.undo();
    expect((await host.readTables())[0]?.rows).toEqual([
      ["A1", 1, 2.5, 2.5],
      ["B2", 50, 3.25, 162.5],
      ["C3", 10, 1.1, 11],
    ]);
    expect(await host.sheetNames()).not.toContain("Totals");
  });

  test("typed-over rows stay, with a sentence, and nothing is half taken back", async () => {
    await open(richWorkbook);
    await host.apply(change);
    await host.setCell({ sheet: lots, row: 4, column: 1 }, 21);
    await expect(host.undo()).rejects.toThrow(
      "the rows added to Lots have been changed since, so they stay",
    );
    expect(await host.sheetNames()).toContain("Totals");
  });

  test.each([
    [
      { addSheets: [emptySheet("farm SETTINGS")] },
      'there is already a sheet "farm SETTINGS"',
    ],
    [
      { names: [{ name: "Bulk_Price", refersTo: "1" }] },
      "the name Bulk_Price is already taken in this workbook",
    ],
    [
      { append: [{ table: "Kegs", rows: [{ Lot: "A" }] }] },
      "there is no table Kegs in this workbook",
    ],
    [
      { append: [{ table: "Lots", rows: [{ Weight: 3 }] }] },
      'the table Lots has no column "Weight"',
    ],
  ])("is refused as a whole: %#", async (wrong, sentence) => {
    await open(richWorkbook);
    await expect(host.apply({ ...change, ...wrong })).rejects.toThrow(sentence);
    expect(host.currentWorkbook()).toEqual(richWorkbook);
  });
});
