import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { hiddenLines } from "../../hosts/file/hidden-lines";
import { readXlsx } from "../../hosts/file/read-xlsx";
import { unusable } from "../../measures/cannot-answer";
import { adoptAnswer } from "./adopt";
import { adoptText } from "./adopt-text";
import type { Terminal } from "./terminal";

/** Says what a ledger in a workbook file is understood to be; nothing is written. */
export async function adopt(
  place: string,
  ledger: string,
  isJson: boolean,
  terminal: Terminal,
): Promise<0> {
  if (!existsSync(place)) throw unusable(`${place}: there is no such file.`);
  const bytes = new Uint8Array(readFileSync(place));
  const { workbook } = await readXlsx(bytes, path.basename(place));
  const answer = adoptAnswer(workbook, ledger, ({ sheet, column, columns }) =>
    hiddenLines(bytes, sheet, column + columns),
  );
  if (isJson) terminal.say(JSON.stringify(answer));
  else for (const line of adoptText(answer)) terminal.say(line);
  return 0;
}
