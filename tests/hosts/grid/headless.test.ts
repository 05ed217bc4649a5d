import { calculate } from "../../../src/hosts/grid/calculate";
import type { Cell, Stored } from "../../../src/sheets/workbook";
import { bookOf, richWorkbook, standIns } from "./invented-workbook";

const formulas = (list: readonly string[]): readonly Cell[] =>
  list.map((formula, row) => ({ row, column: 5, formula }));

describe("calculating without a screen", () => {
  test("fills in the results of the rich workbook and changes nothing else", async () => {
    const emptied = {
      ...richWorkbook,
      sheets: richWorkbook.sheets.map((sheet) => ({
        ...sheet,
        cells: sheet.cells.map(({ value, ...cell }) =>
          cell.formula === undefined && value !== undefined
            ? { ...cell, value }
            : cell,
        ),
      })),
    };
    const { workbook, refusals } = await calculate(emptied, standIns);
    expect(refusals).toEqual([]);
    expect(workbook).toEqual(richWorkbook);
  });

  test("hands our functions raw values: a blank is null, never zero", async () => {
    const inputs: readonly Cell[] = [
      { row: 1, column: 0, value: 2.5 },
      { row: 2, column: 0, value: "00123" },
      { row: 3, column: 0, value: true },
      { row: 4, column: 0, value: { error: "#N/A" } },
    ];
    const cases: readonly (readonly [string, Stored])[] = [
      ["=SYRUP.HEARD(A1)", "[null,null]"],
      ["=SYRUP.HEARD(,5)", "[null,5]"],
      ["=SYRUP.HEARD(A2,A3)", '[2.5,"00123"]'],
      ["=SYRUP.HEARD(A4,)", "[true,null]"],
      ['=SYRUP.HEARD("66,4")', '["66,4",null]'],
      ["=SYRUP.HEARD_ROWS(A2)", "[[[2.5]],null]"],
      [
        "=SYRUP.HEARD_ROWS(A1:B5)",
        '[[[null,null],[2.5,null],["00123",null],[true,null],[{"error":"#N/A"},null]],null]',
      ],
      ["=SYRUP.LOT_TEXT()", "0001234567890"],
      ["=SYRUP.PASSED()", true],
      ["=SUM(SYRUP.LADDER(3))", 6],
      ["=SYRUP.SHARE_LEFT(A2,0.2)/3", (2.5 * 0.8) / 3],
      ["=IFERROR(SYRUP.SHARE_LEFT(A1),0)", 0],
    ];
    const { workbook, refusals } = await calculate(
      bookOf([...inputs, ...formulas(cases.map(([f]) => f))]),
      standIns,
    );
    const results = workbook.sheets[0]?.cells.filter((c) => c.formula);
    expect(results?.map((c) => [c.formula, c.value])).toEqual(cases);
    expect(refusals).toEqual([]);
  });

  test("keeps the sentence of every refusal, and one broken function ends no calculation", async () => {
    const shouted = jest.spyOn(console, "error").mockImplementation(() => {});
    const cases: readonly (readonly [string, Stored, string])[] = [
      ["=SYRUP.SHARE_LEFT(A1)", { error: "#VALUE!" }, "needs tare"],
      ["=SYRUP.SHARE_LEFT()", { error: "#VALUE!" }, "needs tare"],
      [
        "=SYRUP.SHARE_LEFT(2000)",
        { error: "#N/A" },
        "tare: 2000 lb is beyond the scale",
      ],
      [
        "=SYRUP.SHARE_LEFT(A1:A3)",
        { error: "#VALUE!" },
        "tare: one value is wanted, not 3 cells",
      ],
      [
        "=SYRUP.SHARE_LEFT(1/0)",
        { error: "#DIV/0!" },
        "tare: the cell holds the error #DIV/0!",
      ],
      [
        "=SYRUP.HEARD(SYRUP.SHARE_LEFT(2000))",
        { error: "#N/A" },
        "tare: 2000 lb is beyond the scale",
      ],
      [
        "=SYRUP.BROKEN()",
        { error: "#VALUE!" },
        "an internal problem in SYRUP.BROKEN; the other cells are not touched by it",
      ],
    ];
    const { workbook, refusals } = await calculate(
      bookOf([
        ...formulas(cases.map(([f]) => f)),
        { row: 90, column: 5, formula: "=1+1" },
      ]),
      standIns,
    );
    const values = workbook.sheets[0]?.cells.map((c) => c.value);
    expect(values).toEqual([...cases.map(([, value]) => value), 2]);
    expect(refusals.map((r) => [r.row, r.sentence])).toEqual(
      cases.map(([, , sentence], row) => [row, sentence]),
    );
    expect(shouted).toHaveBeenCalledWith(
      "SYRUP.BROKEN broke down",
      expect.any(TypeError),
    );
    shouted.mockRestore();
  });

  test("a circle is an error with a sentence, and so is what reads it", async () => {
    const { workbook, refusals } = await calculate(
      bookOf(formulas(["=F2+1", "=F1+1", "=F1*10"])),
      standIns,
    );
    expect(workbook.sheets[0]?.cells.map((c) => c.value)).toEqual(
      Array(3).fill({ error: "#VALUE!" }),
    );
    expect(workbook.sheets[0]?.cells.map((c) => c.formula)).toEqual([
      "=F2+1",
      "=F1+1",
      "=F1*10",
    ]);
    expect(refusals.map((r) => r.sentence)).toEqual([
      "F1 needs its own result, so it has no answer: F1 needs F2 needs F1",
      "F2 needs its own result, so it has no answer: F2 needs F1 needs F2",
    ]);
  });

  test("a spilled answer is in every cell it fills and read by other formulas", async () => {
    const { workbook } = await calculate(
      bookOf([
        { row: 0, column: 0, formula: "=SYRUP.LADDER(3)" },
        { row: 0, column: 5, formula: "=A3*10" },
        { row: 1, column: 5, formula: "=B2" },
      ]),
      standIns,
    );
    expect(
      workbook.sheets[0]?.cells.map((c) => [c.row, c.column, c.value]),
    ).toEqual([
      [0, 0, 1],
      [0, 1, "step 1"],
      [0, 5, 30],
      [1, 0, 2],
      [1, 1, "step 2"],
      [1, 5, "step 2"],
      [2, 0, 3],
      [2, 1, "step 3"],
    ]);
  });
});
