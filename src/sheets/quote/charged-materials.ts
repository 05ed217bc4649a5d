import { part } from "../costing/book-references";
import { materialsBlock } from "../costing/materials-block";
import { costBlock, rolledCostBlock } from "../costing/result-blocks";
import type { Block, Column } from "../model";

const forPart = (text: string): string => `IF({row.part}="","",${text})`;
const PRICES = "PartPrices[Price each]";
const FROM = "PartPrices[From quantity]";
const OWN = "(PartPrices[Part]={row.part})";

const column = (
  name: string,
  label: string,
  formula: string,
  format?: string,
): Column => ({
  name,
  label,
  ...(format === undefined ? {} : { format }),
  content: { formula: `=${forPart(formula)}` },
});

/** What is left over, and what the run is charged once that is agreed. */
const added: readonly Column[] = [
  column(
    "charged",
    "Charged",
    'IF(NOT(ISNUMBER({row.order_cost})),"",{row.order_cost}-IF({leftovers}="kept",{row.left_value},0))',
    "#,##0.00",
  ),
  column(
    "used",
    "Used up",
    `IF({row.bought}="for each run",IFERROR(SYRUP.PIECES_TO_DRAW({row.needed},1,${part("Spoilage")},1),""),{row.drawn})`,
    "#,##0",
  ),
  column(
    "left",
    "Left over",
    'IF(NOT(ISNUMBER({row.order_cost})),"",{row.pieces}-{row.used})',
    "#,##0;-#,##0;–",
  ),
  column(
    "left_value",
    "Left over, worth",
    'IF(NOT(ISNUMBER({row.order_cost})),"",{row.left}*{row.price})',
    "#,##0.00;-#,##0.00;–",
  ),
  column(
    "minimum",
    "Least order",
    `IF(OR({row.bought}<>"for each run",NOT(ISNUMBER({row.order_cost}))),"",ROUNDUP(MAX(IFERROR(N(${part("Minimum order")}),0),SUMPRODUCT(MIN((PartPrices[Part]<>{row.part})*10^12+${FROM})))/{row.carton},0)*{row.carton})`,
    "#,##0",
  ),
  column(
    "minimum_price",
    "Its price each",
    `IF(NOT(ISNUMBER({row.minimum})),"",AVERAGEIFS(${PRICES},PartPrices[Part],{row.part},${FROM},SUMPRODUCT(MAX(${OWN}*(${FROM}<={row.minimum})*${FROM}))))`,
    "0.0000",
  ),
  {
    ...column(
      "below",
      "Below the least order",
      'IF(NOT(ISNUMBER({row.minimum})),"",IF({row.used}<{row.minimum},{row.part}&": "&TEXT({row.used},"#,##0")&" needed, the least order is "&TEXT({row.minimum},"#,##0")&" at "&{row.minimum_price}&" each, "&TEXT({row.minimum}*{row.minimum_price},"#,##0.00")&"; ",""))',
    ),
    role: "aside",
  },
];

/** The materials of a costing, with the leftovers charged or kept as the quote says. */
export function chargedMaterials(rows: number): Block {
  const block = materialsBlock(rows);
  if (block.kind !== "table") throw new Error("Materials are a table");
  const at = block.columns.findIndex(({ name }) => name === "needs");
  return {
    ...block,
    columns: [
      ...block.columns.slice(0, at).map((one) =>
        one.name === "per_bottle"
          ? {
              ...one,
              content: {
                formula: `=${forPart('IF(NOT(ISNUMBER({row.charged})),"",({row.charged}+{row.freight})/{bottles})')}`,
              },
            }
          : one,
      ),
      ...added,
      ...block.columns.slice(at),
    ],
    total: { label: "All materials", columns: ["per_bottle", "left_value"] },
  };
}

/** The cost of a bottle with the materials as they are charged. */
export function chargedCost(rolled: boolean): Block {
  const cost = rolled ? rolledCostBlock : costBlock;
  return {
    ...cost,
    rows: cost.rows.map((row) =>
      row.name === "materials"
        ? {
            ...row,
            contents: row.contents.map(() => ({
              formula:
                "=SYRUP.COST_TOTAL({materials.title},{materials.charged})/{bottles}",
            })),
          }
        : row,
    ),
  };
}
