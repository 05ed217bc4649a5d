import { priceList } from "../../book/price-list";
import { costsMoved } from "../../book/price-list-moves";
import { readBook } from "../../book/read";
import type { DaySerial } from "../../measures/quantity";
import { readDate } from "../../measures/read-date";
import { readShare } from "../../measures/read-share";
import { onlyPositional, readOptions } from "./options";
import { pricesAnswer } from "./prices-answer";
import { pricesText } from "./prices-text";
import { pricesWorkbook } from "./prices-workbook";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";
import { checkedOutput, writeWhole } from "./write-files";

const USAGE =
  "npm run -s prices -- BOOK [--json] [--as-of DATE] [--against OTHERBOOK] [--moved PERCENT] [--out FILE.xlsx] [--force]";

/** What every product costs and is sold for at its usual run; against another book, which costs moved. */
export const prices: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      json: { type: "boolean", default: false },
      "as-of": { type: "string" },
      against: { type: "string" },
      moved: { type: "string", default: "2 %" },
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
  const asOf =
    values["as-of"] === undefined
      ? undefined
      : readDate(values["as-of"], "--as-of");
  const over = readShare(values.moved, "--moved");
  const out =
    values.out === undefined
      ? undefined
      : checkedOutput(values.out, values.force);
  const files = await readBookFiles(place);
  const { book, findings } = readBook(files.contents);
  const list = priceList(book, asOf);
  const moved =
    values.against === undefined
      ? undefined
      : costsMoved(await otherList(values.against, asOf), list, over);
  const answer = pricesAnswer(list, [...files.findings, ...findings], moved);
  if (out !== undefined)
    writeWhole(out, await pricesWorkbook(files.contents, asOf));
  if (values.json) terminal.say(JSON.stringify(answer));
  else for (const line of pricesText(answer)) terminal.say(line);
  return 0;
};

const otherList = async (place: string, asOf: DaySerial | undefined) =>
  priceList(readBook((await readBookFiles(place)).contents).book, asOf);
