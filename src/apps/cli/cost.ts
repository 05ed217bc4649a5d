import type { Finding } from "../../book/finding";
import { readBook } from "../../book/read";
import { usualRun } from "../../book/usual-run";
import { type CostAnswer, costAnswer } from "./cost-answer";
import { costText } from "./cost-text";
import { costingWorkbook } from "./costing-workbook";
import { wholeOption } from "./figure-options";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";
import { checkedOutput, writeWhole } from "./write-files";

const USAGE =
  "npm run -s cost -- BOOK [--product SKU] [--bottles N] [--json] [--out FILE.xlsx] [--force]";

/** What a bottle costs and what it is sold for, for one product or for all of the book. */
export const cost: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      product: { type: "string" },
      bottles: { type: "string" },
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
  const bottles =
    values.bottles === undefined
      ? undefined
      : wholeOption(values.bottles, "--bottles", "bottles");
  const out =
    values.out === undefined
      ? undefined
      : checkedOutput(values.out, values.force);
  const files = await readBookFiles(place);
  const { book, findings } = readBook(files.contents);
  const found = [...files.findings, ...findings];
  const products =
    values.product === undefined
      ? book.products.map((p) => p.product)
      : [values.product];
  const answers = products.map((product) =>
    costAnswer(book, found, product, bottles ?? usualRun(book, product)),
  );
  if (out !== undefined) {
    writeWhole(
      out,
      await costingWorkbook(
        files.contents,
        answers.map(({ product, bottles: run }) => ({ product, bottles: run })),
      ),
    );
  }
  if (values.json)
    terminal.say(
      JSON.stringify(
        values.product === undefined
          ? {
              products: answers.map(withoutFindings),
              findings: withoutRepeats(answers.flatMap((a) => a.findings)),
            }
          : answers[0],
      ),
    );
  else for (const line of costText(answers, found)) terminal.say(line);
  return 0;
};

const withoutFindings = ({
  findings: _,
  ...answer
}: CostAnswer): Omit<CostAnswer, "findings"> => answer;

/** What is wrong in the book stands under every product; with many it is told once. */
const withoutRepeats = (findings: readonly Finding[]): readonly Finding[] => [
  ...new Set(findings),
];
