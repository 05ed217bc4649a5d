import { explain } from "../../../../src/apps/pane/why/explain";
import type { CellFacts } from "../../../../src/hosts/host";
import type { Cell, Stored, Workbook } from "../../../../src/sheets/workbook";
import { fakeHost } from "../../../support/fake-host";

const plain = {
  tables: [],
  validations: [],
  merges: [],
  widths: {},
  heights: {},
  frozen: { rows: 0, columns: 0 },
};

/** An invented book: a table of lots, and a sheet of labelled figures with a small table of its own. */
const book: Workbook = {
  title: "Invented",
  names: [{ name: "house_brix", refersTo: "Work!$B$1" }],
  sheets: [
    {
      ...plain,
      name: "Lots",
      cells: rows([
        ["Lot", "Received", "Gross lb", "Net lb", "Brix at 68 °F"],
        ["L-1", 46000, 3044, 2912, 66.6],
        ["L-2", 46010, 2000, null, 900],
      ]),
      tables: [
        {
          name: "Lots",
          area: { row: 0, column: 0, rows: 3, columns: 5 },
          columns: [
            "Lot",
            "Received",
            "Gross lb",
            "Net lb",
            "Brix at 68 °F",
          ].map((heading) => ({ heading })),
        },
      ],
    },
    {
      ...plain,
      name: "Work",
      cells: [
        ...rows([
          ["House Brix", 66.9, "°Bx"],
          ["Fill temperature", "185 °F"],
          ["Unit", null],
          ["Drums", 0, { error: "#N/A" }],
          [],
          ["Line", "Rate", "Limit"],
          ["Small pair", 720, "capping"],
        ]),
      ],
    },
  ],
};

function rows(values: readonly (readonly Stored[])[]): Cell[] {
  return values.flatMap((row, r) =>
    row.map((value, column) => ({ row: r, column, value })),
  );
}

async function why(
  facts: Partial<CellFacts> & Pick<CellFacts, "sheet" | "row" | "column">,
): ReturnType<typeof explain> {
  const host = fakeHost(book);
  return explain(
    { ...(await host.readCell(facts)), ...facts },
    {
      host,
      tables: await host.readTables(),
      names: await host.readNames(),
    },
  );
}

const onWork = { sheet: "Work", row: 8, column: 1 };

describe("why a cell of our own function shows what it shows", () => {
  test("the line of arithmetic is worked with the cells' own values", async () => {
    const said = await why({
      ...onWork,
      formula: "=SYRUP.DENSITY(B1,B2)",
      value: 1.28973,
    });
    // 1.28973 kg/L is the model output the function's own example cites.
    expect(said).toMatchObject({
      kind: "formula",
      calls: [{ line: expect.stringContaining("1.28973") }],
    });
  });

  test.each([
    ["a defined name", "=SYRUP.DENSITY(house_brix,B2)"],
    ["a column of the same row", "=SYRUP.DENSITY(66.9,B2)"],
    ["arithmetic", "=SYRUP.DENSITY(B1+0,B2)"],
    ["a blank optional argument", "=SYRUP.DENSITY(B1,B2,B3)"],
    ["a choice by IF", '=SYRUP.DENSITY(IF(B4=0,B1,"none"),B2)'],
    [
      "a look-up by INDEX and MATCH",
      '=SYRUP.DENSITY(INDEX(B1:B4,MATCH("House Brix",A1:A4,0)),B2)',
    ],
  ])("an argument may be %s", async (_, formula) => {
    expect(await why({ ...onWork, formula, value: 1.28973 })).toMatchObject({
      calls: [{ line: expect.stringContaining("1.28973") }],
    });
  });

  test("an argument we cannot work out is shown as its own text, and no line is claimed", async () => {
    const said = await why({
      ...onWork,
      formula: "=SYRUP.DENSITY(SUMPRODUCT(B1:B1,B1:B1),B2)",
      value: 1.3,
    });
    expect(said).toMatchObject({
      calls: [
        {
          args: [
            { text: "SUMPRODUCT(B1:B1,B1:B1)", value: "not read" },
            {},
            {},
          ],
        },
      ],
    });
    expect(said).not.toMatchObject({ calls: [{ line: expect.anything() }] });
  });

  test("a refusal is said in a sentence, with what to type instead and where the value stands", async () => {
    const said = await why({
      ...onWork,
      formula: "=SYRUP.DENSITY(Lots!E3)",
      value: { error: "#N/A" },
    });
    expect(said).toMatchObject({
      problem: expect.stringMatching(/^Brix: 900 .*above 85 °Bx\.$/),
      calls: [
        {
          instead: [expect.stringContaining("from 0 to 85 °Bx")],
          args: [
            { place: { sheet: "Lots", row: 2, column: 4 } },
            { text: "left out", value: "counts as 68 °F" },
            {},
          ],
        },
      ],
    });
  });

  test("the sentence the workbook itself gave counts before our own", async () => {
    const said = await why({
      ...onWork,
      formula: "=SYRUP.DENSITY(900)",
      value: { error: "#N/A" },
      refusal: "brix: 900 is above what the table holds",
    });
    expect(said).toMatchObject({
      problem: "Brix: 900 is above what the table holds.",
    });
  });

  test("a refusal in a branch that was not taken is not held against the cell", async () => {
    const said = await why({
      ...onWork,
      formula: '=IF(B3="","",SYRUP.DENSITY(900))',
      value: "",
    });
    expect(said).toMatchObject({ calls: [] });
  });
});

