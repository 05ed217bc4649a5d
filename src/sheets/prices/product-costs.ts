import { heatBlock } from "../costing/heat-block";
import { costBlock } from "../costing/result-blocks";
import type { Column } from "../model";
import { ownRow, productColumn } from "./product-column";
import { formulaOf, type Names, rebound } from "./rebind";

const MINE = "--({stock.pool}={row.pool})";
const OPEN = "({row.need}-{stock.before})";
/** What the lots before it have not covered, no less than nothing and no more than the lot holds. */
const TAKEN = `(${OPEN}>0)*((${OPEN}<{stock.left})*${OPEN}+(${OPEN}>={stock.left})*{stock.left})`;
/** A run the stock does not cover, or a lot without a price, withholds what was paid. */
const paid = (formula: string): string =>
  `IF(OR({row.stock}<{row.need}*(1-0.000000000001),COUNTIFS({stock.pool},{row.pool},{stock.priced},"no")>0),NA(),${formula})`;

const methods = ["replacement", "average", "oldest"] as const;

/** What a bottle costs, three ways. */
export function costColumns(): readonly Column[] {
  const each = (
    name: string,
    label: string,
    formula: (method: (typeof methods)[number]) => string,
  ): readonly Column[] =>
    methods.map((m) =>
      productColumn(`${name}_${m}`, `${label}, ${m}`, formula(m), "0.0000"),
    );
  return [
    productColumn(
      "price_average",
      "Average price per lb",
      paid(`SUMPRODUCT(${MINE},{stock.left},{stock.price})/{row.stock}`),
      "0.0000",
    ),
    productColumn(
      "price_oldest",
      "Oldest first, per lb",
      paid(
        `SUMPRODUCT(({stock.pool}={row.pool})*${TAKEN}*{stock.price})/{row.need}`,
      ),
      "0.0000",
    ),
    productColumn(
      "materials_missing",
      "Materials missing",
      'COUNTIFS({materials.product_no},{row.no},{materials.needs},"?*")',
      "0",
    ),
    productColumn(
      "materials",
      "Materials",
      "IF(OR({row.materials_missing}>0,COUNTIFS({materials.product_no},{row.no})=0),NA(),SUMIFS({materials.order_cost},{materials.product_no},{row.no})/{row.bottles})",
      "0.0000",
    ),
    productColumn(
      "containers",
      "Of it containers",
      "SUMIFS({materials.container_cost},{materials.product_no},{row.no})/{row.bottles}",
      "0.0000",
    ),
    productColumn(
      "freight",
      "Freight in",
      "SUMIFS({materials.freight},{materials.product_no},{row.no})/{row.bottles}",
      "0.0000",
    ),
    productColumn("heat", "Heat and power", heat(), "0.0000"),
    productColumn(
      "overhead",
      "Overheads",
      'IF({overheads.needs&}<>"",NA(),({overhead_per_run}+{overhead_per_gallon}*{row.bottles}*{row.fill}/3785.411784+INDEX({lines.hour_rate},{row.chosen_no})*{row.hours})/{row.bottles})',
      "0.0000",
    ),
    productColumn(
      "before_syrup",
      "All but syrup and overheads",
      "{row.materials}+{row.freight}+{row.labour}+{row.heat}",
      "0.0000",
    ),
    ...each("direct", "Direct cost", (m) => syrupOf(m)),
    ...each("full", "Full cost", (m) => `{row.direct_${m}}+{row.overhead}`),
    productColumn("needs", "Missing", NEEDS),
  ];
}

/** Warming, holding, fuel and electricity of a costing sheet in one formula. */
function heat(): string {
  const names = ["warming", "holding", "fuel_cost", "power_cost"].reduce<Names>(
    (known, name) => ({
      ...known,
      [name]: `(${formulaOf(heatBlock, name, known)})`,
    }),
    ownRow,
  );
  return formulaOf(heatBlock, "heat", names);
}

/** The syrup that ends up in the bottle and what is purged for it, with everything else of the direct cost. */
function syrupOf(method: (typeof methods)[number]): string {
  const row = (name: string): string => {
    const found = costBlock.rows.find((one) => one.name === name);
    const content = found?.contents[methods.indexOf(method)];
    if (typeof content !== "object") throw new Error(`no formula for ${name}`);
    return rebound(content.formula.slice(1), {
      ...ownRow,
      [`cost.price.${method}`]: `{row.price_${method}}`,
    });
  };
  return `${row("syrup")}+${row("purge")}+{row.before_syrup}`;
}

const need = (cell: string, words: string): string =>
  `IF(ISNUMBER(${cell}),"",${words})`;

const NEEDS = [
  'IF(COUNTIFS({materials.product_no},{row.no})=0,"any material; ","")',
  'IF({row.materials_missing}=0,"",INDEX({materials.needs},SUMPRODUCT(MATCH(1,({materials.product_no}={row.no})*({materials.needs}<>""),0)))&IF({row.materials_missing}>1,"and "&({row.materials_missing}-1)&" more of its parts; ",""))',
  "{farm_needs}",
  need(
    "{row.price_replacement}",
    'IF(LEFT({row.pool},8)="barrels|","a price of the aged syrup; ","a bulk price for "&{row.kind}&"; ")',
  ),
  need(
    "{row.brix}",
    'IF(LEFT({row.pool},8)="barrels|","a Brix, as no run of "&{row.product}&" gives one; ","a Brix, as no "&{row.kind}&" lot is in stock; ")',
  ),
  'IF(ISNUMBER({row.chosen_no}),"",IF(ISNUMBER({row.price_replacement}),"a line with its crew and wages; ",""))',
  need("{row.fill}", '"the fill of the bottle; "'),
].join("&");
