import { quoteOf } from "../../book/quote";
import { readBook } from "../../book/read";
import { unusable } from "../../measures/cannot-answer";
import { as, type Money } from "../../measures/quantity";
import { readDate } from "../../measures/read-date";
import { goalCosts, leftoverTerms } from "../../trade/pricing/quote";
import { amountOption, optional, wholeOption } from "./figure-options";
import { languageNamed } from "../../sheets/words/language";
import { onlyPositional, readOptions } from "./options";
import { quoteAnswer } from "./quote-answer";
import { quoteText } from "./quote-text";
import { quoteFiles } from "./quote-workbook";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";
import { checkedOutput, writeWhole } from "./write-files";

const USAGE =
  "npm run -s quote -- BOOK --product SKU --bottles 300,600,1200 [--json] [--as-of DATE] [--channel NAME] [--artwork MONEY] [--artwork-life BOTTLES] [--leftovers charged|kept] [--goal-on full|direct] [--valid-days N] [--one-time MONEY] [--per-year MONEY] [--forecast BOTTLES] [--out FILE.xlsx] [--page FILE.xlsx] [--language en|fr] [--force]";

/** Quantities that stand side by side on one page. */
const MOST = 6;

/** What to ask a customer for a product of theirs at some quantities, and until when. */
export const quote: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      product: { type: "string" },
      bottles: { type: "string" },
      json: { type: "boolean", default: false },
      "as-of": { type: "string" },
      channel: { type: "string" },
      artwork: { type: "string" },
      "artwork-life": { type: "string" },
      leftovers: { type: "string", default: "charged" },
      "goal-on": { type: "string", default: "full" },
      "valid-days": { type: "string" },
      "one-time": { type: "string" },
      "per-year": { type: "string" },
      forecast: { type: "string" },
      out: { type: "string" },
      page: { type: "string" },
      language: { type: "string", default: "en" },
      force: { type: "boolean", default: false },
    },
    USAGE,
  );
  const place = onlyPositional(
    positionals,
    "a farm book: a folder of CSV files or an .xlsx file",
    USAGE,
  );
  if (values.product === undefined)
    throw unusable(`Needs --product. Usage: ${USAGE}`);
  if (values.bottles === undefined)
    throw unusable(`Needs --bottles, such as 300,600,1200. Usage: ${USAGE}`);
  const leftovers = oneOf(leftoverTerms, values.leftovers, "--leftovers");
  const goalOn = oneOf(goalCosts, values["goal-on"], "--goal-on");
  const asked = {
    artwork: optional(values.artwork, (text) =>
      amountOption(text, "--artwork"),
    ),
    artworkLife: optional(values["artwork-life"], (text) =>
      wholeOption(text, "--artwork-life", "bottles"),
    ),
    validDays: optional(values["valid-days"], (text) =>
      wholeOption(text, "--valid-days", "days"),
    ),
    asOf: optional(values["as-of"], (text) => readDate(text, "--as-of")),
    oneTime: optional(values["one-time"], (text) =>
      amountOption(text, "--one-time"),
    ),
    perYear: optional(values["per-year"], (text) =>
      amountOption(text, "--per-year"),
    ),
    forecast: optional(values.forecast, (text) =>
      wholeOption(text, "--forecast", "bottles"),
    ),
  };
  if (
    asked.oneTime === undefined &&
    (asked.perYear ?? asked.forecast) !== undefined
  )
    throw unusable("--per-year and --forecast are for --one-time: add it.");
  if (asked.perYear !== undefined && asked.forecast === undefined)
    throw unusable(
      "--per-year needs --forecast: yearly costs are earned month by month.",
    );
  const question = {
    product: values.product,
    quantities: quantities(values.bottles),
    leftovers,
    goalOn,
    ...given("channel", values.channel),
    ...given("artwork", asked.artwork),
    ...given("artworkLife", asked.artworkLife),
    ...given("validDays", asked.validDays),
    ...given("asOf", asked.asOf),
    ...(asked.oneTime === undefined
      ? {}
      : {
          spent: {
            oneTime: asked.oneTime,
            fixedPerYear: asked.perYear ?? as<Money>(0),
            forecastPerYear: asked.forecast,
          },
        }),
  };
  const language = languageNamed(values.language, "--language");
  if (language !== "en" && values.page === undefined)
    throw unusable(
      "--language is for --page, which the customer reads: add it.",
    );
  const out =
    values.out === undefined
      ? undefined
      : checkedOutput(values.out, values.force);
  const page =
    values.page === undefined
      ? undefined
      : checkedOutput(values.page, values.force, "--page");
  if (out !== undefined && out === page)
    throw unusable(
      "--out and --page must be two files: the page goes to the customer, the other does not.",
    );
  const files = await readBookFiles(place);
  const { book, findings } = readBook(files.contents);
  const answer = quoteAnswer(quoteOf(book, question), question, [
    ...files.findings,
    ...findings,
  ]);
  if (out !== undefined || page !== undefined) {
    const made = await quoteFiles(files.contents, question, language);
    if (out !== undefined) writeWhole(out, made.whole);
    if (page !== undefined) writeWhole(page, made.page);
  }
  if (values.json) terminal.say(JSON.stringify(answer));
  else for (const line of quoteText(answer)) terminal.say(line);
  return 0;
};

function quantities(written: string): readonly number[] {
  const all = written
    .split(",")
    .map((one) => wholeOption(one.trim(), "--bottles", "bottles"));
  if (all.length > MOST)
    throw unusable(
      `--bottles: ${all.length} quantities are more than the ${MOST} that fit on one page.`,
    );
  return all;
}

function oneOf<T extends string>(
  choices: readonly T[],
  written: string,
  option: string,
): T {
  const found = choices.find((one) => one === written.trim().toLowerCase());
  if (found !== undefined) return found;
  throw unusable(
    `${option}: "${written}" is neither ${choices.join(" nor ")}.`,
  );
}

const given = <K extends string, T>(
  key: K,
  value: T | undefined,
): Partial<Record<K, T>> =>
  value === undefined ? {} : ({ [key]: value } as Record<K, T>);
