import { unusable } from "../../measures/cannot-answer";
import { fixedAddress, sheetReference } from "../address";
import { place, type PlacedSheet } from "../place";
import { inBooksGallon } from "../books-gallon";
import type { Area, DefinedName, Sheet } from "../workbook";
import { runPlanFacts, type RunPlanSheetQuestion } from "./facts";
import { type RunPlanKey, runPlanKeys, runPlanName } from "./names";
import { describePlan } from "./plan-sheet";
import { describeWorking } from "./working-sheet";

export interface RunPlanSheets {
  /** One page for the floor. */
  readonly plan: Sheet;
  readonly working: Sheet;
  readonly names: readonly DefinedName[];
}

/**
 * The run plan of one product and the sheet it is worked out on: live formulas into the book's tables, and workbook
 * names for its figures. Refuses (#VALUE!) a product that is not in Products and sheets that exist.
 */
export function runPlanSheets(question: RunPlanSheetQuestion): RunPlanSheets {
  const facts = runPlanFacts(question);
  const [planName, workingName] = sheetNames(facts.product);
  for (const name of [planName, workingName]) {
    const taken = question.existingSheets.find(
      (sheet) => sheet.toLowerCase() === name.toLowerCase(),
    );
    if (taken !== undefined)
      throw unusable(
        `The sheet "${taken}" exists; rename or delete it before building a new one`,
      );
  }
  const how = { portable: question.portable === true };
  // Each sheet refers to the other; where things stand does not depend on what their formulas say.
  const described = (reference: (place: string) => string) =>
    inBooksGallon(
      describePlan(facts, question, planName, reference),
      question.contents,
    );
  const drafted = place(
    described(() => "0"),
    { portable: false },
  );
  const input = referenceTo(planName, drafted);
  const working = place(
    inBooksGallon(
      describeWorking(facts, workingName, {
        bottles: input("bottles"),
        start: input("start"),
        line: input("line"),
        asOf: input("as_of"),
      }),
      question.contents,
    ),
    how,
  );
  const plan = place(described(referenceTo(workingName, working)), how);
  return {
    plan: plan.sheet,
    working: working.sheet,
    names: runPlanKeys.map((key) => ({
      name: runPlanName(facts.product, key),
      refersTo: named(key, planName, plan, workingName, working),
    })),
  };
}

/** "Run plan P250-LOFT" and "Run working P250-LOFT", at most 31 characters and without the signs a sheet name may not hold. */
export const sheetNames = (product: string): readonly [string, string] => {
  const code = product.replace(/[\\/?*[\]:']/g, "-");
  return [`Run plan ${code}`.slice(0, 31), `Run working ${code}`.slice(0, 31)];
};

/** Names of areas of the plan that go by other words there. */
const areas: Partial<Readonly<Record<RunPlanKey, readonly [string, string]>>> =
  {
    lots: ["lots", "lots"],
    materials: ["materials", "materials"],
    checks: ["nothing_missing.label", "long_enough"],
  };

/** Figures that stand only on the working sheet. */
const inWorking: Partial<Readonly<Record<RunPlanKey, string>>> = {
  line_cost: "line_cost",
  hours: "hours",
  kettle_cost: "kettle_cost",
  hold_cost: "hold_cost",
  need: "need",
  short: "syrup_short",
  pallets: "pallets",
  all_lb: "all_lb",
  missing: "missing",
};

function named(
  key: RunPlanKey,
  planName: string,
  plan: PlacedSheet,
  workingName: string,
  working: PlacedSheet,
): string {
  const source = inWorking[key];
  if (source !== undefined) return referenceTo(workingName, working)(source);
  const [first, last] = areas[key] ?? [key, key];
  const from = placeOf(plan, first);
  const to = placeOf(plan, last);
  return `${sheetReference(planName)}!${rectangle({
    ...from,
    rows: to.row + to.rows - from.row,
    columns: to.column + to.columns - from.column,
  })}`;
}

const referenceTo =
  (sheet: string, placed: PlacedSheet): ((name: string) => string) =>
  (name) =>
    `${sheetReference(sheet)}!${rectangle(placeOf(placed, name))}`;

function rectangle({ row, column, rows, columns }: Area): string {
  const from = fixedAddress(row, column);
  return rows === 1 && columns === 1
    ? from
    : `${from}:${fixedAddress(row + rows - 1, column + columns - 1)}`;
}

function placeOf({ places }: PlacedSheet, name: string): Area {
  const found = places.get(name);
  if (!found) throw new Error(`A run plan has no cell "${name}"`);
  return found;
}
