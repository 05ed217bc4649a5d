import { existsSync } from "node:fs";
import path from "node:path";
import { readBook } from "../../book/read";
import { unusable } from "../../measures/cannot-answer";
import { readDate } from "../../measures/read-date";
import { billOfLading } from "../../sheets/papers/bill-of-lading";
import { paperFacts } from "../../sheets/papers/facts";
import { farmCodes, toteCodes } from "../../sheets/papers/tote-codes";
import { toteLabel } from "../../sheets/papers/tote-label";
import { weightTicket } from "../../sheets/papers/weight-ticket";
import { languageNamed } from "../../sheets/words/language";
import { toteBars } from "../tote-bars";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";
import { writeWhole } from "./write-files";

const USAGE =
  "npm run -s papers -- BOOK --ticket ID --out FOLDER [--prefix COMPANY] [--item NUMBER] [--serial N] [--language en|fr] [--as-of DATE] [--json] [--force]";

/** What `papers --json` answers. */
export interface PapersAnswer {
  readonly ticket: string;
  readonly billOfLading: string | null;
  readonly lot: string;
  readonly codes: readonly string[];
  readonly missing: readonly string[];
  readonly files: readonly string[];
}

/** The papers of one tote as printable pages: weight ticket, bill of lading where it has one, label with its bar codes. */
export const papers: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      ticket: { type: "string" },
      out: { type: "string" },
      prefix: { type: "string" },
      item: { type: "string" },
      serial: { type: "string" },
      language: { type: "string", default: "en" },
      "as-of": { type: "string" },
      json: { type: "boolean", default: false },
      force: { type: "boolean", default: false },
    },
    USAGE,
  );
  const place = onlyPositional(
    positionals,
    "a farm book: a folder of CSV files or an .xlsx file",
    USAGE,
  );
  if (values.ticket === undefined)
    throw unusable(`Needs --ticket ID. Usage: ${USAGE}`);
  if (values.out === undefined)
    throw unusable(`Needs --out FOLDER. Usage: ${USAGE}`);
  const language = languageNamed(values.language, "--language");
  const asOf =
    values["as-of"] === undefined
      ? undefined
      : readDate(values["as-of"], "--as-of");
  const { book } = readBook((await readBookFiles(place)).contents);
  const facts = paperFacts(book, values.ticket, asOf);
  const codes = toteCodes(facts, farmCodes(book, values));
  const label = toteLabel(facts, codes, toteBars, language);
  const number = facts.ticket.row.billOfLading;
  const pages = [
    weightTicket(facts, language),
    ...(number === undefined ? [] : [billOfLading(facts, language)]),
    label,
  ];
  const files = [
    ...pages.map(({ name, page }) => ({ name: `${name}.html`, text: page })),
    ...codes.codes.map((code, i) => ({
      name: `${label.name}-bars-${i + 1}.svg`,
      text: toteBars(code),
    })),
  ];
  writeAll(values.out, files, values.force);
  const answer: PapersAnswer = {
    ticket: facts.ticket.row.ticket,
    billOfLading: number ?? null,
    lot: codes.lot,
    codes: codes.codes.map(({ text }) => text),
    missing: codes.missing,
    files: files.map(({ name }) => name),
  };
  if (values.json) terminal.say(JSON.stringify(answer));
  else for (const line of said(answer)) terminal.say(line);
  return 0;
};

/** All files or none: what would be replaced unasked is found before the first is written. */
function writeAll(
  folder: string,
  files: readonly { readonly name: string; readonly text: string }[],
  force: boolean,
): void {
  const there = files.find(({ name }) => existsSync(path.join(folder, name)));
  if (there && !force)
    throw unusable(
      `--out ${folder}: ${there.name} exists already and nothing was written; add --force to replace it.`,
    );
  for (const { name, text } of files)
    writeWhole(path.resolve(folder, name), text);
}

const said = (answer: PapersAnswer): readonly string[] => [
  `Papers of ${answer.ticket}: ${answer.files.join(", ")}`,
  ...answer.codes.map((code) => `  bar code ${code}`),
  ...answer.missing.map((what) => `  bar code left off: needs ${what}`),
  ...(answer.billOfLading === null
    ? ["  no bill of lading: the row has no number for it"]
    : []),
];
