import type { Change, TableContents } from "../../../hosts/host";
import { runPlanSheets } from "../../../sheets/run-plan/run-plan-sheets";

/** A change that adds a run plan, and in plain words what it will write. */
export interface PlannedPlan {
  readonly change: Change;
  readonly sheet: string;
  readonly writes: readonly string[];
}

export function plannedPlan(facts: {
  readonly tables: readonly TableContents[];
  readonly sheets: readonly string[];
  readonly product: string;
  readonly bottles: number;
  readonly start: number | undefined;
  readonly line: string | undefined;
}): PlannedPlan {
  const { start, line } = facts;
  const { plan, working, names } = runPlanSheets({
    contents: facts.tables,
    product: facts.product,
    bottles: facts.bottles,
    existingSheets: facts.sheets,
    ...(start === undefined ? {} : { start }),
    ...(line === undefined ? {} : { line }),
  });
  return {
    sheet: plan.name,
    change: {
      says: `the sheets “${plan.name}” and “${working.name}”`,
      append: [],
      addSheets: [plan, working],
      names,
    },
    writes: [
      `the sheet “${plan.name}”, one page for the floor`,
      `“${working.name}” with its arithmetic`,
      `${names.length} names for its figures`,
    ],
  };
}
