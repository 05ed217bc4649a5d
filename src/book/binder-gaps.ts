import type { Kilograms } from "../measures/quantity";
import { KG_PER_LB } from "../measures/units";
import type { Binder, BinderRun } from "./binder-contents";
import { type Book, bookTables } from "./book";
import { gathered, pounds } from "./checks/gathered";
import { type Finding, listed } from "./finding";
import { isSameName } from "./keys";

/** Tables an auditor reads; what is odd in them belongs in the binder. */
const audited = [
  bookTables.lots,
  bookTables.lotUse,
  bookTables.runs,
  bookTables.fillChecks,
  bookTables.oakBarrels,
  bookTables.toteShipments,
  bookTables.stockCount,
];

/** Scales show whole pounds. */
const NO_DIFFERENCE = 0.5 * KG_PER_LB;

/** What a season's records lack or cannot explain. */
export const binderGaps = (
  book: Book,
  binder: Omit<Binder, "gaps">,
  findings: readonly Finding[],
): readonly Finding[] => [
  ...runGaps(book, binder),
  ...fillGaps(binder),
  ...lotGaps(binder),
  ...toteGaps(binder),
  ...traceGaps(binder),
  ...findings.filter(({ where }) =>
    audited.some(
      ({ sheet, csv }) =>
        where.startsWith(`${sheet} row`) || where.startsWith(csv),
    ),
  ),
];

interface RunRule {
  readonly column: string;
  /** What is missing, as the run's own lack and before the names of several. */
  readonly lack: string;
  readonly found: string;
  readonly isMissing: (run: BinderRun, binder: Omit<Binder, "gaps">) => boolean;
  readonly meaning: string;
  readonly todo: string;
}

const runRules: readonly RunRule[] = [
  {
    column: "Run",
    lack: "no fill check",
    found: "no fill check",
    isMissing: ({ row }, { fills }) =>
      !fills.some(({ run }) => isSameName(run, row.run)),
    meaning: "nothing shows what these bottles hold",
    todo: "enter the weights in Fill checks if they were taken; weigh bottles that were kept",
  },
  {
    column: "Fill temperature °F",
    lack: "no filling temperature",
    found: "not entered",
    isMissing: ({ row }) => row.fillTemperature === undefined,
    meaning: "nothing shows that these bottles were filled hot enough",
    todo: "enter it from the kettle log",
  },
  {
    column: "Source lots",
    lack: "no lot",
    found: "no lot",
    isMissing: ({ row, drawn }) => drawn === 0 && row.sourceLots === undefined,
    meaning: "these bottles cannot be traced back to a grower",
    todo: "enter the draws in Lot use",
  },
];

/** The season's runs that lack something, each with what it lacks and what its fill check shows. */
export const gapsByRun = (
  binder: Omit<Binder, "gaps">,
): readonly { readonly run: string; readonly gaps: readonly string[] }[] =>
  binder.runs
    .map((run) => ({
      run: run.row.run,
      gaps: [
        ...runRules
          .filter(({ isMissing }) => isMissing(run, binder))
          .map(({ lack }) => lack),
        ...binder.fills
          .filter((fill) => isSameName(fill.run, run.row.run))
          .flatMap((fill) => fillGaps({ fills: [fill] }))
          .map(({ found }) => found),
      ],
    }))
    .filter(({ gaps }) => gaps.length > 0);

function runGaps(book: Book, binder: Omit<Binder, "gaps">): readonly Finding[] {
  const { runs } = binder;
  return [
    ...runRules.flatMap(({ column, found, isMissing, meaning, todo }) =>
      gathered(
        runs.filter((run) => isMissing(run, binder)).map(({ row }) => row),
        {
          column,
          found: (own) => `${found}: ${listed(own.map(({ run }) => run))}`,
          meaning,
          todo,
        },
      ),
    ),
    ...(book.fillChecks.length > 0 && runs.length === 0
      ? [
          {
            where: "Fill checks",
            found: "fill checks, but no run of this season",
            meaning: "they belong to another season or their runs are missing",
            todo: "check the runs' dates",
          },
        ]
      : []),
  ];
}

