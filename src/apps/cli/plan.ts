import { readBook } from "../../book/read";
import { readStart } from "../../book/run-plan-start";
import { unusable } from "../../measures/cannot-answer";
import { readDate } from "../../measures/read-date";
import { wholeOption } from "./figure-options";
import { onlyPositional, readOptions } from "./options";
import { planAnswer } from "./plan-answer";
import { planText } from "./plan-text";
import { planWorkbook } from "./plan-workbook";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";
import { checkedOutput, writeWhole } from "./write-files";

const USAGE =
  "npm run -s plan -- BOOK --product SKU --bottles N [--line NAME] [--start 2026-11-26T07:00] [--as-of DATE] [--json] [--out FILE.xlsx] [--force]";

/** Plans one run: its line, hours, kettle fills, lots, materials, pallets and code. */
export const plan: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      product: { type: "string" },
      bottles: { type: "string" },
      line: { type: "string" },
      start: { type: "string" },
      "as-of": { type: "string" },
      json: { type: "boolean", default: false },
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
  const product = needed(values.product, "--product");
  const bottles = wholeOption(
    needed(values.bottles, "--bottles"),
    "--bottles",
    "bottles",
  );
  const start =
    values.start === undefined ? undefined : readStart(values.start, "--start");
  const asOf =
    values["as-of"] === undefined
      ? undefined
      : readDate(values["as-of"], "--as-of");
  const out =
    values.out === undefined
      ? undefined
      : checkedOutput(values.out, values.force);
  const files = await readBookFiles(place);
  const { book, findings } = readBook(files.contents);
  const question = {
    product,
    bottles,
    ...(values.line === undefined
      ? {}
      : { line: knownLine(values.line, book.lines) }),
    ...(start === undefined ? {} : { start }),
    ...(asOf === undefined ? {} : { asOf }),
  };
  const found = [...files.findings, ...findings];
  const answer = planAnswer(book, found, question);
  if (out !== undefined)
    writeWhole(
      out,
      await planWorkbook(files.contents, {
        ...question,
        product: answer.product,
      }),
    );
  if (values.json) terminal.say(JSON.stringify(answer));
  else for (const line of planText(answer, found)) terminal.say(line);
  return 0;
};

function needed(value: string | undefined, option: string): string {
  if (value === undefined) throw unusable(`Needs ${option}. Usage: ${USAGE}`);
  return value;
}

function knownLine(
  asked: string,
  lines: readonly { readonly line: string }[],
): string {
  const known = lines.find(
    ({ line }) => line.toLowerCase() === asked.trim().toLowerCase(),
  );
  if (!known)
    throw unusable(
      `--line: there is no line "${asked}"; the book has ${lines.map(({ line }) => line).join(", ")}.`,
    );
  return known.line;
}
