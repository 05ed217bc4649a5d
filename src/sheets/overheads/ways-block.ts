import type { Block, Line } from "../model";
import { ways } from "./run-rows";

/** What is looked at: the day, a run, the bills compared and the channel bottles are valued in. */
export const askedBlock = (asked: {
  readonly day: string | number;
  readonly run: string | undefined;
  readonly bills: string;
  readonly channel: string;
  /** Where the channels stand, to choose from. */
  readonly channels: string;
}): Block => ({
  kind: "lines",
  title: "What is looked at",
  lines: [
    {
      name: "as_of",
      label: "Day",
      role: "input",
      format: "yyyy-mm-dd",
      content:
        typeof asked.day === "number"
          ? asked.day
          : { formula: `=${asked.day}` },
      hint: "its season is looked at",
    },
    {
      name: "run",
      label: "Run",
      role: "input",
      content: asked.run ?? { formula: "=INDEX({runs.run},{season_runs})" },
      hint: "the newest, or type another of the season",
    },
    {
      name: "asked",
      label: "Bills compared",
      role: "input",
      content: asked.bills,
      hint: "one bill by its name, or all that are shared so",
    },
    {
      name: "channel",
      label: "Bottles are valued in",
      role: "input",
      content: asked.channel,
      rule: { kind: "list from", source: asked.channels },
      ruleSays: "A channel of the table Channels.",
      hint: "for sharing by revenue; a product not sold there at its other prices",
    },
    amount(
      "compared",
      "They come to",
      "SUMPRODUCT(--((({bills.item}={asked})+({bills.driver}={asked}))>0),{bills.net})",
    ),
    {
      name: "run_no",
      label: "The run's row",
      role: "calculated",
      format: "0",
      content: { formula: "=IFERROR(MATCH({run},{runs.run},0),NA())" },
    },
    {
      name: "run_bottles",
      label: "Its bottles",
      role: "calculated",
      format: "#,##0",
      content: { formula: "=INDEX({runs.bottles},{run_no})" },
    },
  ],
});

const amount = (name: string, label: string, formula: string): Line => ({
  name,
  label,
  role: "result",
  format: "#,##0.00",
  content: { formula: `=${formula}` },
});

/** The same bills under each driver, side by side. */
export const waysBlock: Block = {
  kind: "matrix",
  name: "ways",
  title: "The same bills, shared each way",
  columns: [
    { name: "whole", label: "In all" },
    { name: "each", label: "For each" },
    { name: "own", label: "This run has" },
    { name: "of_run", label: "This run carries" },
    { name: "per_bottle", label: "A bottle, ¢" },
    { name: "by_runs", label: "All runs carry, %" },
    { name: "by_lots", label: "Lots carry, %" },
    { name: "gap", label: "Gap to 100 %" },
  ],
  rows: ways.map(({ way, label, column }) => {
    const figure = (name: string): string => `{ways.${way}.${name}}`;
    const lots = way === "lots_and_runs" ? "{season_lots}" : "0";
    const known = (formula: string): { readonly formula: string } => ({
      formula: `=IF(ISNUMBER(${figure("each")}),${formula},"")`,
    });
    return {
      name: way,
      label,
      format: "#,##0.00",
      contents: [
        {
          formula: `=IF(COUNT({runs.${column}})={season_runs},SUM({runs.${column}})+${lots},"")`,
        },
        {
          formula: `=IF(N(${figure("whole")})>0,{compared}/${figure("whole")},"")`,
        },
        known(`INDEX({runs.${column}},{run_no})`),
        known(`${figure("each")}*${figure("own")}`),
        known(`${figure("of_run")}/{run_bottles}*100`),
        known(
          `IF({compared}>0,${figure("each")}*SUM({runs.${column}})/{compared}*100,"")`,
        ),
        known(`IF({compared}>0,${figure("each")}*${lots}/{compared}*100,"")`),
        known(
          `IF({compared}>0,ROUND(100-${figure("by_runs")}-${figure("by_lots")},7),"")`,
        ),
      ],
    };
  }),
};

const OF_RUN = "{ways.runs.of_run..ways.revenue.of_run}";

/** What the figures come to, in words. */
export const verdictBlock: Block = {
  kind: "lines",
  title: "At a glance",
  lines: [
    says(
      "adds_up",
      "All bills are carried",
      'IF(COUNT({bills.per_year})=0,"no bill is entered for "&{season},IF(ABS({bills.gap.total})<=0.001*{bills.per_year.total},"adds up to 100 %","adds up to "&TEXT(1-{bills.gap.total}/{bills.per_year.total},"0.0%")&": "&TEXT({bills.gap.total},"#,##0.00")&" is carried by nothing"))',
    ),
    says(
      "lots_keep",
      "No bottle is charged with",
      'TEXT({bills.to_lots.total},"#,##0.00")&" that the lots bought carry"',
    ),
    says(
      "apart",
      "The ways are apart",
      `IF(COUNTIF(${OF_RUN},">0")>0,TEXT(MAX(${OF_RUN})/SMALL(${OF_RUN},COUNTIF(${OF_RUN},"<=0")+1),"0.0")&" times, for the same bills",IF(ISNUMBER({run_no}),"nothing to compare","no run of that name in the season"))`,
    ),
    says(
      "missing",
      "Missing",
      'IF({runs.needs&}="","nothing","needs "&{runs.needs&})',
    ),
    says(
      "long_enough",
      "This sheet looks at every row",
      'IF(AND({season_runs}<=ROWS({runs.run}),COUNTIFS(Overheads[Season],{season})<=ROWS({bills.item}),ROWS(Lines[Line])<=ROWS({hours.line})),"ok","the book has grown: build this sheet anew")',
    ),
  ],
};

function says(name: string, label: string, formula: string): Line {
  return { name, label, role: "check", content: { formula: `=${formula}` } };
}
