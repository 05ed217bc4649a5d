import {
  nextBookFile,
  plannedRoll,
  seasonsToOpen,
  sheetsLeft,
} from "../../../../src/apps/pane/season/next-season";
import { openingOf } from "../../../../src/book/season-roll/roll-season";
import { partText, unpack } from "../../../../src/hosts/file/package-parts";
import { readXlsx } from "../../../../src/hosts/file/read-xlsx";
import { tablesOf } from "../../../../src/sheets/tables-of";
import { demoTables } from "../../../book/csv-folder";
import { demoWorkbook } from "../../../support/demo-workbook";

const tables = demoTables();

test("the next season comes first, and an empty book has none", () => {
  expect(seasonsToOpen(tables)).toEqual([2027, 2026]);
  expect(seasonsToOpen([])).toEqual([]);
});

test("every balance is there closing and opening before anything is made, and the file holds them", async () => {
  const planned = plannedRoll(tables, 2027);
  if ("trouble" in planned) throw new Error(planned.trouble);
  const { roll, balances } = planned;
  expect(balances.length).toBeGreaterThan(40);
  for (const { closing, opening } of balances)
    expect(opening).toBeCloseTo(closing, 5);
  // Source: stock_count.csv, book weight of each lot.
  expect(balances.find(({ name }) => name === "26-03")?.opening).toBeCloseTo(
    4681,
    5,
  );
  const bytes = await nextBookFile(roll, undefined);
  const { workbook } = await readXlsx(bytes, "next.xlsx");
  expect(workbook.sheets.at(-1)?.name).toBe("Opening 2027");
  expect(openingOf(roll, tablesOf(workbook))).toEqual(balances);
  // Nothing here worked its formulas out, so whoever opens it is asked to.
  expect(partText(unpack(bytes), "xl/workbook.xml")).toContain(
    'fullCalcOnLoad="1"',
  );
}, 60_000);

test("a season that does not follow and a book without a date are stopped with one sentence", () => {
  expect(plannedRoll(tables, 2031)).toEqual({
    trouble: expect.stringMatching(/^Season 2031: .*2027/) as string,
  });
  expect(plannedRoll([], 2027)).toEqual({
    trouble: expect.stringContaining("no date") as string,
  });
});

test("sheets without a table of the book are named as left behind, a record of this opening is not", () => {
  const workbook = demoWorkbook(["P250-LOFT"], 1200);
  const tables = tablesOf(workbook);
  const own = { ...tables[0], name: "Visitors", sheet: "Visitors" };
  expect(
    sheetsLeft(
      {
        sheets: [
          ...workbook.sheets.map(({ name }) => name),
          "Visitors",
          "Opening 2027",
        ],
        tables: [...tables, own as (typeof tables)[number]],
      },
      2027,
    ),
  ).toEqual(["Cost P250-LOFT", "Visitors"]);
});
