import { unanswerable } from "../../measures/cannot-answer";
import {
  as,
  type Brix,
  type Celsius,
  type KgPerLitre,
} from "../../measures/quantity";
import { hydrometerGlass } from "../../standards/hydrometer";
import { sucroseDensity } from "../../standards/sucrose-density";
import { brixFromDensity, density, waterDensity } from "./density";
import { baumeOfGravity, brixFromGravity, specificGravity } from "./gravity";

export type HydrometerScale = "Brix" | "Baume";

/**
 * What a float calibrated at one temperature reads in syrup at another, with the glass expanding. Its scale is marked
 * for specific gravity 20/20. Within 0.1 °Bé and 0.3 °Bx of the maple chart, 50-209 °F; no answer beyond what 0-85 °Bx
 * reads at the reference temperature.
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
  if (gravity < 1 - NOISE || gravity > specificGravity(thickest) + NOISE)
    throw unanswerable(
      `brix: at ${fahrenheit(temperature)} the float leaves its scale, which ends at what 0 and ${thickest} °Bx read`,
    );
  return scale === "Baume" ? baumeOfGravity(gravity) : brixFromGravity(gravity);
}

/** True Brix at 68 °F of syrup in which a float with a Brix scale reads so much. The inverse of the reading. */
export function hydrometerBrix(
  reading: Brix,
  temperature: Celsius,
  calibration: Celsius,
): Brix {
  const wanted = as<KgPerLitre>(
    (specificGravity(reading) * waterDensity(calibration)) /
      swelling(temperature, calibration) /
      1000,
  );
  if (
    wanted < density(thinnest, temperature) - NOISE ||
    wanted > density(thickest, temperature) + NOISE
  )
    throw unanswerable(
      `reading: no syrup of ${thinnest}-${thickest} °Bx makes the float read ${reading} °Bx at ${fahrenheit(temperature)}`,
    );
  return brixFromDensity(wanted, temperature);
}

const thinnest = as<Brix>(sucroseDensity.range.brix[0]);
const thickest = as<Brix>(sucroseDensity.range.brix[1]);

/** What the last binary digit may differ by. */
const NOISE = 1e-12;

const swelling = (temperature: Celsius, calibration: Celsius): number =>
  1 + hydrometerGlass * (temperature - calibration);

const fahrenheit = (celsius: Celsius): string =>
  `${Number((celsius * 1.8 + 32).toFixed(1))} °F`;
