import path from "node:path";
import { binderOf } from "../../book/binder";
import type { Binder } from "../../book/binder-contents";
import { findingText } from "../../book/finding";
import { readBook } from "../../book/read";
import { tracedPounds } from "../../book/totes-trace";
import { writeXlsx } from "../../hosts/file/write-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { unusable } from "../../measures/cannot-answer";
import { isoDate } from "../../measures/read-date";
import { binderSheets } from "../../sheets/binder/binder-sheets";
import { gridFunctions } from "../grid-functions";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import { readSeason } from "./season-option";
import type { Command } from "./terminal";
import { checkedOutput, writeWhole } from "./write-files";

const USAGE =
  "npm run -s binder -- BOOK --season 2026 --out FILE.xlsx [--lot LOT] [--json] [--force]";

/** A season's runs, fill checks, densities, lots, trace test and gaps as one set to print. */
export const binder: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      season: { type: "string" },
      out: { type: "string" },
      lot: { type: "string" },
      json: { type: "boolean", default: false },
      force: { type: "boolean", default: false },
    },
    USAGE,
  );
  const place = onlyPositional(
    positionals,
    "a farm book: a folder of CSV files or an .xlsx file",
    USAGE,
  );
  const season = readSeason(values.season, USAGE);
  if (values.out === undefined)
    throw unusable(`Needs --out FILE.xlsx. Usage: ${USAGE}`);
  const out = checkedOutput(values.out, values.force);
  if (out === path.resolve(place))
    throw unusable(
      `--out ${values.out}: that is the book itself; give the binder another name.`,
    );
  const files = await readBookFiles(place);
  const { book, findings } = readBook(files.contents);
  const made = binderOf(book, season, {
    findings: [...files.findings, ...findings],
    lot: values.lot,
  });
  const { workbook } = await calculate(
    {
      title: `${made.farm}: records of season ${season}`,
      sheets: binderSheets(made),
      names: [],
    },
    gridFunctions,
  );
  writeWhole(out, await writeXlsx(workbook));
  if (values.json) terminal.say(JSON.stringify(answerOf(made)));
  else {
    terminal.say(
      `${path.basename(out)}: season ${season} on ${isoDate(made.asOf)}: ${made.runs.length} runs, ${made.fills.length} with a fill check, ${made.lots.length} lots and barrels, ${made.traces.length} trace tests, ${made.gaps.length} gaps.`,
    );
    for (const gap of made.gaps) terminal.say(`- ${findingText(gap)}`);
  }
  return 0;
};

const answerOf = ({
  season,
  asOf,
  runs,
  fills,
  lots,
  traces,
  gaps,
}: Binder) => ({
  season,
  asOf: isoDate(asOf),
  runs: runs.map(({ row }) => row.run),
  fillChecks: fills.map(({ run, tests, mean, declared }) => ({
    run,
    weighed: tests.sampleSize.found,
    planAsks: tests.sampleSize.limit ?? null,
    meanMl: mean * 1000,
    declaredMl: declared * 1000,
    average: tests.average.verdict,
    ownGoal: tests.houseGoal.verdict,
  })),
  lots: lots.map(({ name }) => name),
  traces: traces.map(({ name, direction, total, unexplained }) => ({
    name,
    direction,
    totalLb: tracedPounds(total),
    unexplainedLb: tracedPounds(unexplained),
  })),
  gaps,
});
