import { execFileSync } from "node:child_process";
import path from "node:path";
import { callFigures, same } from "../../src/apps/cli/bench/calls";
import { compared, median } from "../../src/apps/cli/bench/clock";
import { editFigures } from "../../src/apps/cli/bench/edits";
import type { Figure } from "../../src/apps/cli/bench/figure";
import { generalFigures } from "../../src/apps/cli/bench/general-library";
import { longTableFigures } from "../../src/apps/cli/bench/long-tables";
import { lotFigures } from "../../src/apps/cli/bench/lots";
import { benchmarksPage } from "../../src/apps/cli/bench/page";
import { readFolder } from "../../src/apps/cli/read-book-files";
import { functions } from "../../src/functions";
import { root } from "../architecture/project-files";

// Nothing here says how fast anything is: that is the bench's to say. These tests say that it measures what it claims.

test("the middle of the rounds is the middle, whatever their order and number", () => {
  expect(median([9, 1, 4])).toBe(4);
  expect(median([9, 1, 4, 6])).toBe(5);
  expect(median([])).toBeNaN();
});

test("work and yardstick take turns after one uncounted round each", async () => {
  const order: string[] = [];
  const { ratio } = await compared(
    2,
    () => order.push("work"),
    () => order.push("yardstick"),
  );
  expect(order).toEqual([
    "work",
    "yardstick",
    "yardstick",
    "work",
    "yardstick",
    "work",
  ]);
  expect(ratio).toBeGreaterThan(0);
});

test("a call is compared only with arithmetic that gives its own answer", async () => {
  expect(() => same("DENSITY", 1.3281, 1.3282)).toThrow(
    "DENSITY gives 1.3281, its yardstick 1.3282",
  );
  const figures = await callFigures(1);
  const families = new Set(functions.map(({ family }) => family));
  expect(
    new Set(figures.map(({ work }) => work.slice(0, work.indexOf(":")))),
  ).toEqual(families);
});

test("a general library is timed only at work it does with our answer", async () => {
  // Each pair is compared before it is timed; one that differs throws.
  const figures = await generalFigures(root, 1);
  expect(figures.map(({ work }) => work)).toContain("`BEST_BY` against EDATE");
});

test("long tables are timed at growing lengths, each against a tenth of it", async () => {
  const figures = await longTableFigures(1, [100, 1_000]);
  expect(figures.map(({ work }) => work)).toEqual([
    "`LOT_COST`, 100 lots",
    "`LOT_COST`, 1,000 lots",
    "`TRACE`, 100 movements, one lot in half of them",
    "`TRACE`, 1,000 movements, one lot in half of them",
    "`ALLOCATE`, 100 drivers",
    "`ALLOCATE`, 1,000 drivers",
  ]);
});

test("ten thousand lots are costed as they stand in a sheet", async () => {
  const [, long] = await lotFigures(1);
  expect(long?.work).toContain("10,000 lots");
});

test("the edit that is measured moves cells of the demo book", async () => {
  const { contents } = readFolder(
    path.join(root, "sample-workbooks/fernkettle-hollow"),
  );
  const run = { product: "P250-LOFT", bottles: 1200 };
  const [figure] = await editFigures(contents, run, 1);
  const followers = Number(
    /(\d+) of them change/.exec(figure?.work ?? "")?.[1],
  );
  expect(followers).toBeGreaterThan(10);
});

test("the page states the aim beside the figure, and is laid out as the rest of the docs", () => {
  const figure: Figure = {
    work: "Weigh a tote",
    takes: "3 ms",
    yardstick: "1 ms",
    ratio: 3,
    aim: "under 2 times",
    isMet: false,
  };
  const page = benchmarksPage(
    [
      {
        title: "Totes",
        about: "By hand.",
        yardstick: "Bare",
        figures: [figure],
      },
    ],
    "2 cores",
  );
  expect(page).toMatch(
    /\| Weigh a tote \| 3 ms +\| 1 ms +\| 3\.00 +\| under 2 times \| no +\|/,
  );
  expect(page).not.toMatch(/\b20\d\d\b/);
  const prettier = path.join(root, "node_modules/prettier/bin/prettier.cjs");
  expect(
    execFileSync(process.execPath, [prettier, "--parser", "markdown"], {
      input: page,
      encoding: "utf8",
    }),
  ).toBe(page);
});
