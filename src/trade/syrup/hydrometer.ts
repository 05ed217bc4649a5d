import {
  as,
  type Brix,
  type Celsius,
  type KgPerLitre,
} from "../../measures/quantity";
import { hydrometerGlass } from "../../standards/hydrometer";
import { brixFromDensity, density, waterDensity } from "./density";
import { baumeOfGravity, brixFromGravity, specificGravity } from "./gravity";

export type HydrometerScale = "Brix" | "Baume";

/**
 * What a float calibrated at one temperature reads in syrup at another, with the glass expanding. Its scale is marked
 * for specific gravity 20/20. Within 0.1 °Bé and 0.3 °Bx of the maple chart, 50-209 °F.
 */
export function hydrometerReading(
  brix: Brix,
  temperature: Celsius,
  calibration: Celsius,
  scale: HydrometerScale,
): number {
  const gravity =
    (density(brix, temperature) * 1000 * swelling(temperature, calibration)) /
    waterDensity(calibration);
  return scale === "Baume" ? baumeOfGravity(gravity) : brixFromGravity(gravity);
}

/** True Brix at 68 °F of syrup in which a float with a Brix scale reads so much. The inverse of the reading. */
export const hydrometerBrix = (
  reading: Brix,
  temperature: Celsius,
  calibration: Celsius,
): Brix =>
  brixFromDensity(
    as<KgPerLitre>(
      (specificGravity(reading) * waterDensity(calibration)) /
        swelling(temperature, calibration) /
        1000,
    ),
    temperature,
  );

const swelling = (temperature: Celsius, calibration: Celsius): number =>
  1 + hydrometerGlass * (temperature - calibration);
