import { type SourceId, sources } from "../standards/sources";
import type { Definition } from "./define";
import { argumentTables } from "./page-arguments";
import { callLine } from "./page-call";
import { coefficientsOf } from "./page-coefficients";
import { errorTable } from "./page-errors";
import { examplesOf } from "./page-examples";
import { anchor, formulaBlock, list, page, section } from "./page-markdown";
import { nativeWords } from "./page-native";

/** The page of one function, all of it from its definition. */
export const functionPage = (definition: Definition): string =>
  page([
    `# SYRUP.${definition.name}`,
    `**${definition.question}**`,
    definition.summary,
    formulaBlock(callLine(definition)),
    givesWords(definition),
    ...(definition.caution ? [`> **Caution.** ${definition.caution}`] : []),
    "## Arguments",
    ...argumentTables(definition),
    ...section("Examples", examplesOf(definition)),
    ...section("Notes", list(definition.notes ?? [])),
    ...section("How sure it is", definition.uncertainty),
    ...section("The figures in it", list(coefficientsOf(definition))),
    "## When it refuses",
    "What [every function refuses](README.md#what-every-function-refuses), and:",
    errorTable(definition),
    ...section("Sources", list(definition.basis.map(sourceLine))),
    ...section("Without the add-in", nativeWords(definition)),
    "[All functions](README.md)",
  ]);

/** "Gives: price each, in money each." */
export function givesWords({ gives }: Definition): string {
  if (gives.spills)
    return `Gives ${gives.about}, in cells side by side: ${gives.spills.join(", ")}.`;
  const unit = unitWords(gives.unit);
  return `Gives: ${[gives.about, unit].filter(Boolean).join(", ")}.`;
}

function unitWords(unit: string): string {
  if (unit === "share") return "as a share: 0.35 is 35 %";
  if (unit === "date") return "as a worksheet date";
  return unit === "" || unit.startsWith("per ") ? unit : `in ${unit}`;
}

function sourceLine(id: string): string {
  const { title, detail, kind } = sources[id as SourceId];
  const trust = kind === "memory" ? "**from memory**" : kind;
  return `[${title}](../sources.md#${anchor(title)}) (${trust}). ${detail}`;
}
