import {
  as,
  type Kilograms,
  type Money,
  type MoneyPerKg,
  type PerHour,
} from "../measures/quantity";
import { LITRES_PER_GALLON } from "../measures/units";
import type { SeasonCost } from "../trade/costing/cost-bridge";
import { heatCost } from "../trade/costing/heat-cost";
import { landedPrice } from "../trade/costing/landed";
import { materialCost } from "../trade/costing/material-cost";
import { overheadShare } from "../trade/costing/overhead-share";
import { densityInAir } from "../trade/syrup/density";
import { agedFor, type Emptied } from "./aged-syrup";
import type { Book, BookRow } from "./book";
import { overheadsOf } from "./book-days";
import { heatingOf } from "./costing-heat";
import { lineOf } from "./costing-lines";
import { materialsOf } from "./costing-materials";
import { isSameName as same } from "./keys";
import { hoursOf, runsIn } from "./season-runs";
import { seasonDone } from "./season-totals";
import { KG_PER_LB } from "../measures/units";

/** A product's season as it was made: its runs by name, and a bottle's cost where nothing for it is missing. */
export interface YearCost {
  readonly season: number;
  readonly runs: readonly string[];
  readonly bottles: number;
  readonly cost: SeasonCost | undefined;
  readonly missing: readonly string[];
}

/**
 * What a bottle of a product cost in a season, by what its runs drew, filled and took. Syrup is at what was paid for
 * the lots drawn; parts, wages and energy are at the book's one list, as it keeps no older one; overheads are the season's.
 */
export function yearCost(
  book: Book,
  product: BookRow<"products">,
  season: number,
  against: number,
): YearCost {
  const runs = runsIn(book, season).filter((run) =>
    same(run.product, product.product),
  );
  const bottles = runs.reduce((sum, run) => sum + run.goodBottles, 0);
  const costs = runs.map((run) => runCost(book, product, run, season, against));
  const missing = [
    ...(runs.length === 0 ? [`a run of ${product.product} in ${season}`] : []),
    ...new Set(costs.flatMap((cost) => cost.missing)),
  ];
  const each = (of: (cost: RunCost) => number): number =>
    costs.reduce((sum, cost) => sum + of(cost), 0) / bottles;
  return {
    season,
    runs: runs.map(({ run }) => run),
    bottles,
    missing,
    cost:
      missing.length > 0 || bottles <= 0
        ? undefined
        : {
            syrupPrice: as<MoneyPerKg>(
              each(({ syrup }) => syrup) / each(({ drawn }) => drawn),
            ),
            filled: as<Kilograms>(each(({ filled }) => filled)),
            drawn: as<Kilograms>(each(({ drawn }) => drawn)),
            materials: as<Money>(each(({ materials }) => materials)),
            labour: as<Money>(each(({ labour }) => labour)),
            heat: as<Money>(each(({ heat }) => heat)),
            overhead: as<Money>(each(({ overhead }) => overhead)),
            ownBills: as<Money>(each(({ ownBills }) => ownBills)),
          },
  };
}

interface RunCost {
  readonly syrup: number;
  readonly drawn: number;
  readonly filled: number;
  readonly materials: number;
  readonly labour: number;
  readonly heat: number;
  readonly overhead: number;
  readonly ownBills: number;
  readonly missing: readonly string[];
}

