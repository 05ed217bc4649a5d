import { unusable } from "../../measures/cannot-answer";
import {
  as,
  type Brix,
  type Celsius,
  type ColdLitres,
  type Kilograms,
} from "../../measures/quantity";
import { density } from "../syrup/density";
import { volumeOf } from "../syrup/weight";

/** A bottle on the scale, full and empty, and the syrup in it as it was weighed. */
export interface WeighedBottle {
  readonly gross: Kilograms;
  readonly tare: Kilograms;
  readonly brix: Brix;
  readonly temperature: Celsius;
}

/**
 * What a bottle holds at 68 °F, from its weights in air. The air bears up warm syrup a little more; its mass stays.
 * Refuses (#VALUE!) a bottle that weighs more empty than full.
 */
export function netVolume(bottle: WeighedBottle): ColdLitres {
  const { gross, tare, brix, temperature } = bottle;
  if (gross < tare)
    throw unusable(
      "tare: the empty bottle weighs more than the full one; are gross and tare swapped?",
    );
  const asWeighed = volumeOf(as<Kilograms>(gross - tare), brix, temperature);
  return as<ColdLitres>(
    (asWeighed * density(brix, temperature)) / density(brix),
  );
}
