import { shapeOf } from "../../../../src/hosts/grid/recalculation/formula-shape";

const parts = (formula: string): readonly string[] => shapeOf(formula).parts;
const outline = (formula: string): string => shapeOf(formula).outline;

test.each([
  ["=A1*2", "=$B$7*3.5"],
  ["=INDEX('Price working'!$A$65:$A$87,17)", "=INDEX('Price working'!B1:C2,3)"],
  ["=IF(A1>.5,Sheet1!A1,1)", "=IF(XFD9>100.25,Sheet1!$Z99,20)"],
  ["=LOG10(A1)+SYRUP.BRIX_2(B2)", "=LOG10(C3)+SYRUP.BRIX_2(D4)"],
])("%s and %s are alike but for their cells and numbers", (one, other) => {
  expect(outline(one)).toBe(outline(other));
});

test.each([
  ["another sheet", "='2025'!A1", "='2026'!A1"],
  ["another sheet's bare name", "=AB1!C2", "=AB2!C2"],
  ["a text", '="12 oz"', '="16 oz"'],
  [
    "a column of a table",
    "=SUM(Lots[Brix at 68 °F])",
    "=SUM(Lots[Brix at 60 °F])",
  ],
  ["a fixed list", "=SUM({1,2})", "=SUM({1,3})"],
  ["a name", "=LOT_2*1", "=LOT_3*1"],
  ["a function", "=LOG10(A1)", "=LOG2(A1)"],
  ["a power of ten, which the grid does not know", "=1E5", "=15"],
  ["a cell where the other has a number", "=A1+1", "=1+A1"],
])("%s keeps them apart", (_, one, other) => {
  expect(outline(one)).not.toBe(outline(other));
});

test("cells and numbers come in order of writing, without their sheets", () => {
  expect(
    parts(
      `=IF($A57="A1",INDEX('B2 3'!$D$91:J113,17),Lots[[#This Row],[C3]]+.5)`,
    ),
  ).toEqual(["$A57", "$D$91", "J113", "17", ".5"]);
});

test("a formula is its outline with its parts put back", () => {
  const formula = `=SUM('It''s'!A1:$B$2,{3,4})&"5"&T[6]*7.25-X9`;
  const { outline: left, parts: taken } = shapeOf(formula);
  const again = [...taken];
  // eslint-disable-next-line no-control-regex -- these two stand where a part was
  expect(left.replace(/[\u0001\u0002]/g, () => again.shift() ?? "")).toBe(
    formula,
  );
});
