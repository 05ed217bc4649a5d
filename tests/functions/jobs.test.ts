import { gridFunctions } from "../../src/apps/grid-functions";
import { functions } from "../../src/functions";
import type { CombinedJob } from "../../src/functions/jobs/job";
import {
  functionsIn,
  jobGroups,
  jobsPage,
} from "../../src/functions/page-jobs";
import { documentation } from "../../src/functions/pages";
import { calculate } from "../../src/hosts/grid/calculate";
import type { Cell, Stored, Workbook } from "../../src/sheets/workbook";

const jobs = jobGroups.flatMap((group) => group.jobs);
const recipes = jobs.filter((job): job is CombinedJob => "formula" in job);
const named = jobs.flatMap((job) =>
  "by" in job ? [job.by] : functionsIn(job.formula),
);

test("every function serves a job, and no job names one that is missing", () => {
  const known = functions.map(({ name }) => name);
  expect(known.filter((name) => !named.includes(name))).toEqual([]);
  expect([...new Set(named)].filter((name) => !known.includes(name))).toEqual(
    [],
  );
});

test("no two jobs ask the same, and each asks", () => {
  const questions = jobs.map(({ question }) => question);
  expect(new Set(questions).size).toBe(questions.length);
  for (const question of questions) expect(question).toMatch(/^[A-Z].*\?$/);
});

test("the index leads to every formula of the page", () => {
  const index = documentation(functions).get("functions/README.md") ?? "";
  for (const { question } of recipes)
    expect(index).toContain(`[${question}](by-job.md#`);
});

test("the page holds every job with its formula", () => {
  const page = jobsPage(functions);
  for (const job of jobs) expect(page).toContain(job.question);
  for (const { formula } of recipes) expect(page).toContain(`\n${formula}\n`);
});

describe("formulas of the page, worked out by the grid", () => {
  let results: readonly Stored[] = [];
  beforeAll(async () => {
    const { workbook } = await calculate(workbookOfRecipes(), gridFunctions);
    results = workbook.sheets.map(
      ({ cells }) => cells.find(({ formula }) => formula)?.value ?? null,
    );
  });

  test.each(recipes.map((recipe, i) => [recipe.question, recipe, i] as const))(
    "%s",
    (_, { gives, within }, i) => {
      const given = results[i];
      if (typeof gives !== "number") expect(given).toBe(gives);
      else
        expect(Math.abs(Number(given) - gives)).toBeLessThanOrEqual(
          within ?? Math.abs(gives) * 1e-9,
        );
    },
  );
});

/** A sheet a recipe: its cells from A2 on, its formula where nothing else stands. */
const workbookOfRecipes = (): Workbook => ({
  title: "",
  names: [],
  sheets: recipes.map(({ cells, formula }, i) => ({
    name: `Job ${i + 1}`,
    tables: [],
    validations: [],
    merges: [],
    widths: {},
    heights: {},
    frozen: { rows: 0, columns: 0 },
    cells: [
      ...cells.flatMap((row, r) =>
        row.flatMap((value, column): readonly Cell[] =>
          value === null || value === "" ? [] : [{ row: r + 1, column, value }],
        ),
      ),
      { row: 0, column: 6, formula },
    ],
  })),
});
