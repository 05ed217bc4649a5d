import { plannedSheet } from "../../../src/apps/pane/price/build";
import type { CellFacts, Change, Host } from "../../../src/hosts/host";
import type { Workbook } from "../../../src/sheets/workbook";
import { demoProducts, demoWorkbook } from "../../support/demo-workbook";
import { emptySheet, richWorkbook } from "../grid/invented-workbook";
import { comparable, hostKinds, type Opened } from "./three-hosts";

/**
 * One contract for the port, kept by all hosts: the same things done by the pane leave the same cells. Results count
 * where a host calculates; the file's host keeps those it read. Excel stands behind the real client library, and takes
 * its results from the grid.
 */
interface Told {
  readonly workbook: Workbook;
  readonly answers: readonly unknown[];
}

async function onEveryHost(
  workbook: Workbook,
  act: (host: Host) => Promise<readonly unknown[]>,
): Promise<
  readonly (Told & { readonly name: string; readonly calculates: boolean })[]
> {
  const told = [];
  for (const kind of hostKinds) {
    const opened: Opened = await kind.open(
      workbook,
      told.filter((t) => t.calculates).map((t) => t.workbook),
    );
    try {
      const answers = await act(opened.host);
      told.push({ ...kind, answers, workbook: await opened.workbook() });
    } finally {
      opened.close();
    }
  }
  return told;
}

/** The same cells everywhere, and the same answers where the answers do not hang on a calculation. */
async function agree(
  workbook: Workbook,
  act: (host: Host) => Promise<readonly unknown[]>,
): Promise<Told> {
  const [grid, ...others] = await onEveryHost(workbook, act);
  if (!grid) throw new Error("there is no host");
  for (const other of others) {
    const results = other.calculates;
    expect({
      host: other.name,
      book: comparable(other.workbook, { results }),
      answers: results ? other.answers : [],
    }).toEqual({
      host: other.name,
      book: comparable(grid.workbook, { results }),
      answers: results ? grid.answers : [],
    });
  }
  return grid;
}

const refusal = (work: Promise<unknown>): Promise<string> =>
  work.then(
    () => "done",
    (problem: unknown) => (problem as Error).message,
  );

/** What every host can hold; a list in a file or in Excel holds no choice with a comma. */
const book: Workbook = {
  ...richWorkbook,
  sheets: richWorkbook.sheets.map((sheet) => ({
    ...sheet,
    validations: sheet.validations.map((validation) =>
      validation.rule.kind === "list"
        ? { ...validation, rule: { kind: "list", choices: ["Amber", "Dark"] } }
        : validation,
    ),
  })),
};
const lots = "Lot's list";
const nothing: Change = { says: "", append: [], addSheets: [], names: [] };
const change: Change = {
  ...nothing,
  says: "two lots and a sheet of totals",
  append: [
    {
      table: "lots",
      rows: [{ Lot: "0042", "left lb": 20, "Price per lb": 2 }, { Lot: "E5" }],
    },
  ],
  addSheets: [
    {
      ...emptySheet("Totals"),
      widths: { 0: 20 },
      heights: { 0: 24 },
      frozen: { rows: 1, columns: 0 },
      tabColor: "#4a2c17",
      cells: [
        { row: 0, column: 0, value: 3, style: { bold: true } },
        { row: 0, column: 1, formula: "=SUM(Lots[Worth])*times" },
        { row: 1, column: 0, value: "3/4 full", style: { format: "0.0" } },
        { row: 1, column: 1, value: "=no formula" },
        { row: 2, column: 0, value: true },
      ],
      tables: [
        {
          name: "Kegs",
          area: { row: 4, column: 0, rows: 2, columns: 2 },
          columns: [{ heading: "Keg" }, { heading: "Left 2026" }],
        },
      ],
    },
  ],
  names: [{ name: "times", refersTo: "Totals!$A$1" }],
};
const withTable: Change = {
  ...change,
  addSheets: change.addSheets.map((sheet) => ({
    ...sheet,
    cells: [
      ...sheet.cells,
      { row: 4, column: 0, value: "Keg" },
      { row: 4, column: 1, value: "Left 2026" },
      { row: 5, column: 0, value: "K1" },
      { row: 5, column: 1, value: 12 },
    ],
  })),
};

