import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gridFunctions } from "../../src/apps/grid-functions";
import { bookTablesFromCsv } from "../../src/book/from-csv";
import { readBook } from "../../src/book/read";
import { runPlan } from "../../src/book/run-plan";
import { readStart } from "../../src/book/run-plan-start";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../src/hosts/file/write-xlsx";
import { calculate } from "../../src/hosts/grid/calculate";
import { KG_PER_LB, LITRES_PER_GALLON } from "../../src/measures/units";
import { farmBook } from "../../src/sheets/farm-book";
import { portable } from "../../src/sheets/portable";
import { runPlanNames, type RunPlanKey } from "../../src/sheets/run-plan/names";
import { runPlanSheets } from "../../src/sheets/run-plan/run-plan-sheets";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { barePlanSettings, demoFolder } from "../book/csv-folder";
import { agree, differences } from "../support/agreement";
import { convertWithLibreOffice } from "../support/libre-office";

/** The demo farm with everything entered that a plan can ask for, less glass on the shelf, a little breakage, and units of its own. */
const contents = bookTablesFromCsv(
  demoFolder({
    "farm_settings.csv": barePlanSettings(`Day length,3,h,
Break after,1,h,
Break length,0.25,h,
Breakage,1,percent,
Least kettle fill,151.4,L,
Empty case,0.45,kg,
Empty pallet,45,lb,
Best-by months,24,months,`),
    "packaging_parts.csv": (text) => text.replace(",6048,185", ",500,185"),
  }),
).tables;
const { book } = readBook(contents);
const start = readStart("2026-11-26T07:00", "start");

/** A private label on ordinary Amber, a run too large for the stock, and aged syrup out of barrels. */
const runs = [
  { product: "P250-LOFT", bottles: 1200, start },
  { product: "P250-LOFT", bottles: 600, start },
  { product: "G250-AM", bottles: 25_000, start },
  { product: "J128-AM", bottles: 101 },
  { product: "B250-OAK", bottles: 900, start },
] as const;

/** Two runs of one product cannot stand in one workbook: the second of them has a workbook of its own. */
const workbookOf = (i: number): 0 | 1 => (i === 1 ? 1 : 0);

let live: readonly Workbook[];
let readBack: readonly Workbook[];
let recalculated: readonly Workbook[];

beforeAll(async () => {
  const drafts = ([0, 1] as const).map((which) => ({
    live: bookOf(which, false),
    plain: bookOf(which, true),
  }));
  live = await Promise.all(
    drafts.map(
      async (draft) => (await calculate(draft.live, gridFunctions)).workbook,
    ),
  );
  readBack = await Promise.all(
    live.map(
      async (workbook) =>
        (await readXlsx(await writeXlsx(workbook), "plan.xlsx")).workbook,
    ),
  );
  const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-plans-"));
  const files = await Promise.all(
    drafts.map(async ({ plain }, i) => {
      const file = join(folder, `portable-${i}.xlsx`);
      writeFileSync(file, await writeXlsx(portable(plain)));
      return file;
    }),
  );
  recalculated = await Promise.all(
    convertWithLibreOffice(files, { to: "xlsx", recalculate: true }).map(
      async (file) =>
        (await readXlsx(readFileSync(file), "portable.xlsx")).workbook,
    ),
  );
}, 300_000);

function bookOf(which: 0 | 1, plain: boolean): Workbook {
  const farm = farmBook(contents);
  const plans = runs
    .filter((_, i) => workbookOf(i) === which)
    .map((run) =>
      runPlanSheets({
        contents,
        ...run,
        existingSheets: [],
        portable: plain,
      }),
    );
  return {
    ...farm,
    sheets: [
      ...farm.sheets,
      ...plans.flatMap(({ plan, working }) => [plan, working]),
    ],
    names: [...farm.names, ...plans.flatMap(({ names }) => names)],
  };
}

const cellsOf = (workbook: Workbook | undefined, sheet: string) =>
  new Map(
    workbook?.sheets
      .find(({ name }) => name === sheet)
      ?.cells.map((cell) => [`${cell.row},${cell.column}`, cell.value]),
  );

/** The two sheets of a run plan, of which there may be others in its workbook. */
function ofPlan(i: number): (name: string) => boolean {
  const code = runs[i]?.product ?? "";
  const names = [`Run plan ${code}`, `Run working ${code}`];
  const sheets = live[workbookOf(i)]?.sheets.map(({ name }) => name);
  expect(sheets).toEqual(expect.arrayContaining(names));
  return (name) => names.includes(name);
}

const told = runs.map(
  ({ product, bottles }, i) => [`${bottles} ${product}`, i] as const,
);

