import type { Definition } from "./define";
import { functionPage } from "./page";
import { functionIndex } from "./page-index";
import { jobsPage } from "./page-jobs";
import { sourcesPage } from "./page-sources";

/** Every page made from the definitions, by its path under docs/: one a function, the indexes by question and by job, the sources. */
export const documentation = (
  functions: readonly Definition[],
): ReadonlyMap<string, string> =>
  new Map([
    ["functions/README.md", functionIndex(functions)],
    ["functions/by-job.md", jobsPage(functions)],
    ...functions.map(
      (definition) =>
        [`functions/${definition.name}.md`, functionPage(definition)] as const,
    ),
    ["sources.md", sourcesPage(functions)],
  ]);
