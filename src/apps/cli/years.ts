import { readBook } from "../../book/read";
import { yearsOf } from "../../book/year-bridge";
import { unusable } from "../../measures/cannot-answer";
import { readDate } from "../../measures/read-date";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";
import { checkedOutput, writeWhole } from "./write-files";
import { yearsJson } from "./years-answer";
import { yearsText } from "./years-text";
import { yearsWorkbook } from "./year-workbooks";

const USAGE =
  "npm run -s years -- BOOK [--product SKU] [--season YEAR] [--against YEAR] [--json] [--as-of DATE] [--out FILE.xlsx] [--force]";

/** What a bottle cost last season and this, and what the change is made of. */
export const years: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      json: { type: "boolean", default: false },
      product: { type: "string" },
      season: { type: "string" },
      against: { type: "string" },
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
    ...(values.product === undefined ? {} : { product: values.product }),
    ...(values.season === undefined
      ? {}
      : { season: yearRead(values.season, "--season") }),
    ...(values.against === undefined
      ? {}
      : { against: yearRead(values.against, "--against") }),
    ...(values["as-of"] === undefined
      ? {}
      : { asOf: readDate(values["as-of"], "--as-of") }),
  };
  const out =
    values.out === undefined
      ? undefined
      : checkedOutput(values.out, values.force);
  const { product } = question;
  if (out !== undefined && product === undefined)
    throw unusable("--out needs --product: a sheet speaks of one product");
  const files = await readBookFiles(place);
  const { book, findings } = readBook(files.contents);
  const found = yearsOf(book, question);
  const json = yearsJson(book, found, [...files.findings, ...findings]);
  if (out !== undefined && product !== undefined)
    writeWhole(
      out,
      await yearsWorkbook(files.contents, {
        product,
        season: found.season,
        against: found.against,
      }),
    );
  if (values.json) terminal.say(JSON.stringify(json));
  else for (const line of yearsText(json)) terminal.say(line);
  return 0;
};

function yearRead(typed: string, option: string): number {
  const year = Number(typed);
  if (!Number.isInteger(year) || year < 1900 || year > 9999)
    throw unusable(`${option}: needs a year such as 2026, not "${typed}"`);
  return year;
}