const fillGaps = ({ fills }: Pick<Binder, "fills">): readonly Finding[] =>
  fills.flatMap(({ run, tests, bottles }): readonly Finding[] => [
    ...(tests.sampleSize.verdict === "fails"
      ? [
          {
            where: `Fill checks, ${run}`,
            found: `${tests.sampleSize.found} bottles weighed, the plan asks for ${tests.sampleSize.limit ?? 0}`,
            meaning: "the sample is smaller than an inspector would take",
            todo: `weigh ${tests.sampleSize.weighMore} more`,
          },
        ]
      : []),
    ...(tests.average.verdict === "fails"
      ? [
          {
            where: `Fill checks, ${run}`,
            found: "the average test fails",
            meaning: "the bottles weighed hold too little on average",
            todo: "say in writing what became of this run",
          },
        ]
      : []),
    ...(bottles.some(({ net }) => net === undefined)
      ? [
          {
            where: `Fill checks, ${run}`,
            found: `weights that cannot be right: bottle ${listed(bottles.filter(({ net }) => net === undefined).map(({ bottle }) => String(bottle)))}`,
            meaning: "they are left out of the tests",
            todo: "correct the two weights",
          },
        ]
      : []),
  ]);

function lotGaps({ received, lots }: Omit<Binder, "gaps">): readonly Finding[] {
  const names = (own: Book["lots"]): string =>
    listed(own.map(({ lot }) => lot));
  const lacks = (
    column: string,
    isMissing: (lot: Book["lots"][number]) => boolean,
    meaning: string,
  ): readonly Finding[] =>
    gathered(received.filter(isMissing), {
      column,
      found: (own) => `not entered: ${names(own)}`,
      meaning,
      todo: "enter it from the receiving ticket",
    });
  return [
    ...lacks(
      "Grower",
      ({ grower }) => grower === undefined,
      "these lots cannot be traced back to whom they came from",
    ),
    ...lacks(
      "Gross lb",
      ({ gross, tareEach, drums }) =>
        gross === undefined || tareEach === undefined || drums === undefined,
      "the net weight cannot be proved from gross and tare",
    ),
    ...lacks(
      "Light transmission %",
      ({ transmission }) => transmission === undefined,
      "nothing shows the colour class of these lots",
    ),
    ...lots.flatMap(({ name, left, counted }): readonly Finding[] =>
      counted === undefined || off(counted, left) === undefined
        ? []
        : [
            {
              where: `Stock count, ${name}`,
              found: `counted ${pounds(counted)}, the book says ${pounds(left)}`,
              meaning: `nothing in the book explains ${pounds(Math.abs(counted - left))}`,
              todo: "find the draw, or write the difference off with a reason",
            },
          ],
    ),
  ];
}

const off = (counted: Kilograms, left: Kilograms): number | undefined =>
  Math.abs(counted - left) > NO_DIFFERENCE ? counted - left : undefined;

const toteGaps = ({ totes }: Omit<Binder, "gaps">): readonly Finding[] => [
  ...gathered(
    totes.filter(({ sourceLots }) => sourceLots === undefined),
    {
      column: "Source lots",
      found: (rows) => `no lot: ${listed(rows.map(({ ticket }) => ticket))}`,
      meaning: "these totes cannot be traced back from their tickets",
      todo: "enter the lots and pounds of each",
    },
  ),
  ...gathered(
    totes.filter(({ billOfLading }) => billOfLading === undefined),
    {
      column: "Bill of lading",
      found: (rows) => `none: ${listed(rows.map(({ ticket }) => ticket))}`,
      meaning: "nothing shows how these totes left",
      todo: "enter the number of the bill of lading",
    },
  ),
];

const traceGaps = ({ traces }: Omit<Binder, "gaps">): readonly Finding[] =>
  traces.flatMap(({ name, unexplained }): readonly Finding[] =>
    Math.abs(unexplained) <= NO_DIFFERENCE
      ? []
      : [
          {
            where: `Trace test, ${name}`,
            found: `${pounds(unexplained)} not accounted for`,
            meaning: "syrup came or went that no row tells of",
            todo: "complete Lot use for it",
          },
        ],
  );
