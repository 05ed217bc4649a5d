import { overheadsAnswer } from "../../book/overheads-answer";
import { readBook } from "../../book/read";
import { readDate } from "../../measures/read-date";
import { onlyPositional, readOptions } from "./options";
import { overheadsJson } from "./overheads-answer";
import { overheadsText } from "./overheads-text";
import { overheadsWorkbook } from "./year-workbooks";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";
import { checkedOutput, writeWhole } from "./write-files";

const USAGE =
  "npm run -s overheads -- BOOK [--json] [--run RUN] [--bills BILL] [--channel CHANNEL] [--as-of DATE] [--out FILE.xlsx] [--force]";

/** Who carries the season's bills, the same bill under each driver, and what an hour and a change of each line cost. */
export const overheads: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      json: { type: "boolean", default: false },
      run: { type: "string" },
      bills: { type: "string" },
      channel: { type: "string" },
      "as-of": { type: "string" },
      out: { type: "string" },
      force: { type: "boolean", default: false },
    },
    USAGE,
  );
  const place = onlyPositional(
    positionals,
    "a farm book: a folder of CSV files or an .xlsx file",
    USAGE,
  );
  const question = {
    ...(values.run === undefined ? {} : { run: values.run }),
    ...(values.bills === undefined ? {} : { bills: values.bills }),
    ...(values.channel === undefined ? {} : { channel: values.channel }),
    ...(values["as-of"] === undefined
      ? {}
      : { asOf: readDate(values["as-of"], "--as-of") }),
  };
  const out =
    values.out === undefined
      ? undefined
      : checkedOutput(values.out, values.force);
  const files = await readBookFiles(place);
  const { book, findings } = readBook(files.contents);
  const answer = overheadsAnswer(book, question);
  const json = overheadsJson(answer, [...files.findings, ...findings]);
  if (out !== undefined)
    writeWhole(out, await overheadsWorkbook(files.contents, question));
  if (values.json) terminal.say(JSON.stringify(json));
  else for (const line of overheadsText(json)) terminal.say(line);
  return 0;
};
