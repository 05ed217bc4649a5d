import { bookTables } from "../../book/book";
import { type Contents, contentsOf } from "../../book/contents";
import type { Column, Line } from "../model";

/** A book made by a season's roll: bills are shared over the closed season's totals until this one has done as much. */
export const isRolled = (contents: readonly Contents[]): boolean =>
  contentsOf(contents, bookTables.seasonTotals) !== undefined;

const OWN = "COUNTIFS(SeasonTotals[Season],{season})";
const BEFORE = "COUNTIFS(SeasonTotals[Season],{season}-1)";

const total = (what: string): string =>
  `SUMIFS(SeasonTotals[Amount],SeasonTotals[Season],{season_before},SeasonTotals[What],"${what}")`;

const line = (
  name: string,
  label: string,
  formula: string,
  format: string,
): Line => ({
  name,
  label,
  role: "calculated",
  format,
  content: { formula: `=${formula}` },
});

/** The closed season that stands in: its own where the book was rolled at its end, else the one before, until the season's last day. */
export const seasonBeforeLines: readonly Line[] = [
  {
    ...line(
      "season_before",
      "Season that stands in",
      `IF(${OWN}>0,{season},IF(AND(${BEFORE}>0,{as_of}<DATE({season},12,31)),{season}-1,0))`,
      '0;-0;"none"',
    ),
    hint: "a bill is shared over what it did, until this season has done more of the same",
  },
  line("before_runs", "Its runs", total("runs"), "#,##0"),
  line("before_lots", "Its lots bought", total("lots bought"), "#,##0"),
  {
    ...line("before_gallons", "It packed", total("gallons packed"), "#,##0.0"),
    unit: "gal",
  },
];

/** Hours of the lines whose name starts with a word, in the season that stands in. */
export const hoursBefore = (word: string): string =>
  `SUMPRODUCT((LEFT(SeasonTotals[Of],LEN(${word}))=${word})*(SeasonTotals[Season]={season_before})*(SeasonTotals[What]="hours of a line")*SeasonTotals[Amount])`;

/** What the closed season says of a product's newest run; an error where it says nothing. */
export const carriedOfRun = (what: string, product: string): string =>
  `AVERAGEIFS(SeasonTotals[Amount],SeasonTotals[What],"${what}",SeasonTotals[Of],${product})`;

/** How much each driver comes to: this season so far, the one that stands in, and what the bill is shared over. */
export const beforeColumns = (
  soFar: string,
  before: string,
  forItem: (text: string) => string,
): readonly Column[] => {
  const column = (name: string, label: string, text: string): Column => ({
    name,
    label,
    format: "#,##0.0",
    content: { formula: `=${forItem(text)}` },
  });
  return [
    column("so_far", "Season so far", soFar),
    column("before", "Season before", before),
    column("whole", "Shared over", "MAX({row.so_far},{row.before})"),
    {
      ...column(
        "estimated",
        "Estimated",
        "IF(N({row.before})>N({row.so_far}),1,0)",
      ),
      format: "0",
    },
  ];
};

/** "estimate from season 2026", or that the season's own figures are all there is; `estimated` is the column of a sheet's bills. */
export const basisFormula = (
  estimated = "{overheads.estimated}",
  season = "{season_before}",
): string =>
  `IF(SUM(${estimated})>0,"estimate from season "&${season},"the season's own")`;

/** The same as a check: "ok" once nothing is estimated. */
export const ownOverheads = (estimated?: string, season?: string): Line =>
  ownOverheadsAs(basisFormula(estimated, season));

/** The check where another cell says it already. */
export const ownOverheadsAs = (basis: string): Line => ({
  name: "own_overheads",
  label: "Overheads are this season's own",
  role: "check",
  content: {
    formula: `=SUBSTITUTE(${basis},"the season's own","ok")`,
  },
});