function runCost(
  book: Book,
  product: BookRow<"products">,
  run: BookRow<"runs">,
  season: number,
  against: number,
): RunCost {
  const syrup = syrupOf(book, run);
  const materials = materialsFor(book, product, run.goodBottles);
  const row = book.lines.find(({ line }) => same(line, run.line));
  const crew = row ? lineOf(book, product, row).crew : 0;
  const hours = hoursOf(run);
  const heating = heatingOf(book);
  const others = overheadsOf(book, against);
  const bills = overheadsOf(book, season).map((bill) => ({
    item: bill.item,
    isInBoth: others.some(({ item }) => same(item, bill.item)),
    cost: overheadShare(
      {
        item: bill.item,
        perYear: bill.perYear,
        toBulk: bill.shareToBulk ?? as(0),
        driver: bill.sharedBy,
      },
      {
        ...seasonDone(book, season),
        own: {
          gallons: (run.goodBottles * run.averageFill) / LITRES_PER_GALLON,
          hours,
          line: run.line,
        },
      },
    ),
  }));
  return {
    ...syrup,
    filled: run.goodBottles * run.averageFill * densityInAir(run.brix),
    materials: materials.cost,
    labour: crew * hours,
    heat: heating
      ? heatCost(heating, {
          syrup: as<Kilograms>(syrup.drawn),
          brix: run.brix,
          hours,
          bottles: run.goodBottles,
          rate: as<PerHour>((run.goodBottles * 3600) / run.runningTime),
        })
      : 0,
    overhead: totalOf(bills.filter(({ isInBoth }) => isInBoth)),
    ownBills: totalOf(bills.filter(({ isInBoth }) => !isInBoth)),
    missing: [
      ...syrup.missing,
      ...materials.missing,
      ...(crew > 0 ? [] : [`the crew and wages of ${run.line}`]),
      ...(heating ? [] : ["Energy rows for heat"]),
      ...bills
        .filter(({ cost }) => cost === undefined)
        .map(({ item }) => `what shares out ${item} in ${season}`),
    ],
  };
}

const totalOf = (
  bills: readonly { readonly cost: number | undefined }[],
): number => bills.reduce((sum, { cost }) => sum + (cost ?? 0), 0);

function syrupOf(
  book: Book,
  run: BookRow<"runs">,
): Pick<RunCost, "syrup" | "drawn" | "missing"> {
  const draws = book.lotUse.filter(
    ({ to }) => to !== undefined && same(to, run.run),
  );
  const priced = draws.map((use) => ({
    use,
    price: paidFor(book, use.from),
  }));
  return {
    syrup: priced.reduce(
      (sum, { use, price }) => sum + use.pounds * (price ?? 0),
      0,
    ),
    drawn: draws.reduce((sum, { pounds }) => sum + pounds, 0),
    missing: [
      ...(draws.length === 0 ? [`what ${run.run} drew, in Lot use`] : []),
      ...priced
        .filter(({ price }) => price === undefined)
        .map(({ use }) => `what ${use.from} cost`),
    ],
  };
}

/** What a lot cost landed, or what came out of a barrel cost, by weight. */
export function paidFor(book: Book, name: string): MoneyPerKg | undefined {
  const lot = book.lots.find((row) => same(row.lot, name));
  if (lot)
    return landedPrice({
      net: lot.net,
      syrup: as<Money>((lot.net / KG_PER_LB) * lot.pricePerPound),
      freight: lot.inboundFreight ?? as<Money>(0),
      tests: as<Money>(0),
    });
  const barrel = book.oakBarrels.find(
    (row): row is Emptied =>
      same(row.barrel, name) &&
      row.emptiedOn !== undefined &&
      (row.poundsOut ?? 0) > 0,
  );
  return barrel?.syrupCostIn === undefined
    ? undefined
    : agedFor(book, barrel, barrel.syrupCostIn);
}

function materialsFor(
  book: Book,
  product: BookRow<"products">,
  bottles: number,
): { readonly cost: number; readonly missing: readonly string[] } {
  const { known, unknown } = materialsOf(book, product, bottles);
  const costs = known.map((material) => ({
    part: material.part,
    cost: materialCost(material),
  }));
  return {
    cost: costs.reduce(
      (sum, { cost }) => sum + (cost ? cost.cost + cost.freight : 0),
      0,
    ),
    missing: [
      ...unknown.map((part) => `${part} in Parts`),
      ...(known.length + unknown.length === 0 ? ["any material"] : []),
      ...costs
        .filter(({ cost }) => cost === undefined)
        .map(({ part }) => `a price for ${part}`),
    ],
  };
}
