import {
  as,
  type Brix,
  type Celsius,
  type ColdLitres,
  type HotLitres,
  type Share,
} from "../../measures/quantity";
import { density } from "../syrup/density";

/** Volume at filling temperature of syrup that measures `volume` at 68 °F. Mass is kept. */
export const hotVolume = (
  volume: ColdLitres,
  brix: Brix,
  fill: Celsius,
): HotLitres => as<HotLitres>(volume * expansion(brix, fill));

/** Volume at 68 °F of syrup that measures `volume` at filling temperature. Mass is kept. */
export const coldVolume = (
  volume: HotLitres,
  brix: Brix,
  fill: Celsius,
): ColdLitres => as<ColdLitres>(volume / expansion(brix, fill));

/** The share of its hot volume that syrup loses on cooling to 68 °F. Below zero for syrup colder than that. */
export const shrinkage = (brix: Brix, fill: Celsius): Share =>
  as<Share>(1 - 1 / expansion(brix, fill));

const expansion = (brix: Brix, fill: Celsius): number =>
  density(brix) / density(brix, fill);
