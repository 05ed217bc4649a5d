import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { readBook } from "../../book/read";
import { totesOf } from "../../book/totes";
import { lotBalances } from "../../book/totes-lots";
import { unusable } from "../../measures/cannot-answer";
import type { DaySerial, Share } from "../../measures/quantity";
import { readDate } from "../../measures/read-date";
import { readShare } from "../../measures/read-share";
import { matchings } from "../../trade/totes/matching";
import { adopt } from "./adopt-workbook";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import type { Command, Terminal } from "./terminal";
import { withToteSheets } from "./totes-added";
import { totesAnswer } from "./totes-answer";
import { totesText } from "./totes-text";
import { totesWorkbook } from "./totes-workbook";
import { checkedOutput, writeWhole } from "./write-files";

const USAGE =
  'npm run -s totes -- BOOK [--json] [--as-of DATE] [--receipts "by hand"|"oldest first"] [--tolerance PERCENT] [--out FILE.xlsx] [--received LOT] [--force], WORKBOOK.xlsx --add --out NEW.xlsx [--force], or WORKBOOK.xlsx --adopt SHEET!RANGE [--json]';

/** Totes on a day: tickets, contracts, who owes, deposits; or a register added to a workbook of anybody's. */
export const totes: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      json: { type: "boolean", default: false },
      "as-of": { type: "string" },
      receipts: { type: "string", default: "by hand" },
      tolerance: { type: "string" },
      add: { type: "boolean", default: false },
      adopt: { type: "string" },
      received: { type: "string" },
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
  if (values.adopt !== undefined)
    return adopt(place, values.adopt, values.json, terminal);
  const asOf =
    values["as-of"] === undefined
      ? undefined
      : readDate(values["as-of"], "--as-of");
  const matching = matchings.find(
    (one) => one === values.receipts.trim().toLowerCase(),
  );
  if (matching === undefined)
    throw unusable(
      `--receipts: "${values.receipts}" is neither "by hand" nor "oldest first".`,
    );
  const tolerance =
    values.tolerance === undefined
      ? undefined
      : readTolerance(values.tolerance);
  if (values.received !== undefined && values.out === undefined)
    throw unusable(`--received needs --out FILE.xlsx. Usage: ${USAGE}`);
  if (values.add && values.out === undefined)
    throw unusable(`--add needs --out NEW.xlsx. Usage: ${USAGE}`);
  const out =
    values.out === undefined
      ? undefined
      : checkedOutput(
          values.out,
          values.force,
          "--out",
          // Macros are written under their own extension, or the copy would not open.
          values.add && isWithMacros(place) ? ".xlsm" : ".xlsx",
        );
  if (values.add && out !== undefined) return add(place, out, asOf, terminal);
  const files = await readBookFiles(place);
  const { book, findings } = readBook(files.contents);
  const register = totesOf(book, { asOf, matching, tolerance });
  const answer = totesAnswer(register, lotBalances(book, register.asOf), [
    ...files.findings,
    ...findings,
  ]);
  if (out !== undefined)
    writeWhole(
      out,
      await totesWorkbook(files.contents, { asOf, received: values.received }),
    );
  if (values.json) terminal.say(JSON.stringify(answer));
  else for (const text of totesText(answer)) terminal.say(text);
  return 0;
};

/** Scales that differ by more than this are broken, so a larger tolerance is a slip. */
const MOST_TOLERANCE = 0.1;

function readTolerance(written: string): Share {
  const share = readShare(written, "--tolerance");
  if (share < 0 || share > MOST_TOLERANCE)
    throw unusable(
      `--tolerance: "${written}" reads as ${Number((share * 100).toPrecision(6))} %; type a percentage from 0 to 10, as "0.5 %".`,
    );
  return share;
}

const isWithMacros = (file: string): boolean =>
  path.extname(file).toLowerCase() === ".xlsm";

async function add(
  place: string,
  out: string,
  asOf: DaySerial | undefined,
  terminal: Terminal,
): Promise<0> {
  if (!existsSync(place)) throw unusable(`${place}: there is no such file.`);
  if (path.extname(place).toLowerCase() !== ".xlsx" && !isWithMacros(place))
    throw unusable(`${place}: --add wants an .xlsx or .xlsm workbook.`);
  const { bytes, added } = await withToteSheets(
    readFileSync(place),
    path.basename(place),
    asOf,
  );
  writeWhole(out, bytes);
  terminal.say(
    `${path.basename(out)}: added ${added.join(", ")}; everything else is as it was.`,
  );
  return 0;
}
