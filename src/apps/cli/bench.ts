import path from "node:path";
import { functionNamed } from "../../functions";
import { answer } from "../../functions/answer";
import { readXlsx } from "../../hosts/file/read-xlsx";
import { writeXlsx } from "../../hosts/file/write-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { unusable } from "../../measures/cannot-answer";
import { farmBook } from "../../sheets/farm-book";
import { gridFunctions } from "../grid-functions";
import { readFolder } from "./read-book-files";
import type { Command } from "./terminal";
import { writeWhole } from "./write-files";

/** One measured piece of work: its middle time, and that as a multiple of the yardstick of the same run. */
export interface Measured {
  readonly work: string;
  readonly milliseconds: number;
  readonly ratio: number;
}

const CALLS = 10_000;

/** Measures the usual work on the demo book; ratios within one run compare across machines, times do not. */
export async function measure(
  root: string,
  rounds: number,
): Promise<readonly Measured[]> {
  const folder = path.join(root, "sample-workbooks/fernkettle-hollow");
  const density = functionNamed("DENSITY");
  if (!density) throw new Error("DENSITY is missing");
  const empty = farmBook(readFolder(folder).contents);
  const { workbook } = await calculate(empty, gridFunctions);
  const bytes = await writeXlsx(workbook);
  const works: readonly (readonly [string, () => unknown])[] = [
    [
      `${CALLS.toLocaleString("en-US")} calls of DENSITY (the yardstick)`,
      () => {
        for (let i = 0; i < CALLS; i += 1) answer(density, [60 + (i % 10)]);
      },
    ],
    ["read the demo farm's CSV files", () => readFolder(folder)],
    ["calculate the demo book", () => calculate(empty, gridFunctions)],
    ["write the demo book", () => writeXlsx(workbook)],
    ["read the demo book back", () => readXlsx(bytes, "demo.xlsx")],
  ];
  const times: [string, number][] = [];
  for (const [work, run] of works)
    times.push([work, await middle(run, rounds)]);
  const yardstick = times[0]?.[1] ?? Number.NaN;
  return times.map(([work, milliseconds]) => ({
    work,
    milliseconds,
    ratio: milliseconds / yardstick,
  }));
}

async function middle(run: () => unknown, rounds: number): Promise<number> {
  await run();
  const times: number[] = [];
  for (let i = 0; i < rounds; i += 1) {
    const started = performance.now();
    await run();
    times.push(performance.now() - started);
  }
  return times.sort((a, b) => a - b)[Math.floor(rounds / 2)] ?? Number.NaN;
}

/** Writes docs/benchmarks.md from one run. */
export const bench: Command = async (args, terminal) => {
  if (args.length > 0)
    throw unusable(`"${args[0]}" is not known here. Usage: npm run bench`);
  const measured = await measure(terminal.root, 5);
  const rows = measured.map(
    ({ work, milliseconds, ratio }) =>
      `| ${work} | ${milliseconds.toFixed(1)} | ${ratio.toFixed(2)} |`,
  );
  const page = [
    "# Benchmarks",
    "",
    "Written by `npm run bench`: the middle of five rounds after one to warm up. Compare the ratios, not the milliseconds; they belong to the machine that ran it.",
    "",
    "| work | ms | ratio |",
    "| --- | ---: | ---: |",
    ...rows,
    "",
  ].join("\n");
  writeWhole(path.join(terminal.root, "docs/benchmarks.md"), page);
  for (const row of rows) terminal.say(row);
  return 0;
};
