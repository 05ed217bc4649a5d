import { unusable } from "../../measures/cannot-answer";
import type { Validation } from "../workbook";
import { type SheetKind, type Topic, topics } from "./topics";

export const audienceNames = [
  "partner",
  "customer",
  "lender",
  "broker",
] as const;
export type Audience = (typeof audienceNames)[number];

/** Who a copy is for and what they may see: the one place that says so. Growers, lot prices, wages and other customers are in no list. */
export const audiences: Readonly<
  Record<Audience, { readonly words: string; readonly sees: readonly Topic[] }>
> = {
  partner: {
    words: "a partner",
    sees: [
      "day",
      "product",
      "run",
      "bottle cost",
      "cost parts",
      "bulk price",
      "syrup",
      "lines",
      "materials",
      "energy",
      "overheads",
      "price",
      "margin",
      "goal",
      "channel costs",
      "tiers",
      "terms",
      "checks",
    ],
  },
  customer: {
    words: "a private-label customer",
    sees: ["day", "product", "price", "tiers", "terms", "account"],
  },
  lender: {
    words: "a lender",
    sees: [
      "day",
      "product",
      "bottle cost",
      "bulk price",
      "stock average",
      "stock",
      "price",
      "margin",
      "goal",
      "account",
    ],
  },
  broker: { words: "a broker", sees: ["day", "product", "price"] },
};

/** What is ticked beside the list of the audience. */
export interface Ticks {
  readonly hide: readonly Topic[];
  /** Shown although the audience's list does not have it; each is named by a person. */
  readonly show: readonly Topic[];
  /** Removed names and figures that may stand in the copy after all, as they are written. */
  readonly mayStand: readonly string[];
}

export const noTicks: Ticks = { hide: [], show: [], mayStand: [] };

/** Whether the copy shows a topic; a figure of no topic is shown to nobody. */
export const shows = (
  audience: Audience,
  { hide, show }: Ticks,
  topic: Topic | undefined,
): boolean =>
  topic !== undefined &&
  !hide.includes(topic) &&
  (show.includes(topic) || audiences[audience].sees.includes(topic));

/** A topic by its name; refuses (#VALUE!) a word that is none. */
export function topicNamed(word: string, option: string): Topic {
  const wanted = word.trim().toLowerCase();
  const found = (Object.keys(topics) as Topic[]).find((t) => t === wanted);
  if (found) return found;
  throw unusable(
    `${option}: "${word}" is none of ${Object.keys(topics).join(", ")}.`,
  );
}

interface Try {
  readonly name: RegExp;
  readonly rule: Validation["rule"];
  readonly says: string;
}

const number = (name: RegExp, min: number, max: number, says: string): Try => ({
  name,
  rule: { kind: "number", min, max },
  says,
});

const tries: Partial<Readonly<Record<SheetKind, readonly Try[]>>> = {
  costing: [
    number(/^fill$/, 1, 250_000, "Millilitres filled at 68 °F, 1 or more."),
    number(/^brix$/, 60, 75, "Brix at 68 °F, between 60 and 75."),
    number(/^bulk_price$/, 0, 1000, "A price per lb, 0 or more."),
    number(/^channels\.goal$/, 0, 0.95, "A share of the price, 0 % to 95 %."),
    number(/^channels\.price$/, 0, 100_000, "A price of a bottle, 0 or more."),
  ],
};

/** Figures that are worked out at the farm and that a reader may type over in the copy. */
export const tryRule = (kind: SheetKind, name: string): Try | undefined =>
  tries[kind]?.find((one) => one.name.test(name));

/** What stands in some formulas for a figure that is never shown: the same by arithmetic, from figures that are. */
export const standIns: Partial<
  Readonly<
    Record<
      SheetKind,
      readonly {
        readonly within: RegExp;
        readonly name: string;
        readonly text: string;
      }[]
    >
  >
> = {
  costing: [
    // A crew's cost an hour is wages; its cost a bottle times its bottles an hour is the same money.
    {
      within: /^lines\.(?!each$)/,
      name: "row.crew",
      text: "({row.each}*{row.rate})",
    },
    { within: /./, name: "crew", text: "({each}*{rate})" },
    // Rows are counted in the whole table at the farm, and only some of them go along.
    {
      within: /^pallets$/,
      name: "product_row",
      text: "MATCH({product},Products[Product],0)",
    },
    {
      within: /^materials\.(?!row$|part$)/,
      name: "row.row",
      text: "SUMPRODUCT(MATCH(1,(ProductMaterials[Product]={product})*(ProductMaterials[Part]={row.part}),0))",
    },
  ],
};
