import { type Source, type SourceId, sources } from "../standards/sources";
import type { Definition } from "./define";
import { linkTo } from "./page-call";
import { page } from "./page-markdown";

type Kind = Source["kind"];

const KINDS: readonly (readonly [Kind, string, string])[] = [
  [
    "published",
    "Published",
    "Read in a publication, or in the place its entry names. Where only a copy was read, the entry says so.",
  ],
  ["definition", "Definitions", "Exact: there is nothing to measure."],
  [
    "common practice",
    "Common practice",
    "What people in the trade take for granted. No source was found.",
  ],
  [
    "memory",
    "From memory",
    "Not read anywhere for this project. Check these first before you rely on a function that stands on them.",
  ],
  ["our own rule", "Our own rules", "Chosen here, and open to change."],
];

/** Every source with the functions that stand on it, the least certain kinds marked. */
export const sourcesPage = (functions: readonly Definition[]): string =>
  page([
    "# Sources",
    "Every number and rule in the functions comes from one of these. A value from memory is marked, and is never used as a check of another.",
    ...KINDS.flatMap(([kind, heading, words]) => {
      const ids = sourceIds.filter((id) => sources[id].kind === kind);
      return ids.length === 0
        ? []
        : [
            `## ${heading}`,
            words,
            ...ids.flatMap((id) => sourceBlocks(id, functions)),
          ];
    }),
  ]);

const sourceIds = Object.keys(sources) as readonly SourceId[];

function sourceBlocks(
  id: SourceId,
  functions: readonly Definition[],
): readonly string[] {
  const { title, detail, kind } = sources[id];
  const standing = functions.filter(({ basis }) => basis.includes(id));
  const mark = kind === "memory" ? "**From memory.** " : "";
  return [
    `### ${title}`,
    `${mark}${detail}`,
    standing.length === 0
      ? "No worksheet function stands on it directly."
      : `Stands under: ${standing.map(({ name }) => linkTo(name, "functions/")).join(", ")}.`,
  ];
}
