import { answerOrNone } from "../../measures/cannot-answer";
import {
  as,
  type Brix,
  type ColdLitres,
  type Kilograms,
  type Money,
  type MoneyPerKg,
  type Share,
} from "../../measures/quantity";
import { LITRES_PER_GALLON } from "../../measures/units";
import {
  chooseLine,
  type Line,
  type LineChoice,
  type LineOption,
  mayRun,
} from "../lines/choice";
import { densityInAir } from "../syrup/density";
import { type ByMethod, mapMethods } from "./by-method";
import { heatCost, type Heating } from "./heat-cost";
import { laborPerBottle } from "./labor";
import { type Lot, lotCost } from "./lot-cost";
import {
  type Material,
  type MaterialCost,
  materialCost,
} from "./material-cost";
import { type Drivers, type Overhead, overheadParts } from "./overhead-share";
import { syrupCost, syrupPerBottle } from "./syrup-per-bottle";

/** Everything a bottle's cost follows from; what is undefined is missing and withholds the total. */
export interface BottleFacts {
  readonly bottles: number;
  readonly perCase: number;
  readonly fill: ColdLitres;
  readonly syrupKind: string;
  readonly brix: Brix | undefined;
  readonly loss: Share;
  readonly bulkPrice: MoneyPerKg | undefined;
  /** What the book lacks for the syrup's price and Brix, where that is more than they themselves. */
  readonly syrupNeeds?: readonly string[];
  /** Lots that may go into this product. */
  readonly lots: readonly Lot[];
  readonly lines: readonly Line[];
  readonly lineAsked?: string;
  /** Names of parts that the parts table does not hold. */
  readonly unknownParts: readonly string[];
  readonly materials: readonly Material[];
  readonly heating: Heating | undefined;
  readonly overheads: readonly Overhead[];
  readonly season: Omit<Drivers, "own">;
}

export interface BottleCost {
  readonly choice: LineChoice;
  readonly syrupPerBottle: Kilograms | undefined;
  readonly syrup: ByMethod;
  readonly materials: readonly MaterialCost[];
  /** Per bottle, at replacement, in the order of the sheet. */
  readonly parts: readonly {
    readonly name: string;
    readonly perBottle: Money | undefined;
  }[];
  readonly direct: ByMethod;
  readonly overhead: Money | undefined;
  /** The closed season that some of the overheads, and so the full cost, are estimated from. */
  readonly estimateFrom: number | undefined;
  readonly full: ByMethod;
  readonly perCase: ByMethod;
  /** What has to be entered before there is a total. */
  readonly missing: readonly string[];
}

