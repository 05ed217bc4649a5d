import { formulaInFrench } from "../../../src/sheets/words/french-formula";

const french = (formula: string): string =>
  formulaInFrench(formula, {
    sheet: (name) => (name === "Price list" ? "Liste de prix" : name),
    heading: (table, heading) =>
      table === "Parts" && heading === "Spoilage" ? "Pertes" : heading,
  });

test.each([
  ["what it says", '=IF(A1>0,"yes","no")', '=IF(A1>0,"oui","non")'],
  [
    "a text in pieces",
    '="Quote: "&B2&" ("&B3&")"',
    '="Soumission\u00a0: "&B2&" ("&B3&")"',
  ],
  [
    "what is looked up in the book stays",
    '=MATCH("Hold loss",Energy[Item],0)',
    '=MATCH("Hold loss",Energy[Item],0)',
  ],
  [
    "names of sheets and columns",
    "='Price list'!$B$2*SUM(Parts[Spoilage],Lots[Spoilage])",
    "='Liste de prix'!$B$2*SUM(Parts[Pertes],Lots[Spoilage])",
  ],
  [
    "a sheet's name within a text is a text",
    `="'Price list'!A1"&'O''Hara'!A1`,
    `="'Price list'!A1"&'O''Hara'!A1`,
  ],
  ["quotes within a text", '=A1&"a ""word"""', '=A1&"a ""word"""'],
])("%s", (_, formula, wanted) => {
  expect(french(formula)).toBe(wanted);
});

describe("formats that a French worksheet program reads otherwise", () => {
  test.each([
    [
      '=TEXT($B$7,"yyyy-mm-dd")',
      '=(YEAR($B$7)&"-"&TEXT(MONTH($B$7),"00")&"-"&TEXT(DAY($B$7),"00"))',
    ],
    ['=TEXT(MAX(A1,B1),"#,##0")', "=FIXED(MAX(A1,B1),0)"],
    [
      '=TEXT(VALUE(TEXT(A1,"0.0")),"#,##0")',
      "=FIXED(VALUE(FIXED(A1,1,TRUE)),0)",
    ],
    ['=TEXT(A1,"00")', '=TEXT(A1,"00")'],
    ['=MYTEXT(A1,"0.0")', '=MYTEXT(A1,"0.0")'],
    ['="TEXT("&A1', '="TEXT("&A1'],
  ])("%s", (formula, wanted) => {
    expect(french(formula)).toBe(wanted);
  });
});
