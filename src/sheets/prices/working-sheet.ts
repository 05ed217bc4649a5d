import { barrelCostBlock } from "../costing/barrels-block";
import type { SheetDescription } from "../model";
import type { PriceListFacts } from "./facts";
import {
  billsBlock,
  channelTermsBlock,
  farmBlock,
  type FarmInputs,
  lineRatesBlock,
} from "./farm-blocks";
import { ladderRowsBlock } from "./ladder-rows";
import { materialRowsBlock } from "./materials-rows";
import { PRICE_WORKING } from "./names";
import { productRowsBlock } from "./product-rows";
import { everyBarrelBlock, everyLotBlock, stockBlock } from "./stock-blocks";

/** Everything the price list is worked out from, one thing a row: nothing on it is typed in. */
export const describeWorking = (
  facts: PriceListFacts,
  inputs: FarmInputs & { readonly runs: string },
): SheetDescription => ({
  name: PRICE_WORKING,
  tabColor: "#a58a6d",
  widths: [24, 14, 14, 14, 14, 14, 14, 14, 14, 14, 18],
  frozenRows: 1,
  blocks: [
    { kind: "title", content: "Price working" },
    {
      kind: "notes",
      lines: [
        "The arithmetic under the price list, with the formulas of the costing sheets. Nothing here is typed in; change the tables of the book or the price list.",
      ],
    },
    farmBlock(inputs, facts.rolled),
    ...(facts.barrels > 0 ? [barrelCostBlock] : []),
    billsBlock(facts.bills, facts.rolled),
    lineRatesBlock(facts.lines),
    channelTermsBlock(facts.channelRows),
    productRowsBlock({
      rows: facts.rows,
      lines: facts.lines,
      barrels: facts.barrels > 0,
      rolled: facts.rolled,
      runs: inputs.runs,
    }),
    ladderRowsBlock(
      facts.rows,
      facts.channels.map(({ no }) => no),
    ),
    everyLotBlock(facts.lots),
    ...(facts.barrels > 0 ? [everyBarrelBlock(facts.barrels)] : []),
    stockBlock(facts),
    materialRowsBlock(facts.materials),
  ],
});
