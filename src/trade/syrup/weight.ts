import {
  as,
  type Brix,
  type Celsius,
  type Kilograms,
  type Litres,
  reference,
} from "../../measures/quantity";
import { densityInAir } from "./density";

/** What a volume of syrup weighs on a scale in air; the volume is as it stands at the temperature given. */
export const weightOf = (
  volume: Litres,
  brix: Brix,
  temperature: Celsius = reference,
): Kilograms => as<Kilograms>(volume * densityInAir(brix, temperature));

/** The volume, at the temperature given, of syrup that weighs so much on a scale in air. */
export const volumeOf = (
  weight: Kilograms,
  brix: Brix,
  temperature: Celsius = reference,
): Litres => as<Litres>(weight / densityInAir(brix, temperature));
