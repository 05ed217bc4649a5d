import type { Binder } from "../../book/binder-contents";
import type { FillOfRun } from "../../book/binder-fill";
import { fromHouse, unitNamed } from "../../measures/units";
import { day, type PrintedPage } from "./printed-page";
import { shown } from "./runs-page";

const millilitres = (litres: number): number => shown(litres * 1000);
const grams = (kilograms: number): number =>
  shown(fromHouse(kilograms, unitNamed("g")));

/** The tests of every run that was weighed, and each bottle. */
export const fillPage = ({ season, fills, runs }: Binder): PrintedPage => ({
  name: "Binder fill checks",
  title: `Fill checks of season ${season}`,
  asides: [
    `${fills.length} of ${runs.length} runs were weighed. Arithmetic on the bottles entered, under the US sampling plan (Handbook 133, category A, from memory: check it with your inspector).`,
    "Type the shortfall your handbook's edition allows for the size, and the bottles short by more are counted.",
  ],
  tables: [
    {
      title: "Runs weighed",
      columns: [
        { label: "Run" },
        { label: "Date", format: day },
        { label: "Product" },
        { label: "Declared mL", format: "0.0" },
        { label: "Bottles in the run", format: "#,##0" },
        { label: "Weighed", format: "0" },
        { label: "Plan asks for", format: "0" },
        { label: "Mean mL", format: "0.00" },
        { label: "Spread mL", format: "0.00" },
        { label: "Least mL", format: "0.00" },
        { label: "Average must reach mL", format: "0.00" },
        { label: "Average test" },
        { label: "Own goal mL", format: "0.0" },
        { label: "Own goal" },
        { label: "Shortfall allowed mL", format: "0.0", role: "input" },
        { label: "Short by more" },
      ],
      rows: fills.map((fill, i) => summary(fill, rangeOfNet(fills, i))),
      none: "No bottle of this season was weighed.",
    },
    {
      title: "Bottles",
      columns: [
        { label: "Run" },
        { label: "" },
        { label: "Bottle" },
        { label: "Empty g", format: "0.0" },
        { label: "Full g", format: "0.0" },
        { label: "Syrup g", format: "0.0" },
        { label: "At 68 °F mL", format: "0.00" },
      ],
      rows: fills.flatMap(({ run, bottles }) =>
        bottles.map(({ bottle, empty, full, net }) => [
          run,
          "",
          bottle,
          grams(empty),
          grams(full),
          { formula: "=ROUND({4}-{3},6)" },
          net === undefined ? "weights cannot be right" : millilitres(net),
        ]),
      ),
    },
  ],
  widths: [10, 12, 13, 11, 12, 11, 11, 11, 11, 11, 13, 11, 10, 10, 12, 11],
  landscape: true,
  foot: `Fill checks, season ${season}`,
});

const summary = (fill: FillOfRun, net: string) =>
  [
    fill.run,
    fill.date,
    fill.product,
    millilitres(fill.declared),
    fill.lotSize,
    fill.tests.sampleSize.found,
    fill.tests.sampleSize.limit,
    millilitres(fill.mean),
    fill.spread === undefined ? undefined : millilitres(fill.spread),
    millilitres(fill.least),
    fill.tests.average.limit === undefined
      ? undefined
      : millilitres(fill.tests.average.limit),
    fill.tests.average.verdict,
    millilitres(fill.goal),
    fill.tests.houseGoal.verdict,
    undefined,
    // A last binary digit must not decide, as in the library's own test.
    {
      formula: `=IF(ISNUMBER({14}),COUNTIF(${net},"<"&ROUND({3}-{14}-0.000000001,9)),"")`,
    },
  ] as const;

/** The cells of a run's bottles: two asides, a gap, two heading rows, the runs, a gap and two heading rows stand above. */
function rangeOfNet(fills: readonly FillOfRun[], at: number): string {
  const before = fills
    .slice(0, at)
    .reduce((sum, { bottles }) => sum + bottles.length, 0);
  const first = FIRST_RUN + fills.length + 3 + before;
  return `$G$${first}:$G$${first + (fills[at]?.bottles.length ?? 1) - 1}`;
}

/** Title, two asides and a blank row, then the table's two heading rows. */
const FIRST_RUN = 7;
