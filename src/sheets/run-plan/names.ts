import { namedPlace, type NamedPlace } from "../costing/names";
import type { DefinedName } from "../workbook";

/** What a run plan gives names to, so that the pane and others find it wherever it is moved. */
export const runPlanKeys = [
  "bottles",
  "start",
  "line",
  "as_of",
  "chosen_line",
  "rate",
  "limited_by",
  "line_cost",
  "saved",
  "crossover",
  "hours",
  "crew_hours",
  "finish",
  "fills",
  "last_hot",
  "kettle_cost",
  "hold_cost",
  "fuel_cost",
  "need",
  "short",
  "pallets",
  "all_lb",
  "lot_code",
  "best_by",
  "lots",
  "materials",
  "checks",
  "missing",
] as const;

export type RunPlanKey = (typeof runPlanKeys)[number];

/** "run_P250_LOFT_bottles" */
export const runPlanName = (product: string, key: RunPlanKey): string =>
  `run_${product.replace(/[^A-Za-z0-9]/g, "_")}_${key}`;

/** Where the run plan of a product keeps its figures; empty when the workbook has none for it. */
export function runPlanNames(
  names: readonly DefinedName[],
  product: string,
): Partial<Readonly<Record<RunPlanKey, NamedPlace>>> {
  const found: Partial<Record<RunPlanKey, NamedPlace>> = {};
  for (const key of runPlanKeys) {
    const wanted = runPlanName(product, key).toLowerCase();
    const name = names.find((n) => n.name.toLowerCase() === wanted);
    const place = name && namedPlace(name.refersTo);
    if (place) found[key] = place;
  }
  return found;
}