/** The direct and full cost of a bottle in a run, valued three ways. */
export function bottleCost(facts: BottleFacts): BottleCost {
  const { bottles, brix, bulkPrice } = facts;
  const choice: LineChoice =
    bulkPrice === undefined
      ? { chosen: undefined, options: [] }
      : chooseLine(facts.lines, {
          bottles,
          bulkPrice,
          ...(facts.lineAsked === undefined ? {} : { asked: facts.lineAsked }),
        });
  const line = choice.chosen;
  const each =
    brix === undefined
      ? undefined
      : syrupPerBottle(facts.fill, densityInAir(brix), facts.loss);
  const need =
    each === undefined || line === undefined
      ? undefined
      : as<Kilograms>(bottles * each + line.line.purge);
  const prices = syrupPrices(facts, need);
  const syrup = mapMethods(prices, (price) => each && syrupCost(each, price));
  const purge = mapMethods(
    prices,
    (price) => line && share(line.line.purge * price, bottles),
  );
  const materials = facts.materials.map((material) => ({
    material,
    cost: materialCost(material),
  }));
  const costed = materials.flatMap(({ cost }) => cost ?? []);
  const allPriced =
    costed.length === materials.length &&
    materials.length > 0 &&
    facts.unknownParts.length === 0;
  const material = allPriced
    ? share(sum(costed.map((m) => m.cost)), bottles)
    : undefined;
  const freight = allPriced
    ? share(sum(costed.map((m) => m.freight)), bottles)
    : undefined;
  const labour = labourOf(line, bottles);
  const heat = heatOf(facts, line, need);
  const overheads = overheadParts(facts.overheads, {
    ...facts.season,
    own: {
      gallons: (bottles * facts.fill) / LITRES_PER_GALLON,
      hours: line?.hours ?? 0,
      line: line?.line.name ?? "",
    },
  });
  const overhead = total(
    overheads.map(({ cost }) => cost && share(cost, bottles)),
  );
  const direct = mapMethods(prices, (_, method) =>
    total([syrup[method], purge[method], material, freight, labour, heat]),
  );
  const full = mapMethods(direct, (amount) => total([amount, overhead]));
  const estimated = overheads.find((part) => part.estimateFrom !== undefined);
  return {
    choice,
    syrupPerBottle: each,
    syrup,
    materials: costed,
    parts: [
      { name: "Syrup in the bottle", perBottle: syrup.replacement },
      { name: "Start and purge syrup", perBottle: purge.replacement },
      { name: "Materials", perBottle: material },
      { name: "Freight in", perBottle: freight },
      { name: "Crew", perBottle: labour },
      { name: "Heat and power", perBottle: heat },
      { name: "Overheads", perBottle: overhead },
    ],
    direct,
    overhead,
    estimateFrom: estimated?.estimateFrom,
    full,
    perCase: mapMethods(full, (amount) => as<Money>(amount * facts.perCase)),
    missing: [
      ...facts.unknownParts.map((part) => `${part} in Parts`),
      ...(materials.length === 0 && facts.unknownParts.length === 0
        ? ["any material"]
        : []),
      ...materials
        .filter(({ cost }) => !cost)
        .map(({ material: m }) => `a price for ${m.part}`),
      ...overheads
        .filter(({ cost }) => cost === undefined)
        .map(({ item }) => `what shares out ${item}`),
      ...(facts.syrupNeeds ?? syrupNeeds(facts)),
      ...(facts.lines.some((each) => mayRun(each, facts.lineAsked))
        ? []
        : ["a line with its crew and wages"]),
      ...(facts.heating === undefined
        ? [
            "Energy rows for fuel, its price and heat, efficiency, hold loss and start temperature",
          ]
        : []),
    ],
  };
}

const syrupNeeds = (facts: BottleFacts): readonly string[] => [
  ...(facts.bulkPrice ? [] : [`a bulk price for ${facts.syrupKind}`]),
  ...(facts.brix ? [] : [`a Brix, as no ${facts.syrupKind} lot is in stock`]),
];

function syrupPrices(
  { lots, bulkPrice }: BottleFacts,
  need: Kilograms | undefined,
): ByMethod<MoneyPerKg> {
  const drawn = (
    method: "average" | "oldest first",
  ): MoneyPerKg | undefined => {
    if (need === undefined) return undefined;
    // Too little in stock leaves the replacement cost standing; the stock check says how much is short.
    return answerOrNone(() =>
      as<MoneyPerKg>(lotCost(method, need, lots) / need),
    );
  };
  return {
    replacement: bulkPrice,
    average: drawn("average"),
    oldestFirst: drawn("oldest first"),
  };
}

const labourOf = (
  option: LineOption | undefined,
  bottles: number,
): Money | undefined => {
  if (!option || option.line.crew <= 0) return undefined;
  const { change, running } = laborPerBottle(option.line.crew, {
    bottles,
    rate: option.rate,
    setup: option.line.setup,
    clean: option.line.clean,
  });
  return as<Money>(change + running);
};

function heatOf(
  { heating, brix, bottles }: BottleFacts,
  line: LineOption | undefined,
  need: Kilograms | undefined,
): Money | undefined {
  if (!heating || !line || need === undefined || brix === undefined)
    return undefined;
  return share(
    heatCost(heating, {
      syrup: need,
      brix,
      hours: line.hours,
      bottles,
      rate: line.rate,
    }),
    bottles,
  );
}

const share = (amount: number, bottles: number): Money =>
  as<Money>(amount / bottles);
const sum = (amounts: readonly number[]): number =>
  amounts.reduce((a, b) => a + b, 0);
const total = (amounts: readonly (Money | undefined)[]): Money | undefined =>
  amounts.every((amount) => amount !== undefined)
    ? as<Money>(sum(amounts))
    : undefined;
