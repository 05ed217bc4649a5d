import { unusable } from "../../measures/cannot-answer";
import {
  as,
  type ColdLitres,
  type HotLitres,
  type Kilograms,
} from "../../measures/quantity";
import { hotVolume } from "../filling/hot-volume";
import { type Kettle, kettleYield } from "../filling/kettle";
import { volumeOf } from "../syrup/weight";

export interface KettleFills {
  /** Good bottles from the first fill, which the purge comes out of. */
  readonly first: number;
  /** Good bottles from every full fill after it. */
  readonly later: number;
  readonly fills: number;
  readonly lastBottles: number;
  /** Hot syrup in the kettle at the last fill, what stays behind in it counted. */
  readonly lastVolume: HotLitres;
}

/**
 * How often the kettle is filled for a run. The line is purged once, so the purge comes out of the first fill.
 * Refuses (#VALUE!) a kettle that cannot fill one bottle.
 */
export function kettleFills(bottles: number, kettle: Kettle): KettleFills {
  const first = kettleYield(kettle).bottles;
  const later = kettleYield({ ...kettle, purge: as<Kilograms>(0) }).bottles;
  if (later < 1)
    throw unusable("kettle working fill: it does not fill one bottle");
  const fills = bottles <= first ? 1 : 1 + Math.ceil((bottles - first) / later);
  const lastBottles =
    fills === 1 ? bottles : bottles - first - (fills - 2) * later;
  const purged =
    fills === 1 ? volumeOf(kettle.purge, kettle.brix) : as<ColdLitres>(0);
  const cold = as<ColdLitres>(
    (lastBottles / (1 - kettle.breakage)) * kettle.bottle + purged,
  );
  return {
    first,
    later,
    fills,
    lastBottles,
    lastVolume: as<HotLitres>(
      kettle.leftBehind + hotVolume(cold, kettle.brix, kettle.fill),
    ),
  };
}
