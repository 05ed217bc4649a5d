import type { Book } from "../../book/book";
import type { Finding } from "../../book/finding";
import { runPlan, type RunPlanQuestion } from "../../book/run-plan";
import { runPlanFindings } from "../../book/run-plan-findings";
import { startText } from "../../book/run-plan-start";
import type { DaySerial, Kilograms } from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";
import { KG_PER_LB, LITRES_PER_GALLON } from "../../measures/units";

type Figure = number | null;

/** The answer of `plan --json`; a figure left open is null and a finding says what is missing. Weights are in lb, volumes in US gal, days as 2026-11-25. */
export interface PlanAnswer {
  readonly product: string;
  readonly bottles: number;
  readonly asOf: string;
  readonly line: {
    readonly name: string;
    readonly ratePerHour: number;
    readonly limitedBy: string;
  } | null;
  readonly lines: readonly {
    readonly name: string;
    readonly cost: number;
    readonly perBottle: number;
    /** Whether it is some product's usual line; others are chosen only by name. */
    readonly usual: boolean;
  }[];
  readonly crossoverBottles: Figure;
  readonly crossoverCases: Figure;
  /** Against the cheapest other usual line; below 0 where a dearer line was asked for. */
  readonly saved: { readonly against: string; readonly amount: number } | null;
  readonly people: Figure;
  readonly hours: Figure;
  readonly breaks: Figure;
  readonly crewHours: Figure;
  readonly overtimeCrewHours: Figure;
  readonly start: string | null;
  readonly finish: string | null;
  readonly kettleFills: Figure;
  readonly kettle: {
    readonly bottlesFromFirst: number;
    readonly bottlesFromEachLater: number;
    readonly lastFillBottles: number;
    readonly lastFillHotGal: number;
  } | null;
  /** Fuel in the units it is sold in; the kettle is a full one, holding is for an hour. */
  readonly fuel: {
    readonly kettleLb: number;
    readonly kettleUnits: number;
    readonly kettleCost: number;
    readonly holdingCostPerHour: number;
    readonly runUnits: number;
    readonly runCost: number;
  } | null;
  readonly syrupLb: Figure;
  readonly lots: readonly {
    readonly lot: string;
    readonly lb: number;
    readonly leftLb: number;
  }[];
  readonly syrupShortLb: Figure;
  readonly materials: readonly {
    readonly part: string;
    readonly need: number;
    /** 0 where the shelf covers the run. */
    readonly buy: Figure;
    readonly short: Figure;
    readonly orderBy: string | null;
    readonly onHand: Figure;
    readonly cost: Figure;
    /** What buying up to a higher price break saves against the least order. */
    readonly saving: Figure;
    readonly leftOver: Figure;
  }[];
  readonly pallets: number;
  readonly load: {
    readonly fullPallets: number;
    readonly casesOnLast: number;
    readonly looseBottles: number;
    readonly bottleG: Figure;
    readonly caseLb: Figure;
    readonly fullPalletLb: Figure;
    readonly lastPalletLb: Figure;
    readonly allLb: Figure;
  };
  readonly lotCode: string | null;
  readonly bestBy: string | null;
  readonly bottleBarcode: string | null;
  readonly caseBarcode: string | null;
  readonly findings: readonly Finding[];
}

export function planAnswer(
  book: Book,
  findings: readonly Finding[],
  question: RunPlanQuestion,
): PlanAnswer {
  const plan = runPlan(book, question);
  const { choice, other, clock, kettle, fuel, lots, pallets, weights } = plan;
  const chosen = choice.chosen;
  return {
    product: plan.product.product,
    bottles: plan.bottles,
    asOf: isoDate(plan.asOf),
    line: chosen
      ? {
          name: chosen.line.name,
          ratePerHour: chosen.rate,
          limitedBy: chosen.limitedBy,
        }
      : null,
    lines: choice.options
      .filter(({ line }) => line.crew > 0)
      .map(({ line, cost }) => ({
        name: line.name,
        cost,
        perBottle: cost / plan.bottles,
        usual: line.usual,
      })),
    crossoverBottles: other?.option.crossover ?? null,
    crossoverCases: other?.crossoverCases ?? null,
    saved: other
      ? { against: other.option.line.name, amount: other.saved }
      : null,
    people: clock ? plan.people : null,
    hours: chosen?.hours ?? null,
    breaks: clock?.breaks ?? null,
    crewHours: clock?.crewHours ?? null,
    overtimeCrewHours: clock?.overtime ?? null,
    start: plan.start === undefined ? null : startText(plan.start),
    finish: clock?.finish === undefined ? null : startText(clock.finish),
    kettleFills: kettle?.fills ?? null,
    kettle: kettle
      ? {
          bottlesFromFirst: kettle.first,
          bottlesFromEachLater: kettle.later,
          lastFillBottles: kettle.lastBottles,
          lastFillHotGal: kettle.lastVolume / LITRES_PER_GALLON,
        }
      : null,
    fuel: fuel
      ? {
          kettleLb: fuel.kettle / KG_PER_LB,
          kettleUnits: fuel.warming.units,
          kettleCost: fuel.warming.cost,
          holdingCostPerHour: fuel.holding.cost,
          runUnits: fuel.run.units,
          runCost: fuel.run.cost,
        }
      : null,
    syrupLb: pounds(plan.syrup),
    lots: (lots?.draws ?? []).map(({ lot, weight, after }) => ({
      lot,
      lb: weight / KG_PER_LB,
      leftLb: after / KG_PER_LB,
    })),
    syrupShortLb: pounds(lots?.short),
    materials: plan.materials.map((pull) => ({
      part: pull.part,
      need: pull.need,
      buy: pull.short === undefined ? null : (pull.order?.buy ?? 0),
      short: pull.short ?? null,
      orderBy: day(pull.orderBy),
      onHand: pull.onHand ?? null,
      cost: pull.order?.cost ?? null,
      saving: pull.order?.saving ?? null,
      leftOver: pull.order?.leftOver ?? null,
    })),
    pallets: pallets.count,
    load: {
      fullPallets: pallets.fullPallets,
      casesOnLast: pallets.casesOnLast,
      looseBottles: pallets.looseBottles,
      bottleG: weights ? weights.bottle * 1000 : null,
      caseLb: pounds(weights?.case),
      fullPalletLb: pounds(weights?.fullPallet),
      lastPalletLb: pounds(weights?.lastPallet),
      allLb: pounds(weights?.all),
    },
    lotCode: plan.lotCode ?? null,
    bestBy: day(plan.bestBy),
    bottleBarcode: plan.product.bottleBarcode ?? null,
    caseBarcode: plan.product.caseBarcode ?? null,
    findings: [...runPlanFindings(plan), ...findings],
  };
}

const pounds = (weight: Kilograms | undefined): Figure =>
  weight === undefined ? null : weight / KG_PER_LB;
const day = (serial: DaySerial | undefined): string | null =>
  serial === undefined ? null : isoDate(serial);
