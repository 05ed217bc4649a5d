import { answerOrNone } from "../measures/cannot-answer";
import {
  as,
  type ColdLitres,
  type DaySerial,
  type Kilograms,
  reference,
} from "../measures/quantity";
import type { LotVerdict } from "../trade/contents/lot-verdict";
import { lotVerdict } from "../trade/contents/lot-verdict";
import { netVolume } from "../trade/contents/net-volume";
import { mean, spread } from "../trade/contents/sample";
import type { Book, BookRow } from "./book";
import { isSameName } from "./keys";

export interface WeighedBottleOfRun {
  readonly bottle: number | string;
  readonly empty: Kilograms;
  readonly full: Kilograms;
  /** At 68 °F; undefined where the two weights cannot be right. */
  readonly net: ColdLitres | undefined;
}

/** What was weighed of one run, and how it stands against the label. */
export interface FillOfRun {
  readonly run: string;
  readonly date: DaySerial;
  readonly product: string;
  readonly lotSize: number;
  readonly declared: ColdLitres;
  readonly goal: ColdLitres;
  readonly bottles: readonly WeighedBottleOfRun[];
  readonly mean: ColdLitres;
  /** Undefined for a single bottle. */
  readonly spread: ColdLitres | undefined;
  readonly least: ColdLitres;
  /**
   * Sample size, average and house goal; the US test of single bottles needs the shortfall your handbook allows, which
   * the book does not hold.
   */
  readonly tests: Pick<LotVerdict, "sampleSize" | "average" | "houseGoal">;
}

/** Fill checks of these runs under the US rule, bottles weighed as if at 68 °F. Source: hb133Plan. */
export const fillsOf = (book: Book, runs: Book["runs"]): readonly FillOfRun[] =>
  runs.flatMap((run) => {
    const product = book.products.find((row) =>
      isSameName(row.product, run.product),
    );
    const bottles = book.fillChecks
      .filter((row) => isSameName(row.run, run.run))
      .map((row) => weighed(row, run));
    const volumes = bottles.flatMap(({ net }) =>
      net === undefined ? [] : [net],
    );
    if (!product || volumes.length === 0) return [];
    const { declared, fill } = product;
    const tests = answerOrNone(() =>
      lotVerdict({
        volumes,
        declared,
        lotSize: run.goodBottles,
        allowedShort: as<ColdLitres>(0),
        rule: "US",
        houseGoal: fill,
      }),
    );
    if (!tests) return [];
    return [
      {
        run: run.run,
        date: run.date,
        product: run.product,
        lotSize: run.goodBottles,
        declared,
        goal: fill,
        bottles,
        mean: mean(volumes),
        spread: volumes.length > 1 ? spread(volumes) : undefined,
        least: volumes.reduce((least, one) => (one < least ? one : least)),
        tests,
      },
    ];
  });

const weighed = (
  { bottle, empty, full }: BookRow<"fillChecks">,
  { brix }: BookRow<"runs">,
): WeighedBottleOfRun => ({
  bottle,
  empty,
  full,
  net:
    full > empty
      ? answerOrNone(() =>
          netVolume({ gross: full, tare: empty, brix, temperature: reference }),
        )
      : undefined,
});
