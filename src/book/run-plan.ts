import { answerOrNone } from "../measures/cannot-answer";
import {
  as,
  type DaySerial,
  type HotLitres,
  type Kilograms,
  type Share,
} from "../measures/quantity";
import { bestBy } from "../trade/codes/best-by";
import type { KettleFills } from "../trade/costing/kettle-fills";
import type { KettleFuel } from "../trade/costing/kettle-fuel";
import { drawOldestFirst, type LotDraws } from "../trade/costing/lot-draw";
import type { PackedWeights } from "../trade/costing/pallet-weight";
import { type Pull, pullOf } from "../trade/costing/pull-list";
import type { LineChoice } from "../trade/lines/choice";
import type { RunClock } from "../trade/lines/run-clock";
import type { Book, BookRow } from "./book";
import { costingFacts } from "./costing-facts";
import { isSameName as same } from "./keys";
import { plannedLotCode } from "./run-plan-code";
import {
  fuelOf,
  kettleOf,
  palletsOf,
  type PlannedPallets,
  syrupFor,
  weightsOf,
} from "./run-plan-filling";
import {
  choiceOf,
  clockOf,
  otherLine,
  type OtherLine,
  peopleAt,
} from "./run-plan-line";
import { lotsFor } from "./run-plan-lots";
import { type PlanNeed, planNeeds } from "./run-plan-needs";
import { setting } from "./setting";

export interface RunPlanQuestion {
  readonly product: string;
  readonly bottles: number;
  /** A line by name instead of the cheapest of the usual ones. */
  readonly line?: string;
  /** Another day than the newest of the book, for prices. */
  readonly asOf?: DaySerial;
  /** When set-up begins: a worksheet day with its part of a day. */
  readonly start?: number;
}

/** A part to pull, with what it is. */
export interface PlannedPart extends Pull {
  readonly description: string | undefined;
}

/** Everything the floor and the office need for one run; what is undefined is missing and named in `needs`. */
export interface RunPlan {
  readonly product: BookRow<"products">;
  readonly bottles: number;
  readonly asOf: DaySerial;
  readonly start: number | undefined;
  readonly choice: LineChoice;
  readonly other: OtherLine | undefined;
  readonly people: number;
  readonly clock: RunClock | undefined;
  readonly kettle: KettleFills | undefined;
  /** Least hot volume that circulates, where the farm has entered it. */
  readonly leastFill: HotLitres | undefined;
  readonly fuel: KettleFuel | undefined;
  /** Syrup to draw: the filled bottles, those that break, and the purge. */
  readonly syrup: Kilograms | undefined;
  readonly lots: LotDraws | undefined;
  readonly materials: readonly PlannedPart[];
  readonly pallets: PlannedPallets;
  readonly weights: PackedWeights | undefined;
  readonly lotCode: string | undefined;
  readonly bestBy: DaySerial | undefined;
  /** What has to be entered, and what is left open without it. */
  readonly needs: readonly PlanNeed[];
}

/** Plans a run from the book. Refuses (#VALUE!) a product the book does not have. */
export function runPlan(book: Book, question: RunPlanQuestion): RunPlan {
  const { bottles, start } = question;
  const { product, asOf, bottle } = costingFacts(book, question);
  const choice = choiceOf(bottle);
  const chosen = choice.chosen;
  const people = chosen ? peopleAt(book, chosen.line.name) : 0;
  const day =
    start === undefined ? undefined : as<DaySerial>(Math.floor(start));
  const breakage = setting(book, "Breakage") ?? as<Share>(0);
  const syrup = syrupFor(bottle, breakage, chosen);
  const kettle = kettleOf(book, bottle, breakage, chosen);
  const materials = bottle.materials.map((material) => {
    const part = book.parts.find((p) => same(p.part, material.part));
    return {
      description: part?.description,
      ...pullOf(
        material,
        { onHand: part?.onHand, due: 0, leadDays: part?.leadDays },
        day,
      ),
    };
  });
  const months = setting(book, "Best-by months");
  const plan = {
    product,
    bottles,
    asOf,
    start,
    choice,
    other: chosen && otherLine(choice, chosen, product.bottlesPerCase),
    people,
    clock:
      chosen && people > 0 ? clockOf(book, chosen, people, start) : undefined,
    kettle: typeof kettle === "string" ? undefined : kettle,
    leastFill: setting(book, "Least kettle fill"),
    fuel: fuelOf(book, bottle, chosen, syrup),
    syrup,
    lots:
      syrup === undefined
        ? undefined
        : drawOldestFirst(syrup, lotsFor(book, product)),
    materials,
    pallets: palletsOf(product, bottles),
    weights: weightsOf(book, product, bottle, bottles),
    lotCode: plannedLotCode(book, chosen?.line.name, start),
    bestBy:
      day === undefined || months === undefined
        ? undefined
        : answerOrNone(() => bestBy(day, months)),
  };
  return {
    ...plan,
    needs: planNeeds(book, plan, bottle, {
      ...(typeof kettle === "string" ? { kettle } : {}),
    }),
  };
}
