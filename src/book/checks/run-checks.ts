import { fromHouse, KG_PER_LB, unitNamed } from "../../measures/units";
import { densityInAir } from "../../trade/syrup/density";
import type { Book, BookRow } from "../book";
import { type Finding, listed } from "../finding";
import { isSameName, sameName } from "../keys";
import { newestDay } from "../newest-day";
import { valuedAt, valuingChannel } from "../overheads-season";
import { drawnFor } from "../stock";
import { figure, gathered, pounds } from "./gathered";
import { LEAST_BRIX } from "./stock-checks";

/** Runs whose syrup, weight or fill is not as it should be. */
export const runChecks = (book: Book): readonly Finding[] => [
  ...organicInOrdinary(book),
  ...gathered(
    book.runs.filter((run) => run.brix < LEAST_BRIX),
    {
      column: "Brix",
      found: (rows) =>
        `bottled light: ${listed(rows.map((run) => `${run.run} ${run.product} (${run.brix} °Bx)`))}`,
      meaning: `syrup lighter than ${LEAST_BRIX} °Bx is below the standard for table syrup`,
      todo: "hold these bottles until the reading has been checked",
      atStake: (rows) => worthOf(book, rows),
    },
  ),
  ...thinFills(book),
  ...gathered(
    book.runs.filter(
      (run) => Math.abs(drawnFor(book, run.run) - run.drawn) > 0.5 * KG_PER_LB,
    ),
    {
      column: "Syrup drawn lb",
      found: (rows) =>
        `not what Lot use says: ${listed(rows.map((run) => `${run.run} (${pounds(run.drawn)} against ${pounds(drawnFor(book, run.run))})`))}`,
      meaning: "some syrup of the run has no lot, or is written down twice",
      todo: "make the draws in Lot use add up to the syrup drawn",
    },
  ),
  ...gathered(
    book.fillChecks.filter((check) => check.full <= check.empty),
    {
      column: "Full g",
      found: (rows) =>
        `full weighs no more than empty: ${listed(rows.map((row) => `${row.run} bottle ${row.bottle}`))}`,
      meaning: "the two weights are probably swapped",
      todo: "swap them, or weigh the bottle again",
    },
  ),
];

/** Organic syrup costs more; once in ordinary goods, or in a tote no contract calls organic, the premium is gone. */
function organicInOrdinary(book: Book): readonly Finding[] {
  const organicLots = new Set(
    book.lots.filter((lot) => lot.organic).map((lot) => sameName(lot.lot)),
  );
  const runs = new Map(book.runs.map((run) => [sameName(run.run), run]));
  const products = new Map(
    book.products.map((row) => [sameName(row.product), row]),
  );
  const ordinary = (use: BookRow<"lotUse">): boolean => {
    if (use.what === "tote sale") return true;
    const run = use.to === undefined ? undefined : runs.get(sameName(use.to));
    const product = run && products.get(sameName(run.product));
    return use.what === "bottled" && product?.organic === false;
  };
  const uses = book.lotUse.filter(
    (use) => organicLots.has(sameName(use.from)) && ordinary(use),
  );
  return gathered(uses, {
    column: "From",
    found: (rows) =>
      `organic syrup in goods not sold as organic: ${listed(byLot(rows))}`,
    meaning: "the organic premium paid for it is not earned back",
    todo: "draw an ordinary lot, or mark the product as organic in Products",
    atStake: (rows) => premiumOf(book, rows),
  });
}

function byLot(uses: readonly BookRow<"lotUse">[]): readonly string[] {
  const sums = new Map<string, number>();
  for (const use of uses)
    sums.set(use.from, (sums.get(use.from) ?? 0) + use.pounds);
  return [...sums].map(([lot, sum]) => `${lot} (${pounds(sum)})`);
}

function thinFills(book: Book): readonly Finding[] {
  const thin = book.runs.flatMap((run) => {
    const product = book.products.find((row) =>
      isSameName(row.product, run.product),
    );
    const weighed = book.fillChecks.filter(
      (check) => isSameName(check.run, run.run) && check.full > check.empty,
    );
    if (product === undefined || weighed.length === 0) return [];
    const mean =
      weighed.reduce((sum, check) => sum + check.full - check.empty, 0) /
      weighed.length /
      densityInAir(run.brix);
    return mean < product.declared
      ? [
          {
            place: weighed[0]?.place ?? run.place,
            run,
            product,
            mean,
            bottles: weighed.length,
          },
        ]
      : [];
  });
  return gathered(thin, {
    column: "Full g",
    found: (rows) =>
      `thin runs: ${listed(rows.map(({ run, product, mean, bottles }) => `${run.run} ${product.product} (${bottles} bottles average ${millilitres(mean)} of ${millilitres(product.declared)} mL)`))}`,
    meaning: "the bottles weighed hold less on average than the label promises",
    todo: "test the run under Fill check before more of it is sold",
    atStake: (rows) =>
      worthOf(
        book,
        rows.map(({ run }) => run),
      ),
  });
}

/** What the bottles of these runs sell for; undefined where one has no price. */
function worthOf(
  book: Book,
  runs: readonly BookRow<"runs">[],
): number | undefined {
  const channel = valuingChannel(book);
  const day = newestDay(book);
  return runs.reduce<number | undefined>((sum, run) => {
    const price = day && valuedAt(book, run.product, channel, day);
    return sum === undefined || price === undefined
      ? undefined
      : sum + run.goodBottles * price;
  }, 0);
}

/** What the pounds drawn cost above ordinary lots of their grade; undefined where there is none to compare with. */
function premiumOf(
  book: Book,
  uses: readonly BookRow<"lotUse">[],
): number | undefined {
  const paid = uses.flatMap((use) => {
    const lot = book.lots.find((row) => isSameName(row.lot, use.from));
    const like = book.lots.filter(
      (row) =>
        lot !== undefined &&
        row.organic !== true &&
        isSameName(row.grade, lot.grade) &&
        row.cropYear === lot.cropYear,
    );
    if (!lot || like.length === 0) return [];
    const ordinary =
      like.reduce((sum, row) => sum + row.pricePerPound, 0) / like.length;
    return [
      (use.pounds / KG_PER_LB) * Math.max(0, lot.pricePerPound - ordinary),
    ];
  });
  return paid.length === 0
    ? undefined
    : paid.reduce((sum, one) => sum + one, 0);
}

const millilitres = (litres: number): string =>
  figure(fromHouse(litres, unitNamed("mL")), 1);
