import type { UsUnit } from "../../../src/sheets/metric/figure-units";
import { nodesOf } from "../../../src/sheets/metric/formula-nodes";
import {
  CannotRead,
  inMetricFormula,
  rewritten,
  type Turned,
} from "../../../src/sheets/metric/rewritten";

/** Column A is in pounds, B in °F, C is turned from pounds but for C9; D is not turned; A7 and D7 hold text. */
const turned: Turned = {
  unitAt: (row, column): UsUnit | undefined =>
    column === 0 || (column === 2 && row !== 8)
      ? "lb"
      : column === 1
        ? "°F"
        : undefined,
  isNumberAt: (row, column) => row !== 6 || (column !== 0 && column !== 3),
};

const KG = "0.45359237";

test.each([
  ["=A1*2", `=(A1/${KG})*2`],
  ["=$A$1-D1", `=($A$1/${KG})-D1`],
  ["=D1*(D2+D3)", "=D1*(D2+D3)"],
  ["=A1", `=IF(ISNUMBER(A1),A1/${KG},A1)`],
  ["=B1", "=IF(ISNUMBER(B1),B1/(5/9)+32,B1)"],
  ["=B1+1", "=(B1/(5/9)+32)+1"],
  ['=IF(A1="","",D1)', '=IF(A1="","",D1)'],
  ["=IF(ISNUMBER(A1),D1,D2)", "=IF(ISNUMBER(A1),D1,D2)"],
  ["=SUM(A1:A5)", `=IF(ISNUMBER(SUM(A1:A5)),SUM(A1:A5)/${KG},SUM(A1:A5))`],
  ["=D1/SUM(A1:A5)", `=D1/(SUM(A1:A5)/${KG})`],
  ["=1*MAX(A1:A5)", `=1*(MAX(A1:A5)/${KG})`],
  ["=SUMPRODUCT(A1:A5,D1:D5)", `=(SUMPRODUCT(A1:A5,D1:D5)/${KG})`],
  ["=SUMPRODUCT(A1:A5,C1:C5)", `=(SUMPRODUCT(A1:A5,C1:C5)/${KG}/${KG})`],
  ['=1*SUMIFS(A1:A5,D1:D5,"<"&D6)', `=1*(SUMIFS(A1:A5,D1:D5,"<"&D6)/${KG})`],
  ["=INDEX(A1:A5,2)*1", `=(INDEX(A1:A5,2)/${KG})*1`],
  ["=COUNT(A1:A5)", "=COUNT(A1:A5)"],
  ["=1*SMALL(A1:A5,2)", `=1*(SMALL(A1:A5,2)/${KG})`],
  ['="A1 "&TEXT(D1,"0.0")', '="A1 "&TEXT(D1,"0.0")'],
  ["=Lots[Net lb]*'A1 sheet'!A1", "=Lots[Net lb]*'A1 sheet'!A1"],
])("%s becomes %s", (formula, after) => {
  expect(rewritten(formula, turned)).toBe(after);
});

test.each([
  ["whole columns in arithmetic", "=SUMPRODUCT((D1:D5>1)*A1:A5)"],
  ["a column compared in conditions", '=SUMIFS(D1:D5,A1:A5,">3")'],
  ["a column searched for a figure", "=MATCH(3,A1:A5,0)"],
  ["a range only half of it turned", "=SUM(C7:C9)"],
  ["turned cells beside others", "=SUM(A1:D1)"],
  ["a sum of a range and a number", "=SUM(A1:A5,3)"],
  ["a sum over a text in a cell", "=SUM(A7,D1)"],
  ["a figure joined to words", '="of "&A1'],
  ["degrees summed", "=SUM(B1:B5)"],
])("%s cannot follow: %s", (_, formula) => {
  expect(() => rewritten(formula, turned)).toThrow(CannotRead);
});

test.each<[string, UsUnit, string]>([
  ["=D1*2", "lb", `=(D1*2)*${KG}`],
  ["=((D1+D2)*2)", "lb", `=(((D1+D2)*2))*${KG}`],
  ["=D1", "lb", `=IF(ISNUMBER(D1),(D1)*${KG},D1)`],
  [
    '=IF(D1>0,D1,"")',
    "lb",
    `=IF(ISNUMBER(IF(D1>0,D1,"")),(IF(D1>0,D1,""))*${KG},IF(D1>0,D1,""))`,
  ],
  ["=D1-1", "°F", "=((D1-1)-32)*(5/9)"],
])("the result of %s in the metric unit of %s", (formula, unit, after) => {
  expect(inMetricFormula(formula, unit)).toBe(after);
});

test("a text that is no formula is refused", () => {
  expect(() => nodesOf("SUM(A1")).toThrow("A bracket is missing");
  expect(() => nodesOf("A1 ; B2")).toThrow('What is "; B2"');
});
