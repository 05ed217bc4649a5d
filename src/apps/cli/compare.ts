import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { readXlsx } from "../../hosts/file/read-xlsx";
import { unusable } from "../../measures/cannot-answer";
import { cellAddress } from "../../sheets/address";
import {
  compareWorkbooks,
  type CopyChange,
} from "../../sheets/compare/compare-workbooks";
import type { Stored, Workbook } from "../../sheets/workbook";
import { readOptions } from "./options";
import type { Command } from "./terminal";

const USAGE = "npm run -s compare -- SENT.xlsx RETURNED.xlsx [--json]";

/** What somebody changed in a copy that was sent out, cell by cell, in the words of its sheets. */
export const compare: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    { json: { type: "boolean", default: false } },
    USAGE,
  );
  const [sent, returned, ...more] = positionals;
  if (sent === undefined || returned === undefined || more.length > 0)
    throw unusable(
      `Needs two workbooks: the copy as it was sent and as it came back. Usage: ${USAGE}`,
    );
  const comparison = compareWorkbooks(
    await workbookAt(sent),
    await workbookAt(returned),
  );
  if (values.json) {
    terminal.say(
      JSON.stringify({
        changes: comparison.changes.map(({ row, column, ...change }) => ({
          cell: cellAddress(row, column),
          ...change,
        })),
        unmatched: comparison.unmatched,
      }),
    );
    return 0;
  }
  for (const change of comparison.changes) terminal.say(lineOf(change));
  for (const sentence of comparison.unmatched) terminal.say(sentence);
  if (comparison.changes.length + comparison.unmatched.length === 0)
    terminal.say("Nothing was changed.");
  return 0;
};

async function workbookAt(place: string): Promise<Workbook> {
  if (!existsSync(place)) throw unusable(`${place}: there is no such file.`);
  const { workbook } = await readXlsx(
    new Uint8Array(readFileSync(place)),
    path.basename(place),
  );
  return workbook;
}

const lineOf = ({
  sheet,
  row,
  column,
  what,
  kind,
  was,
  now,
  formulaWas,
  formulaNow,
}: CopyChange): string =>
  `${sheet}, ${cellAddress(row, column)} (${what}): ${kind}, from ${formulaWas ?? shown(was)} to ${formulaNow ?? shown(now)}`;

function shown(value: Stored): string {
  if (value === null || value === "") return "nothing";
  if (typeof value === "object") return value.error;
  return typeof value === "string" ? `"${value}"` : String(value);
}
