import fc from "fast-check";
import type {
  Cell,
  CellStyle,
  Sheet,
  Validation,
  Workbook,
} from "../../../src/sheets/workbook";
import { sheetOf } from "./fernkettle-book";

const hex = fc
  .integer({ min: 0, max: 0xffffff })
  .map((n) => `#${n.toString(16).padStart(6, "0")}`);
const text = fc.oneof(
  fc.string({ unit: "binary", maxLength: 12 }),
  fc.string({ unit: "grapheme", maxLength: 12 }),
  fc.constantFrom(
    "#N/A",
    "#VALUE!",
    "TRUE",
    "=1+1",
    " a\r\nb\t",
    "_x000D_",
    "]]>",
    "\u0000",
  ),
);
const number = fc
  .double({ noNaN: true, noDefaultInfinity: true })
  .map((n) => (Object.is(n, -0) ? 0 : n));
const errors = fc
  .constantFrom(
    "#NULL!",
    "#DIV/0!",
    "#VALUE!",
    "#REF!",
    "#NAME?",
    "#NUM!",
    "#N/A",
  )
  .map((error) => ({ error }));
const value = fc.oneof(text, number, fc.boolean(), errors);
const edge = fc.constantFrom(
  "thin" as const,
  "medium" as const,
  "double" as const,
);
const style: fc.Arbitrary<CellStyle> = fc
  .record(
    {
      font: fc.constantFrom("Arial", "Georgia & Sons"),
      size: fc.constantFrom(8, 10.5, 24),
      bold: fc.constant(true),
      italic: fc.constant(true),
      color: hex,
      fill: hex,
      format: fc.constantFrom(
        "0.00",
        "General",
        '#,##0.00" gal";[Red]-0',
        "yyyy-mm-dd",
        "@",
      ),
      align: fc.constantFrom(
        "left" as const,
        "center" as const,
        "right" as const,
      ),
      wrap: fc.constant(true),
      indent: fc.integer({ min: 1, max: 9 }),
      edges: fc.record(
        { top: edge, bottom: edge, left: edge, right: edge, color: hex },
        { requiredKeys: ["top"] },
      ),
    },
    { requiredKeys: [] },
  )
  .filter((s) => Object.keys(s).length > 0);

/** Formulas as our sheets write them: joined from parts that must each come back untouched. */
const formula = fc
  .array(
    fc.constantFrom(
      "SYRUP.DENSITY(A1,20)",
      "XLOOKUP(1,A1:A9,B1:B9)",
      "LET(x,2,x*MAX(x,3))",
      '"SYRUP.DENSITY(" & "it""s"',
      "'It''s a sheet'!$B$2",
      "Lots[[#This Row],[lb (net)]]",
      "FILTER(A1:A9,B1:B9>0)",
      "NORM.S.DIST(A1,TRUE)",
      "1E-3",
    ),
    { minLength: 1, maxLength: 4 },
  )
  .map((pieces) => `=${pieces.join("&")}`);

const area = fc.record({
  row: fc.integer({ min: 0, max: 99 }),
  column: fc.integer({ min: 0, max: 40 }),
  rows: fc.integer({ min: 1, max: 9 }),
  columns: fc.integer({ min: 1, max: 3 }),
});
const rule: fc.Arbitrary<Validation["rule"]> = fc.oneof(
  fc.record(
    {
      kind: fc.constantFrom(
        "number" as const,
        "whole number" as const,
        "date" as const,
      ),
      min: fc.integer({ min: 1, max: 50 }),
      max: fc.integer({ min: 51, max: 99 }),
    },
    { requiredKeys: ["kind"] },
  ),
  fc.record({
    kind: fc.constant("list" as const),
    choices: fc.array(fc.constantFrom("jug", '8" cap', "<tin>", "a&b"), {
      minLength: 1,
      maxLength: 5,
    }),
  }),
  fc.record({
    kind: fc.constant("list from" as const),
    source: fc.constantFrom(
      "$A$1:$A$9",
      'INDIRECT("Lots[Lot]")',
      "'O''Neil'!A1:A4",
    ),
  }),
);
const validation: fc.Arbitrary<Validation> = fc.record(
  {
    area,
    rule,
    strict: fc.constant(true),
    message: fc.string({ minLength: 1, maxLength: 200 }),
  },
  { requiredKeys: ["area", "rule"] },
);
const cellContents = fc
  .record(
    { value, formula, style, note: fc.string({ minLength: 1, maxLength: 30 }) },
    { requiredKeys: [] },
  )
  .filter((c) => Object.keys(c).length > 0);
const cells: fc.Arbitrary<readonly Cell[]> = fc
  .dictionary(
    fc
      .tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 30 }))
      .map(String),
    cellContents,
    { maxKeys: 12, noNullPrototype: true },
  )
  .map((byPlace) =>
    Object.entries(byPlace)
      .map(([place, contents]) => {
        const [row = 0, column = 0] = place.split(",").map(Number);
        return { row, column, ...contents };
      })
      .sort((a, b) => a.row - b.row || a.column - b.column),
  );
const sizes = (most: number): fc.Arbitrary<Record<number, number>> =>
  fc.dictionary(
    fc.integer({ min: 0, max: most }).map(String),
    fc.integer({ min: 1, max: 400 }).map((n) => n / 4),
    { maxKeys: 4, noNullPrototype: true },
  );
const sheet: fc.Arbitrary<Omit<Sheet, "name" | "tables">> = fc.record(
  {
    cells,
    validations: fc.array(validation, { maxLength: 3 }),
    merges: fc.array(
      area.filter((a) => a.rows > 1),
      { maxLength: 1 },
    ),
    widths: sizes(60),
    heights: sizes(60),
    frozen: fc.record({ rows: fc.nat(3), columns: fc.nat(3) }),
    hidden: fc.constant(true),
    tabColor: hex,
  },
  {
    requiredKeys: [
      "cells",
      "validations",
      "merges",
      "widths",
      "heights",
      "frozen",
    ],
  },
);

/** Any workbook the model can say and a file can hold; its sheets carry no tables. */
export const anyWorkbook: fc.Arbitrary<Workbook> = fc
  .tuple(fc.array(sheet, { maxLength: 2 }), fc.string({ maxLength: 20 }))
  .map(([sheets, title]) => ({
    title,
    names: [{ name: "Rate", refersTo: "'1'!$A$1" }],
    sheets: [
      sheetOf({ name: "1" }),
      ...sheets.map((given, i) => ({
        ...given,
        name: `Sheet <${i + 2}>`,
        tables: [],
      })),
    ],
  }));
