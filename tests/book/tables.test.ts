import { tableList } from "../../src/book/book";
import { placeParts } from "../../src/book/references";
import { ownCell } from "../../src/book/table";
import { demoFolder } from "./csv-folder";

const columns = tableList.flatMap(([, table]) =>
  Object.entries(table.columns).map(
    ([key, column]) => [table, key, column] as const,
  ),
);

test("every heading can stand in a formula: letters, digits, spaces, % and ° only", () => {
  for (const [, , { heading }] of columns) {
    expect(heading).toMatch(/^[A-Za-z0-9 %°]+$/);
    expect(heading).toBe(heading.trim());
  }
});

test("headings are unique within a table, names and sheets within the book", () => {
  for (const [, table] of tableList) {
    const headings = Object.values(table.columns).map(({ heading }) =>
      heading.toLowerCase(),
    );
    expect(new Set(headings).size).toBe(headings.length);
  }
  for (const part of ["name", "sheet", "csv"] as const)
    expect(new Set(tableList.map(([, table]) => table[part])).size).toBe(
      tableList.length,
    );
});

test("a calculated column names only tables and headings that exist", () => {
  const known = new Set(
    columns.map(([table, , { heading }]) => `${table.name}[${heading}]`),
  );
  let named = 0;
  for (const [table, , column] of columns) {
    const formula = column.formula?.(ownCell(table.name)) ?? "";
    const own = [...formula.matchAll(/(\w+)\[\[#This Row\],\[([^\]]+)\]\]/g)];
    const whole = [...formula.matchAll(/(\w+)\[([^[\]#]+)\]/g)];
    for (const [, name, heading] of [...own, ...whole]) {
      named += 1;
      expect(known).toContain(`${name}[${heading}]`);
    }
  }
  expect(named).toBeGreaterThan(25);
});

test("keys and references lead to columns that exist and are typed in", () => {
  for (const [, table] of tableList)
    for (const key of table.key)
      expect(table.columns[key]?.formula).toBeUndefined();
  for (const [, , column] of columns)
    for (const place of column.refersTo ?? []) {
      const [tableKey, key] = placeParts(place);
      const other = tableList.find(([known]) => known === tableKey)?.[1];
      expect(other?.columns[key]).toBeDefined();
    }
});

test("every column of the demo farm's files has its place in the book", () => {
  const folder = demoFolder();
  for (const [, table] of tableList) {
    const known = Object.values(table.columns).map(({ csv }) => csv);
    for (const heading of folder.get(table.csv)?.headings ?? [])
      expect(known).toContain(heading);
  }
});

test("no list of choices is longer than a worksheet takes", () => {
  for (const [, , { term }] of columns)
    if (term.kind === "choice") {
      expect(term.choices.join(",").length).toBeLessThan(255);
      expect(term.choices.some((choice) => choice.includes(","))).toBe(false);
    }
});
