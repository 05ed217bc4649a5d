import { as, type Money, type Share } from "../../measures/quantity";
import { wholeUp } from "../../measures/whole-up";
import { bestBuy, type Break, breakPrice } from "./breaks";
import { piecesToDraw } from "./draw";

export interface Material {
  readonly part: string;
  /** Pieces the run needs before spoilage. */
  readonly needed: number;
  readonly spoilage: Share;
  readonly carton: number;
  readonly minimumOrder: number;
  /** Bought whole for each run, or drawn from what lies on the shelf. */
  readonly bought: "for each run" | "from stock";
  readonly freight: Money | undefined;
  readonly breaks: readonly Break[];
}

export interface MaterialCost {
  readonly part: string;
  readonly drawn: number;
  readonly pieces: number;
  readonly cost: Money;
  readonly freight: Money;
  /** An order up to a higher break costs less than the least whole cartons that would do. */
  readonly buysUp: boolean;
}

/**
 * What a run pays for one part. A part bought for the run is charged as ordered: whole cartons, not below the minimum,
 * up to a higher break where that costs less in all, with its freight. A part from stock is charged as drawn, at the
 * price of its own least order; its freight came with an earlier order. Without a price: undefined.
 */
export function materialCost(material: Material): MaterialCost | undefined {
  const { part, needed, spoilage, carton, minimumOrder, breaks } = material;
  if (breaks.length === 0) return undefined;
  const forRun = material.bought === "for each run";
  const drawn = piecesToDraw({
    bottles: needed,
    perBottle: 1,
    spoilage,
    carton: forRun ? carton : 1,
  });
  const least = Math.max(drawn, minimumOrder);
  if (!forRun) {
    const first = Math.min(...breaks.map(({ from }) => from));
    const price = breakPrice(Math.max(least, first), breaks);
    return {
      part,
      drawn,
      pieces: drawn,
      cost: as<Money>(drawn * price),
      freight: as<Money>(0),
      buysUp: false,
    };
  }
  const order = bestBuy(wholeUp(least / carton) * carton, breaks, carton);
  return {
    part,
    drawn,
    pieces: order.buy,
    cost: order.total,
    freight: material.freight ?? as<Money>(0),
    buysUp: order.saving > 0,
  };
}
