import { renderToStaticMarkup } from "react-dom/server";
import { plannedPlan } from "../../../../src/apps/pane/run-planner/build";
import { LinesPicture } from "../../../../src/apps/pane/run-planner/lines-picture";
import { PlanAnswers } from "../../../../src/apps/pane/run-planner/plan-answers";
import {
  lineFacts,
  lotFacts,
  materialFacts,
  packedFacts,
} from "../../../../src/apps/pane/run-planner/plan-facts";
import {
  emptyRun,
  readRun,
} from "../../../../src/apps/pane/run-planner/run-draft";
import { runPlan } from "../../../../src/book/run-plan";
import { readStart } from "../../../../src/book/run-plan-start";
import { runPlanNames } from "../../../../src/sheets/run-plan/names";
import { demoTables } from "../../../book/csv-folder";
import { demoBook } from "../../../support/demo-workbook";

const { book } = demoBook();
const start = readStart("2026-11-26T07:00", "start");
const small = runPlan(book, { product: "P250-LOFT", bottles: 600, start });

test("what is typed is read field by field, and what cannot be used is said at its own field", () => {
  expect(
    readRun({ ...emptyRun, bottles: "1,200", start: "2026-11-26T07:00" }),
  ).toEqual({ bottles: 1200, start, line: undefined, trouble: {} });
  expect(readRun({ ...emptyRun, bottles: "600" }).start).toBeUndefined();
  const bad = readRun({ ...emptyRun, bottles: "12.5", start: "soon" });
  expect([bad.bottles, bad.start]).toEqual([undefined, undefined]);
  expect(bad.trouble.bottles).toContain("12.5");
  expect(bad.trouble.start).toContain("soon");
});

test("the line's facts are its rate and limit, where the lines are even, crew-hours and finish", () => {
  expect(lineFacts(small)).toEqual([
    {
      name: "Rate",
      figure: "720 an hour",
      remark: "limited by hand cap and invert",
    },
    {
      name: "Even with Big line",
      figure: "6,853 bottles",
      remark: "572 cases",
    },
    // 55 min and 600 ÷ 720 = 50 min: 1 h 45 min of four people.
    { name: "Crew-hours", figure: "7.00", remark: "4 people for 1.75 h" },
    { name: "Finish", figure: "2026-11-26 08:45" },
  ]);
});

test("without a start the finish is hours after it", () => {
  const facts = lineFacts(
    runPlan(book, { product: "P250-LOFT", bottles: 600 }),
  );
  expect(facts.at(-1)).toEqual({
    name: "Finish",
    figure: "1.75 h after the start",
  });
});

test("a short part says what to order, by when, and what the next price break saves", () => {
  const labels = materialFacts(small).find(({ name }) =>
    name.startsWith("LBL-PL-F"),
  );
  expect(labels).toEqual({
    name: "LBL-PL-F · Private label front, short run",
    figure: "750",
    remark:
      "Short 750: order 1,000 at once (2026-11-17 was the last day), $290.00. The next price break saves $17.50 and leaves 381 over.",
    isPressing: true,
  });
  expect(
    materialFacts(small).find(({ name }) => name.startsWith("CAP-28"))?.remark,
  ).toBeUndefined();
});

test("a run beyond the stock shows what is short beside the lots", () => {
  const facts = lotFacts(
    runPlan(book, { product: "G250-AM", bottles: 25_000 }),
  );
  expect(facts.at(-1)).toMatchObject({
    name: "Short",
    remark: "of Amber",
    isPressing: true,
  });
});

test("pallets are counted with the one that is not full", () => {
  expect(packedFacts(small)[0]).toEqual({
    name: "Pallets",
    figure: "1",
    remark: "0 full, 50 cases on the last",
  });
});

test("wherever the kettle is shown, so is the caution about scalding", () => {
  const html = renderToStaticMarkup(<PlanAnswers plan={small} dark={false} />);
  expect(html).toContain("Kettle fills");
  expect(html).toContain("Syrup at filling temperature scalds at once.");
});

test("the picture of the lines says this run's costs and where they are even", () => {
  const html = renderToStaticMarkup(<LinesPicture plan={small} dark />);
  expect(html).toContain(
    "This run of 600: Small pair $197.93, Big line $669.30. Even at 6,853 bottles.",
  );
  expect(html).toContain('role="img"');
});

test("what will be written is said first: two sheets and the names of their figures", () => {
  const planned = plannedPlan({
    tables: demoTables().map((table) => ({
      ...table,
      sheet: table.name,
      row: 0,
      column: 0,
      rows: table.rows as never,
    })),
    sheets: ["Settings"],
    product: "P250-LOFT",
    bottles: 600,
    start,
    line: undefined,
  });
  expect(planned.sheet).toBe("Run plan P250-LOFT");
  expect(planned.change.addSheets.map(({ name }) => name)).toEqual([
    "Run plan P250-LOFT",
    "Run working P250-LOFT",
  ]);
  expect(planned.writes[0]).toContain("Run plan P250-LOFT");
  expect(runPlanNames(planned.change.names, "P250-LOFT").bottles?.sheet).toBe(
    "Run plan P250-LOFT",
  );
});
