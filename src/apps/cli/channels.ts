import { productChannels } from "../../book/channel-orders";
import { readBook } from "../../book/read";
import { unusable } from "../../measures/cannot-answer";
import { as, type Money } from "../../measures/quantity";
import { readDate } from "../../measures/read-date";
import { readShare } from "../../measures/read-share";
import { channelsJson } from "./channels-answer";
import { channelsText } from "./channels-text";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";
import { checkedOutput, writeWhole } from "./write-files";
import { channelsWorkbook } from "./year-workbooks";

const USAGE =
  "npm run -s channels -- BOOK --product SKU [--bottles N] [--orders 1,2,4,6] [--shelf PRICE] [--further PRICE] [--mailer PRICE] [--tax PERCENT] [--json] [--as-of DATE] [--out FILE.xlsx] [--force]";

/** What each channel leaves of a product: order by order, back from the shelf and forward to it. */
export const channels: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      json: { type: "boolean", default: false },
      product: { type: "string" },
      bottles: { type: "string" },
      orders: { type: "string", default: "1,2,4,6" },
      shelf: { type: "string" },
      further: { type: "string" },
      mailer: { type: "string" },
      tax: { type: "string" },
      "as-of": { type: "string" },
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
  const { product } = values;
  if (product === undefined)
    throw unusable(`Needs --product SKU. Usage: ${USAGE}`);
  const question = {
    product,
    sizes: values.orders.split(",").map((one) => bottlesRead(one, "--orders")),
    ...(values.bottles === undefined
      ? {}
      : { bottles: bottlesRead(values.bottles.replace(",", ""), "--bottles") }),
    ...priceOf("shelf", values.shelf),
    ...priceOf("shippingFurther", values.further, "--further"),
    ...priceOf("mailer", values.mailer),
    ...(values.tax === undefined
      ? {}
      : { salesTax: readShare(values.tax, "--tax") }),
    ...(values["as-of"] === undefined
      ? {}
      : { asOf: readDate(values["as-of"], "--as-of") }),
  };
  const out =
    values.out === undefined
      ? undefined
      : checkedOutput(values.out, values.force);
  const files = await readBookFiles(place);
  const { book, findings } = readBook(files.contents);
  const answer = productChannels(book, question);
  const json = channelsJson(answer, [...files.findings, ...findings]);
  if (out !== undefined)
    writeWhole(
      out,
      await channelsWorkbook(files.contents, {
        ...question,
        product: json.product,
        bottles: answer.bottles,
      }),
    );
  if (values.json) terminal.say(JSON.stringify(json));
  else for (const line of channelsText(json)) terminal.say(line);
  return 0;
};

function bottlesRead(typed: string, option: string): number {
  const bottles = Number(typed.trim() || Number.NaN);
  if (!Number.isInteger(bottles) || bottles < 1)
    throw unusable(
      `${option}: needs whole bottles, one or more, not "${typed.trim()}"`,
    );
  return bottles;
}

function priceOf<K extends string>(
  name: K,
  typed: string | undefined,
  option = `--${name}`,
): Partial<Readonly<Record<K, Money>>> {
  if (typed === undefined) return {};
  const price = Number(typed.trim() || Number.NaN);
  if (!Number.isFinite(price) || price < 0)
    throw unusable(`${option}: needs a price, 0 or more, not "${typed}"`);
  return { [name]: as<Money>(price) } as Partial<Record<K, Money>>;
}
