import { circles, circularCells } from "../../../src/hosts/grid/circular-cells";
import type { Cell } from "../../../src/sheets/workbook";
import { bookOf, emptySheet } from "./invented-workbook";

const at = (address: string, formula: string): Cell => {
  const [, letters = "", digits = ""] = /^([A-Z])(\d+)$/.exec(address) ?? [];
  return {
    row: Number(digits) - 1,
    column: letters.charCodeAt(0) - 65,
    formula,
  };
};

const found = (...cells: readonly Cell[]): readonly string[] =>
  circularCells(bookOf(cells)).map(
    ({ row, column }) => `${String.fromCharCode(65 + column)}${row + 1}`,
  );

test("a cost that needs the price that needs the cost is a circle, its reader is not", () => {
  expect(
    found(at("A19", "=A20+1"), at("A20", "=A19+1"), at("B1", "=A19")),
  ).toEqual(["A19", "A20"]);
});

test.each([
  ["itself", "=B4*2"],
  ["a range it stands in", "=SUM(B1:B9)"],
  ["its whole column", "=SUM(B:B)"],
  ["its whole row", "=SUM(4:4)"],
  ["its own sheet by name", "='Work'!$B$4"],
  ["itself with another's case", "=work!b4"],
])("a cell that needs %s is a circle", (_, formula) => {
  expect(found(at("B4", formula))).toEqual(["B4"]);
});

test.each([
  ["the row it stands in", "=ROW(B4)"],
  ["text that looks like a reference", '="B4"&"SUM(B1:B9)"'],
  ["a function with a digit in its name", "=LOG10(5)"],
  ["the same address on another sheet", "='Other sheet'!B4"],
  ["a range beside it", "=SUM(A1:A9)+C4"],
])("a cell that needs %s is no circle", (_, formula) => {
  expect(found(at("B4", formula))).toEqual([]);
});

test("a circle through a defined name and a second sheet names every cell on the way", () => {
  const book = bookOf([at("A1", "=margin")], {
    names: [{ name: "Margin", refersTo: "'Price list'!$B$2" }],
  });
  const second = {
    ...emptySheet("Price list"),
    cells: [at("B2", "=Work!A1*2")],
  };
  const [first] = circles({ ...book, sheets: [...book.sheets, second] });
  expect(first).toMatchObject({ sheet: "Work", row: 0, column: 0 });
  expect(first?.sentence).toBe(
    "A1 needs its own result, so it has no answer: A1 needs 'Price list'!B2 needs A1",
  );
});

test("a calculated column that reads its own row's other columns is no circle; one that sums itself is", () => {
  const table = {
    name: "Lots",
    area: { row: 0, column: 0, rows: 3, columns: 2 },
    columns: [{ heading: "Left lb" }, { heading: "Worth" }],
  };
  const circular = (formula: string): number =>
    circularCells(
      bookOf([at("B2", formula), at("B3", formula)], { tables: [table] }),
    ).length;
  expect(circular("=Lots[[#This Row],[Left lb]]*2")).toBe(0);
  expect(circular("=SUM(Lots[Left lb])")).toBe(0);
  expect(circular("=SUM(lots[worth])")).toBe(2);
  expect(circular("=ROWS(Lots)")).toBe(0);
  expect(circular("=SUM(Lots)")).toBe(2);
  expect(circular("=Lots[[#This Row],[Worth]]")).toBe(2);
});
