import type { Definition } from "./define";
import { linkTo } from "./page-call";
import { jobGroups } from "./page-jobs";
import { anchor, list, page, table } from "./page-markdown";

const REFUSED_BY_ALL = [
  "a required argument that is blank or left out: a blank is never zero",
  "more arguments than the function has",
  "a cell that holds an error, or TRUE or FALSE where a number belongs",
  'a number with a decimal comma: "66,4" is answered with the reading it might have had; "1,234" is one thousand two hundred and thirty-four',
  'a unit that is not known or measures something else; gallons are US gallons, and "imp gal" is refused',
  "a share above 1: 35 reads as 3500 %, so type 35 % or 0.35",
  "a date in any text but the form 2026-11-25",
  "a row of a range that is only half filled; rows that are wholly blank are passed over",
];

/** The index of all functions: by the question they answer, family by family. */
export function functionIndex(functions: readonly Definition[]): string {
  const families = [...new Set(functions.map(({ family }) => family))];
  const without = functions.filter(({ native }) => !native);
  return page([
    "# Worksheet functions",
    `${functions.length} functions for the office of a packing farm. Find the question you have; the page beside it says what to type, shows worked examples and names its sources ([all sources](../sources.md)). Jobs that take two or three of them together are under [By the job](by-job.md).`,
    'An argument in square brackets may be left out. A quantity is a number in the unit its page states, or text that carries its own: `"12 fl oz"`, `"85 °C"`, `"2,912 lb"`. 68 °F is 20 °C; gallons are US gallons; pounds are as a scale shows them.',
    ...families.flatMap((family) => [
      `## ${family}`,
      table(
        ["Question", "Function", "What it gives"],
        functions
          .filter((f) => f.family === family)
          .map(({ question, name, summary }) => [
            question,
            linkTo(name),
            summary,
          ]),
      ),
    ]),
    "## Questions that take several together",
    "Each with a formula that runs as it stands:",
    list(
      jobGroups
        .flatMap(({ jobs }) => jobs)
        .flatMap((job) =>
          "formula" in job
            ? [`[${job.question}](by-job.md#${anchor(job.question)})`]
            : [],
        ),
    ),
    "## What every function refuses",
    "A call that cannot be answered gives one of two errors with a sentence that says what to do. `#VALUE!` means that something typed cannot be used; `#N/A` means that the question is fair but has no answer. Every function refuses, with `#VALUE!`:",
    list(REFUSED_BY_ALL),
    "## Functions without a plain form",
    "A copy for somebody without this add-in holds plain worksheet formulas. These functions have none and are not used on such a copy:",
    list(
      without.map(
        ({ name, noNative }) => `${linkTo(name)}: ${noNative ?? ""}.`,
      ),
    ),
  ]);
}
