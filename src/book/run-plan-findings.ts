import { isoDate } from "../measures/read-date";
import { KG_PER_LB, LITRES_PER_GALLON } from "../measures/units";
import type { Pull } from "../trade/costing/pull-list";
import { type Finding, listed } from "./finding";
import type { RunPlan } from "./run-plan";

/** What somebody has to do before the run, the most pressing first. */
export const runPlanFindings = (plan: RunPlan): readonly Finding[] => [
  ...needed(plan, true),
  ...shortSyrup(plan),
  ...plan.materials
    .filter((pull) => !isSoldSingly(pull))
    .flatMap((pull) => shortPart(plan, pull)),
  ...ofTheRun(plan),
];

/** The same without what is short of each part, for where the pull list itself is seen. */
export const runFindings = (plan: RunPlan): readonly Finding[] => [
  ...needed(plan, true),
  ...shortSyrup(plan),
  ...ofTheRun(plan),
];

const ofTheRun = (plan: RunPlan): readonly Finding[] => [
  ...smallFill(plan),
  ...dearerLine(plan),
  ...overtime(plan),
  ...soldSingly(plan),
  ...needed(plan, false),
];

const needed = (plan: RunPlan, vital: boolean): readonly Finding[] =>
  plan.needs
    .filter(({ isVital = false }) => isVital === vital)
    .map(({ needs, open }) => ({
      where: planPlace(plan),
      found: `needs ${needs}`,
      meaning: `without it ${open} is left open; a blank is never counted as zero`,
      todo: "enter it in the book and plan the run again",
    }));

/** Where a finding about a run's own plan stands. */
const planPlace = ({ product, bottles }: RunPlan): string =>
  `Run plan of ${whole(bottles)} ${product.product}`;

function shortSyrup(plan: RunPlan): readonly Finding[] {
  const { lots, syrup, product, choice } = plan;
  if (!lots || syrup === undefined || lots.short <= 0) return [];
  const purge = choice.chosen?.line.purge ?? 0;
  const enough = Math.max(
    0,
    Math.floor(
      ((syrup - lots.short - purge) / (syrup - purge)) * plan.bottles + 1e-9,
    ),
  );
  return [
    {
      where: planPlace(plan),
      found: `short by ${pounds(lots.short)} lb of ${kindOf(plan)}`,
      meaning: `the run draws ${pounds(syrup)} lb, and suitable lots hold ${pounds(syrup - lots.short)} lb`,
      todo:
        enough > 0
          ? `buy or blend more ${product.syrupKind}, or run ${whole(enough)} bottles`
          : `buy or blend ${product.syrupKind} first`,
    },
  ];
}

const kindOf = ({ product }: RunPlan): string =>
  `${product.organic === true ? "organic " : ""}${product.syrupKind}`;

function shortPart(
  plan: RunPlan,
  { part, short, order, orderBy }: Pull,
): readonly Finding[] {
  if (!order || short === undefined) return [];
  const isLate = orderBy !== undefined && orderBy < plan.asOf;
  const by =
    orderBy === undefined
      ? ""
      : isLate
        ? ` at once: ${isoDate(orderBy)} was the last day for it`
        : ` by ${isoDate(orderBy)}`;
  const cost = order.cost === undefined ? "" : ` for ${money(order.cost)}`;
  return [
    {
      where: planPlace(plan),
      found: `short by ${whole(short)} of ${part}`,
      meaning: isLate
        ? "an order today comes after the run begins"
        : order.saving > 0
          ? `buying up to the next price break, ${whole(order.buy)} instead of ${whole(order.least)}, saves ${money(order.saving)} and leaves ${whole(order.leftOver)} over`
          : `the least order that does leaves ${whole(order.leftOver)} over`,
      todo: `order ${whole(order.buy)}${cost}${by}`,
    },
  ];
}

/** What may be ordered one by one is no order to plan a day around: ink by the mark, wrap by the pallet. */
const isSoldSingly = ({ order }: Pull): boolean => order?.singly === true;

function soldSingly(plan: RunPlan): readonly Finding[] {
  const short = plan.materials.filter(
    (pull) => isSoldSingly(pull) && pull.order,
  );
  if (short.length === 0) return [];
  return [
    {
      where: planPlace(plan),
      found: `none on hand, or too few, of ${listed(short.map(({ part, short: pieces }) => `${part} (${whole(pieces ?? 0)})`))}`,
      meaning: "the book counts these by the piece",
      todo: "look whether there is enough, and enter what is on hand",
    },
  ];
}

function smallFill(plan: RunPlan): readonly Finding[] {
  const { kettle, leastFill } = plan;
  if (!kettle || leastFill === undefined || kettle.lastVolume >= leastFill)
    return [];
  return [
    {
      where: planPlace(plan),
      found: `the last kettle fill is only ${gallons(kettle.lastVolume)} gal hot`,
      meaning: `below ${gallons(leastFill)} gal the kettle does not circulate`,
      todo:
        kettle.fills > 1
          ? "fill the last two kettles alike, or change the run size"
          : "run more bottles, or fill this run from a smaller kettle",
    },
  ];
}

function dearerLine(plan: RunPlan): readonly Finding[] {
  const { other, choice } = plan;
  if (!other || !choice.chosen || other.saved >= 0) return [];
  return [
    {
      where: planPlace(plan),
      found: `${choice.chosen.line.name} costs ${money(-other.saved)} more than ${other.option.line.name}`,
      meaning: "the line asked for is not the cheapest for this run",
      todo: `take ${other.option.line.name}, unless something else decides`,
    },
  ];
}

function overtime(plan: RunPlan): readonly Finding[] {
  const hours = plan.clock?.overtime ?? 0;
  if (hours <= 0) return [];
  return [
    {
      where: planPlace(plan),
      found: `${hours.toFixed(1)} crew-hours are overtime`,
      meaning:
        "the run is longer than a working day; overtime is not in its cost",
      todo: "split it over two days, or count the overtime in the price",
    },
  ];
}

const whole = (value: number): string =>
  value.toLocaleString("en-US", { maximumFractionDigits: 0 });
const pounds = (weight: number): string =>
  whole(Math.ceil(weight / KG_PER_LB - 1e-9));
const gallons = (litres: number): string =>
  (litres / LITRES_PER_GALLON).toFixed(1);
const money = (value: number): string =>
  value.toLocaleString("en-US", {
    style: "currency",
    currency: "USD",
  });
