import { tableList } from "../../src/book/book";
import type { Contents } from "../../src/book/contents";
import { readBook } from "../../src/book/read";
import { serialOf } from "../../src/measures/read-date";
import { farmBook } from "../../src/sheets/farm-book";
import { tablesOf } from "../../src/sheets/tables-of";
import type { Cell, Sheet } from "../../src/sheets/workbook";
import { demoTables } from "../book/csv-folder";
import { withoutPlaces } from "../book/worksheet-tables";

const tables = demoTables();
const book = farmBook(tables);
const sheet = (name: string): Sheet => {
  const found = book.sheets.find((s) => s.name === name);
  if (!found) throw new Error(`no sheet ${name}`);
  return found;
};
const cell = (name: string, heading: string, row: number): Cell => {
  const { tables: own, cells } = sheet(name);
  const column = own[0]?.columns.findIndex((c) => c.heading === heading) ?? -1;
  const found = cells.find((c) => c.row === row - 1 && c.column === column);
  if (!found) throw new Error(`no cell ${heading} ${row} in ${name}`);
  return found;
};
const validation = (name: string, heading: string) => {
  const column = cell(name, heading, 1).column;
  return sheet(name).validations.find(({ area }) => area.column === column);
};

test("the book has a sheet and a table for each kind of record, settings first", () => {
  expect(book.title).toBe("Fernkettle Hollow Packing: farm book");
  expect(book.sheets.map(({ name }) => name)).toEqual(
    tableList
      .filter(([, table]) => !table.comesFromRoll && !table.onlyWhereKept)
      .map(([, table]) => table.sheet),
  );
  expect(book.sheets[0]?.name).toBe("Settings");
  for (const { tables: own, frozen } of book.sheets) {
    expect(own).toHaveLength(1);
    expect(frozen).toEqual({ rows: 1, columns: 1 });
  }
});

test("the sheets read back as the book they were made of", () => {
  const back = readBook(tablesOf(book));
  expect(withoutPlaces(back.book)).toEqual(
    withoutPlaces(readBook(tables).book),
  );
});

test("the sheets hold nothing but what was typed, and formulas", () => {
  for (const { cells, tables: own } of book.sheets) {
    const columns = own[0]?.columns ?? [];
    for (const { row, column, formula, value } of cells) {
      if (row === 0) continue;
      expect(formula).toBe(columns[column]?.formula);
      if (formula !== undefined) expect(value).toBeUndefined();
    }
  }
});

test("calculated columns carry their formula in every row and look unlike inputs", () => {
  const landed = cell("Lots", "Landed per lb", 27);
  expect(landed.formula).toBe(
    "=SYRUP.LANDED_PRICE(Lots[[#This Row],[Net lb]],Lots[[#This Row],[Syrup cost]],Lots[[#This Row],[Inbound freight]])",
  );
  expect(cell("Wages", "Loaded per hour", 2).formula).toBe(
    "=SYRUP.LOADED_WAGE(Wages[[#This Row],[Hourly]],Wages[[#This Row],[Add ons]])",
  );
  expect(cell("Crew", "Cost per hour", 2).formula).toBe(
    "=Crew[[#This Row],[People]]*INDEX(Wages[Loaded per hour],MATCH(Crew[[#This Row],[Role]],Wages[Role],0))",
  );
  expect(landed.style?.fill).not.toBe(cell("Lots", "Net lb", 27).style?.fill);
});

test("dates, shares and money show as such, and barcodes and lot numbers stay text", () => {
  expect(cell("Lots", "Received", 2)).toMatchObject({
    value: serialOf(2025, 3, 24),
    style: { format: "yyyy-mm-dd" },
  });
  expect(cell("Channels", "Goal margin", 2)).toMatchObject({
    value: 0.58,
    style: { format: "0.0%" },
  });
  expect(cell("Part prices", "Price each", 2).style?.format).toBe("#,##0.0000");
  expect(cell("Products", "Bottle barcode", 2)).toMatchObject({
    value: "400001001004",
    style: { format: "@" },
  });
  expect(cell("Lots", "Lot", 2)).toMatchObject({
    value: "25-01",
    style: { format: "@" },
  });
  expect(cell("Settings", "Value", 13)).toMatchObject({
    value: serialOf(2026, 11, 20),
    style: { format: "yyyy-mm-dd" },
  });
});

