import path from "node:path";
import { productLabel } from "../../book/label";
import { readBook } from "../../book/read";
import { unusable } from "../../measures/cannot-answer";
import { readDate } from "../../measures/read-date";
import { readNumber } from "../../measures/read-number";
import { labelFactsPage } from "../../sheets/papers/label-facts-page";
import { type SourceId, sources } from "../../standards/sources";
import {
  CHECK_THE_LAW,
  type LabelFact,
} from "../../trade/contents/label-facts";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";
import { checkedOutput, writeWhole } from "./write-files";

const USAGE =
  "npm run -s label -- BOOK --product CODE [--surface CM2] [--product-of-canada yes|no] [--packed DATE] [--json] [--out FILE.html] [--force]";

/** What a bilingual label of a product has to say in Canada, each fact with its source, and what is missing by name. */
export const label: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      product: { type: "string" },
      surface: { type: "string" },
      "product-of-canada": { type: "string" },
      packed: { type: "string" },
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
  if (values.product === undefined)
    throw unusable(`Needs --product CODE. Usage: ${USAGE}`);
  const out =
    values.out === undefined
      ? undefined
      : checkedOutput(values.out, values.force, "--out", ".html");
  const asked = {
    product: values.product,
    surface:
      values.surface === undefined ? undefined : surfaceOf(values.surface),
    isProductOfCanada: yesOrNo(values["product-of-canada"]),
    packedOn:
      values.packed === undefined
        ? undefined
        : readDate(values.packed, "--packed"),
  };
  const { book } = readBook((await readBookFiles(place)).contents);
  const { product, facts } = productLabel(book, asked);
  if (out !== undefined)
    writeWhole(
      out,
      labelFactsPage({
        product: product.product,
        description: product.description ?? product.product,
        farm: facts.find(({ what }) => what === "Packed by")?.english ?? "",
        facts: facts.map((fact) => ({
          ...fact,
          sources: fact.sources.map(titleOf),
        })),
        caution: CHECK_THE_LAW,
      }).page,
    );
  if (values.json)
    terminal.say(
      JSON.stringify({
        product: product.product,
        facts: facts.map((fact) => ({
          what: fact.what,
          english: fact.english ?? null,
          french: fact.french ?? null,
          missing: fact.missing ?? null,
          sources: fact.sources.map((id) => ({
            title: sources[id].title,
            kind: sources[id].kind,
          })),
        })),
        caution: CHECK_THE_LAW,
        ...(out === undefined ? {} : { file: path.basename(out) }),
      }),
    );
  else {
    terminal.say(`${product.product}: ${product.description ?? ""}`);
    for (const fact of facts) terminal.say(line(fact));
    terminal.say(CHECK_THE_LAW);
    if (values.out !== undefined) terminal.say(values.out);
  }
  return 0;
};

const line = ({ what, english, french, missing, sources: from }: LabelFact) =>
  `  ${what}: ${missing === undefined ? (english === french ? (english ?? "") : `${english ?? ""} / ${french ?? ""}`) : `missing: ${missing}`}${from.length === 0 ? "" : ` (${from.map(titleOf).join("; ")})`}`;

/** A source from memory or practice says so wherever it is named. */
function titleOf(id: SourceId): string {
  const { title, kind } = sources[id];
  return kind === "memory" ? `${title}, from memory` : title;
}

function surfaceOf(written: string): number {
  const surface = readNumber(written, "--surface");
  if (surface <= 0)
    throw unusable(
      `--surface: ${written} is not above 0; type the principal display surface in cm².`,
    );
  return surface;
}

function yesOrNo(written: string | undefined): boolean | undefined {
  if (written === undefined) return undefined;
  const word = written.trim().toLowerCase();
  if (word === "yes" || word === "no") return word === "yes";
  throw unusable(`--product-of-canada: "${written}" is neither yes nor no.`);
}