test.each(told)(
  "LibreOffice, made to recalculate the portable plan of %s, gives every figure of the grid",
  (_, i) => {
    expect(
      differences(live[workbookOf(i)], recalculated[workbookOf(i)], ofPlan(i)),
    ).toEqual([]);
  },
);

test.each(told)("the file read back holds every figure of %s", (_, i) => {
  expect(
    differences(live[workbookOf(i)], readBack[workbookOf(i)], ofPlan(i)),
  ).toEqual([]);
});

test.each(told)("the trade plans %s as its sheet does", (_, i) => {
  const run = runs[i];
  const workbook = live[workbookOf(i)];
  if (!run || !workbook) throw new Error("no such run");
  const plan = runPlan(book, run);
  const places = runPlanNames(workbook.names, run.product);
  const value = (key: RunPlanKey): Stored | undefined => {
    const place = places[key];
    return (
      place &&
      cellsOf(workbook, place.sheet).get(`${place.row},${place.column}`)
    );
  };
  const chosen = plan.choice.chosen;
  const pounds = (weight: number | undefined): number | undefined =>
    weight === undefined ? undefined : weight / KG_PER_LB;
  const pairs: readonly (readonly [RunPlanKey, Stored | undefined])[] = [
    ["chosen_line", chosen?.line.name],
    ["rate", chosen?.rate],
    ["limited_by", chosen?.limitedBy],
    ["line_cost", chosen?.cost],
    ["saved", plan.other?.saved],
    ["crossover", plan.other?.option.crossover],
    ["hours", chosen?.hours],
    ["crew_hours", plan.clock?.crewHours],
    ["finish", plan.clock?.finish],
    ["fills", plan.kettle?.fills],
    ["last_hot", plan.kettle && plan.kettle.lastVolume / LITRES_PER_GALLON],
    ["kettle_cost", plan.fuel?.warming.cost],
    ["hold_cost", plan.fuel?.holding.cost],
    ["fuel_cost", plan.fuel?.run.cost],
    ["need", pounds(plan.syrup)],
    ["short", pounds(plan.lots?.short)],
    ["pallets", plan.pallets.count],
    ["all_lb", pounds(plan.weights?.all)],
    ["lot_code", plan.lotCode],
    ["best_by", plan.bestBy],
  ];
  for (const [key, wanted] of pairs)
    expect([key, value(key), wanted, agree(value(key), wanted)]).toEqual([
      key,
      value(key),
      wanted,
      true,
    ]);

  const rows = (
    key: RunPlanKey,
  ): readonly (readonly (Stored | undefined)[])[] => {
    const place = places[key];
    if (!place) throw new Error(`no ${key}`);
    const cells = cellsOf(workbook, place.sheet);
    return Array.from({ length: place.rows }, (_row, r) =>
      Array.from({ length: place.columns }, (_column, c) =>
        cells.get(`${place.row + r},${place.column + c}`),
      ),
    ).filter(([first]) => typeof first === "string" && first !== "");
  };
  const drawn = plan.lots?.draws.map(({ lot, weight, after }) => [
    lot,
    pounds(weight),
    pounds(after),
  ]);
  expectRows(rows("lots"), drawn ?? []);
  expectRows(
    rows("materials").map(([title, ...row]) => [
      String(title).split(" · ")[0],
      ...row.slice(0, 6),
    ]),
    plan.materials.map((pull) => [
      pull.part,
      pull.need,
      pull.onHand,
      pull.short,
      pull.order?.buy ?? 0,
      pull.order?.cost,
      pull.orderBy,
    ]),
  );
  const advice = rows("materials").map((row) => String(row[7] ?? ""));
  expect(advice.map((words) => words.includes("saves $"))).toEqual(
    plan.materials.map(({ order }) => (order?.saving ?? 0) > 0),
  );
  expect(
    advice.map((words) => /leaves ([\d,]+) over/.exec(words)?.[1]),
  ).toEqual(
    plan.materials.map(({ order }) =>
      order && order.saving > 0
        ? order.leftOver.toLocaleString("en-US")
        : undefined,
    ),
  );
});

function expectRows(
  found: readonly (readonly (Stored | undefined)[])[],
  wanted: readonly (readonly (Stored | undefined)[])[],
): void {
  expect(found.map(([name]) => name)).toEqual(wanted.map(([name]) => name));
  found.forEach((row, r) =>
    row.forEach((cell, c) => {
      const other = wanted[r]?.[c];
      expect([r, c, cell, other, agree(cell, other)]).toEqual([
        r,
        c,
        cell,
        other,
        true,
      ]);
    }),
  );
}
