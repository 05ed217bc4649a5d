import { as, type Money } from "../../measures/quantity";
import { wholeUp } from "../../measures/whole-up";
import { breakPrice } from "./breaks";
import { piecesToDraw } from "./draw";
import { type Material, materialCost } from "./material-cost";

/** What is left of a part bought for a run when the run is done. */
export interface Leftover {
  readonly part: string;
  readonly pieces: number;
  /** At the price they were bought for; the freight stays with the run that needed the order. */
  readonly value: Money;
}

/** Undefined where nothing is left, the part comes from stock, or it has no price. */
export function leftover(material: Material): Leftover | undefined {
  if (material.bought !== "for each run") return undefined;
  const order = materialCost(material);
  if (!order) return undefined;
  const pieces = order.pieces - loosePieces(material);
  return pieces > 0
    ? {
        part: material.part,
        pieces,
        value: as<Money>((pieces * order.cost) / order.pieces),
      }
    : undefined;
}

/** A part of which a run needs less than can be ordered. */
export interface BelowMinimum {
  readonly part: string;
  readonly needed: number;
  /** The least that can be ordered, and its price each. */
  readonly minimum: number;
  readonly priceEach: Money;
  /** What is ordered, which may be more where a higher break is cheaper in all. */
  readonly ordered: number;
  readonly cost: Money;
}

/** Undefined where the run needs the least order or more, the part comes from stock, or it has no price. */
export function belowMinimum(material: Material): BelowMinimum | undefined {
  if (material.bought !== "for each run") return undefined;
  const order = materialCost(material);
  if (!order) return undefined;
  const first = Math.min(...material.breaks.map(({ from }) => from));
  const minimum =
    wholeUp(Math.max(material.minimumOrder, first) / material.carton) *
    material.carton;
  const needed = loosePieces(material);
  return needed < minimum
    ? {
        part: material.part,
        needed,
        minimum,
        priceEach: breakPrice(minimum, material.breaks),
        ordered: order.pieces,
        cost: order.cost,
      }
    : undefined;
}

const loosePieces = ({ needed, spoilage }: Material): number =>
  piecesToDraw({ bottles: needed, perBottle: 1, spoilage, carton: 1 });
