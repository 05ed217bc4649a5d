import {
  runPlanSheets,
  sheetNames,
} from "../../../src/sheets/run-plan/run-plan-sheets";
import { runPlanKeys } from "../../../src/sheets/run-plan/names";
import { demoTables } from "../../book/csv-folder";

const question = {
  contents: demoTables(),
  product: "P250-LOFT",
  bottles: 1200,
  existingSheets: [],
} as const;

test("a product that is not in Products, a table that is missing and a sheet that exists are refused by name", () => {
  expect(() => runPlanSheets({ ...question, product: "P9" })).toThrow(
    'There is no product "P9" in Products',
  );
  expect(() =>
    runPlanSheets({
      ...question,
      contents: question.contents.filter(({ name }) => name !== "Lines"),
    }),
  ).toThrow("The workbook has no Lines table, and a run plan needs it");
  for (const existing of ["run plan p250-loft", "Run working P250-LOFT"])
    expect(() =>
      runPlanSheets({ ...question, existingSheets: [existing] }),
    ).toThrow(`The sheet "${existing}" exists`);
});

test("the page for the floor prints on one page and carries the caution about scalding", () => {
  const { plan } = runPlanSheets(question);
  expect(plan.print).toMatchObject({ fit: "one page", paper: "letter" });
  expect(plan.cells.map(({ value }) => value)).toContain(
    "Syrup at filling temperature scalds at once.",
  );
});

test("only the yellow cells hold numbers that were typed in", () => {
  const { plan, working } = runPlanSheets(question);
  const typed = [plan, working].flatMap(({ cells }) =>
    cells.filter(({ value, formula }) => typeof value === "number" && !formula),
  );
  expect(typed.map(({ style, value }) => [style?.fill, value])).toEqual([
    ["#fff6d8", 1200],
    ["#fff6d8", 0],
  ]);
});

test("every figure has a name, and a portable plan holds none of our functions", () => {
  const { names } = runPlanSheets(question);
  expect(names).toHaveLength(runPlanKeys.length);
  const { plan, working } = runPlanSheets({ ...question, portable: true });
  for (const { formula } of [...plan.cells, ...working.cells])
    expect(formula ?? "").not.toContain("SYRUP.");
});

test("a code with signs that a sheet name may not hold, or too long for one, still gives a sheet", () => {
  expect(sheetNames("A/B:1")).toEqual(["Run plan A-B-1", "Run working A-B-1"]);
  for (const name of sheetNames("X".repeat(40)))
    expect(name.length).toBeLessThanOrEqual(31);
});
