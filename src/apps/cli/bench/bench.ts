import { availableParallelism } from "node:os";
import path from "node:path";
import { unusable } from "../../../measures/cannot-answer";
import { readFolder } from "../read-book-files";
import type { Command } from "../terminal";
import { writeWhole } from "../write-files";
import { bundleFigures, loadFigures } from "./bundles";
import { callFigures } from "./calls";
import { editFigures } from "./edits";
import type { Section } from "./figure";
import { fileFigures } from "./files";
import { generalFigures } from "./general-library";
import { longTableFigures } from "./long-tables";
import { handoverFigures } from "./handover";
import { lotFigures } from "./lots";
import { benchmarksPage } from "./page";
import { toteFigures } from "./totes";
import { priceListFigures } from "./price-lists";

const USAGE = "npm run bench";
const RUN = { product: "P250-LOFT", bottles: 1200 };

/** How often each piece of work is measured: short ones often, those that take seconds seldom. */
interface Rounds {
  readonly short: number;
  readonly long: number;
}

/** Measures everything and writes docs/benchmarks.md. */
export const bench: Command = async (args, terminal) => {
  if (args.length > 0)
    throw unusable(`"${args[0]}" is not known here. Usage: ${USAGE}`);
  const sections: Section[] = [];
  for (const measure of measurements(terminal.root, { short: 31, long: 7 })) {
    const section = await measure();
    sections.push(section);
    for (const { work, takes, ratio, isMet } of section.figures)
      terminal.say(
        `${work}: ${takes}${ratio === undefined ? "" : `, ${ratio.toFixed(2)} times its yardstick`}${isMet === false ? "; the aim is missed" : ""}`,
      );
  }
  const machine = `${availableParallelism()} cores with Node ${process.versions.node.split(".")[0] ?? ""}`;
  writeWhole(
    path.join(terminal.root, "docs/benchmarks.md"),
    benchmarksPage(sections, machine),
  );
  return 0;
};

function measurements(
  root: string,
  { short, long }: Rounds,
): readonly (() => Promise<Section>)[] {
  const { contents } = readFolder(
    path.join(root, "sample-workbooks/fernkettle-hollow"),
  );
  return [
    async () => ({
      title: "A worksheet call",
      about:
        "Reading and checking the arguments, the arithmetic, checking the answer; against the arithmetic alone. Where the arithmetic is a handful of operations the ratio cannot be small: there the aim is missed, by a fraction of a microsecond.",
      yardstick: "Bare",
      figures: await callFigures(short),
    }),
    async () => ({
      title: "Against a general function library",
      about:
        "The same answers from a general library of worksheet functions, which takes numbers as they come: it checks no unit, no limit and no blank, and has no sentence to give. Where it is slower it does more than we need of it.",
      yardstick: "General library",
      figures: await generalFigures(root, short),
    }),
    async () => ({
      title: "Long tables",
      about:
        "Each against ten calls over a tenth of the rows: 1 time is growth in a straight line.",
      yardstick: "Ten short tables",
      figures: await longTableFigures(long),
    }),
    async () => ({
      title: "Costing from a long table of lots",
      about:
        "Three columns are read and checked cell by cell; against the same draw from lots already read.",
      yardstick: "Bare",
      figures: await lotFigures(short),
    }),
    async () => ({
      title: "Totes",
      about:
        "Decades of totes, each against ten times the work over a tenth of the rows: 1 time is growth in a straight line.",
      yardstick: "Ten short books",
      figures: await toteFigures(contents, long),
    }),
    async () => ({
      title: "From an edit to the last cell that follows",
      about:
        "In the grid's engine without a screen; against the same edit in an empty workbook, which is the engine's own waiting.",
      yardstick: "Empty book",
      figures: await editFigures(contents, RUN, long),
    }),
    async () => ({
      title: "The costing workbook",
      about: `The demo book with the costing of ${RUN.product}; against the writing library alone writing the same cells without looks, tables, notes and limits.`,
      yardstick: "Bare writer",
      figures: await fileFigures(contents, RUN, long),
    }),
    async () => ({
      title: "The price list of ever more products",
      about:
        "The demo farm's products over and over; an edit against the same in an empty workbook, a file against the writing library alone. The grid's engine goes over every formula of a workbook after each edit, so its time grows with all of them.",
      yardstick: "Empty book or bare writer",
      figures: await priceListFigures(contents, long),
    }),
    async () => ({
      title: "A copy handed over",
      about:
        "Sheets of the demo book already worked out: what a partner may see laid out anew, written, and its bytes searched for everything removed; against writing alone, and the search against the same search of the file in two halves.",
      yardstick: "Written only or halves",
      figures: await handoverFigures(contents, long),
    }),
    async () => ({
      title: "What is fetched",
      about: "Scripts and styles, each file zipped by itself as a server does.",
      yardstick: "Unzipped",
      figures: await bundleFigures(root),
    }),
    async () => ({
      title: "A cold start of the functions",
      about: "Against compiling the same script without running it.",
      yardstick: "Compile only",
      figures: loadFigures(root, long),
    }),
  ];
}