describe("why a plain formula shows what it shows", () => {
  test("its cells are named as the sheet names them", async () => {
    const said = await why({ ...onWork, formula: "=B1*B4", value: 0 });
    expect(said).toMatchObject({
      words: "“House Brix” × “Drums”",
      uses: [
        { label: "House Brix", value: "66.9", address: "B1" },
        { label: "Drums", value: "0" },
      ],
    });
  });

  test("a cell under a heading is named by its row and its heading", async () => {
    const said = await why({ ...onWork, formula: "=B7/60", value: 12 });
    expect(said).toMatchObject({ uses: [{ label: "Small pair: Rate" }] });
  });

  test("a cell of a table is named by its heading and its row's own name", async () => {
    const said = await why({
      sheet: "Lots",
      row: 1,
      column: 3,
      formula: "=Lots[[#This Row],[Gross lb]]-132",
      value: 2912,
    });
    expect(said).toMatchObject({
      label: "Net lb of L-1",
      words: "“Gross lb of L-1” − 132",
    });
  });

  test("a column with a blank says how many are blank", async () => {
    const said = await why({
      ...onWork,
      formula: "=SUM(Lots[Net lb])",
      value: 2912,
    });
    expect(said).toMatchObject({
      uses: [{ label: "Lots, Net lb", value: "2 cells, 1 of them blank" }],
    });
  });

  test("an error is traced to the cell it comes from", async () => {
    const said = await why({
      ...onWork,
      formula: "=B1*C4",
      value: { error: "#N/A" },
    });
    expect(said).toMatchObject({
      problem: expect.stringMatching(/^The error comes from .*\(C4\)/),
    });
  });

  test("an error that begins here is explained", async () => {
    const said = await why({
      ...onWork,
      formula: "=B1/B4",
      value: { error: "#DIV/0!" },
    });
    expect(said).toMatchObject({
      problem: "It divides by a cell that is zero or blank.",
    });
  });

  test("a formula beyond our reading is shown as it is", async () => {
    const said = await why({ ...onWork, formula: "=SUM({1,2})", value: 3 });
    expect(said).toMatchObject({ formula: "=SUM({1,2})", calls: [], uses: [] });
    expect(said).not.toHaveProperty("words");
  });
});

describe("a cell without a formula", () => {
  test("in a farm-book table says what belongs there and how to type it", async () => {
    expect(await why({ sheet: "Lots", row: 1, column: 4 })).toMatchObject({
      kind: "typed",
      value: "66.6",
      label: "Brix at 68 °F of L-1",
      means: expect.stringContaining("°Bx"),
    });
  });

  test("a day is shown as a day", async () => {
    expect(await why({ sheet: "Lots", row: 1, column: 1 })).toMatchObject({
      value: "2025-12-09",
    });
  });

  test("blank in a table asks for what belongs there; blank elsewhere gives a hint", async () => {
    expect(await why({ sheet: "Lots", row: 2, column: 3 })).toMatchObject({
      kind: "empty",
      hint: expect.stringMatching(/^This cell is blank\. Net/),
    });
    expect(await why({ sheet: "Work", row: 40, column: 9 })).toMatchObject({
      kind: "empty",
      hint: expect.stringContaining("Select a cell"),
    });
  });
});