test("a workbook is told alike: its sheets, names, tables, cells and areas", async () => {
  const { answers } = await agree(book, async (host) => [
    await host.sheetNames(),
    await host.readNames(),
    await host.readTables(),
    await host.readCell({ sheet: lots, row: 1, column: 3 }),
    await host.readCell({ sheet: "Farm settings", row: 4, column: 0 }),
    await host.readCell({ sheet: "Farm settings", row: 5, column: 0 }),
    await host.readArea("Farm settings", 3, 0, 4, 3),
    await refusal(host.readCell({ sheet: "Lost", row: 0, column: 0 })),
  ]);
  expect(answers[0]).toEqual(["Farm settings", lots, "Put away"]);
  expect(answers[4]).toEqual({
    sheet: "Farm settings",
    row: 4,
    column: 0,
    value: "=not a formula",
  });
});

test("a typed value is typed alike, and a formula is no cell to type in", async () => {
  await agree(book, async (host) => {
    await host.setCell({ sheet: lots, row: 1, column: 1 }, 40);
    await host.setCell({ sheet: lots, row: 1, column: 0 }, "0042");
    await host.setCell({ sheet: lots, row: 2, column: 0 }, "=1+1");
    await host.setCell({ sheet: lots, row: 2, column: 1 }, null);
    await host.setCell({ sheet: "Farm settings", row: 3, column: 1 }, false);
    return [
      await refusal(host.setCell({ sheet: lots, row: 1, column: 3 }, 5)),
      await host.readCell({ sheet: lots, row: 1, column: 0 }),
      await host.readCell({ sheet: lots, row: 2, column: 0 }),
      await host.readCell({ sheet: lots, row: 2, column: 1 }),
    ];
  });
});

test("a formula is put into a cell and taken out again alike", async () => {
  const at = { sheet: "Farm settings", row: 3, column: 0 };
  await agree(book, async (host) => {
    const keep = await host.putFormula(
      { ...at, column: 4 },
      { formula: "=SUM(Lots[Left lb])", format: "0.0" },
    );
    const putBack = await host.putFormula(at, { formula: "=1+1" });
    const { formula } = await host.readCell(at);
    await putBack();
    const other = await host.putFormula(
      { ...at, column: 5 },
      { formula: "=2+2" },
    );
    const over = await host.putFormula({ ...at, column: 5 }, { formula: "=3" });
    void keep;
    void over;
    return [formula, await host.readCell(at), await refusal(other())];
  });
});

test("rows are appended and a sheet added alike", async () => {
  const { workbook } = await agree(book, async (host) => {
    await host.apply(withTable);
    return [await host.readTables(), await host.readNames()];
  });
  const grown = workbook.sheets.find(({ name }) => name === lots);
  expect(grown?.tables[0]?.area.rows).toBe(6);
});

test("what was applied is taken back alike, once, and the workbook is what it was", async () => {
  const { workbook } = await agree(book, async (host) => {
    await host.apply(withTable);
    const says = await host.undo();
    return [says, await host.undo()];
  });
  expect(comparable(workbook, { results: true })).toEqual(
    comparable(book, { results: true }),
  );
});

/** Cells beside a table, as our columns beside a ledger are. */
const beside: Change = {
  ...nothing,
  says: "worth in kilograms",
  fill: [
    {
      sheet: "farm SETTINGS",
      cells: [
        { row: 4, column: 20, value: "Doubled" },
        { row: 4, column: 21, value: "Text" },
        ...[5, 6, 7, 9].flatMap((row) => [
          {
            row,
            column: 20,
            formula: `=ROW(A${row + 1})*2`,
            style: { format: "0.00" },
          },
          { row, column: 21, value: `0${row}` },
        ]),
      ],
    },
  ],
};

test("blank cells are filled alike", async () => {
  const { answers } = await agree(book, async (host) => {
    await host.apply(beside);
    return [await host.readArea("Farm settings", 4, 20, 6, 2)];
  });
  expect(answers[0]).toEqual([
    ["Doubled", "Text"],
    [12, "05"],
    [14, "06"],
    [16, "07"],
    [null, null],
    [20, "09"],
  ]);
});

test("filled cells are blank again when it is taken back", async () => {
  const { workbook } = await agree(book, async (host) => {
    await host.apply(beside);
    await host.apply({ ...beside, fill: [] });
    return [await host.undo(), await host.undo()];
  });
  expect(comparable(workbook, { results: true })).toEqual(
    comparable(book, { results: true }),
  );
});

