import ExcelJS from "exceljs";
import {
  callsAddIn,
  formulaFromFile,
  formulaInFile,
} from "../../../src/hosts/file/formula-text";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { moveFormula } from "../../../src/hosts/file/shared-formula";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import { holdsAddInFunctions } from "../../../src/hosts/file/add-in-functions";
import { bookOf, fernkettleBook } from "./fernkettle-book";
import { withParts } from "./packages";

// `_xldudf_NAMESPACE_NAME(` as Microsoft describes it for custom functions (OfficeDev, Excel-Custom-Functions, issue 108);
// `_xlfn.`, `_xlws.` and `_xlpm.` from memory, the first also proved by LibreOffice in libre-office.test.ts.
describe("a formula's stored form", () => {
  test.each([
    ["=SYRUP.DENSITY(A1,20)", "_xldudf_SYRUP_DENSITY(A1,20)"],
    [
      "=SYRUP.POUNDS_PER_GALLON(A1)+SYRUP.VOLUME_OF(B1,66.9)",
      "_xldudf_SYRUP_POUNDS_PER_GALLON(A1)+_xldudf_SYRUP_VOLUME_OF(B1,66.9)",
    ],
    ['="SYRUP.DENSITY("&A1', '"SYRUP.DENSITY("&A1'],
    ['="say ""IFS("" twice"&IFS(A1,1)', '"say ""IFS("" twice"&_xlfn.IFS(A1,1)'],
    ["='IFS(old)'!A1+Lots[IFS(x)]", "'IFS(old)'!A1+Lots[IFS(x)]"],
    ["=SUM(Lots[[#This Row],[lb]])", "SUM(Lots[[#This Row],[lb]])"],
    [
      "=XLOOKUP(1,A1:A9,B1:B9)+SUMIFS(A:A,B:B,1)",
      "_xlfn.XLOOKUP(1,A1:A9,B1:B9)+SUMIFS(A:A,B:B,1)",
    ],
    [
      "=SORT(FILTER(A1:A9,B1:B9))",
      "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A9,B1:B9))",
    ],
    ["=CEILING.MATH(A1)+CEILING(A1,1)", "_xlfn.CEILING.MATH(A1)+CEILING(A1,1)"],
    [
      '=LET(lb,A1,"lb",lb&"lb",lb*Lots[lb])',
      '_xlfn.LET(_xlpm.lb,A1,"lb",_xlpm.lb&"lb",_xlpm.lb*Lots[lb])',
    ],
    [
      "=MAP(A1:A3,LAMBDA(each,part,SUM(each,{1,2})*part))",
      "_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.each,_xlpm.part,SUM(_xlpm.each,{1,2})*_xlpm.part))",
    ],
  ])("%s", (shown, stored) => {
    expect(formulaInFile(shown)).toBe(stored);
    expect(formulaFromFile(stored)).toBe(shown);
  });

  test("a function typed in small letters is stored under its name", () => {
    expect(formulaInFile("=syrup.density(A1)+ifs(A1,1)")).toBe(
      "_xldudf_SYRUP_DENSITY(A1)+_xlfn.IFS(A1,1)",
    );
  });

  test("a program that stores names in small letters is understood", () => {
    // LibreOffice 7.4 writes names it does not know so.
    expect(
      formulaFromFile(
        "_xldudf_syrup_volume_of(A1)+_xlfn.let(_xlpm.x,2,_xlpm.x)",
      ),
    ).toBe("=SYRUP.VOLUME_OF(A1)+LET(x,2,x)");
  });

  test("a younger function nobody here knows keeps its stored name both ways", () => {
    const stored = "_xlfn.BREW(_xlfn.ANCHORARRAY(A1))";
    expect(formulaFromFile(stored)).toBe(`=${stored}`);
    expect(formulaInFile(`=${stored}`)).toBe(stored);
  });
});

test.each([
  ["=A1*2", "=B3*2"],
  ["=$A1+A$1+$A$1", "=$A3+B$1+$A$1"],
  ["=SUM(A:A,$B:C,2:2,$3:4)", "=SUM(B:B,$B:D,4:4,$3:6)"],
  ["=Sheet1!A1+'A1 sheet'!B2", "=Sheet1!B3+'A1 sheet'!C4"],
  ['="A1"&A1&LOG10(A1)&Lots[A1]', '="A1"&B3&LOG10(B3)&Lots[A1]'],
  ["=XFD1048576", "=A2"],
  ["=ABCD1+A1.5+_A1", "=ABCD1+A1.5+_A1"],
])("%s two rows down and one column on is %s", (formula, moved) => {
  expect(moveFormula(formula, 2, 1)).toBe(moved);
});

