import type { Binder } from "../../book/binder-contents";
import { inPounds } from "../../functions/by-weight";
import { answerOrNone } from "../../measures/cannot-answer";
import type { Brix } from "../../measures/quantity";
import { fromHouse, unitNamed } from "../../measures/units";
import { poundsPerGallon } from "../../trade/syrup/density";
import { day, type PrintedPage, weight } from "./printed-page";

/** Every run of the season. */
export const runsPage = ({ season, runs }: Binder): PrintedPage => ({
  name: "Binder runs",
  title: `Runs of season ${season}`,
  asides: [],
  tables: [
    {
      title: "Runs",
      columns: [
        { label: "Run" },
        { label: "Date", format: day },
        { label: "Product" },
        { label: "What" },
        { label: "Line" },
        { label: "Good bottles", format: weight, summed: true },
        { label: "Broken", format: weight, summed: true },
        { label: "Average fill mL", format: "0.0" },
        { label: "Syrup drawn lb", format: weight, summed: true },
        { label: "Draws in Lot use lb", format: weight, summed: true },
        { label: "Apart lb", format: weight },
        { label: "Brix", format: "0.0" },
        { label: "Fill temperature °F", format: "0.0" },
        { label: "Source lots" },
      ],
      rows: runs.map(({ row, description, drawn }) => [
        row.run,
        row.date,
        row.product,
        description,
        row.line,
        row.goodBottles,
        row.broken,
        shown(fromHouse(row.averageFill, unitNamed("mL"))),
        shown(inPounds(row.drawn)),
        shown(inPounds(drawn)),
        { formula: "=ROUND({8}-{9},6)" },
        row.brix,
        row.fillTemperature === undefined
          ? undefined
          : shown(fromHouse(row.fillTemperature, unitNamed("°F"))),
        row.sourceLots,
      ]),
      none: "The book holds no run of this season.",
    },
  ],
  widths: [10, 12, 12, 30, 12, 10, 9, 9, 11, 11, 8, 7, 12, 42],
  landscape: true,
  foot: `Runs, season ${season}`,
});

/** What a gallon weighs, from the Brix of every lot received, run and tote of the season. */
export const densityPage = ({
  season,
  received,
  runs,
  totes,
}: Binder): PrintedPage => ({
  name: "Binder densities",
  title: `Brix and density, season ${season}`,
  asides: [
    "Pounds a US gallon at 68 °F, weighed in air, worked out from the Brix that was read.",
  ],
  tables: [
    {
      title: "Readings",
      columns: [
        { label: "What" },
        { label: "Which" },
        { label: "Date", format: day },
        { label: "Brix at 68 °F", format: "0.0" },
        { label: "lb per gal", format: "0.000" },
        { label: "Below 66 °Bx" },
      ],
      rows: [
        ...received.map(({ lot, received: on, brix }) =>
          reading("Lot", lot, on, brix),
        ),
        ...runs.map(({ row }) => reading("Run", row.run, row.date, row.brix)),
        ...totes.map(({ ticket, shipped, brix }) =>
          reading("Tote", ticket, shipped, brix),
        ),
      ],
    },
  ],
  widths: [12, 16, 13, 13, 13, 14],
  landscape: false,
  foot: `Densities, season ${season}`,
});

const reading = (what: string, name: string, on: number, brix: Brix) =>
  [
    what,
    name,
    on,
    brix,
    answerOrNone(() => poundsPerGallon(brix)),
    { formula: '=IF({3}<66,"below","")' },
  ] as const;

/** A figure as it was entered, without the last bits of a change of unit. */
export const shown = (value: number): number => Number(value.toPrecision(10));
