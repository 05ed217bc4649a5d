import { newestBulkPrice } from "../costing/syrup-blocks";
import type { Block, Column, Line } from "../model";

/** Run sizes at which a change of line is looked at; yours to change. */
const SIZES = [150, 300, 1200, 6000] as const;

const inLines = (text: string): string =>
  `IF({n}>ROWS(Lines[Line]),"",${text})`;
const line = (heading: string): string => `INDEX(Lines[${heading}],{n})`;

const column = (
  name: string,
  label: string,
  formula: string,
  format = "#,##0.00",
): Column => ({
  name,
  label,
  format,
  content: { formula: `=${inLines(formula)}` },
});

/** What an hour of each line costs by the hours it was used, not by those it could have been. */
export const hoursBlock = (rows: number): Block => ({
  kind: "table",
  name: "hours",
  title: "An hour of each line",
  rows,
  columns: [
    {
      name: "line",
      label: "Line",
      content: { formula: `=${inLines(line("Line"))}` },
    },
    column("used", "Hours used", "SUMIFS({runs.hours},{runs.line},{row.line})"),
    column(
      "bills",
      "Bills by its hours",
      'SUMPRODUCT(--({bills.word}<>""),--(LEFT({row.line},LEN({bills.word}))={bills.word}),{bills.rate})*{row.used}',
    ),
    column(
      "machine",
      "Machine, an hour",
      'IF({row.used}>0,{row.bills}/{row.used},"not used")',
    ),
    column(
      "crew",
      "Crew, an hour",
      "SUMIFS(Crew[Cost per hour],Crew[Line],{row.line})",
    ),
    column(
      "both",
      "Together, an hour",
      'IF(ISNUMBER({row.machine}),{row.machine}+{row.crew},"")',
    ),
  ],
});

export const changeInputs: Block = {
  kind: "lines",
  title: "A change of line",
  lines: [
    {
      name: "kind",
      label: "Syrup rinsed out is valued as",
      role: "input",
      content: { formula: "=INDEX(BulkPrices[Syrup kind],1)" },
    },
    {
      name: "bulk_price",
      label: "Its bulk price, per lb",
      role: "calculated",
      format: "0.0000",
      content: { formula: `=${newestBulkPrice("{kind}")}` },
    },
    {
      name: "cleaning",
      label: "Chemicals and water, a change",
      role: "calculated",
      format: "#,##0.00",
      content: {
        formula:
          '=IF({season_runs}>0,SUMPRODUCT(--ISNUMBER(SEARCH("clean",{bills.item})),{bills.per_year})/{season_runs},0)',
      },
      hint: "bills with “clean” in their name, over the season's runs",
    },
  ],
};

const size = (i: number): string => `size_${i + 1}`;

/** The run sizes, over the columns they stand for. */
export const sizesBlock: Block = {
  kind: "table",
  name: "sizes",
  title: "Run sizes to look at",
  rows: 1,
  columns: [
    { name: "what", label: "Run sizes", content: "Bottles in the run" },
    ...["a", "b", "c", "d"].map((name) => ({ name, label: "", content: "" })),
    ...SIZES.map((bottles, i) => ({
      name: size(i),
      label: `Size ${i + 1}`,
      role: "input" as const,
      format: "#,##0",
      content: bottles,
    })),
  ],
};

export const changesBlock = (rows: number): Block => ({
  kind: "table",
  name: "changes",
  title: "A change of each line, and cents a bottle at those sizes",
  rows,
  columns: [
    {
      name: "line",
      label: "Line",
      content: { formula: `=${inLines(line("Line"))}` },
    },
    column(
      "crew",
      "Crew",
      `(${line("Setup minutes")}+${line("Clean down minutes")})/60*INDEX({hours.crew},{n})`,
    ),
    column("syrup", "Syrup rinsed out", `${line("Purge lb")}*{bulk_price}`),
    column("cleaning", "Chemicals and water", "{cleaning}"),
    column("total", "A change", "{row.crew}+{row.syrup}+{row.cleaning}"),
    ...SIZES.map((_, i) =>
      column(
        `at_${i + 1}`,
        `Size ${i + 1}, ¢ a bottle`,
        `IF(N({sizes.${size(i)}})>0,{row.total}/{sizes.${size(i)}}*100,"needs bottles")`,
        "#,##0.0",
      ),
    ),
  ],
});

const typed = (name: string, label: string, unit: string): Line => ({
  name: `machine_${name}`,
  label,
  unit,
  role: "input",
  format: "#,##0.##",
  content: "",
  rule: { kind: "number", min: 0 },
  ruleSays: "A number, 0 or more.",
});

const needed = ["price", "resale", "years", "upkeep", "hours"] as const;
const words: Readonly<Record<(typeof needed)[number], string>> = {
  price: "the price",
  resale: "what it is sold for at last",
  years: "its years",
  upkeep: "its upkeep",
  hours: "its hours",
};

/** A machine that is not in the book yet. */
export const machineBlock: Block = {
  kind: "lines",
  title: "A machine of your own figures",
  lines: [
    typed("price", "Price", "money"),
    typed("resale", "Sold for at last", "money, 0 if nothing"),
    typed("years", "Years it serves", "years"),
    typed("upkeep", "Upkeep", "a year"),
    typed("hours", "Hours used", "a year, with set-up and clean-down"),
    {
      name: "machine_rate",
      label: "An hour of it",
      role: "result",
      format: "#,##0.00",
      content: {
        formula: `=IF(COUNT({machine_price..machine_hours})<5,"needs "&${needed
          .map(
            (name) => `IF(ISNUMBER({machine_${name}}),"","${words[name]}; ")`,
          )
          .join(
            "&",
          )},IF(OR({machine_years}<=0,{machine_hours}<=0),"years and hours must be more than 0",IF({machine_resale}>{machine_price},"it is sold for more than its price",(({machine_price}-{machine_resale})/{machine_years}+{machine_upkeep})/{machine_hours})))`,
      },
    },
  ],
};
