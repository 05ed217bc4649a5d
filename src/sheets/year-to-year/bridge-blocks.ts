import type { Block, Line } from "../model";

export const askedBlock = (asked: {
  readonly product: string;
  readonly season: number | string;
  readonly against: number | undefined;
}): Block => ({
  kind: "lines",
  title: "What is compared",
  lines: [
    {
      name: "product",
      label: "Product",
      role: "calculated",
      content: asked.product,
    },
    {
      name: "season",
      label: "Season",
      role: "input",
      format: "0",
      content:
        typeof asked.season === "number"
          ? asked.season
          : { formula: `=YEAR(${asked.season})` },
      rule: { kind: "whole number", min: 1900, max: 9999 },
    },
    {
      name: "against",
      label: "Against",
      role: "input",
      format: "0",
      content: asked.against ?? { formula: "={season}-1" },
      rule: { kind: "whole number", min: 1900, max: 9999 },
    },
  ],
});

const sides = ["then", "now"] as const;
type Side = (typeof sides)[number];

const sum = (side: Side, column: string): string =>
  `SUMIFS({runs.${column}},{runs.side},"${side}")`;
const known = (side: Side, formula: string): { readonly formula: string } => ({
  formula: `=IF({missing_${side}}="",${formula},"")`,
});
const each =
  (column: string): ((side: Side) => string) =>
  (side) =>
    `${sum(side, column)}/{sides.bottles.${side}}`;

const row = (
  name: string,
  label: string,
  format: string,
  formula: (side: Side) => string,
) => ({
  name,
  label,
  format,
  contents: sides.map((side) => known(side, formula(side))),
});

/** A bottle in each season, as it was made. */
export const sidesBlock: Block = {
  kind: "matrix",
  name: "sides",
  title: "A bottle in each season, as it was made",
  columns: [
    { name: "then", label: "Season before" },
    { name: "now", label: "Season" },
  ],
  rows: [
    {
      name: "bottles",
      label: "Good bottles",
      format: "#,##0",
      contents: sides.map((side) => ({ formula: `=${sum(side, "bottles")}` })),
    },
    row(
      "price",
      "Syrup, per lb as paid",
      "0.0000",
      (side) => `${sum(side, "syrup")}/${sum(side, "drawn")}`,
    ),
    row("filled", "Syrup in the bottle, lb", "0.0000", each("filled")),
    row("drawn", "Syrup drawn for it, lb", "0.0000", each("drawn")),
    row("syrup", "Syrup", "0.0000", each("syrup")),
    row("materials", "Materials and freight in", "0.0000", each("materials")),
    row("labour", "Crew", "0.0000", each("labour")),
    row("heat", "Heat and power", "0.0000", each("heat")),
    row("overhead", "Overheads of both seasons", "0.0000", each("overhead")),
    row("own_bills", "Bills only this one has", "0.0000", each("own_bills")),
    {
      ...row(
        "total",
        "Cost of a bottle",
        "#,##0.0000",
        (side) => `SUM({sides.syrup.${side}..sides.own_bills.${side}})`,
      ),
      role: "result" as const,
    },
  ],
};

const change = (formula: string): readonly [{ readonly formula: string }] => [
  { formula: `=IF({missing}="",${formula},"")` },
];
const moved = (name: string): string =>
  `{sides.${name}.now}-{sides.${name}.then}`;

/** The way from one season's cost to the other's; the steps add up to the change. */
export const stepsBlock: Block = {
  kind: "matrix",
  name: "steps",
  title: "What the change is made of",
  columns: [{ name: "change", label: "A bottle" }],
  rows: [
    step("price", "Syrup price", `(${moved("price")})*{sides.drawn.then}`),
    step("fill", "Fill", `(${moved("filled")})*{sides.price.now}`),
    step(
      "lost",
      "Syrup lost and purged",
      `((${moved("drawn")})-(${moved("filled")}))*{sides.price.now}`,
    ),
    step("materials", "Materials", moved("materials")),
    step("labour", "Labour", moved("labour")),
    step("heat", "Heat and power", moved("heat")),
    step("overhead", "Overheads of both seasons", moved("overhead")),
    step("own_bills", "Bills only one season has", moved("own_bills")),
    {
      ...step(
        "all",
        "Change in all",
        "SUM({steps.price.change..steps.own_bills.change})",
      ),
      role: "result" as const,
    },
  ],
};

function step(name: string, label: string, formula: string) {
  return {
    name,
    label,
    format: "+0.0000;-0.0000;0.0000",
    contents: change(formula),
  };
}

const says = (name: string, label: string, formula: string): Line => ({
  name,
  label,
  role: "check",
  content: { formula: `=${formula}` },
});

const missingIn = (side: Side, season: string): string =>
  `IF(COUNTIF({runs.side},"${side}")=0,"a run of "&{product}&" in "&${season}&"; ",{${side}.needs&})`;

export const checksBlock: Block = {
  kind: "lines",
  title: "Checks",
  lines: [
    says(
      "told",
      "In a sentence",
      'IF({missing}="","a bottle cost "&TEXT({sides.total.then},"0.00")&" in "&{against}&" and "&TEXT({sides.total.now},"0.00")&" in "&{season}&": "&TEXT({steps.all.change}*100,"+0.0;-0.0;0.0")&" ¢","withheld: needs "&{missing})',
    ),
    says(
      "adds_up",
      "The steps add up to the change",
      'IF({missing}="",IF(ABS({steps.all.change}-{sides.total.now}+{sides.total.then})<0.00000001,"ok","the steps and the change differ"),"withheld")',
    ),
    says(
      "bills",
      "Both seasons have their bills",
      'IF(2*MIN(COUNT({then.per_year}),COUNT({now.per_year}))>MAX(COUNT({then.per_year}),COUNT({now.per_year})),"ok",COUNT({then.per_year})&" bills for "&{against}&" and "&COUNT({now.per_year})&" for "&{season}&": a bill that one of them lacks is a step of its own")',
    ),
    says(
      "long_enough",
      "This sheet looks at every row",
      'IF(AND(COUNTIF(Runs[Product],{product})<=ROWS({runs.run}),COUNTIF(ProductMaterials[Product],{product})<=ROWS({parts.part}),COUNTIFS(Overheads[Season],{season})<=ROWS({now.item}),COUNTIFS(Overheads[Season],{against})<=ROWS({then.item})),"ok","the book has grown: build this sheet anew")',
    ),
    says(
      "missing",
      "Missing",
      "IF({missing_then}={missing_now},{missing_then},{missing_then}&{missing_now})",
    ),
    says(
      "missing_then",
      "Missing for the season before",
      `${missingIn("then", "{against}")}&{missing_always}`,
    ),
    says(
      "missing_now",
      "Missing for the season",
      `${missingIn("now", "{season}")}&{missing_always}`,
    ),
    says(
      "missing_always",
      "Missing for both",
      'IF(COUNT({parts.row})=0,"any material for "&{product}&"; ",{parts.needs&})&{runs.needs&}',
    ),
  ],
};
