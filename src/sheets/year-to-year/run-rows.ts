import { energy, nextRow } from "../costing/book-references";
import { heatBlock } from "../costing/heat-block";
import type { SyrupFrom } from "../costing/syrup-blocks";
import type { Block, Column } from "../model";
import { formulaOf } from "../prices/rebind";

const counted = (text: string): string => `IF({row.side}="","",${text})`;
const own = (heading: string): string => `INDEX(Runs[${heading}],{row.row})`;

const DRAWN_FROM_LOTS =
  "SUMPRODUCT(SUMIFS(LotUse[Pounds],LotUse[To],{row.run},LotUse[From],Lots[Lot]),Lots[Landed per lb])";
const DRAWN_FROM_BARRELS =
  "SUMPRODUCT(SUMIFS(LotUse[Pounds],LotUse[To],{row.run},LotUse[From],{lots.lot}),{lots.price})";
const KNOWN_LOTS =
  "SUMPRODUCT(SUMIFS(LotUse[Pounds],LotUse[To],{row.run},LotUse[From],Lots[Lot])*ISNUMBER(Lots[Landed per lb]))";
const KNOWN_BARRELS =
  "SUMPRODUCT(SUMIFS(LotUse[Pounds],LotUse[To],{row.run},LotUse[From],{lots.lot})*ISNUMBER({lots.price}))";

/** What a run, a gallon and an hour carry of one side's bills. */
const overheads = (side: "then" | "now", both: "yes" | "no"): string => {
  const bills = (driver: string): string =>
    `SUMIFS({${side}.rate},{${side}.driver},"${driver}",{${side}.both},"${both}")`;
  return `${bills("runs")}+${bills("lots and runs")}+${bills("gallons packed")}*${own("Gallons")}+SUMPRODUCT(--({${side}.word}<>""),--({${side}.both}="${both}"),--(LEFT({row.line},LEN({${side}.word}))={${side}.word}),{${side}.rate})*{row.hours}`;
};

/** Every run of the product; those of the two seasons with what they drew, filled and cost. */
export function runRows(rows: number, from: SyrupFrom): Block {
  const barrels = from === "barrels";
  return {
    kind: "table",
    name: "runs",
    title: "Its runs in the two seasons, as they were made",
    rows,
    columns: [
      column("run", "Run", `IF({row.row}="","",${own("Run")})`),
      column("season", "Season", `IF({row.row}="","",${own("Season")})`, "0"),
      column(
        "side",
        "Counts as",
        'IF({row.row}="","",IF({row.season}={season},"now",IF({row.season}={against},"then","")))',
      ),
      column("line", "Line", counted(own("Line"))),
      column("bottles", "Bottles", counted(own("Good bottles")), "#,##0"),
      column("fill", "Filled, mL", counted(own("Average fill mL")), "0.0"),
      column(
        "filled",
        "Syrup in the bottles, lb",
        counted(
          `{row.bottles}*{row.fill}/3785.411784*SYRUP.POUNDS_PER_GALLON(${own("Brix")})`,
        ),
        "#,##0.0",
      ),
      column(
        "drawn",
        "Syrup drawn, lb",
        counted("SUMIFS(LotUse[Pounds],LotUse[To],{row.run})"),
        "#,##0.0",
      ),
      column(
        "syrup",
        "Syrup, as paid",
        counted(
          barrels
            ? `${DRAWN_FROM_LOTS}+${DRAWN_FROM_BARRELS}`
            : DRAWN_FROM_LOTS,
        ),
        "#,##0.00",
      ),
      column(
        "materials",
        "Materials and freight",
        counted(
          "SUMIFS({materials.order_cost},{materials.run_no},{n})+SUMIFS({materials.freight},{materials.run_no},{n})",
        ),
        "#,##0.00",
      ),
      column("hours", "Hours", counted(own("Hours")), "0.00"),
      column(
        "labour",
        "Crew",
        counted(
          "SUMIFS(Crew[Cost per hour],Crew[Line],{row.line})*{row.hours}",
        ),
        "#,##0.00",
      ),
      column("heat", "Heat and power", counted(heat()), "#,##0.00"),
      ...(["yes", "no"] as const).map((both) =>
        column(
          both === "yes" ? "overhead" : "own_bills",
          both === "yes"
            ? "Overheads of both seasons"
            : "Bills only this one has",
          counted(
            `IF({row.side}="now",${overheads("now", both)},${overheads("then", both)})`,
          ),
          "#,##0.00",
        ),
      ),
      {
        name: "needs",
        label: "Missing",
        role: "check",
        content: {
          formula: `=${counted(
            [
              'IF({row.drawn}>0,"","what "&{row.run}&" drew, in Lot use; ")',
              `IF(ABS(${barrels ? `${KNOWN_LOTS}+${KNOWN_BARRELS}` : KNOWN_LOTS}-{row.drawn})>0.001,"what a lot of "&{row.run}&" cost; ","")`,
              'IF(SUMIFS(Crew[Cost per hour],Crew[Line],{row.line})>0,"","the crew and wages of "&{row.line}&"; ")',
              'IF(ISNUMBER({row.heat}),"","Energy rows for heat; ")',
            ].join("&"),
          )}`,
        },
      },
      {
        name: "row",
        label: "Row",
        content: {
          formula: `=${nextRow("Runs", "Product", "{product}", "{row_above.row}")}`,
        },
      },
    ],
  };
}

/** Heat as a costing sheet works it out, with what the run really drew and took. */
function heat(): string {
  const warming = formulaOf(heatBlock, "warming", {
    need: "{row.drawn}",
    brix: own("Brix"),
  });
  const holding = formulaOf(heatBlock, "holding", { hours: "{row.hours}" });
  return `(${warming}+${holding})/{efficiency}/{fuel_heat}*{fuel_price}+IFERROR(${energy('"Pumps, coder, shrink tunnel"')}*${own("Running hours")}*${energy('"Electricity"')},0)`;
}

function column(
  name: string,
  label: string,
  formula: string,
  format?: string,
): Column {
  return {
    name,
    label,
    ...(format === undefined ? {} : { format }),
    content: { formula: `=${formula}` },
  };
}
