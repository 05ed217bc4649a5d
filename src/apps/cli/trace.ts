import { newestDay } from "../../book/newest-day";
import { readBook } from "../../book/read";
import { traceOf } from "../../book/totes-trace";
import { writeXlsx } from "../../hosts/file/write-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { unusable } from "../../measures/cannot-answer";
import { as, type DaySerial } from "../../measures/quantity";
import { readDate } from "../../measures/read-date";
import {
  recallSheet,
  type RecallQuestion,
} from "../../sheets/totes/recall-sheet";
import { gridFunctions } from "../grid-functions";
import { readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";
import { traceAnswer } from "./trace-answer";
import { traceText } from "./trace-text";
import { checkedOutput, writeWhole } from "./write-files";

const USAGE =
  "npm run -s trace -- BOOK LOT [--back] [--json] [--as-of DATE] [--out FILE.xlsx] [--force]";

/** Where a lot went, or with --back where a run, tote or barrel came from. */
export const traceLot: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      json: { type: "boolean", default: false },
      back: { type: "boolean", default: false },
      "as-of": { type: "string" },
      out: { type: "string" },
      force: { type: "boolean", default: false },
    },
    USAGE,
  );
  const [place, lot, more] = positionals;
  if (place === undefined || lot === undefined)
    throw unusable(
      `Needs a farm book, and the lot, barrel, run or tote to follow. Usage: ${USAGE}`,
    );
  if (more !== undefined)
    throw unusable(`"${more}" is one too many. Usage: ${USAGE}`);
  const asOf =
    values["as-of"] === undefined
      ? undefined
      : readDate(values["as-of"], "--as-of");
  const out =
    values.out === undefined
      ? undefined
      : checkedOutput(values.out, values.force);
  const startedAt = worksheetTime(new Date());
  const started = performance.now();
  const files = await readBookFiles(place);
  const { book } = readBook(files.contents);
  const found = traceOf(book, lot, values.back ? "back" : "forward", asOf);
  const answer = traceAnswer(
    found,
    Math.round(performance.now() - started) / 1000,
  );
  if (out !== undefined)
    writeWhole(
      out,
      await recallWorkbook({
        found,
        asOf: asOf ?? newestDay(book) ?? as<DaySerial>(Math.floor(startedAt)),
        startedAt,
      }),
    );
  if (values.json) terminal.say(JSON.stringify(answer));
  else for (const text of traceText(answer)) terminal.say(text);
  return 0;
};

const recallWorkbook = async (question: RecallQuestion): Promise<Uint8Array> =>
  writeXlsx(
    (
      await calculate(
        {
          title: `Recall list: ${question.found.name}`,
          sheets: [recallSheet(question)],
          names: [],
        },
        gridFunctions,
      )
    ).workbook,
  );

const MINUTE = 60_000;

/** A moment as a worksheet shows it: local day and time, to the minute. */
const worksheetTime = (moment: Date): number =>
  (Math.floor(moment.getTime() / MINUTE) - moment.getTimezoneOffset()) / 1440 +
  UNIX_EPOCH;

/** Worksheets count days from 1900; this is 1 January 1970. */
const UNIX_EPOCH = 25_569;
