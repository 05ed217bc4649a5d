import fc from "fast-check";
import type { Args } from "../../src/functions/define";
import type { CellTerm, OptionalCell, Term } from "../../src/terms/term";

/**
 * Any raw arguments that the terms allow, as a worksheet would hold them: blank where one may be left out, and columns of
 * one call equally long.
 */
export const anyArguments = (args: Args): fc.Arbitrary<readonly unknown[]> =>
  fc
    .integer({ min: 2, max: 6 })
    .chain((rows) =>
      fc.tuple(...Object.values(args).map((term) => anyArgument(term, rows))),
    );

function anyArgument(term: Args[string], rows: number): fc.Arbitrary<unknown> {
  const given = anyGiven(term, rows);
  return "otherwise" in term
    ? fc.oneof(fc.constant(null), { arbitrary: given, weight: 3 })
    : given;
}

function anyGiven(term: Term, rows: number): fc.Arbitrary<unknown> {
  const length = { minLength: rows, maxLength: rows };
  if (term.kind === "list") return fc.array(fc.tuple(anyCell(term.of)), length);
  if (term.kind === "rows") {
    const columns = Object.values(term.columns).map(anyColumnCell);
    return fc.array(fc.tuple(...columns), length);
  }
  return anyCell(term);
}

const anyColumnCell = (term: CellTerm | OptionalCell): fc.Arbitrary<unknown> =>
  "mayBeBlank" in term
    ? fc.oneof(fc.constant(null), { arbitrary: anyCell(term), weight: 3 })
    : anyCell(term);

function anyCell(term: CellTerm): fc.Arbitrary<unknown> {
  switch (term.kind) {
    case "choice":
      return fc.constantFrom(...term.choices);
    case "text":
      return fc.constant(term.example);
    case "yes or no":
      return fc.boolean();
    case "date":
      return fc.integer({ min: 45_000, max: 47_000 });
    case "number":
      return term.whole
        ? fc.integer({
            min: Math.ceil(least(term)),
            max: Math.floor(most(term, 500)),
          })
        : figureBetween(least(term), most(term, 500));
    default:
      return figureBetween(least(term), most(term, 500));
  }
}

interface Limits {
  readonly min?: number;
  readonly max?: number;
  readonly above?: number;
  readonly below?: number;
}

/** A thousandth inside an exclusive limit. */
const least = (t: Limits): number => t.min ?? (t.above ?? 0) + 0.001;
const most = (t: Limits, unlimited: number): number =>
  t.max ?? (t.below === undefined ? least(t) + unlimited : t.below - 0.001);

/** Figures a person might type: no denormals, at most eight digits. */
const figureBetween = (low: number, high: number): fc.Arbitrary<number> =>
  fc
    .integer({ min: 0, max: 1_000_000 })
    .map((n) => Number((low + ((high - low) * n) / 1_000_000).toPrecision(8)));
