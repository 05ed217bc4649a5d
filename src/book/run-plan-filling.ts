import { CannotAnswer } from "../measures/cannot-answer";
import {
  as,
  type HotLitres,
  type Kilograms,
  type Share,
} from "../measures/quantity";
import { wholeUp } from "../measures/whole-up";
import { type Palletised, palletise } from "../trade/codes/pallets";
import type { BottleFacts } from "../trade/costing/bottle-cost";
import { type KettleFills, kettleFills } from "../trade/costing/kettle-fills";
import { type KettleFuel, kettleFuel } from "../trade/costing/kettle-fuel";
import {
  packedWeights,
  type PackedWeights,
} from "../trade/costing/pallet-weight";
import { syrupPerBottle } from "../trade/costing/syrup-per-bottle";
import type { LineOption } from "../trade/lines/choice";
import { densityInAir } from "../trade/syrup/density";
import type { Book, BookRow } from "./book";
import { setting } from "./setting";

export interface PlannedPallets extends Palletised {
  /** Pallets in all, the one that is not full counted. */
  readonly count: number;
}

/** Syrup to draw: the filled bottles, those that break among them, and the purge. */
export function syrupFor(
  { bottles, fill, brix, loss }: BottleFacts,
  breakage: Share,
  chosen: LineOption | undefined,
): Kilograms | undefined {
  if (brix === undefined || !chosen) return undefined;
  const filled = wholeUp(bottles / (1 - breakage));
  return as<Kilograms>(
    filled * syrupPerBottle(fill, densityInAir(brix), loss) + chosen.line.purge,
  );
}

/** The fills of the kettle, or why there are none to tell. */
export function kettleOf(
  book: Book,
  { bottles, fill, brix }: BottleFacts,
  breakage: Share,
  chosen: LineOption | undefined,
): KettleFills | string | undefined {
  const hotVolume = setting(book, "Kettle working fill");
  const temperature = setting(book, "Pack temperature");
  if (
    hotVolume === undefined ||
    temperature === undefined ||
    brix === undefined ||
    !chosen
  )
    return undefined;
  try {
    return kettleFills(bottles, {
      hotVolume,
      brix,
      fill: temperature,
      leftBehind: setting(book, "Kettle left-behind") ?? as<HotLitres>(0),
      purge: chosen.line.purge,
      bottle: fill,
      breakage,
    });
  } catch (problem) {
    if (problem instanceof CannotAnswer) return problem.message;
    throw problem;
  }
}

export function palletsOf(
  { bottlesPerCase, casesPerLayer, layersPerPallet }: BookRow<"products">,
  bottles: number,
): PlannedPallets {
  const load = palletise(bottles, {
    perCase: bottlesPerCase,
    casesPerLayer,
    layers: layersPerPallet,
  });
  const isPart = load.casesOnLast > 0 || load.looseBottles > 0;
  return { ...load, count: load.fullPallets + (isPart ? 1 : 0) };
}

export function weightsOf(
  book: Book,
  product: BookRow<"products">,
  { brix, fill }: BottleFacts,
  bottles: number,
): PackedWeights | undefined {
  const emptyCase = setting(book, "Empty case");
  const emptyPallet = setting(book, "Empty pallet");
  const { emptyBottle } = product;
  if (
    brix === undefined ||
    emptyBottle === undefined ||
    emptyCase === undefined ||
    emptyPallet === undefined
  )
    return undefined;
  return packedWeights(
    {
      fill,
      brix,
      emptyBottle,
      emptyCase,
      emptyPallet,
      perCase: product.bottlesPerCase,
      perPallet: product.casesPerLayer * product.layersPerPallet,
    },
    palletsOf(product, bottles),
  );
}

export function fuelOf(
  book: Book,
  { brix, heating }: BottleFacts,
  chosen: LineOption | undefined,
  syrup: Kilograms | undefined,
): KettleFuel | undefined {
  const hotVolume = setting(book, "Kettle working fill");
  return heating === undefined ||
    brix === undefined ||
    hotVolume === undefined ||
    syrup === undefined ||
    !chosen
    ? undefined
    : kettleFuel(heating, { brix, hotVolume, syrup, hours: chosen.hours });
}
