import { as, type DaySerial, type Kilograms } from "../../measures/quantity";
import type { Book, BookRow } from "../book";
import { sameName } from "../keys";
import { lotsNamed } from "../source-lots";
import { balancePounds, lotBalances } from "../totes-lots";
import type { TotesKept } from "./totes-kept";

/** All that was drawn before the season from a lot or barrel that is carried, in one draw. */
export interface CarriedDraw {
  readonly from: string;
  readonly pounds: number;
}

/** Rows of the syrup tables that go into the next season's book. */
export interface SyrupKept {
  readonly lots: Book["lots"];
  readonly barrels: Book["oakBarrels"];
  readonly runs: Book["runs"];
  readonly fillChecks: Book["fillChecks"];
  /** Draws that keep their own row. */
  readonly draws: Book["lotUse"];
  readonly carried: readonly CarriedDraw[];
}

/**
 * A lot or barrel is carried while something is left of it, or while something carried was made of it. Draws into totes,
 * barrels and runs that are carried keep their rows, so that these can still be traced; the others become one draw.
 */
export function syrupKept(
  book: Book,
  closing: DaySerial,
  totes: TotesKept,
): SyrupKept {
  const runs = book.runs.filter(({ date }) => date > closing);
  const made = new Set([
    ...totes.shipments.map(({ ticket }) => sameName(ticket)),
    ...runs.map(({ run }) => sameName(run)),
  ]);
  const named = new Set(
    [...totes.shipments, ...runs].flatMap(({ sourceLots }) =>
      lotsNamed(sourceLots).map(sameName),
    ),
  );
  const left = new Set(
    lotBalances(book, closing)
      .filter((balance) => balancePounds(balance.left) !== 0)
      .map(({ name }) => sameName(name)),
  );
  const keeps = (draw: BookRow<"lotUse">): boolean =>
    draw.date > closing ||
    (draw.to !== undefined && made.has(sameName(draw.to)));
  const drawnStill = (name: string): boolean =>
    book.lotUse.some((draw) => sameName(draw.from) === name && keeps(draw));
  const isKept = (name: string): boolean =>
    left.has(name) || named.has(name) || drawnStill(name);
  const barrels = barrelsKept(book, closing, made, isKept);
  const lots = book.lots.filter(
    ({ lot, received }) => received > closing || isKept(sameName(lot)),
  );
  const known = new Set(
    [
      ...book.lots.map(({ lot }) => lot),
      ...book.oakBarrels.map(({ barrel }) => barrel),
    ].map(sameName),
  );
  return {
    lots,
    barrels,
    runs,
    fillChecks: book.fillChecks.filter(({ run }) => made.has(sameName(run))),
    draws: book.lotUse.filter(
      (draw) => keeps(draw) || !known.has(sameName(draw.from)),
    ),
    carried: [
      ...lots.map(({ lot }) => lot),
      ...barrels.map(({ barrel }) => barrel),
    ].flatMap((from) => {
      const pounds = balancePounds(
        sum(
          book.lotUse.filter(
            (draw) => sameName(draw.from) === sameName(from) && !keeps(draw),
          ),
        ),
      );
      return pounds > 0 ? [{ from, pounds }] : [];
    }),
  };
}

/** Barrels join what is made of syrup: what went into one that is carried keeps its row, and may hold another barrel. */
function barrelsKept(
  book: Book,
  closing: DaySerial,
  made: Set<string>,
  isKept: (name: string) => boolean,
): Book["oakBarrels"] {
  const kept = new Set<BookRow<"oakBarrels">>();
  for (;;) {
    const before = kept.size;
    for (const row of book.oakBarrels) {
      const isAging = row.emptiedOn === undefined || row.emptiedOn > closing;
      if (kept.has(row) || (!isAging && !isKept(sameName(row.barrel))))
        continue;
      kept.add(row);
      made.add(sameName(row.barrel));
    }
    if (kept.size === before)
      return book.oakBarrels.filter((row) => kept.has(row));
  }
}

const sum = (draws: Book["lotUse"]): Kilograms =>
  as<Kilograms>(draws.reduce((total, { pounds }) => total + pounds, 0));
