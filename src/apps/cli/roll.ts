import path from "node:path";
import { type Finding, findingText } from "../../book/finding";
import type { CarriedBalance } from "../../book/season-roll/opening";
import {
  openingOf,
  rollSeason,
  type SeasonRoll,
} from "../../book/season-roll/roll-season";
import { readXlsx } from "../../hosts/file/read-xlsx";
import { writeXlsx } from "../../hosts/file/write-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { unusable } from "../../measures/cannot-answer";
import { isoDate } from "../../measures/read-date";
import { leftBehind, requireLeave } from "../../sheets/season-roll/left-behind";
import { nextBook } from "../../sheets/season-roll/next-book";
import { tablesOf } from "../../sheets/tables-of";
import { gridFunctions } from "../grid-functions";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import { readSeason } from "./season-option";
import type { Command } from "./terminal";
import { checkedOutput, writeWhole } from "./write-files";

const USAGE =
  "npm run -s roll -- BOOK --season 2027 --out NEXT.xlsx [--leave-sheets] [--json] [--force]";

/** Makes the next season's book; nothing is written unless it opens with what the old one closes with. */
export const roll: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      season: { type: "string" },
      out: { type: "string" },
      "leave-sheets": { type: "boolean", default: false },
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
    throw unusable(`Needs --out NEXT.xlsx. Usage: ${USAGE}`);
  if (path.resolve(values.out) === path.resolve(place))
    throw unusable(
      `--out ${values.out}: that is the old season's book, which stays as it is; give the new one another name.`,
    );
  const out = checkedOutput(values.out, values.force);
  const files = await readBookFiles(place);
  const left = [
    ...(files.workbook ? leftBehind(files.workbook, season) : []),
    ...(files.losses ?? []),
  ];
  requireLeave(left, values["leave-sheets"], "--leave-sheets");
  const rolled = rollSeason(files.contents, season);
  const { bytes, balances } = await nextFile(rolled);
  writeWhole(out, bytes);
  const findings = [
    ...files.findings,
    ...rolled.findings,
    ...leftFindings(left, path.basename(place)),
  ];
  if (values.json)
    terminal.say(
      JSON.stringify({
        season,
        closedOn: isoDate(rolled.closingDay),
        balances,
        leftBehind: left,
        findings,
      }),
    );
  else {
    terminal.say(
      `${path.basename(out)}: the book of season ${season}. ${balances.length} balances open as they closed on ${isoDate(rolled.closingDay)}.`,
    );
    for (const balance of balances) terminal.say(lineOf(balance));
    if (findings.length > 0) terminal.say("");
    for (const finding of findings) terminal.say(`- ${findingText(finding)}`);
  }
  return 0;
};

/** The new book's bytes; its opening figures are read from these very bytes. */
async function nextFile(rolled: SeasonRoll): Promise<{
  readonly bytes: Uint8Array;
  readonly balances: readonly CarriedBalance[];
}> {
  const { workbook } = await calculate(nextBook(rolled), gridFunctions);
  const bytes = await writeXlsx(workbook);
  const written = await readXlsx(bytes, "the new book");
  return { bytes, balances: openingOf(rolled, tablesOf(written.workbook)) };
}

const leftFindings = (
  left: readonly string[],
  file: string,
): readonly Finding[] =>
  left.map((found) => ({
    where: file,
    found: `left behind: ${found}`,
    meaning: "the new book does not hold it; the old one does, as it was",
    todo: "build costings, price lists and registers anew there, and copy what is your own over by hand",
  }));

const lineOf = ({ what, name, unit, opening }: CarriedBalance): string =>
  `  ${`${what} ${name}`.padEnd(70)} ${opening.toLocaleString("en-US", { maximumFractionDigits: 2 }).padStart(14)} ${unit}`;
