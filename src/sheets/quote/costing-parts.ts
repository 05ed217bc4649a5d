import { bookTables } from "../../book/book";
import { columnAt, type Contents, contentsOf } from "../../book/contents";
import { newestDayFormula } from "../../book/newest-day";
import { mostOf } from "../book-cells";
import { barrelCostBlock } from "../costing/barrels-block";
import { column, refuseUncosted, syrupFrom } from "../costing/costing-sheet";
import { seasonBlock } from "../costing/overheads-block";
import {
  inputsBlock,
  productBlock,
  type ProductBlockFacts,
} from "../costing/product-blocks";
import { isRolled } from "../costing/season-before";
import type { Block, Line } from "../model";
import { type CostingSize, tierBlocks } from "./tier-blocks";

/** A costing taken apart, for sheets that hold it once or several times. */
export interface CostingParts {
  /** Inputs that stand once: the line, the day, the Brix, the loss. */
  readonly inputs: readonly Line[];
  /** What stands once: the product, the season, the barrels. */
  readonly once: readonly Block[];
  /** A whole costing for one quantity, its bottles typed in elsewhere. */
  readonly tier: (no: number, words: string) => readonly Block[];
  /** The column that a table of lots or barrels is held against. */
  readonly lotsColumn: string;
  /** The book was made by a season's roll. */
  readonly rolled: boolean;
  readonly channelNames: readonly string[];
}

/** Refuses (#VALUE!) a workbook that cannot be costed and a product that is not in Products. */
export function costingParts(
  contents: readonly Contents[],
  product: string,
  asOf: number | undefined,
): CostingParts {
  refuseUncosted(contents, product);
  const count = (key: keyof typeof bookTables): number =>
    contentsOf(contents, bookTables[key])?.rows.length ?? 0;
  const from = syrupFrom(contents, product);
  const facts: ProductBlockFacts = {
    product,
    bottles: 1,
    lineNames: column(contents, "lines", "line").map(String),
    lossIsSet: column(contents, "settings", "setting").some((s) =>
      same(s, "Syrup loss"),
    ),
    newestDay: newestDayFormula(contents),
  };
  const size: CostingSize = {
    from,
    lines: Math.max(1, count("lines")),
    materials:
      column(contents, "productMaterials", "product").filter((p) =>
        same(p, product),
      ).length + 4,
    overheads: mostOf(column(contents, "overheads", "season")) + 4,
    rolled: isRolled(contents),
    lots: count(from === "lots" ? "lots" : "oakBarrels") + 15,
  };
  const all = linesOf(productBlock(facts));
  const isRun = ({ name }: Line): boolean =>
    name === "cases" || name === "pallets";
  return {
    inputs: sharedInputs(facts, asOf),
    once: [
      {
        kind: "lines",
        title: "The product",
        lines: all.filter((line) => !isRun(line)),
      },
      ...(from === "barrels" ? [barrelCostBlock] : []),
      seasonBlock(size.rolled),
    ],
    tier: (no, words) => tierBlocks(no, all.filter(isRun), size, words),
    rolled: size.rolled,
    lotsColumn: from === "lots" ? "Lots[Lot]" : "OakBarrels[Barrel]",
    channelNames: channelsByBottle(contents),
  };
}

/** A channel whose usual order holds no bottles sells by the pound. */
function channelsByBottle(contents: readonly Contents[]): readonly string[] {
  const table = contentsOf(contents, bookTables.channels);
  if (!table) return [];
  const { channel, bottlesPerOrder } = bookTables.channels.columns;
  const nameAt = columnAt(table.headings, channel);
  const ordersAt = columnAt(table.headings, bottlesPerOrder);
  return table.rows
    .filter((row) => Number(row[ordersAt] ?? 0) > 0)
    .map((row) => String(row[nameAt] ?? ""));
}

const SHARED = ["line", "as_of", "brix_typed", "loss"];

const sharedInputs = (
  facts: ProductBlockFacts,
  asOf: number | undefined,
): readonly Line[] =>
  linesOf(inputsBlock(facts))
    .filter(({ name }) => SHARED.includes(name))
    .map((line) =>
      line.name === "as_of" && asOf !== undefined
        ? { ...line, content: asOf }
        : line,
    );

function linesOf(block: Block): readonly Line[] {
  if (block.kind !== "lines") throw new Error(`${block.kind} holds no lines`);
  return block.lines;
}

const same = (cell: unknown, wanted: string): boolean =>
  String(cell).trim().toLowerCase() === wanted.trim().toLowerCase();