test("cells that are in use are not filled, and filled cells that were changed stay", async () => {
  const { answers } = await agree(book, async (host) => {
    await host.setCell({ sheet: "Farm settings", row: 8, column: 20 }, "mine");
    const before = await host.readArea("Farm settings", 0, 0, 12, 24);
    const refused = await refusal(host.apply(beside));
    const after = await host.readArea("Farm settings", 0, 0, 12, 24);
    await host.setCell({ sheet: "Farm settings", row: 8, column: 20 }, null);
    await host.apply(beside);
    await host.setCell({ sheet: "Farm settings", row: 9, column: 21 }, "10");
    const changed = await refusal(host.undo());
    await host.setCell({ sheet: "Farm settings", row: 9, column: 21 }, "09");
    return [
      refused,
      JSON.stringify(before) === JSON.stringify(after),
      changed,
      await host.undo(),
      await refusal(
        host.apply({
          ...beside,
          fill: [{ sheet: "Lost", cells: [{ row: 0, column: 0, value: 1 }] }],
        }),
      ),
    ];
  });
  expect(answers).toEqual([
    "'Farm settings'!U9 is in use, so nothing was put into 'Farm settings'!U5:V10",
    true,
    "the cells 'Farm settings'!U5:V10 have been changed since they were filled, so they stay; clear them by hand if they are not wanted",
    "worth in kilograms",
    'there is no sheet "Lost"',
  ]);
});

test("rows and sheets somebody has typed over stay alike", async () => {
  await agree(book, async (host) => {
    await host.apply(withTable);
    await host.setCell({ sheet: lots, row: 4, column: 1 }, 21);
    const rows = await refusal(host.undo());
    await host.setCell({ sheet: lots, row: 4, column: 1 }, 20);
    await host.setCell({ sheet: "Totals", row: 0, column: 0 }, 4);
    return [rows, await refusal(host.undo())];
  });
});

test.each<[string, Partial<Change>]>([
  ["a sheet of that name", { addSheets: [emptySheet("farm SETTINGS")] }],
  ["that name", { names: [{ name: "Bulk_Price", refersTo: "1" }] }],
  ["a table's name as a name", { names: [{ name: "LOTS", refersTo: "1" }] }],
  ["no such table", { append: [{ table: "Casks", rows: [{ Lot: "A" }] }] }],
  ["no such column", { append: [{ table: "Lots", rows: [{ Weight: 3 }] }] }],
])("a change is refused alike, as a whole: there is %s", async (_, wrong) => {
  const { workbook, answers } = await agree(book, async (host) => [
    await refusal(host.apply({ ...change, ...wrong })),
  ]);
  expect(answers[0]).not.toBe("done");
  expect(workbook.sheets).toHaveLength(3);
});

test("the selected cell is followed alike", async () => {
  const { answers } = await agree(book, async (host) => {
    const heard: CellFacts[] = [];
    await host.select({ sheet: lots, row: 1, column: 0 });
    const stop = host.watchSelection((facts) => void heard.push(facts));
    await until(() => heard.length === 1);
    await host.select({ sheet: lots, row: 1, column: 1 });
    await until(() => heard.length === 2);
    await host.setCell({ sheet: lots, row: 1, column: 1 }, 40);
    await until(() => heard.length === 3);
    stop();
    await host.select({ sheet: lots, row: 2, column: 1 });
    return heard;
  });
  expect(answers).toEqual([
    { sheet: lots, row: 1, column: 0, value: "A1" },
    { sheet: lots, row: 1, column: 1, value: 100 },
    { sheet: lots, row: 1, column: 1, value: 40 },
  ]);
});

test("the demo farm's costing sheet is built and its totes appended alike, formula for formula", async () => {
  const [product = ""] = demoProducts();
  const { workbook } = await agree(demoWorkbook([], 0), async (host) => {
    const { change: sheet } = plannedSheet({
      tables: await host.readTables(),
      product,
      bottles: 600,
      sheets: await host.sheetNames(),
    });
    await host.apply({
      ...sheet,
      append: [
        {
          table: "ToteShipments",
          rows: [
            { "Tote ticket": "T-901", "Gross lb": 2904, "Tare lb": 140 },
            { "Tote ticket": "T-902", "Gross lb": 2911, "Tare lb": 140 },
          ],
        },
      ],
    });
    return [];
  });
  expect(workbook.sheets.at(-1)?.cells.length).toBeGreaterThan(1000);
}, 240_000);

async function until(isSo: () => boolean): Promise<void> {
  for (let i = 0; i < 200 && !isSo(); i += 1)
    await new Promise((resolve) => setTimeout(resolve, 10));
}
