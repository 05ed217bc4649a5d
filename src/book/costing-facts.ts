import { answerOrNone, unusable } from "../measures/cannot-answer";
import {
  as,
  type Brix,
  type DaySerial,
  type Money,
  type MoneyPerKg,
  type Share,
} from "../measures/quantity";
import { calendarOf } from "../measures/read-date";
import { KG_PER_LB, LITRES_PER_GALLON } from "../measures/units";
import type { BottleFacts } from "../trade/costing/bottle-cost";
import { landedPrice } from "../trade/costing/landed";
import type { Lot } from "../trade/costing/lot-cost";
import type { Drivers } from "../trade/costing/overhead-share";
import { priceOn } from "../trade/costing/price-list";
import type { Channel } from "../trade/pricing/channel-price";
import type { Book, BookRow } from "./book";
import { bulkPrice } from "./bulk-price";
import { heatingOf } from "./costing-heat";
import { lineOf } from "./costing-lines";
import { materialsOf } from "./costing-materials";
import { isSameName as same } from "./keys";
import { overheadsOf } from "./book-days";
import { setting } from "./setting";
import { leftOfLot } from "./stock";

export interface CostingQuestion {
  readonly product: string;
  readonly bottles: number;
  /** A line by name instead of the cheapest of the usual ones. */
  readonly line?: string;
}

export interface CostingFacts {
  readonly product: BookRow<"products">;
  readonly asOf: DaySerial;
  readonly bottle: BottleFacts;
  readonly channels: readonly Channel[];
}

/** Gathers from the book what one product's costing follows from. Refuses (#VALUE!) a product the book does not have. */
export function costingFacts(
  book: Book,
  { product: code, bottles, line }: CostingQuestion,
): CostingFacts {
  const product = book.products.find((p) => same(p.product, code));
  if (!product) {
    throw unusable(
      `There is no product "${code}"; the book has ${book.products.map((p) => p.product).join(", ")}`,
    );
  }
  const asOf = newestDate(book);
  const season = calendarOf(asOf).year;
  const lots = suitableLots(book, product);
  const priced = bulkPrice(book, product.syrupKind, asOf);
  const materials = materialsOf(book, product, bottles);
  return {
    product,
    asOf,
    channels: book.channels
      .filter((c) => c.bottlesPerOrder > 0)
      .map((c) => channelOf(book, product, c, asOf)),
    bottle: {
      bottles,
      perCase: product.bottlesPerCase,
      fill: product.fill,
      syrupKind: product.syrupKind,
      brix: weightedBrix(lots),
      loss: setting(book, "Syrup loss") ?? as<Share>(0),
      bulkPrice: priced && as<MoneyPerKg>(priced.pricePerPound / KG_PER_LB),
      lots,
      lines: book.lines.map((row) => lineOf(book, product, row)),
      ...(line === undefined ? {} : { lineAsked: line }),
      unknownParts: materials.unknown,
      materials: materials.known,
      heating: heatingOf(book),
      overheads: overheadsOf(book, season).map((o) => ({
        item: o.item,
        perYear: o.perYear,
        toBulk: o.shareToBulk ?? as<Share>(0),
        driver: o.sharedBy,
      })),
      season: driversOf(book, season),
    },
  };
}

/** The day the costing speaks of: the newest date of what was received, used, run or priced. */
const newestDate = (book: Book): DaySerial =>
  as<DaySerial>(
    [
      ...book.lots.map((l) => l.received),
      ...book.lotUse.map((u) => u.date),
      ...book.runs.map((r) => r.date),
      ...book.bulkPrices.map((p) => p.validFrom),
    ].reduce((a, b) => Math.max(a, b), 0),
  );

interface SuitableLot extends Lot {
  readonly brix: Brix;
}

/** Lots of the product's kind and organic status with something left. */
const suitableLots = (
  book: Book,
  product: BookRow<"products">,
): readonly SuitableLot[] =>
  book.lots
    .filter(
      (lot) =>
        same(lot.grade, product.syrupKind) &&
        (lot.organic ?? false) === (product.organic ?? false),
    )
    .map((lot) => ({
      received: lot.received,
      left: leftOfLot(book, lot),
      brix: lot.brix,
      price: landedPrice({
        net: lot.net,
        syrup: as<Money>((lot.net / KG_PER_LB) * lot.pricePerPound),
        freight: lot.inboundFreight ?? as<Money>(0),
        tests: as<Money>(0),
      }),
    }))
    .filter((lot) => lot.left > 0);

function weightedBrix(lots: readonly SuitableLot[]): Brix | undefined {
  const weight = lots.reduce((sum, lot) => sum + lot.left, 0);
  return weight > 0
    ? as<Brix>(lots.reduce((sum, lot) => sum + lot.left * lot.brix, 0) / weight)
    : undefined;
}

const driversOf = (book: Book, season: number): Omit<Drivers, "own"> => {
  const runs = book.runs.filter((run) => calendarOf(run.date).year === season);
  return {
    runs: runs.length,
    lots: book.lots.filter((lot) => lot.cropYear === season).length,
    gallons: runs.reduce(
      (sum, run) =>
        sum + (run.goodBottles * run.averageFill) / LITRES_PER_GALLON,
      0,
    ),
    hours: runs.map((run) => ({
      line: run.line,
      hours: (run.runningTime + run.setup + run.cleanDown) / 3600,
    })),
  };
};

function channelOf(
  book: Book,
  product: BookRow<"products">,
  channel: BookRow<"channels">,
  asOf: DaySerial,
): Channel {
  return {
    name: channel.channel,
    goal: channel.goalMargin,
    shares: as<Share>(
      (channel.feeShare ?? 0) +
        (channel.marketing ?? 0) +
        (channel.promotionAndReturns ?? 0) +
        (channel.broker ?? 0),
    ),
    fixedPerBottle: as<Money>(
      (channel.feePerOrder ?? 0) / channel.bottlesPerOrder,
    ),
    price: priceIn(book, product.product, channel.channel, asOf),
  };
}

function priceIn(
  book: Book,
  product: string,
  channel: string,
  asOf: DaySerial,
): Money | undefined {
  const listed = book.prices
    .filter((p) => same(p.product, product) && same(p.channel, channel))
    .map((p) => ({ item: p.channel, from: p.validFrom, price: p.price }));
  return answerOrNone(() => priceOn(channel, asOf, listed).price);
}
