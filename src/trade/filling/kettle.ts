import {
  as,
  type Brix,
  type Celsius,
  type ColdLitres,
  type HotLitres,
  type Kilograms,
  type Share,
} from "../../measures/quantity";
import { unusable } from "../../measures/cannot-answer";
import { volumeOf } from "../syrup/weight";
import { coldVolume } from "./hot-volume";

export interface Kettle {
  readonly hotVolume: HotLitres;
  readonly brix: Brix;
  readonly fill: Celsius;
  /** Hot syrup that stays in the kettle and the lines. */
  readonly leftBehind: HotLitres;
  /** Syrup run off before the first good bottle. */
  readonly purge: Kilograms;
  readonly bottle: ColdLitres;
  /** Share of the filled bottles that break or are set aside. */
  readonly breakage: Share;
}

export interface KettleYield {
  readonly drawn: ColdLitres;
  readonly purged: ColdLitres;
  readonly bottles: number;
}

/**
 * Whole good bottles from one kettle: hot syrup drawn, cooled to 68 °F, less the purge, over the bottle, less breakage.
 * Refuses (#VALUE!) when nothing can be drawn or the purge takes everything.
 */
export function kettleYield(kettle: Kettle): KettleYield {
  const { brix, fill, bottle, breakage } = kettle;
  if (kettle.leftBehind >= kettle.hotVolume)
    throw unusable(
      "left behind: it is as much as the hot volume or more, so nothing is drawn",
    );
  const drawn = coldVolume(
    as<HotLitres>(kettle.hotVolume - kettle.leftBehind),
    brix,
    fill,
  );
  const purged = as<ColdLitres>(volumeOf(kettle.purge, brix));
  if (purged >= drawn)
    throw unusable("purge: it takes all the syrup that is drawn");
  return {
    drawn,
    purged,
    bottles: whole(((drawn - purged) / bottle) * (1 - breakage)),
  };
}

/** A bottle that is full but for the last binary digit counts. */
const whole = (bottles: number): number => Math.floor(bottles + 1e-9);
