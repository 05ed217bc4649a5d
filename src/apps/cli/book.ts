import { findingText } from "../../book/finding";
import { writeXlsx } from "../../hosts/file/write-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { unusable } from "../../measures/cannot-answer";
import { farmBook } from "../../sheets/farm-book";
import { gridFunctions } from "../grid-functions";
import { onlyPositional, readOptions } from "./options";
import { readFolder } from "./read-book-files";
import type { Command } from "./terminal";
import { checkedOutput, writeWhole } from "./write-files";

const USAGE = "npm run -s book -- FOLDER --out FILE.xlsx [--force]";

/** Builds a farm book workbook from a folder of CSV files; findings are told, never dropped. */
export const book: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      out: { type: "string" },
      force: { type: "boolean", default: false },
    },
    USAGE,
  );
  const folder = onlyPositional(positionals, "a folder of CSV files", USAGE);
  if (values.out === undefined)
    throw unusable(`Needs --out FILE.xlsx. Usage: ${USAGE}`);
  const out = checkedOutput(values.out, values.force);
  const { contents, findings } = readFolder(folder);
  const workbook = farmBook(contents);
  const calculated = await calculate(workbook, gridFunctions);
  writeWhole(out, await writeXlsx(calculated.workbook));
  for (const finding of findings) terminal.complain(findingText(finding));
  for (const { sheet, row, sentence } of calculated.refusals)
    terminal.complain(`${sheet} row ${row + 1}: ${sentence}.`);
  terminal.say(
    `${values.out}: ${workbook.sheets.length} sheets, ${findings.length} findings.`,
  );
  return 0;
};
