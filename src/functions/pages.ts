import type { Definition } from "./define";
import { functionPage } from "./page";
import { functionIndex } from "./page-index";
import { sourcesPage } from "./page-sources";

/** Every page made from the definitions, by its path under docs/: one a function, the index by question, the sources. */
export const documentation = (
  functions: readonly Definition[],
): ReadonlyMap<string, string> =>
  new Map([
    ["functions/README.md", functionIndex(functions)],
    ...functions.map(
      (definition) =>
        [`functions/${definition.name}.md`, functionPage(definition)] as const,
    ),
    ["sources.md", sourcesPage(functions)],
  ]);
