import type { WorksheetFunction } from "../../../src/hosts/grid/worksheet-function";
import { unanswerable, unusable } from "../../../src/measures/cannot-answer";
import type { Sheet, Workbook } from "../../../src/sheets/workbook";

/** Stand-ins for worksheet functions, so that these tests are about the grid and nothing else. */
export const standIns: readonly WorksheetFunction[] = [
  standIn("SHARE_LEFT", ["tare", "loss?"], ([tare, loss]) => {
    if (tare === null) throw unusable("needs tare");
    if (typeof tare !== "number")
      throw unusable(`tare: ${String(tare)} is no weight`);
    if (tare > 1000) throw unanswerable(`tare: ${tare} lb is beyond the scale`);
    return tare * (1 - (typeof loss === "number" ? loss : 0));
  }),
  standIn("HEARD", ["first", "second?"], (raw) => JSON.stringify(raw)),
  standIn("HEARD_ROWS", ["rows*", "second?"], (raw) => JSON.stringify(raw)),
  standIn("LADDER", ["steps"], ([steps]) =>
    Array.from({ length: Number(steps) }, (_, i) => [i + 1, `step ${i + 1}`]),
  ),
  standIn("LOT_TEXT", [], () => "0001234567890"),
  standIn("PASSED", [], () => true),
  standIn("BROKEN", [], () => {
    throw new TypeError("a bug");
  }),
];

/** `name?` may be left out, `name*` takes a rectangle. */
export function standIn(
  name: string,
  args: readonly string[],
  answer: WorksheetFunction["answer"],
): WorksheetFunction {
  return {
    name,
    summary: `Stands in for ${name}.`,
    args: args.map((arg) => ({
      name: arg.replace(/[?*]$/, ""),
      detail: arg,
      example: "1",
      optional: arg.endsWith("?"),
      range: arg.endsWith("*"),
    })),
    answer,
  };
}

export const emptySheet = (name: string): Sheet => ({
  name,
  cells: [],
  tables: [],
  validations: [],
  merges: [],
  widths: {},
  heights: {},
  frozen: { rows: 0, columns: 0 },
});

export const bookOf = (
  cells: Sheet["cells"],
  beside: Partial<Sheet> & { readonly names?: Workbook["names"] } = {},
): Workbook => {
  const { names = [], ...sheet } = beside;
  return {
    title: "Invented",
    sheets: [{ ...emptySheet("Work"), ...sheet, cells }],
    names,
  };
};

/** Invented figures in every form the model has; a sheet's cells stand row by row. */
export const richWorkbook: Workbook = {
  title: "Invented packing office",
  names: [
    { name: "bulk_price", refersTo: "'Farm settings'!$B$2" },
    { name: "dear_price", refersTo: "'Farm settings'!$B$2*2" },
    { name: "lots_left", refersTo: "SUM(Lots[Left lb])" },
  ],
  sheets: [
    {
      ...emptySheet("Farm settings"),
      tabColor: "#7a3e12",
      widths: { 0: 24, 1: 12.5 },
      heights: { 0: 30, 3: 22.5 },
      frozen: { rows: 1, columns: 1 },
      merges: [{ row: 0, column: 0, rows: 1, columns: 2 }],
      validations: [
        {
          area: { row: 1, column: 1, rows: 1, columns: 1 },
          rule: { kind: "number", min: 0, max: 99.5 },
          strict: true,
          message: "Price of bulk syrup in $ per lb",
        },
        {
          area: { row: 2, column: 1, rows: 1, columns: 1 },
          rule: { kind: "list", choices: ["Amber, rich", "Dark"] },
          strict: false,
        },
        {
          area: { row: 3, column: 1, rows: 2, columns: 1 },
          rule: { kind: "list from", source: "Lots[Lot]" },
        },
        {
          area: { row: 5, column: 1, rows: 1, columns: 1 },
          rule: { kind: "date", min: 46000 },
        },
        {
          area: { row: 6, column: 1, rows: 1, columns: 1 },
          rule: { kind: "whole number", max: 12 },
        },
        {
          area: { row: 7, column: 1, rows: 1, columns: 1 },
          rule: { kind: "number" },
        },
      ],
      cells: [
        {
          row: 0,
          column: 0,
          value: "Farm settings",
          style: { bold: true, size: 16, color: "#4a2c17", align: "center" },
        },
        { row: 1, column: 0, value: "Bulk price" },
        {
          row: 1,
          column: 1,
          value: 2.612345678901234,
          note: "Agreed in spring\nper pound",
          style: {
            fill: "#fff6d8",
            format: '"$"#,##0.00',
            edges: { top: "thin", bottom: "double", left: "medium" },
          },
        },
        {
          row: 2,
          column: 0,
          value: "Grade",
          style: { indent: 2, italic: true },
        },
        {
          row: 2,
          column: 1,
          value: "Dark",
          style: { align: "right", indent: 1 },
        },
        { row: 3, column: 0, value: "0042" },
        { row: 3, column: 1, value: true },
        { row: 4, column: 0, value: "=not a formula" },
        { row: 4, column: 1, value: false },
        { row: 5, column: 0, value: { error: "#N/A" } },
        { row: 5, column: 1, value: 46351, style: { format: "yyyy-mm-dd" } },
        {
          row: 6,
          column: 0,
          value: "Two lines\nof text",
          style: {
            wrap: true,
            font: "Georgia",
            edges: { right: "thin", color: "#d8cfc2" },
          },
        },
        { row: 7, column: 1, style: { fill: "#fff6d8" } },
        { row: 8, column: 2, note: "A note beside nothing" },
      ],
    },
    {
      ...emptySheet("Lot's list"),
      tables: [
        {
          name: "Lots",
          area: { row: 0, column: 0, rows: 4, columns: 4 },
          columns: [
            { heading: "Lot" },
            { heading: "Left lb" },
            { heading: "Price per lb" },
            {
              heading: "Worth",
              formula:
                "=Lots[[#This Row],[Left lb]]*Lots[[#This Row],[Price per lb]]",
            },
          ],
        },
      ],
      cells: [
        ...["Lot", "Left lb", "Price per lb", "Worth"].map((value, column) => ({
          row: 0,
          column,
          value,
          style: { bold: true, fill: "#5b3a21", color: "#ffffff" },
        })),
        ...[
          ["A1", 100, 2.5],
          ["B2", 50, 3.25],
          ["C3", 10, 1.1],
        ].flatMap((values, i) => [
          ...values.map((value, column) => ({ row: i + 1, column, value })),
          {
            row: i + 1,
            column: 3,
            formula:
              "=Lots[[#This Row],[Left lb]]*Lots[[#This Row],[Price per lb]]",
            value: Number(values[1]) * Number(values[2]),
            style: { format: "0.00" },
          },
        ]),
      ],
    },
    { ...emptySheet("Put away"), hidden: true },
  ],
};
