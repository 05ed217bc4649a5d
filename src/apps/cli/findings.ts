import { findingText } from "../../book/finding";
import { managerFindings } from "../../book/manager-findings";
import { readBook } from "../../book/read";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";

const USAGE = "npm run -s findings -- BOOK [--json]";

/** Everything a manager should be told unasked, the most money at stake first. */
export const findings: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    { json: { type: "boolean", default: false } },
    USAGE,
  );
  const place = onlyPositional(
    positionals,
    "a farm book: a folder of CSV files or an .xlsx file",
    USAGE,
  );
  const files = await readBookFiles(place);
  const reading = readBook(files.contents);
  const all = managerFindings(reading.book, [
    ...files.findings,
    ...reading.findings,
  ]);
  if (values.json) terminal.say(JSON.stringify({ findings: all }));
  else
    for (const finding of all)
      terminal.say(
        `- ${finding.atStake === undefined ? "" : `[${Math.round(finding.atStake).toLocaleString("en-US")}] `}${findingText(finding)}`,
      );
  return 0;
};
