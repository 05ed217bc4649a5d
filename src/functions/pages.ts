import { type Source, type SourceId, sources } from "../standards/sources";
import type { Definition, Family } from "./define";
import { generated, page, table } from "./page";

/** Every generated page, by its path under docs/: a page a function, the index by question, and the sources. */
export const documentation = (
  functions: readonly Definition[],
): ReadonlyMap<string, string> =>
  new Map([
    ["functions/README.md", index(functions)],
    ...functions.map((f) => [`functions/${f.name}.md`, page(f)] as const),
    ["sources.md", sourcesPage(functions)],
  ]);

function index(functions: readonly Definition[]): string {
  const families = [...new Set(functions.map((f) => f.family))];
  return [
    generated,
    "# Worksheet functions by question",
    'Type a function as `=SYRUP.` and its name. A quantity is a number in the unit its page states, or text with a unit: `"12 fl oz"`, `"85 °C"`, `"2,912 lb"`. A share is 0.35 or `"35 %"`. A blank is never zero: the cell says what it needs.',
    ...families.map((family) => familySection(family, functions)),
    "The sources of every figure are on [one page](../sources.md).",
  ]
    .join("\n\n")
    .concat("\n");
}

function familySection(
  family: Family,
  functions: readonly Definition[],
): string {
  const rows = functions
    .filter((f) => f.family === family)
    .map((f) => [f.question, `[${f.name}](${f.name}.md)`, f.gives.unit || "-"]);
  return `## ${family}\n\n${table(["Question", "Function", "Unit"], rows)}`;
}

function sourcesPage(functions: readonly Definition[]): string {
  const rows = (Object.entries(sources) as [SourceId, Source][]).map(
    ([id, { title, detail, kind }]) => [
      title,
      detail,
      kind,
      functions
        .filter((f) => f.basis.includes(id))
        .map((f) => `[${f.name}](functions/${f.name}.md)`)
        .join(", ") || "-",
    ],
  );
  return [
    generated,
    "# Sources",
    'Every number and rule this project uses. "Memory" means that a value was not read in a document; "common practice" has no source to read. Neither kind stands in a test against published values.',
    table(["Source", "Where and what", "Kind", "Used by"], rows),
  ]
    .join("\n\n")
    .concat("\n");
}
