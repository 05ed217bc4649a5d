import { gridFunctions } from "../../../src/apps/grid-functions";
import {
  openHeadless,
  type HeadlessHost,
} from "../../../src/hosts/grid/open-headless";
import type { Cell, Workbook } from "../../../src/sheets/workbook";

const at = (row: number, column = 0) => ({ sheet: "Work", row, column });

const cells: readonly Cell[] = [
  { row: 0, column: 0, value: 66.9 },
  { row: 1, column: 0, value: "typed by hand" },
  { row: 2, column: 0, formula: "=A1*2" },
  { row: 3, column: 0, formula: "=A2", style: { format: "0.000" } },
];

const book: Workbook = {
  title: "Invented",
  names: [],
  sheets: [
    {
      name: "Work",
      cells,
      tables: [],
      validations: [],
      merges: [],
      widths: {},
      heights: {},
      frozen: { rows: 0, columns: 0 },
    },
  ],
};

let host: HeadlessHost;
beforeEach(async () => {
  host = await openHeadless(book, gridFunctions);
});
afterEach(() => host.dispose());

const formatAt = (row: number, column = 0): string | undefined =>
  host
    .currentWorkbook()
    .sheets[0]?.cells.find((c) => c.row === row && c.column === column)?.style
    ?.format;

// The worksheet's own arithmetic is the check: 66.9 × 3.
test.each([
  ["an empty cell", at(5, 3), null, undefined],
  ["a cell far beyond the sheet", at(5000, 40), null, undefined],
  ["a typed value", at(1), "typed by hand", undefined],
  ["another formula", at(2), 133.8, "=A1*2"],
])(
  "a formula goes over %s, and what was there comes back",
  async (_, place, value, formula) => {
    const takeBack = await host.putFormula(place, { formula: "=A1*3" });
    const after = await host.readCell(place);
    expect(after.formula).toBe("=A1*3");
    expect(after.value).toBeCloseTo(200.7, 9);
    await takeBack();
    const again = await host.readCell(place);
    expect(again.formula).toBe(formula);
    if (typeof value === "number") expect(again.value).toBeCloseTo(value, 9);
    else expect(again.value).toBe(value);
  },
);

test("one of our own functions answers where it was put", async () => {
  await host.putFormula(at(6), { formula: "=SYRUP.POUNDS_PER_GALLON(A1)" });
  const { value, refusal } = await host.readCell(at(6));
  expect(refusal).toBeUndefined();
  // Source: 11.076 lb/gal at 66.9 °Bx, to the digits the model and printed tables share.
  expect(value).toBeCloseTo(11.076, 2);
});

// By hand: 4.85 ÷ (1 − 35 %) = 7.461538.
test("a share in per cent and an argument left empty in the middle are read as a worksheet has them", async () => {
  await host.putFormula(at(6), {
    formula: "=SYRUP.PRICE_FOR_MARGIN(4.85, 35%, , 0)",
  });
  expect((await host.readCell(at(6))).value).toBeCloseTo(7.461538, 6);
});

test("an answer of several cells goes as a whole when it is taken back", async () => {
  // 1,500 bottles in cases of 12, 10 cases a layer, 6 layers: two pallets of 720 and five cases.
  const takeBack = await host.putFormula(at(8), {
    formula: "=SYRUP.PALLETS(1500, 12, 10, 6)",
  });
  expect(await host.readArea("Work", 8, 0, 1, 3)).toEqual([[2, 5, 0]]);
  await takeBack();
  expect(await host.readArea("Work", 8, 0, 1, 3)).toEqual([[null, null, null]]);
});

test("a cell somebody has changed since stays as they left it", async () => {
  const takeBack = await host.putFormula(at(1), { formula: "=A1*3" });
  await host.putFormula(at(1), { formula: "=A1*4" });
  await expect(takeBack()).rejects.toThrow(
    "Work, A2 has been changed since, so it stays",
  );
  expect((await host.readCell(at(1))).formula).toBe("=A1*4");
});

test("a date gets a date's format unless the cell has one, and loses it again", async () => {
  const date = { formula: "=A1", format: "yyyy-mm-dd" };
  const plain = await host.putFormula(at(7), date);
  expect(formatAt(7)).toBe("yyyy-mm-dd");
  await plain();
  expect(formatAt(7)).toBeUndefined();
  const own = await host.putFormula(at(3), date);
  expect(formatAt(3)).toBe("0.000");
  await own();
  expect(formatAt(3)).toBe("0.000");
});
