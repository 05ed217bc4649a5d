import type { Sheet, Workbook } from "../../../src/sheets/workbook";

const blank = {
  tables: [],
  validations: [],
  merges: [],
  widths: {},
  heights: {},
  frozen: { rows: 0, columns: 0 },
} as const satisfies Partial<Sheet>;

const head = {
  bold: true,
  color: "#ffffff",
  fill: "#5b3a21",
  wrap: true,
} as const;

/** A sheet with nothing on it but what is given. */
export const sheetOf = (given: Partial<Sheet>): Sheet => ({
  name: "Lots",
  cells: [],
  ...blank,
  ...given,
});

/** A workbook of one sheet. */
export const bookOf = (given: Partial<Sheet>): Workbook => ({
  title: "",
  sheets: [sheetOf(given)],
  names: [],
});

/** An invented book that holds something of everything the model can say. */
export const fernkettleBook: Workbook = {
  title: 'Fernkettle Hollow Packing: "lots" & <quotes>',
  names: [
    { name: "House_brix", refersTo: "'Parts on hand'!$B$2" },
    { name: "Channels", refersTo: "'Parts on hand'!$A$5:$A$7" },
    { name: "Heavy_lots", refersTo: 'MAXIFS(Lots[lb],Lots[lb],">0")' },
  ],
  sheets: [
    sheetOf({
      name: "Lots",
      cells: [
        { row: 0, column: 0, value: "Lot", style: head },
        { row: 0, column: 1, value: "lb", style: head },
        { row: 0, column: 2, value: "gal (at 60 °F)", style: head },
        { row: 0, column: 3, value: "Seen\nby", style: head },
        { row: 1, column: 0, value: "FK-07", note: "Barrel 7:\n second fill " },
        { row: 1, column: 1, value: 2912.5, style: { format: "#,##0.0" } },
        {
          row: 1,
          column: 2,
          formula: "=SYRUP.VOLUME_OF(Lots[[#This Row],[lb]],66.9)",
          value: 263.2617,
          style: { format: '0.00" gal"', align: "right", indent: 1 },
        },
        { row: 1, column: 3, value: true },
        { row: 2, column: 0, value: " _x0041_ is no escape & <b> " },
        { row: 2, column: 1, value: 0 },
        {
          row: 2,
          column: 2,
          formula: "=SYRUP.VOLUME_OF(Lots[[#This Row],[lb]],66.9)",
          value: { error: "#N/A" },
        },
        { row: 2, column: 3, value: false, note: "“Not weighed”" },
        { row: 4, column: 0, value: "#N/A" },
        { row: 4, column: 1, value: { error: "#DIV/0!" } },
        { row: 4, column: 2, formula: '=IF(B3>0,"SYRUP.X(","")', value: "" },
        { row: 4, column: 3, formula: "=B3>0", value: false },
        { row: 5, column: 0, formula: "=B3*2", value: 0 },
        { row: 5, column: 1, formula: '="#N/"&"A"', value: "#N/A" },
        { row: 5, column: 2, formula: "=1/3", value: 1 / 3 },
        { row: 5, column: 3, formula: "=TODAY()" },
        { row: 6, column: 0, value: 45_717, style: { format: "yyyy-mm-dd" } },
        { row: 6, column: 1, value: 1e-9 },
        { row: 6, column: 2, value: -123_456_789.125 },
        { row: 6, column: 3, value: "" },
      ],
      tables: [
        {
          name: "Lots",
          area: { row: 0, column: 0, rows: 3, columns: 4 },
          columns: [
            { heading: "Lot" },
            { heading: "lb" },
            {
              heading: "gal (at 60 °F)",
              formula: "=SYRUP.VOLUME_OF(Lots[[#This Row],[lb]],66.9)",
            },
            { heading: "Seen\nby" },
          ],
        },
      ],
      validations: [
        {
          area: { row: 1, column: 1, rows: 2, columns: 1 },
          rule: { kind: "number", min: 0 },
          strict: true,
          message: 'Pounds, "net".\nA blank is not zero.',
        },
        {
          area: { row: 6, column: 0, rows: 1, columns: 1 },
          rule: { kind: "date", min: 45_000, max: 46_000 },
        },
      ],
      merges: [{ row: 8, column: 0, rows: 2, columns: 4 }],
      widths: { 0: 14, 2: 9.5 },
      heights: { 0: 31.5 },
      frozen: { rows: 1, columns: 1 },
      tabColor: "#8a5a2b",
    }),
    sheetOf({
      name: "Parts on hand",
      cells: [
        { row: 0, column: 0, value: "Part" },
        { row: 0, column: 1, value: "On hand" },
        {
          row: 1,
          column: 0,
          value: "8 oz jug",
          style: { font: "Arial", size: 9 },
        },
        {
          row: 1,
          column: 1,
          value: 66.9,
          style: {
            italic: true,
            color: "#123a7a",
            edges: {
              top: "thin",
              bottom: "double",
              left: "medium",
              right: "thin",
              color: "#d8cfc2",
            },
          },
        },
        {
          row: 2,
          column: 0,
          style: { fill: "#fff6d8", edges: { bottom: "thin" } },
        },
        { row: 3, column: 1, note: "Counted on paper" },
        { row: 4, column: 0, value: "Farm stand" },
        { row: 5, column: 0, value: "Mail order" },
        { row: 6, column: 0, value: "Co-op" },
        {
          row: 7,
          column: 1,
          formula: '=IFS(B2>60,AGGREGATE(9,6,B2:B3),TRUE,CONCAT("a","b"))',
          value: 66.9,
        },
        {
          row: 8,
          column: 1,
          formula: "='Lots'!B2*House_brix/100",
          value: 1948.4625,
        },
      ],
      tables: [
        {
          name: "Parts",
          area: { row: 0, column: 0, rows: 3, columns: 2 },
          columns: [{ heading: "Part" }, { heading: "On hand" }],
        },
      ],
      validations: [
        {
          area: { row: 1, column: 0, rows: 2, columns: 1 },
          rule: { kind: "list", choices: ["8 oz jug", '12" cap', "label"] },
          strict: true,
        },
        {
          area: { row: 9, column: 0, rows: 3, columns: 1 },
          rule: { kind: "list from", source: "Channels" },
          message: "One of the channels.",
        },
        {
          area: { row: 1, column: 1, rows: 2, columns: 1 },
          rule: { kind: "whole number", max: 5000 },
        },
        {
          area: { row: 12, column: 0, rows: 1, columns: 1 },
          rule: { kind: "number" },
        },
        {
          area: { row: 13, column: 0, rows: 1, columns: 1 },
          rule: { kind: "date" },
        },
      ],
    }),
    sheetOf({
      name: "It's put away",
      cells: [{ row: 0, column: 0, value: "Old prices" }],
      hidden: true,
      frozen: { rows: 2, columns: 0 },
    }),
  ],
};