test("every heading says what its column means, with its unit", () => {
  for (const { cells } of book.sheets)
    for (const heading of cells.filter(({ row }) => row === 0))
      expect(heading.note).toMatch(/^[A-Z].{5,}\./);
  expect(cell("Lots", "Net lb", 1).note).toContain("In lb.");
  expect(cell("Lots", "Landed per lb", 1).note).toContain("nothing to type");
});

test("what may be typed follows from the term or from the table referred to", () => {
  expect(validation("Lots", "Grade")).toMatchObject({
    rule: {
      kind: "list",
      choices: ["Golden", "Amber", "Dark", "Very Dark", "Processing"],
    },
    strict: true,
    area: { row: 1, rows: 26, columns: 1 },
  });
  expect(validation("Product materials", "Part")).toMatchObject({
    rule: { kind: "list from", source: "'Parts'!$A$2:$A$33" },
    strict: false,
  });
  expect(validation("Runs", "Line")?.rule).toEqual({
    kind: "list from",
    source: "'Lines'!$A$2:$A$4",
  });
  expect(validation("Lots", "Brix at 68 °F")?.rule).toEqual({
    kind: "number",
    min: 60,
    max: 75,
  });
  expect(validation("Runs", "Good bottles")?.rule.kind).toBe("whole number");
  expect(validation("Lots", "Landed per lb")).toBeUndefined();
  expect(validation("Settings", "Value")).toBeUndefined();
});

test("every value of the demo farm may be typed where it stands", () => {
  for (const { cells, validations } of book.sheets)
    for (const { area, rule } of validations)
      for (const { row, column, value } of cells) {
        if (column !== area.column || row === 0 || value === undefined)
          continue;
        if (rule.kind === "list") expect(rule.choices).toContain(value);
        else if (rule.kind !== "list from") {
          expect(typeof value).toBe("number");
          expect(value).toBeGreaterThanOrEqual(rule.min ?? -Infinity);
          expect(value).toBeLessThanOrEqual(rule.max ?? Infinity);
        }
      }
});

test("columns are wide enough for their values and for the longest word of their heading", () => {
  for (const { cells, widths } of book.sheets)
    for (const { row, column, value } of cells) {
      if (typeof value !== "string") continue;
      const longest =
        row === 0
          ? Math.max(...value.split(" ").map((word) => word.length + 2))
          : Math.min(value.length, 40);
      expect(widths[column]).toBeGreaterThanOrEqual(longest);
    }
});

test("a farm without totes still gets their sheets, with a row to type in", () => {
  const bare = farmBook(tables.filter(({ name }) => !/^Tote/.test(name)));
  const totes = bare.sheets.find(({ name }) => name === "Tote shipments");
  expect(totes?.tables[0]?.area.rows).toBe(2);
  expect(totes?.cells.filter(({ value }) => value !== undefined)).toHaveLength(
    totes?.tables[0]?.columns.length ?? 0,
  );
  expect(readBook(tablesOf(bare)).book.toteShipments).toEqual([]);
});

test("columns of the farm's own stay behind ours", () => {
  const withOwn = tables.map((table): Contents =>
    table.name === "Wages"
      ? {
          ...table,
          headings: ["Since", ...table.headings],
          rows: table.rows.map((cells, i) => [2020 + i, ...cells]),
        }
      : table,
  );
  const wages = tablesOf(farmBook(withOwn)).find(
    ({ name }) => name === "Wages",
  );
  expect(wages?.headings.at(-1)).toBe("Since");
  expect(wages?.rows.map((cells) => cells.at(-1))).toEqual([
    2020, 2021, 2022, 2023, 2024,
  ]);
});
