import { unanswerable } from "../../measures/cannot-answer";
import {
  as,
  type Brix,
  type Celsius,
  type ColdLitres,
  type HotLitres,
  type Millimetres,
} from "../../measures/quantity";
import { hotVolume } from "./hot-volume";

/** How far the level falls in a straight neck as the fill cools to 68 °F. The container is taken as it is. */
export function levelDrop(
  volume: ColdLitres,
  brix: Brix,
  fill: Celsius,
  neckBore: Millimetres,
): Millimetres {
  const shrinks = (hotVolume(volume, brix, fill) - volume) * 1_000_000;
  return as<Millimetres>(shrinks / ((Math.PI * neckBore * neckBore) / 4));
}

/** Room left above the hot fill; no answer when the fill is more than the container holds to the brim. */
export function headspace(
  brimful: HotLitres,
  volume: ColdLitres,
  brix: Brix,
  fill: Celsius,
): HotLitres {
  const hot = hotVolume(volume, brix, fill);
  if (hot > brimful) {
    throw unanswerable(
      `brimful: the fill will not fit, it is ${(hot * 1000).toFixed(1)} mL hot and the container holds ${(brimful * 1000).toFixed(1)} mL`,
    );
  }
  return as<HotLitres>(brimful - hot);
}
