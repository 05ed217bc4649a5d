import { barrelCostBlock, barrelsBlock } from "../costing/barrels-block";
import { setting } from "../costing/book-references";
import { heatBlock } from "../costing/heat-block";
import { labourBlock } from "../costing/labour-block";
import { productBlock } from "../costing/product-blocks";
import { lotsBlock } from "../costing/syrup-blocks";
import type { Block, Line, SheetDescription } from "../model";
import type { RunPlanFacts } from "./facts";
import { farmFiguresBlock, orderedBlock } from "./farm-figures";
import { packedBlock } from "./packed-block";
import { pullBlock } from "./pull-block";
import {
  fuelBlock,
  hoursBlock,
  kettleBlock,
  planLinesBlock,
  planSyrupBlock,
} from "./run-blocks";

/** What the working takes from the plan's own cells. */
export interface PlanInputs {
  readonly bottles: string;
  readonly start: string;
  readonly line: string;
  readonly asOf: string;
}

/** Everything a run plan is worked out from; the plan itself shows the answers. */
export const describeWorking = (
  facts: RunPlanFacts,
  name: string,
  inputs: PlanInputs,
): SheetDescription => ({
  name,
  tabColor: "#a58a6d",
  widths: [40, 24, 18, 16, 14, 14, 14, 14, 14, 14, 14, 12],
  frozenRows: 1,
  blocks: [
    {
      kind: "title",
      content: { formula: '="Working of the run plan of "&{product}' },
    },
    {
      kind: "notes",
      lines: [
        "The arithmetic under the run plan, with the formulas of the costing sheets. Yellow cells are yours to change.",
      ],
    },
    farmFiguresBlock(facts.lossIsSet),
    orderedBlock,
    fromPlanBlock(inputs),
    productBlock(facts),
    planSyrupBlock(facts.from, facts.rolled),
    ...(facts.from === "barrels" ? [barrelCostBlock] : []),
    planLinesBlock(Math.max(1, facts.lines)),
    labourBlock,
    hoursBlock,
    kettleBlock,
    heatBlock,
    fuelBlock,
    packedBlock,
    pullBlock(facts.materials),
    inTurn(
      facts.from === "lots" ? lotsBlock(facts.lots) : barrelsBlock(facts.lots),
    ),
    missingBlock,
  ],
});

const fromPlanBlock = ({ bottles, start, line, asOf }: PlanInputs): Block => ({
  kind: "lines",
  title: "From the run plan",
  lines: [
    taken("bottles", "Bottles in this run", `=${bottles}`, "#,##0"),
    taken(
      "start",
      "Start",
      `=IF(ISNUMBER(${start}),${start},"")`,
      "yyyy-mm-dd hh:mm",
    ),
    taken("line", "Line to run on", `=IF(ISTEXT(${line}),${line},"")`),
    taken("as_of", "Prices as of", `=${asOf}`, "yyyy-mm-dd"),
  ],
});

const taken = (
  name: string,
  label: string,
  formula: string,
  format?: string,
): Line => ({
  name,
  label,
  role: "calculated",
  content: { formula },
  ...(format === undefined ? {} : { format }),
});

/** The table of lots with the place of each in the order they are drawn in. */
function inTurn(block: Block): Block {
  if (block.kind !== "table") throw new Error("Lots stand in a table");
  return {
    ...block,
    columns: [
      ...block.columns,
      {
        name: "turn",
        label: "Drawn in turn",
        content: {
          formula:
            '=IF(N({row.drawn})>0,1+COUNTIFS({lots.drawn},">0",{lots.received},"<"&{row.received})+COUNTIFS({lots.drawn},">0",{lots.received},{row.received},{lots.no},"<"&{row.no}),"")',
        },
      },
    ],
  };
}

const unlessNumber = (name: string, words: string): string =>
  `IF(ISNUMBER({${name}}),"",${words}&"; ")`;

const missingBlock: Block = {
  kind: "lines",
  title: "What is missing",
  lines: [
    {
      name: "missing",
      label: "Missing",
      role: "check",
      content: {
        formula: `=${unlessNumber("bulk_price", '"a bulk price for "&{kind}')}&${unlessNumber("brix", '"a Brix, as no "&{kind}&" is in stock"')}&IF(COUNTIF({lines.crewed},"yes")>0,"","a line with its crew and wages; ")&IF(COUNTIF(ProductMaterials[Product],{product})=0,"any material for "&{product}&"; ","")&{materials.needs&}&IFERROR(IF(ISNUMBER(${setting("Kettle working fill")}),"","Kettle working fill in Settings; "),"Kettle working fill in Settings; ")&${unlessNumber("pack_temperature", '"Pack temperature in Settings"')}`,
      },
    },
    {
      name: "not_entered",
      label: "Left open, not entered",
      role: "check",
      content: {
        formula: `=${unlessNumber("bottle_g", '"Empty bottle g of "&{product}')}&${unlessNumber("empty_case", '"weight of an empty case"')}&${unlessNumber("empty_pallet", '"weight of an empty pallet"')}&${unlessNumber("months", '"months to the best-by date"')}&${unlessNumber("least_fill", '"least kettle fill that circulates"')}`,
      },
    },
  ],
};
