import { bulkOrBottleOf, type BulkOrBottle } from "../../book/bulk-or-bottle";
import { readBook } from "../../book/read";
import { usualRun } from "../../book/usual-run";
import { unusable } from "../../measures/cannot-answer";
import { as, type Hours } from "../../measures/quantity";
import { readDate } from "../../measures/read-date";
import { KG_PER_LB } from "../../measures/units";
import type { Split } from "../../trade/pricing/bulk-or-bottle";
import {
  amountOption,
  notBelow0,
  optional,
  weightOption,
  wholeOption,
} from "./figure-options";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";

const USAGE =
  "npm run -s bulk -- BOOK --product SKU --pounds LB [--bottles N] [--hours H] [--price PER_LB] [--as-of DATE] [--json]";

/** The answer of `bulk --json`; figures that are withheld are null and `missing` names what they need. */
export interface BulkAnswer {
  readonly product: string;
  readonly pounds: number;
  /** The run a bottle's share of set-up and purge is taken from. */
  readonly bottles: number;
  /** Hours of people; null for as many as it takes. */
  readonly hours: number | null;
  readonly bulk: {
    readonly contract: string | null;
    readonly pricePerLb: number | null;
    /** Over the syrup at today's price. */
    readonly earnsPerLb: number | null;
  };
  readonly ways: readonly {
    readonly channel: string;
    readonly earnsPerLb: number;
    readonly bottles: number;
    readonly bottledLb: number;
    readonly inBulkLb: number;
    readonly hours: number;
    readonly earns: number;
    readonly moreThanBulk: number;
    readonly limitedBy: string;
  }[];
  /** The channel that earns most, or "all of it in bulk"; null while withheld. */
  readonly best: string | null;
  readonly missing: readonly string[];
}

/** What free syrup earns in bottles through each channel, against selling it by the pound. */
export const bulk: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      product: { type: "string" },
      pounds: { type: "string" },
      bottles: { type: "string" },
      hours: { type: "string" },
      price: { type: "string" },
      "as-of": { type: "string" },
      json: { type: "boolean", default: false },
    },
    USAGE,
  );
  const place = onlyPositional(
    positionals,
    "a farm book: a folder of CSV files or an .xlsx file",
    USAGE,
  );
  const { product, pounds } = values;
  if (product === undefined) throw unusable(`Needs --product. Usage: ${USAGE}`);
  if (pounds === undefined)
    throw unusable(`Needs --pounds, the syrup that is free. Usage: ${USAGE}`);
  const syrup = weightOption(pounds, "--pounds");
  const labour = optional(values.hours, (text) =>
    as<Hours>(notBelow0(text, "--hours")),
  );
  const typedBottles = optional(values.bottles, (text) =>
    wholeOption(text, "--bottles", "bottles"),
  );
  const totePrice = optional(values.price, (text) =>
    amountOption(text, "--price"),
  );
  const asOf = optional(values["as-of"], (text) => readDate(text, "--as-of"));
  const { book } = readBook((await readBookFiles(place)).contents);
  const bottles = typedBottles ?? usualRun(book, product);
  const found = bulkOrBottleOf(book, {
    product,
    bottles,
    syrup,
    labour,
    ...(totePrice === undefined ? {} : { totePrice }),
    ...(asOf === undefined ? {} : { asOf }),
  });
  const answer: BulkAnswer = {
    product,
    pounds: inLb(syrup),
    bottles,
    hours: labour ?? null,
    bulk: {
      contract:
        totePrice === undefined ? (found.contract?.contract ?? null) : null,
      pricePerLb: totePrice ?? found.contract?.perPound ?? null,
      earnsPerLb:
        found.bulkPerKg === undefined ? null : found.bulkPerKg * KG_PER_LB,
    },
    ways: found.splits.map(way),
    best: bestOf(found),
    missing: found.missing,
  };
  if (values.json) terminal.say(JSON.stringify(answer));
  else for (const line of said(answer)) terminal.say(line);
  return 0;
};

const inLb = (kilograms: number): number =>
  Number((kilograms / KG_PER_LB).toPrecision(12));

const way = (split: Split): BulkAnswer["ways"][number] => ({
  channel: split.name,
  earnsPerLb: split.contributionPerKg * KG_PER_LB,
  bottles: split.bottles,
  bottledLb: inLb(split.bottled),
  inBulkLb: inLb(split.inBulk),
  hours: split.labour,
  earns: split.earns,
  moreThanBulk: split.more,
  limitedBy: split.limitedBy,
});

function bestOf({ best, missing }: BulkOrBottle): string | null {
  if (missing.length > 0) return null;
  return best && best.more > 0 ? best.name : "all of it in bulk";
}

const said = (answer: BulkAnswer): readonly string[] => [
  `${figure(answer.pounds, 0)} lb for ${answer.product}, a run of ${figure(answer.bottles, 0)} bottles, ${answer.hours === null ? "as many hours as it takes" : `${figure(answer.hours, 1)} hours of people`}`,
  answer.missing.length > 0
    ? `Withheld: needs ${answer.missing.join("; ")}`
    : `In bulk${answer.bulk.contract === null ? "" : ` under ${answer.bulk.contract}`}, ${figure(answer.bulk.pricePerLb ?? 0, 4)} a lb: earns ${figure(answer.bulk.earnsPerLb ?? 0, 4)} a lb over the syrup`,
  ...answer.ways.map(
    (one) =>
      `  ${one.channel.padEnd(28)}${figure(one.earnsPerLb, 4).padStart(9)} a lb, ${figure(one.bottles, 0).padStart(7)} bottles, ${figure(one.inBulkLb, 0).padStart(6)} lb in bulk, earns ${figure(one.earns, 2).padStart(10)}; limited by ${one.limitedBy}`,
  ),
  ...(answer.best === null ? [] : [`Earns most: ${answer.best}`]),
  "Syrup counts at today's price either way; overheads and shipping to the buyer are left out.",
];

const figure = (value: number, decimals: number): string =>
  value.toLocaleString("en-US", {
    minimumFractionDigits: decimals > 1 ? decimals : 0,
    maximumFractionDigits: decimals,
  });
