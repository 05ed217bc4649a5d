import type { HeadlessHost } from "../../../../src/hosts/grid/open-headless";
import type { Stored } from "../../../../src/sheets/workbook";
import { asked, column, host, results, type } from "./typed-book";

test("only what reads a changed result is worked out again", async () => {
  const grid = await host([
    ...column(0, [1, 5]),
    ...column(1, ["=SYRUP.WEIGHED(A1)", "=SYRUP.WEIGHED(A2)"]),
    ...column(2, ["=SYRUP.WEIGHED(MIN(B1,3)+100)"]),
    ...column(3, ["=SYRUP.WEIGHED(C1+100)"]),
  ]);
  const askedAfter = async (value: number): Promise<readonly unknown[]> => {
    asked.length = 0;
    await type(grid, 0, 0, value);
    return [...asked];
  };
  try {
    expect(await askedAfter(2)).toEqual([2, 102, 202]);
    // From 3 on the least of it and 3 is 3, so that what reads it has no news.
    expect(await askedAfter(4)).toEqual([4, 103, 203]);
    expect(await askedAfter(9)).toEqual([9, 103]);
    expect(await askedAfter(9)).toEqual([9]);
  } finally {
    grid.dispose();
  }
});

test("formulas that come, change, go and are renamed are known at once", async () => {
  const grid = await host(
    [...column(0, [1, 2]), ...column(1, ["=A1+A2", "=B1*2", "=first+1"])],
    { names: [{ name: "first", refersTo: "'Work'!$A$1" }] },
  );
  const { name: sheet = "" } = grid.currentWorkbook().sheets[0] ?? {};
  const values = (): readonly (Stored | undefined)[] =>
    grid.currentWorkbook().sheets[0]?.cells.map(({ value }) => value) ?? [];
  try {
    const takeBack = await grid.putFormula(
      { sheet, row: 0, column: 2 },
      { formula: "=B2+100" },
    );
    await type(grid, 0, 0, 10);
    expect(values()).toEqual([10, 12, 124, 2, 24, 11]);
    const back = await grid.putFormula(
      { sheet, row: 0, column: 1 },
      { formula: "=A1-A2" },
    );
    await type(grid, 1, 0, 4);
    expect(values()).toEqual([10, 6, 112, 4, 12, 11]);
    await back();
    await takeBack();
    await type(grid, 1, 0, 5);
    expect(values()).toEqual([10, 15, 5, 30, 11]);
    const { refusal } = await circle(grid, sheet);
    expect(refusal).toMatch(/B1/);
    await type(grid, 0, 0, 1);
    expect(
      (await grid.readCell({ sheet, row: 1, column: 1 })).refusal,
    ).toBeUndefined();
  } finally {
    grid.dispose();
  }
});

/** Makes B1 need itself by way of B2, asks about it, and puts it back. */
async function circle(
  grid: HeadlessHost,
  sheet: string,
): Promise<{ readonly refusal?: string }> {
  const at = { sheet, row: 0, column: 1 };
  const putBack = await grid.putFormula(at, { formula: "=A1+B2" });
  const facts = await grid.readCell(at);
  await putBack();
  return facts;
}

test.each([
  ["a reference worked out from text", '=SUM(INDIRECT("A1:A"&B1))'],
  ["a reference moved by numbers", "=SUM(OFFSET(A1,0,0,B1,1))"],
])("%s follows its cells all the same", async (_, formula) => {
  const grid = await host([
    ...column(0, [1, 2, 4]),
    ...column(1, ["=C1"]),
    ...column(2, [2]),
    ...column(3, [formula, "=D1*10"]),
  ]);
  try {
    const state = (): readonly unknown[] =>
      results(grid.currentWorkbook()).map((result) => result[3]);
    expect(state()).toEqual([2, 3, 30]);
    await type(grid, 0, 2, 3);
    expect(state()).toEqual([3, 7, 70]);
    await type(grid, 2, 0, 5);
    expect(state()).toEqual([3, 8, 80]);
  } finally {
    grid.dispose();
  }
});

test("answers that fill several cells carry their readers along", async () => {
  const grid = await host([
    ...column(0, [3]),
    ...column(1, ["=SEQUENCE(A1)*10"]),
    ...column(2, ["=SUM(B1:B9)", "=B2", "=C1+C2"]),
  ]);
  const state = (): readonly unknown[] =>
    results(grid.currentWorkbook()).map((result) => result[3]);
  try {
    expect(state()).toEqual([10, 60, 20, 80]);
    await type(grid, 0, 0, 4);
    expect(state()).toEqual([10, 100, 20, 120]);
    await type(grid, 0, 0, 1);
    expect(state()).toEqual([10, 10, 0, 10]);
  } finally {
    grid.dispose();
  }
});
