import path from "node:path";
import { writeCopy } from "../../hosts/file/leaks/write-copy";
import { unusable } from "../../measures/cannot-answer";
import { readDate } from "../../measures/read-date";
import { readNumber } from "../../measures/read-number";
import { readAsked } from "../../sheets/handover/read-asked";
import { audienceNames, topicNamed } from "../../sheets/handover/audiences";
import { copyIn } from "../../sheets/words/french-copy";
import { languageNamed } from "../../sheets/words/language";
import {
  copyInUnits,
  unitSystemNamed,
  unitSystemOf,
} from "../../sheets/metric/unit-system";
import { handoverCopy, workedOut } from "./handover-copy";
import { pdfOf } from "./handover-pdf";
import { handoverText } from "./handover-text";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";
import { checkedOutput, writeWhole } from "./write-files";

const USAGE =
  "npm run -s handover -- BOOK --for partner|customer|lender|broker --sheets costing:SKU,prices,quote:SKU,totes:BUYER [--hide TOPIC,…] [--show TOPIC,…] [--may-stand WORD,…] [--language en|fr] [--units US|metric] [--bottles N,…] [--as-of DATE] [--json] [--out FILE.xlsx] [--pdf] [--force]";

/** A copy for somebody outside the farm: what it keeps and removes, and with --out the file, searched for leaks. */
export const handover: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      for: { type: "string" },
      sheets: { type: "string" },
      hide: { type: "string", default: "" },
      show: { type: "string", default: "" },
      "may-stand": { type: "string", default: "" },
      language: { type: "string", default: "en" },
      units: { type: "string" },
      bottles: { type: "string" },
      "as-of": { type: "string" },
      json: { type: "boolean", default: false },
      out: { type: "string" },
      pdf: { type: "boolean", default: false },
      force: { type: "boolean", default: false },
    },
    USAGE,
  );
  const place = onlyPositional(
    positionals,
    "a farm book: a folder of CSV files or an .xlsx file",
    USAGE,
  );
  const audience = audienceNames.find((one) => one === values.for);
  if (!audience)
    throw unusable(
      `--for: ${values.for === undefined ? "says for whom" : `"${values.for}" is none of`} ${audienceNames.join(", ")}. Usage: ${USAGE}`,
    );
  if (values.sheets === undefined)
    throw unusable(`Needs --sheets. Usage: ${USAGE}`);
  const asked = readAsked(values.sheets);
  const topics = (written: string, option: string) =>
    listed(written).map((word) => topicNamed(word, option));
  const ticks = {
    hide: topics(values.hide, "--hide"),
    show: topics(values.show, "--show"),
    mayStand: listed(values["may-stand"]),
  };
  const language = languageNamed(values.language, "--language");
  const units =
    values.units === undefined
      ? undefined
      : unitSystemNamed(values.units, "--units");
  if (values.pdf && values.out === undefined)
    throw unusable("--pdf needs --out: the page is made from the file.");
  const out =
    values.out === undefined
      ? undefined
      : checkedOutput(values.out, values.force);
  const { contents } = await readBookFiles(place);
  const worked = await workedOut(contents, {
    asked,
    ...(values.bottles === undefined
      ? {}
      : { bottles: listed(values.bottles).map(wholeBottles) }),
    ...(values["as-of"] === undefined
      ? {}
      : { asOf: readDate(values["as-of"], "--as-of") }),
  });
  const copy = copyInUnits(
    copyIn(handoverCopy(worked, audience, ticks), language),
    units ?? unitSystemOf(contents),
  );
  const bytes = await writeCopy(copy);
  if (out !== undefined) writeWhole(out, bytes);
  const pdf = out !== undefined && values.pdf ? await pdfOf(out) : undefined;
  if (values.json)
    terminal.say(
      JSON.stringify({
        for: audience,
        ...copy.preview,
        bytes: bytes.length,
        looked: {
          figures: copy.secrets.figures.size,
          names: copy.secrets.names.size,
        },
        leaks: [],
        ...(out === undefined ? {} : { file: path.basename(out) }),
        ...(pdf === undefined ? {} : { pdf: path.basename(pdf) }),
      }),
    );
  else {
    for (const line of handoverText(copy.preview)) terminal.say(line);
    terminal.say(
      `Searched the finished file for ${copy.secrets.figures.size} figures and ${copy.secrets.names.size} names that were removed: none is in it.`,
    );
    if (out !== undefined)
      terminal.say(
        [values.out, pdf && path.basename(pdf)].filter(Boolean).join(" and "),
      );
    else terminal.say("Nothing was written; add --out FILE.xlsx.");
  }
  return 0;
};

const listed = (written: string): readonly string[] =>
  written
    .split(",")
    .map((one) => one.trim())
    .filter((one) => one !== "");

function wholeBottles(written: string): number {
  const value = readNumber(written, "--bottles");
  if (!Number.isInteger(value) || value < 1)
    throw unusable(
      `--bottles: ${written} is not a whole number of bottles, 1 or more.`,
    );
  return value;
}