test("cells that share a formula each get their own, as a second reader gives it", async () => {
  const book = new ExcelJS.Workbook();
  const sheet = book.addWorksheet("Runs");
  sheet.getCell("C2").value = {
    formula: "B2*$A$1+SUM(B$2:B2)",
    result: 1,
    shareType: "shared",
    ref: "C2:D4",
  } as ExcelJS.CellFormulaValue;
  for (const address of ["D2", "C3", "D3", "C4", "D4"])
    sheet.getCell(address).value = {
      sharedFormula: "C2",
      result: 2,
    };
  const bytes = new Uint8Array(await book.xlsx.writeBuffer());
  const { workbook } = await readXlsx(bytes, "runs.xlsx");
  const found = workbook.sheets[0]?.cells.map(({ formula }) => formula);
  expect(found).toEqual(
    ["C2", "D2", "C3", "D3", "C4", "D4"].map(
      (address) => `=${sheet.getCell(address).formula}`,
    ),
  );
  expect(found?.[5]).toBe("=C4*$A$1+SUM(C$2:C4)");
});

test("our function as Excel stores it, an array formula in one cell, loses nothing; an old one of fixed size is told", async () => {
  const plain = await writeXlsx(
    bookOf({
      cells: [
        { row: 0, column: 0, formula: "=SYRUP.DENSITY(B1,20)", value: 1.33 },
        {
          row: 1,
          column: 0,
          formula: "=SYRUP.BLEND_SHARES(1,2,3)",
          value: 0.25,
        },
        { row: 1, column: 1, value: 0.75 },
        { row: 2, column: 0, value: 7 },
      ],
    }),
  );
  const file = (ref: string): Uint8Array =>
    withParts(plain, {
      "xl/worksheets/sheet1.xml": (xml) =>
        xml
          .replace(
            "<f>_xldudf_SYRUP_D",
            '<f t="array" ref="A1">_xldudf_SYRUP_D',
          )
          .replace(
            "<f>_xldudf_SYRUP_B",
            `<f t="array" ref="${ref}">_xldudf_SYRUP_B`,
          ),
    });
  const single = await readXlsx(file("A2"), "x.xlsx");
  expect(single.losses).toEqual([]);
  const spilled = await readXlsx(file("A2:B2"), "x.xlsx");
  expect(spilled.losses).toEqual(["the array formula in A2:B2 on sheet Lots"]);
  expect(spilled.workbook.sheets[0]?.cells).toEqual([
    { row: 0, column: 0, formula: "=SYRUP.DENSITY(B1,20)", value: 1.33 },
    {
      row: 1,
      column: 0,
      formula: "=SYRUP.BLEND_SHARES(1,2,3)",
      value: 0.25,
      spills: { rows: 1, columns: 2 },
    },
    { row: 1, column: 1, value: 0.75, spilled: true },
    { row: 2, column: 0, value: 7 },
  ]);
});

test("a partner's file is told from one that needs the add-in, wherever the function stands", async () => {
  const native = {
    cells: [
      {
        row: 0,
        column: 0,
        formula: '=IFS(A2>1,"SYRUP.DENSITY(1)")',
        value: "",
      },
    ],
  };
  expect(holdsAddInFunctions(await writeXlsx(bookOf(native)))).toBe(false);
  expect(holdsAddInFunctions(await writeXlsx(fernkettleBook))).toBe(true);
  const needing = [
    bookOf({
      cells: [{ row: 0, column: 0, formula: "=1+SYRUP.DENSITY(66.9,20)" }],
    }),
    {
      ...bookOf(native),
      names: [{ name: "Heavy", refersTo: "SYRUP.DENSITY(66.9,20)" }],
    },
    bookOf({
      validations: [
        {
          area: { row: 0, column: 0, rows: 1, columns: 1 },
          rule: { kind: "list from", source: "SYRUP.BLEND_SHARES(1,2,3)" },
        },
      ],
    }),
    bookOf({
      tables: [
        {
          name: "Lots",
          area: { row: 0, column: 0, rows: 2, columns: 1 },
          columns: [{ heading: "x", formula: "=SYRUP.DENSITY(66.9,20)" }],
        },
      ],
    }),
  ];
  for (const book of needing)
    expect(holdsAddInFunctions(await writeXlsx(book))).toBe(true);
  expect(callsAddIn("_xldudf_CONTOSO_ADD(1,2)")).toBe(true);
});
