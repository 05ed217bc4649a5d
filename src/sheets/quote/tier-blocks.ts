import { barrelsBlock } from "../costing/barrels-block";
import { missingBlock } from "../costing/checks-block";
import { heatBlock } from "../costing/heat-block";
import { labourBlock } from "../costing/labour-block";
import { linesBlock } from "../costing/lines-block";
import { overheadsBlock } from "../costing/overheads-block";
import { lotsBlock, syrupBlock, type SyrupFrom } from "../costing/syrup-blocks";
import type { Block, Line } from "../model";
import { chargedCost, chargedMaterials } from "./charged-materials";
import { renamed } from "./renamed";

/** How long the tables of a costing are. */
export interface CostingSize {
  readonly from: SyrupFrom;
  readonly lines: number;
  readonly materials: number;
  readonly overheads: number;
  readonly rolled: boolean;
  readonly lots: number;
}

/** Cells that stand once for all quantities; every other name of a costing has a copy for each. */
const SHARED: ReadonlySet<string> = new Set([
  "line",
  "as_of",
  "brix_typed",
  "loss",
  "leftovers",
  "product",
  "product_row",
  "description",
  "owner",
  "declared",
  "declared_ml",
  "fill",
  "per_case",
  "kind",
  "organic",
  "season",
  "season_runs",
  "season_lots",
  "season_gallons",
  "season_before",
  "before_runs",
  "before_lots",
  "before_gallons",
  "barrel_fills",
  "barrel_storage",
  "barrel_money",
  "barrel_resale",
]);

/** "q2_cost.full.replacement": the name of a costing's cell in the copy for one quantity. */
export const inTier = (no: number, name: string): string => `q${no}_${name}`;

/** A whole costing for each quantity, cost first. */
export const tierBlocks = (
  no: number,
  runLines: readonly Line[],
  size: CostingSize,
  /** Put before every heading. */
  words: string,
): readonly Block[] =>
  [
    chargedCost(size.rolled),
    {
      kind: "lines" as const,
      title: "The run",
      lines: runLines,
    },
    syrupBlock(size.from, size.rolled),
    linesBlock(size.lines),
    labourBlock,
    chargedMaterials(size.materials),
    heatBlock,
    overheadsBlock(size.overheads, size.rolled),
    size.from === "lots" ? lotsBlock(size.lots) : barrelsBlock(size.lots),
    missingBlock(size.from),
  ].map((block) => titled(renamed(block, `q${no}_`, SHARED), words));

const titled = (block: Block, words: string): Block =>
  "title" in block ? { ...block, title: `${words}${block.title}` } : block;
