import { answerOrNone, unusable } from "../measures/cannot-answer";
import {
  as,
  type DaySerial,
  type Money,
  type Share,
} from "../measures/quantity";
import { calendarOf } from "../measures/read-date";
import type { BottleFacts } from "../trade/costing/bottle-cost";
import { priceOn } from "../trade/costing/price-list";
import type { Channel } from "../trade/pricing/channel-price";
import type { Book, BookRow } from "./book";
import { heatingOf } from "./costing-heat";
import { lineOf } from "./costing-lines";
import { materialsOf } from "./costing-materials";
import { isSameName as same } from "./keys";
import { newestDay } from "./newest-day";
import { overheadsOf } from "./book-days";
import { seasonBefore, seasonDone } from "./season-totals";
import { setting } from "./setting";
import { syrupFor } from "./syrup-for-product";

export interface CostingQuestion {
  readonly product: string;
  readonly bottles: number;
  /** A line by name instead of the cheapest of the usual ones. */
  readonly line?: string;
  /** Another day than the newest of the book. */
  readonly asOf?: DaySerial;
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
  { product: code, bottles, line, asOf: day }: CostingQuestion,
): CostingFacts {
  const product = book.products.find((p) => same(p.product, code));
  if (!product) {
    throw unusable(
      `There is no product "${code}"; the book has ${book.products.map((p) => p.product).join(", ")}`,
    );
  }
  const asOf = day ?? newestDay(book) ?? as<DaySerial>(0);
  const season = calendarOf(asOf).year;
  const syrup = syrupFor(book, product, asOf);
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
      brix: syrup.brix,
      loss: setting(book, "Syrup loss") ?? as<Share>(0),
      bulkPrice: syrup.replacement,
      syrupNeeds: syrup.needs,
      lots: syrup.lots,
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
      season: { ...seasonDone(book, season), ...standIn(book, season, asOf) },
    },
  };
}

function standIn(
  book: Book,
  season: number,
  asOf: DaySerial,
): Pick<BottleFacts["season"], "before"> {
  const before = seasonBefore(book, season, asOf);
  return before === undefined ? {} : { before };
}

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

export function priceIn(
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
