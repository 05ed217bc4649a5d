import { type Book, type BookRow, bookTables } from "../book";
import { type CellContent, type Contents, placeOf } from "../contents";
import { sameName } from "../keys";
import { isAgedKind } from "../aged-syrup";
import { lastDayOf, seasonDone } from "../season-totals";
import { newestRun } from "../usual-run";
import type { SeasonDone } from "../../trade/costing/overhead-share";
import type { Column } from "../table";
import { ownPlace, rowOf } from "./carried-rows";

const { columns, name, sheet } = bookTables.seasonTotals;

type Row = BookRow<"seasonTotals">;
type Total = Pick<Row, "what" | "of" | "amount">;

/**
 * The table of season totals for the next season's book: the closed season's, by its own runs and lots. Where it was closed
 * before, its totals stand, with runs entered since. A season that ran nothing leaves none, as nothing could follow from it.
 */
export function totalsCarried(
  given: Contents | undefined,
  book: Book,
  closed: number,
): readonly Contents[] {
  const contents: Contents = given ?? {
    name,
    sheet,
    row: 0,
    column: 0,
    headings: Object.values(columns).map(({ heading }) => heading),
    rows: [],
  };
  // Those of products are handed on from season to season until the product is run again.
  const earlier = book.seasonTotals.filter(
    ({ season, what }) =>
      season === closed || (season < closed && isOfProduct(what)),
  );
  const read = new Set(book.seasonTotals.map(({ place }) => place));
  const later = new Set(
    book.seasonTotals
      .filter(({ season }) => season > closed)
      .map(({ place }) => place),
  );
  const own = totalled(book, closed, earlier).map((total) =>
    rowOf(contents, cellsOf(closed, total), likeRow(contents, earlier, total)),
  );
  // A row nobody could read is left as it stands, not lost.
  const others = contents.rows.filter((_, i) => {
    const place = placeOf(contents, i);
    return later.has(place) || !read.has(place);
  });
  return given === undefined && own.length === 0
    ? []
    : [{ ...ownPlace(contents), rows: [...own, ...others] }];
}

function totalled(
  book: Book,
  closed: number,
  earlier: readonly Row[],
): readonly Total[] {
  const done = seasonDone(book, closed);
  const farm = earlier.filter(({ what }) => !isOfProduct(what));
  return [
    ...(done.runs === 0 ? farm : seasonTotalled(done, farm)),
    ...productsTotalled(book, closed, earlier),
  ];
}

/** What the whole season did, on top of what it had done when it was closed before. */
function seasonTotalled(
  done: SeasonDone,
  earlier: readonly Row[],
): readonly Total[] {
  const was = (what: Row["what"], of?: string): number =>
    earlier
      .filter((row) => row.what === what && same(row.of, of))
      .reduce((sum, row) => sum + row.amount, 0);
  const lines = new Map<string, string>();
  for (const line of [
    ...earlier.flatMap((row) => row.of ?? []),
    ...done.hours.map(({ line }) => line),
  ])
    if (!lines.has(sameName(line))) lines.set(sameName(line), line);
  return [
    total("runs", was("runs") + done.runs),
    // Lots of a closed season are carried with the book and would count twice.
    total("lots bought", Math.max(was("lots bought"), done.lots)),
    total("gallons packed", was("gallons packed") + done.gallons),
    ...[...lines.values()].map((line) =>
      total(
        "hours of a line",
        was("hours of a line", line) +
          done.hours
            .filter((spent) => same(spent.line, line))
            .reduce((sum, { hours }) => sum + hours, 0),
        line,
      ),
    ),
  ].filter(({ amount }) => amount > 0);
}

const total = (what: Row["what"], amount: number, of?: string): Total => ({
  what,
  of,
  amount,
});

const RUN = "bottles of the newest run";
const BRIX = "Brix of the newest run";
const isOfProduct = (what: Row["what"]): boolean =>
  what === RUN || what === BRIX;

/** The size of each product's newest run, and the Brix where only a run has measured it. */
const productsTotalled = (
  book: Book,
  closed: number,
  earlier: readonly Row[],
): readonly Total[] =>
  book.products.flatMap(({ product, syrupKind }) => {
    const run = newestRun(book, product, lastDayOf(closed));
    const was = (what: Row["what"]): number | undefined =>
      earlier.find((row) => row.what === what && same(row.of, product))?.amount;
    const bottles = run?.goodBottles ?? was(RUN);
    const brix = isAgedKind(syrupKind) ? (run?.brix ?? was(BRIX)) : undefined;
    return [
      ...(bottles === undefined ? [] : [total(RUN, bottles, product)]),
      ...(brix === undefined ? [] : [total(BRIX, brix, product)]),
    ];
  });

const cellsOf = (
  closed: number,
  { what, of, amount }: Total,
): readonly (readonly [Column, CellContent])[] => [
  [columns.season, closed],
  [columns.what, what],
  [columns.of, of ?? null],
  [columns.amount, amount],
];

/** The row that held the same total before, with the note and whatever else stands in it. */
function likeRow(
  contents: Contents,
  earlier: readonly Row[],
  { what, of }: Total,
): readonly CellContent[] | undefined {
  const place = earlier.find(
    (row) => row.what === what && same(row.of, of),
  )?.place;
  return contents.rows.find((_, i) => placeOf(contents, i) === place);
}

const same = (a: string | undefined, b: string | undefined): boolean =>
  sameName(a ?? "") === sameName(b ?? "");
