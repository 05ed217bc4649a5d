import { as, type Money } from "../measures/quantity";
import type { Heating } from "../trade/costing/heat-cost";
import type { Book } from "./book";
import { isSameName as same } from "./keys";
import { energyFigure, setting } from "./setting";

/** What heating a run costs by, from the Energy table; undefined when a figure of it is missing. */
export function heatingOf(book: Book): Heating | undefined {
  const fuel = energyFigure(book, "Kettle fuel");
  const fuelPrice = fuel && rawFigure(book, `${fuel} price`);
  const fuelHeat = fuel && rawFigure(book, `Heat in ${fuel}`);
  const efficiency = energyFigure(book, "Kettle efficiency");
  const holdLoss = energyFigure(book, "Hold loss");
  const start = energyFigure(book, "Start temperature");
  const pack = setting(book, "Pack temperature");
  if (
    fuelPrice === undefined ||
    fuelHeat === undefined ||
    efficiency === undefined ||
    holdLoss === undefined ||
    start === undefined ||
    pack === undefined
  )
    return undefined;
  return {
    fuelPrice: as<Money>(fuelPrice),
    fuelHeat,
    efficiency,
    holdLoss,
    start,
    pack,
    power: energyFigure(book, "Pumps, coder, shrink tunnel") ?? 0,
    electricity: energyFigure(book, "Electricity") ?? as<Money>(0),
  };
}

const rawFigure = (book: Book, item: string): number | undefined => {
  const value = book.energy.find((row) => same(row.item, item))?.value;
  return typeof value === "number" ? value : undefined;
};
