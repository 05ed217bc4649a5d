import type { RunPlan } from "../../../book/run-plan";
import { startText } from "../../../book/run-plan-start";
import type { Kilograms } from "../../../measures/quantity";
import { isoDate } from "../../../measures/read-date";
import { KG_PER_LB, LITRES_PER_GALLON } from "../../../measures/units";
import type { Pull } from "../../../trade/costing/pull-list";
import { amount, count } from "../money";
import type { Fact } from "./facts-list";

const some = (number: number, one: string, many = `${one}s`): string =>
  `${count(number)} ${number === 1 ? one : many}`;
const pounds = (weight: Kilograms, digits = 0): string =>
  `${(weight / KG_PER_LB).toLocaleString("en-US", { maximumFractionDigits: digits })} lb`;
const clock = (moment: number): string => startText(moment).replace("T", " ");

export function lineFacts({
  choice,
  other,
  clock: hours,
  people,
}: RunPlan): readonly Fact[] {
  const chosen = choice.chosen;
  if (!chosen) return [];
  const { crossover } = other?.option ?? {};
  return [
    {
      name: "Rate",
      figure: `${count(Math.round(chosen.rate))} an hour`,
      remark: `limited by ${chosen.limitedBy}`,
    },
    ...(other
      ? [
          {
            name: `Even with ${other.option.line.name}`,
            figure:
              crossover === undefined
                ? "at no run size"
                : some(crossover, "bottle"),
            ...(other.crossoverCases === undefined
              ? {}
              : { remark: some(other.crossoverCases, "case") }),
          },
        ]
      : []),
    ...(hours
      ? [
          {
            name: "Crew-hours",
            figure: hours.crewHours.toFixed(2),
            remark: `${some(people, "person", "people")} for ${chosen.hours.toFixed(2)} h${hours.breaks > 0 ? `, and ${some(hours.breaks, "break")}` : ""}`,
          },
          ...((hours.overtime ?? 0) > 0
            ? [
                {
                  name: "Of them overtime",
                  figure: (hours.overtime ?? 0).toFixed(2),
                },
              ]
            : []),
          {
            name: "Finish",
            figure:
              hours.finish === undefined
                ? `${hours.elapsed.toFixed(2)} h after the start`
                : clock(hours.finish),
          },
        ]
      : []),
  ];
}

export function kettleFacts({
  kettle,
  leastFill,
  fuel,
}: RunPlan): readonly Fact[] {
  if (!kettle) return [];
  const last = (kettle.lastVolume / LITRES_PER_GALLON).toFixed(1);
  const isSmall = leastFill !== undefined && kettle.lastVolume < leastFill;
  return [
    {
      name: "Kettle fills",
      figure: count(kettle.fills),
      remark: `${count(kettle.first)} good bottles from the first${kettle.fills > 1 ? `, ${count(kettle.later)} from each after it` : ""}`,
    },
    {
      name: kettle.fills > 1 ? "The last fill" : "Hot syrup in it",
      figure: `${last} gal`,
      ...(isSmall
        ? {
            remark: `too small: ${(leastFill / LITRES_PER_GALLON).toFixed(1)} gal circulate`,
            isPressing: true,
          }
        : { remark: `for ${some(kettle.lastBottles, "bottle")}` }),
    },
    ...(fuel
      ? [
          {
            name: "Fuel for the run",
            figure: amount(fuel.run.cost),
            remark: `a full kettle ${amount(fuel.warming.cost)} to warm, ${amount(fuel.holding.cost)} an hour to hold`,
          },
        ]
      : []),
  ];
}

export function lotFacts({ lots, product }: RunPlan): readonly Fact[] {
  if (!lots) return [];
  return [
    ...lots.draws.map(({ lot, weight, after }) => ({
      name: lot,
      figure: pounds(weight, 1),
      remark: `${pounds(after, 1)} left`,
    })),
    ...(lots.short > 0
      ? [
          {
            name: "Short",
            figure: pounds(lots.short, 1),
            remark: `of ${product.organic === true ? "organic " : ""}${product.syrupKind}`,
            isPressing: true,
          },
        ]
      : []),
  ];
}

export const materialFacts = (plan: RunPlan): readonly Fact[] =>
  plan.materials.map((pull) => ({
    name:
      pull.description === undefined
        ? pull.part
        : `${pull.part} · ${pull.description}`,
    figure: count(pull.need),
    ...orderRemark(pull, plan.asOf),
  }));

function orderRemark(
  { order, short, orderBy, onHand }: Pull,
  asOf: number,
): Pick<Fact, "remark" | "isPressing"> {
  if (onHand === undefined) return { remark: "On hand is not entered" };
  if (!order || short === undefined) return {};
  const by =
    orderBy === undefined
      ? ""
      : orderBy < asOf
        ? ` at once (${isoDate(orderBy)} was the last day)`
        : ` by ${isoDate(orderBy)}`;
  const cost = order.cost === undefined ? "" : `, ${amount(order.cost)}`;
  const up =
    order.saving > 0
      ? ` The next price break saves ${amount(order.saving)} and leaves ${count(order.leftOver)} over.`
      : "";
  return {
    remark: `Short ${count(short)}: order ${count(order.buy)}${by}${cost}.${up}`,
    isPressing: !order.singly,
  };
}

export function packedFacts(plan: RunPlan): readonly Fact[] {
  const { pallets, weights, lotCode, bestBy } = plan;
  const last = [
    ...(pallets.casesOnLast > 0
      ? [`${some(pallets.casesOnLast, "case")} on the last`]
      : []),
    ...(pallets.looseBottles > 0
      ? [`${some(pallets.looseBottles, "bottle")} that fill no case`]
      : []),
  ];
  return [
    {
      name: "Pallets",
      figure: count(pallets.count),
      remark: [`${count(pallets.fullPallets)} full`, ...last].join(", "),
    },
    ...(weights
      ? [
          { name: "A case", figure: pounds(weights.case, 2) },
          ...(pallets.fullPallets > 0
            ? [{ name: "A full pallet", figure: pounds(weights.fullPallet) }]
            : []),
          ...(weights.lastPallet === undefined
            ? []
            : [
                { name: "The last pallet", figure: pounds(weights.lastPallet) },
              ]),
        ]
      : []),
    ...(lotCode === undefined ? [] : [{ name: "Lot code", figure: lotCode }]),
    ...(bestBy === undefined
      ? []
      : [{ name: "Best by", figure: isoDate(bestBy) }]),
    ...(plan.product.caseBarcode === undefined
      ? []
      : [{ name: "Barcode of a case", figure: plan.product.caseBarcode }]),
  ];
}
