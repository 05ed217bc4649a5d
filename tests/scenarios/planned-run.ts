import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { PlanAnswer } from "../../src/apps/cli/plan-answer";
import { planBook } from "../../src/apps/cli/plan-workbook";
import { gridFunctions } from "../../src/apps/grid-functions";
import { readBook } from "../../src/book/read";
import { runPlan, type RunPlan } from "../../src/book/run-plan";
import { readFolder } from "../../src/apps/cli/read-book-files";
import { calculate } from "../../src/hosts/grid/calculate";
import { runPlanNames, type RunPlanKey } from "../../src/sheets/run-plan/names";
import type { Stored } from "../../src/sheets/workbook";
import { run } from "../apps/cli/array-terminal";

const demo = join(__dirname, "../../sample-workbooks/fernkettle-hollow");

export type Changes = Readonly<Record<string, (text: string) => string>>;

export interface Planned {
  /** By the book, in house units. */
  readonly book: RunPlan;
  /** By `plan --json`. */
  readonly json: PlanAnswer;
  /** A figure of the run plan's sheet. */
  readonly cell: (key: RunPlanKey) => Stored | undefined;
  /** A row of the sheet's pull list: part, pull, on hand, short, order, costs, order by, what to do. */
  readonly part: (code: string) => readonly (Stored | undefined)[];
}

/** Runs of the demo farm as it is; working a sheet out takes seconds, so each is worked out once. */
const known = new Map<string, Promise<Planned>>();

/** One run planned from the demo farm's folder with some of its files changed: by the book, the sheet and the command. */
export function planned(
  product: string,
  bottles: number,
  changes?: Changes,
): Promise<Planned> {
  if (changes) return planFrom(product, bottles, changes);
  const key = `${bottles} ${product}`;
  const plan = known.get(key) ?? planFrom(product, bottles, {});
  known.set(key, plan);
  return plan;
}

async function planFrom(
  product: string,
  bottles: number,
  changes: Changes,
): Promise<Planned> {
  const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-plan-"));
  for (const name of readdirSync(demo)) {
    if (!name.endsWith(".csv")) continue;
    const text = readFileSync(join(demo, name), "utf8");
    writeFileSync(join(folder, name), (changes[name] ?? same)(text));
  }
  const { contents } = readFolder(folder);
  const { said, complained } = await run([
    "plan",
    folder,
    "--product",
    product,
    "--bottles",
    String(bottles),
    "--json",
  ]);
  if (complained.length > 0) throw new Error(complained.join("\n"));
  const { workbook } = await calculate(
    planBook(contents, { product, bottles }),
    gridFunctions,
  );
  const places = runPlanNames(workbook.names, product);
  const at = (key: RunPlanKey, down: number, right: number) => {
    const place = places[key];
    return workbook.sheets
      .find(({ name }) => name === place?.sheet)
      ?.cells.find(
        ({ row, column }) =>
          row === (place?.row ?? 0) + down &&
          column === (place?.column ?? 0) + right,
      )?.value;
  };
  return {
    book: runPlan(readBook(contents).book, { product, bottles }),
    json: JSON.parse(said.join("")) as PlanAnswer,
    cell: (key) => at(key, 0, 0),
    part: (code) => {
      const rows = places.materials?.rows ?? 0;
      for (let row = 0; row < rows; row += 1)
        if (String(at("materials", row, 0)).startsWith(`${code} ·`))
          return Array.from({ length: 8 }, (_, c) => at("materials", row, c));
      throw new Error(`${code} is not on the plan`);
    },
  };
}

const same = (text: string): string => text;

/** Changes one word or line, and fails if it is not there. */
export const changing =
  (from: string, to: string) =>
  (text: string): string => {
    if (!text.includes(from)) throw new Error(`no "${from}" in the demo file`);
    return text.replace(from, to);
  };
