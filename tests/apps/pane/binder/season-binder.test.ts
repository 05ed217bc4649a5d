import {
  binderBook,
  plannedBinder,
  seasonsIn,
} from "../../../../src/apps/pane/binder/season-binder";
import { gapsByRun } from "../../../../src/book/binder-gaps";
import { readBook } from "../../../../src/book/read";
import { demoFolder, demoTables } from "../../../book/csv-folder";

const reading = readBook(demoTables());
const planned = plannedBinder(reading, 2026, "");
if ("trouble" in planned) throw new Error(planned.trouble);
const { binder } = planned;

test("seasons are those of runs and lots, and an empty book has none", () => {
  expect(seasonsIn(reading)[0]).toBe(2026);
  expect(seasonsIn(readBook([]))).toEqual([]);
  expect(plannedBinder(readBook([]), 2026, "")).toEqual({
    trouble: expect.stringContaining("no date") as string,
  });
  expect(plannedBinder(reading, 1999, "")).toEqual({
    trouble: expect.stringMatching(/^Season 1999: .*holds nothing/) as string,
  });
});

test("a lot that is not in the book is refused in one sentence", () => {
  expect(plannedBinder(reading, 2026, "no such lot")).toEqual({
    trouble: expect.stringContaining("no such lot") as string,
  });
});

test("every run without a fill check is named with it, and no other", () => {
  // Source: fill_checks.csv, its run column.
  const checked = new Set(
    demoFolder()
      .get("fill_checks.csv")
      ?.rows.map(({ cells }) => cells[0]),
  );
  const lacking = gapsByRun(binder)
    .filter(({ gaps }) => gaps.includes("no fill check"))
    .map(({ run }) => run);
  expect(lacking).toEqual(
    binder.runs.map(({ row }) => row.run).filter((run) => !checked.has(run)),
  );
  expect(lacking.length).toBeGreaterThan(0);
});

test("the set is the sheets of the binder under the farm's name", () => {
  const { title, sheets } = binderBook(binder);
  expect(title).toBe("Fernkettle Hollow Packing: records of season 2026");
  expect(sheets.map(({ name }) => name)[0]).toBe("Binder");
});
