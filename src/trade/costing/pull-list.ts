import { as, type DaySerial, type Money } from "../../measures/quantity";
import { wholeUp } from "../../measures/whole-up";
import { bestBuy } from "./breaks";
import { piecesToDraw } from "./draw";
import type { Material } from "./material-cost";

/** What lies on the shelf of a part, and how long more of it takes to come. */
export interface OnShelf {
  readonly onHand: number | undefined;
  /** Ordered already and not here yet. */
  readonly due: number;
  readonly leadDays: number | undefined;
}

export interface Order {
  /** Sold by the piece, without cartons or a minimum order. */
  readonly singly: boolean;
  /** Whole cartons, not below the minimum order, up to a higher price break where that costs less in all. */
  readonly buy: number;
  /** The least order that would do. */
  readonly least: number;
  /** Undefined without a price. */
  readonly cost: Money | undefined;
  /** Against the least order; above 0 where buying up pays. */
  readonly saving: Money;
  /** Pieces on the shelf after the run. */
  readonly leftOver: number;
}

export interface Pull {
  readonly part: string;
  /** Whole pieces with spoilage. */
  readonly pieces: number;
  /** What is pulled: the pieces, in whole cartons where the part is bought for each run. */
  readonly need: number;
  readonly onHand: number | undefined;
  /** Undefined while nobody knows what is on hand. */
  readonly short: number | undefined;
  readonly order: Order | undefined;
  /** The last day to order, where the part is short and the day of the run and its lead days are known. */
  readonly orderBy: DaySerial | undefined;
}

/** What a run pulls of one part, what is short, and the order that covers it. */
export function pullOf(
  material: Material,
  shelf: OnShelf,
  runDay?: DaySerial,
): Pull {
  const { part, needed, spoilage, carton, bought } = material;
  const draw = (inCartonsOf: number): number =>
    piecesToDraw({
      bottles: needed,
      perBottle: 1,
      spoilage,
      carton: inCartonsOf,
    });
  const pieces = draw(1);
  const need = bought === "for each run" ? draw(carton) : pieces;
  const { onHand, due, leadDays } = shelf;
  const there = onHand === undefined ? undefined : onHand + due;
  // An opened carton that still covers the pieces is not short of a carton.
  const short =
    there === undefined ? undefined : there >= pieces ? 0 : need - there;
  return {
    part,
    pieces,
    need,
    onHand,
    short,
    order:
      there === undefined || short === undefined || short <= 0
        ? undefined
        : orderFor(material, short, there - pieces),
    orderBy:
      short === undefined ||
      short <= 0 ||
      runDay === undefined ||
      leadDays === undefined
        ? undefined
        : as<DaySerial>(runDay - leadDays),
  };
}

/** `beyond` is what is there less what the run takes: below 0 where it is short. */
function orderFor(
  { carton, minimumOrder, breaks }: Material,
  short: number,
  beyond: number,
): Order {
  const inCartons = (pieces: number): number =>
    wholeUp(pieces / carton) * carton;
  const first = Math.min(...breaks.map(({ from }) => from));
  const enough = Math.max(short, minimumOrder);
  const singly = carton === 1 && minimumOrder <= 1;
  if (breaks.length === 0)
    return {
      singly,
      buy: inCartons(enough),
      least: inCartons(enough),
      cost: undefined,
      saving: as<Money>(0),
      leftOver: beyond + inCartons(enough),
    };
  const best = bestBuy(inCartons(enough), breaks, carton);
  return {
    singly,
    buy: best.buy,
    least: inCartons(Math.max(enough, first)),
    cost: best.total,
    saving: best.saving,
    leftOver: beyond + best.buy,
  };
}
