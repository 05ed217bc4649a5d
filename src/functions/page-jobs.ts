import type { Answer, Definition } from "./define";
import { blendingJobs } from "./jobs/blending";
import { buyingJobs } from "./jobs/buying";
import { costingJobs } from "./jobs/costing";
import type { CombinedJob, Job, JobGroup } from "./jobs/job";
import { packingJobs } from "./jobs/packing";
import { sellingJobs } from "./jobs/selling";
import { toteJobs } from "./jobs/totes";
import { linkTo } from "./page-call";
import { exampleFacts } from "./page-examples";
import { code, formulaBlock, list, page, table } from "./page-markdown";

/** The office's year, job by job. */
export const jobGroups: readonly JobGroup[] = [
  ...buyingJobs,
  ...blendingJobs,
  ...packingJobs,
  ...costingJobs,
  ...sellingJobs,
  ...toteJobs,
];

const NOT_A_FORMULA = [
  "in which order products follow each other in a day or a week, so that few minutes go into changing over",
  "a partner's, a customer's or a bank's copy of a costing, and taking their changes back",
  "rolling stock, balances and contracts into a new year",
  "the season's papers for an auditor",
];

/** The index by job: what to type for each, whether one function answers it or several together. */
export const jobsPage = (functions: readonly Definition[]): string =>
  page([
    "# By the job",
    `What to type for the jobs of a packing office, from buying syrup to money owed. Some take one function, some a few together; each formula below runs as it stands. [All functions by question](README.md).`,
    ...jobGroups.flatMap(({ title, jobs }) => [
      `## ${title}`,
      ...directTable(jobs, functions),
      ...jobs.flatMap((job) => ("by" in job ? [] : recipe(job, functions))),
    ]),
    "## Not a formula's work",
    "No formula in a cell answers these:",
    list(NOT_A_FORMULA),
  ]);

function directTable(
  jobs: readonly Job[],
  functions: readonly Definition[],
): readonly string[] {
  const rows = jobs.flatMap((job) => {
    const definition =
      "by" in job ? functions.find(({ name }) => name === job.by) : undefined;
    if (!definition) return [];
    const { formula } = exampleFacts(definition, definition.examples[0]);
    return [[job.question, code(formula), linkTo(definition.name)]];
  });
  return rows.length > 0
    ? [table(["Question", "For example", "Page"], rows)]
    : [];
}

function recipe(
  { question, cells, formula, gives, unit, source }: CombinedJob,
  functions: readonly Definition[],
): readonly string[] {
  const width = Math.max(...cells.map((row) => row.length));
  const letters = Array.from({ length: width }, (_, c) =>
    String.fromCharCode(65 + c),
  );
  const called = functionsIn(formula).filter((name) =>
    functions.some((f) => f.name === name),
  );
  return [
    `### ${question}`,
    table(
      ["", ...letters],
      cells.map((row, r) => [
        String(r + 2),
        ...letters.map((_, c) => shown(row[c] ?? "")),
      ]),
    ),
    formulaBlock(formula),
    `gives **${[shown(gives), unit].filter(Boolean).join(" ")}**. Where the answer comes from: ${source}.`,
    ...(called.length > 0
      ? [`Pages: ${called.map((name) => linkTo(name)).join(", ")}.`]
      : []),
  ];
}

/** The functions of ours that a formula calls, each once, in their order. */
export const functionsIn = (formula: string): readonly string[] => [
  ...new Set(
    [...formula.matchAll(/SYRUP\.([A-Z_]+)\(/g)].map(([, name = ""]) => name),
  ),
];

const shown = (value: Answer): string => String(value);
