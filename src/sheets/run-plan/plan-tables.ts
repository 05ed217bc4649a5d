import type { Block, Line } from "../model";
import type { RunPlanFacts } from "./facts";

/** Text that refers to a figure of the working sheet. */
export type Working = (name: string) => string;

/** How many lots a plan lists; a run that draws from more says so. */
const MOST_LOTS = 6;

export const linesBlock = (count: number, w: Working): Block => ({
  kind: "table",
  name: "lines",
  title: "Each line for this run",
  rows: count,
  columns: [
    ["name", "Line", undefined],
    ["rate", "Bottles per hour", "#,##0"],
    ["hours", "Hours", "0.00"],
    ["cost", "Cost of the run", "#,##0.00"],
  ].map(([name = "", label = "", format]) => ({
    name,
    label,
    ...(format === undefined ? {} : { format }),
    content: { formula: `=INDEX(${w(`lines.${name}`)},{n})` },
  })),
});

const inTurn = (w: Working, text: string): string =>
  `IFERROR(INDEX(${text},MATCH({n},${w("lots.turn")},0)),"")`;

export const lotsBlock = (w: Working): Block => ({
  kind: "table",
  name: "lots",
  title: "Draw from these, oldest first",
  rows: MOST_LOTS,
  total: { label: "Drawn", columns: ["lb"] },
  columns: [
    {
      name: "lot",
      label: "Lot or barrel",
      content: { formula: `=${inTurn(w, w("lots.lot"))}` },
    },
    {
      name: "lb",
      label: "Pounds",
      format: "#,##0.0",
      content: { formula: `=${inTurn(w, w("lots.drawn"))}` },
    },
    {
      name: "left",
      label: "Left after, lb",
      format: "#,##0.0",
      content: {
        formula: `=IF(ISNUMBER({row.lb}),${inTurn(w, w("lots.left"))}-{row.lb},"")`,
      },
    },
  ],
});

export const materialsBlock = (rows: number, w: Working): Block => ({
  kind: "table",
  name: "materials",
  title: "Pull these",
  rows,
  columns: (
    [
      ["title", "Part", undefined],
      ["drawn", "Pull", "#,##0"],
      ["on_hand", "On hand", "#,##0"],
      ["short", "Short", "#,##0;-#,##0;–"],
      ["buy", "Order", "#,##0;-#,##0;–"],
      ["order_cost", "Costs", "#,##0.00"],
      ["order_by", "Order by", "yyyy-mm-dd"],
      ["advice", "What to do", undefined],
    ] as const
  ).map(([name, label, format]) => ({
    name,
    label,
    ...(format === undefined ? {} : { format }),
    ...(name === "advice" ? { role: "aside" as const } : {}),
    content: { formula: `=INDEX(${w(`materials.${name}`)},{n})` },
  })),
});

export const checksBlock = (w: Working, { from }: RunPlanFacts): Block => ({
  kind: "lines",
  title: "Checks",
  lines: [
    says(
      "nothing_missing",
      "Nothing is missing",
      `IF(${w("missing")}="","ok","left open: needs "&${w("missing")})`,
    ),
    says(
      "syrup_covers",
      "Lots in stock cover the run",
      `IF(ISNUMBER(${w("syrup_short")}),IF(${w("syrup_short")}>0,"short by "&TEXT(ROUNDUP(${w("syrup_short")},0),"#,##0")&" lb of "&IF(${w("organic")}="yes","organic ","")&${w("kind")},"ok"),"left open")`,
    ),
    says(
      "parts_cover",
      "Parts on hand cover the run",
      `IF(COUNTIF(${w("materials.short")},">0")>0,COUNTIF(${w("materials.short")},">0")&" short, see Pull these","ok")`,
    ),
    says(
      "last_circulates",
      "The last kettle fill circulates",
      `IF(AND(ISNUMBER(${w("last_hot")}),ISNUMBER(${w("least_fill")})),IF(${w("last_hot")}<${w("least_fill")},"too small: "&TEXT(${w("last_hot")},"0.0")&" gal, and "&TEXT(${w("least_fill")},"0.0")&" circulate","ok"),"not known: enter the least kettle fill")`,
    ),
    says(
      "entered",
      "Everything on this page is entered",
      `IF(${w("not_entered")}="","ok","not entered: "&${w("not_entered")})`,
    ),
    says(
      "long_enough",
      "This sheet looks at every row",
      `IF(AND(ROWS(${from === "lots" ? "Lots[Lot]" : "OakBarrels[Barrel]"})<=ROWS(${w("lots.lot")}),COUNTIF(ProductMaterials[Product],${w("product")})<=ROWS({materials.title}),ROWS(Lines[Line])=ROWS({lines.name}),COUNT(${w("lots.turn")})<=ROWS({lots.lot})),"ok","the book has grown, or the run draws from more lots than are listed: build this plan anew")`,
    ),
  ],
});

const says = (name: string, label: string, formula: string): Line => ({
  name,
  label,
  role: "check",
  content: { formula: `=${formula}` },
});
