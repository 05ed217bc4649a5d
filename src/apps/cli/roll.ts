import path from "node:path";
import { findingText } from "../../book/finding";
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
import { farmBook } from "../../sheets/farm-book";
import { openingSheet } from "../../sheets/season-roll/opening-sheet";
import { tablesOf } from "../../sheets/tables-of";
import { gridFunctions } from "../grid-functions";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import { readSeason } from "./season-option";
import type { Command } from "./terminal";
import { checkedOutput, writeWhole } from "./write-files";

const USAGE =
  "npm run -s roll -- BOOK --season 2027 --out NEXT.xlsx [--json] [--force]";

/** Makes the next season's book; nothing is written unless it opens with what the old one closes with. */
export const roll: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      season: { type: "string" },
      out: { type: "string" },
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
  const rolled = rollSeason(files.contents, season);
  const { bytes, balances } = await nextBook(rolled);
  writeWhole(out, bytes);
  const findings = [...files.findings, ...rolled.findings];
  if (values.json)
    terminal.say(
      JSON.stringify({
        season,
        closedOn: isoDate(rolled.closingDay),
        balances,
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
async function nextBook(rolled: SeasonRoll): Promise<{
  readonly bytes: Uint8Array;
  readonly balances: readonly CarriedBalance[];
}> {
  const book = farmBook(rolled.contents);
  const opening = openingSheet(
    rolled.season,
    rolled.closingDay,
    openingOf(rolled, rolled.contents),
  );
  const { workbook } = await calculate(
    { ...book, sheets: [...book.sheets, opening] },
    gridFunctions,
  );
  const bytes = await writeXlsx(workbook);
  const written = await readXlsx(bytes, "the new book");
  return { bytes, balances: openingOf(rolled, tablesOf(written.workbook)) };
}

const lineOf = ({ what, name, unit, opening }: CarriedBalance): string =>
  `  ${`${what} ${name}`.padEnd(70)} ${opening.toLocaleString("en-US", { maximumFractionDigits: 2 }).padStart(14)} ${unit}`;
