import type { Figure, Section } from "./figure";

/** docs/benchmarks.md, its tables aligned as Prettier aligns them. Nothing in it says when it was measured. */
export const benchmarksPage = (
  sections: readonly Section[],
  machine: string,
): string =>
  [
    "<!-- Written by `npm run bench`; do not edit. -->",
    "# Benchmarks",
    `Measured on ${machine}, every piece of work in turn with its yardstick; figures are the middle of the rounds. Times belong to the machine, the number of times a yardstick does not: compare those.`,
    ...sections.map(sectionText),
  ]
    .join("\n\n")
    .concat("\n");

const sectionText = ({ title, about, yardstick, figures }: Section): string =>
  [
    `## ${title}`,
    about,
    table([
      ["Work", "Takes", yardstick, "Times", "Aim", "Met"],
      ...figures.map(row),
    ]),
  ].join("\n\n");

const row = (figure: Figure): readonly string[] => [
  figure.work,
  figure.takes,
  figure.yardstick,
  figure.ratio === undefined ? "-" : times(figure.ratio),
  figure.aim ?? "-",
  figure.isMet === undefined ? "-" : figure.isMet ? "yes" : "no",
];

const times = (ratio: number): string =>
  ratio < 10 ? ratio.toFixed(2) : ratio.toFixed(0);

function table(rows: readonly (readonly string[])[]): string {
  const columns = rows[0]?.map((_, c) => c) ?? [];
  const widths = columns.map((c) =>
    Math.max(3, ...rows.map((cells) => cells[c]?.length ?? 0)),
  );
  const line = (cells: readonly string[], fill = " "): string =>
    `| ${columns.map((c) => (cells[c] ?? "").padEnd(widths[c] ?? 0, fill)).join(" | ")} |`;
  const [heading = [], ...body] = rows;
  return [
    line(heading),
    line([], "-"),
    ...body.map((cells) => line(cells)),
  ].join("\n");
}
