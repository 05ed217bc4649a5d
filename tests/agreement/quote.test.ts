import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gridFunctions } from "../../src/apps/grid-functions";
import { bulkOrBottleOf } from "../../src/book/bulk-or-bottle";
import { type QuoteQuestion } from "../../src/book/quote";
import { readBook } from "../../src/book/read";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../src/hosts/file/write-xlsx";
import { calculate } from "../../src/hosts/grid/calculate";
import { as, type Hours } from "../../src/measures/quantity";
import { KG_PER_LB } from "../../src/measures/units";
import { bulkOrBottleSheet } from "../../src/sheets/bulk-or-bottle/bulk-or-bottle-sheet";
import { bulkOrBottleNames } from "../../src/sheets/bulk-or-bottle/names";
import { portable } from "../../src/sheets/portable";
import { quoteNames } from "../../src/sheets/quote/names";
import type { Workbook } from "../../src/sheets/workbook";
import { demoTables } from "../book/csv-folder";
import { agree, differences } from "../support/agreement";
import { convertWithLibreOffice } from "../support/libre-office";
import {
  demoQuote,
  demoQuoteBook,
  figureOf,
  loftQuestion,
  valueIn,
} from "../support/quote-workbook";

const plainQuestion = {
  quantities: [480, 2500],
  leftovers: "kept",
  goalOn: "direct",
} as const;
/** Leftovers charged and kept, full and direct cost, syrup from lots and from barrels, a channel with fees. */
const questions: readonly QuoteQuestion[] = [
  loftQuestion,
  { ...plainQuestion, product: "B250-OAK" },
  { ...plainQuestion, product: "G250-DK", channel: "Own web shop" },
];
const bottling = [
  { product: "G250-DK", bottles: 2000, pounds: 5000, labour: 60 },
  { product: "J32-DK", bottles: 900, pounds: 5000, labour: undefined },
] as const;
const { book } = readBook(demoTables());

function everySheet(plain: boolean): Workbook {
  const [first, ...more] = questions.map((q) => demoQuoteBook(q, plain));
  if (!first) throw new Error("no quote");
  const bulk = bottling.map((one) => {
    const { contract } = bulkOrBottleOf(book, {
      ...one,
      syrup: as(one.pounds * KG_PER_LB),
      labour: one.labour === undefined ? undefined : as<Hours>(one.labour),
    });
    if (!contract) throw new Error(`no contract for ${one.product}`);
    return bulkOrBottleSheet({
      ...one,
      contents: demoTables(),
      tote: { perPound: contract.perPound, says: contract.contract },
      existingSheets: [],
      portable: plain,
    });
  });
  return {
    ...first,
    sheets: [
      ...first.sheets,
      ...more.flatMap(({ sheets }) =>
        sheets.filter(({ name }) => name.startsWith("Quote")),
      ),
      ...bulk.map(({ sheet }) => sheet),
    ],
    names: [
      ...first.names,
      ...more.flatMap(({ names }) => names),
      ...bulk.flatMap(({ names }) => names),
    ],
  };
}

let live: Workbook;
let readBack: Workbook;
let recalculated: Workbook;

beforeAll(async () => {
  live = (await calculate(everySheet(false), gridFunctions)).workbook;
  readBack = (await readXlsx(await writeXlsx(live), "quotes.xlsx")).workbook;
  const file = join(
    mkdtempSync(join(tmpdir(), "tare-and-tally-quotes-")),
    "plain.xlsx",
  );
  writeFileSync(file, await writeXlsx(portable(everySheet(true))));
  const [converted] = convertWithLibreOffice([file], {
    to: "xlsx",
    recalculate: true,
  });
  recalculated = (await readXlsx(readFileSync(converted ?? ""), "plain.xlsx"))
    .workbook;
}, 240_000);

const ofQuote = (name: string): boolean => /^(Quote|Bulk or)/.test(name);

test("LibreOffice, made to recalculate the portable twin, gives every figure of the grid", () => {
  expect(differences(live, recalculated, ofQuote)).toEqual([]);
});

test("the file read back holds every figure of the grid", () => {
  expect(differences(live, readBack, ofQuote)).toEqual([]);
});

test("no cell of a quote for goods in stock is in error", () => {
  const errors = live.sheets
    .filter(({ name }) => /^(Quote|Bulk or bottle) .*[PG]250/.test(name))
    .flatMap(({ cells }) => cells)
    .filter(({ value }) => typeof value === "object" && value !== null);
  expect(errors).toEqual([]);
});

test.each(questions)(
  "the trade gives the sheets of $product their figures",
  (question) => {
    const { tiers, validUntil, channel } = demoQuote(question);
    const places = quoteNames(live.names, question.product);
    expect(valueIn(live, places.valid_until)).toBe(validUntil);
    expect(valueIn(live, places.channel)).toBe(channel.name);
    tiers.forEach((tier, i) => {
      const ours = (label: string) =>
        figureOf(live, places.tiers, label, i + 1);
      const pairs: readonly (readonly [string, number | string | undefined])[] =
        [
          ["Bottles", tier.bottles],
          ["Price to quote, a bottle", tier.price],
          ["For the goal on full cost", tier.priceOn.full],
          ["For the goal on direct cost", tier.priceOn.direct],
          ["Full cost of a bottle", tier.full],
          ["Direct cost of a bottle", tier.direct],
          ["Line", tier.cost.choice.chosen?.line.name],
          ["Earned over direct cost, a bottle", tier.contribution],
          [
            "Left over, worth",
            tier.leftovers.reduce((sum, { value }) => sum + value, 0),
          ],
          ["Our one-time money back at, bottles", tier.breakEven?.units ?? ""],
          ["in months at what is expected", tier.breakEven?.months ?? ""],
        ];
      for (const [label, wanted] of pairs)
        expect([label, ours(label), agree(ours(label), wanted)]).toEqual([
          label,
          ours(label),
          true,
        ]);
      expect(figureOf(live, places.offer, "Price a bottle", i + 1)).toBe(
        tier.price,
      );
      const below = String(ours("Below a least order"));
      expect(below.split("; ").filter(Boolean).length).toBe(
        tier.belowMinimum.length,
      );
    });
  },
);

test.each(bottling)(
  "the trade gives bulk or bottle of $product its figures",
  (one) => {
    const answer = bulkOrBottleOf(book, {
      ...one,
      syrup: as(one.pounds * KG_PER_LB),
      labour: one.labour === undefined ? undefined : as<Hours>(one.labour),
    });
    const places = bulkOrBottleNames(live.names, one.product);
    expect(answer.splits.length).toBeGreaterThan(2);
    expect(
      agree(
        valueIn(live, places.bulk_per_lb),
        (answer.bulkPerKg ?? 0) * KG_PER_LB,
      ),
    ).toBe(true);
    expect(String(valueIn(live, places.best))).toContain(answer.best?.name);
    for (const split of answer.splits) {
      const row = (column: number) =>
        figureOf(live, places.ways, split.name, column);
      const wanted = [
        split.contributionPerKg * KG_PER_LB,
        split.bottles,
        split.bottled / KG_PER_LB,
        split.inBulk / KG_PER_LB,
        split.labour,
        split.earns,
        split.more,
        split.limitedBy,
      ];
      wanted.forEach((value, i) =>
        expect([split.name, i, row(i + 1), agree(row(i + 1), value)]).toEqual([
          split.name,
          i,
          row(i + 1),
          true,
        ]),
      );
    }
  },
);
