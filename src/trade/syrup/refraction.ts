import { unanswerable } from "../../measures/cannot-answer";
import {
  as,
  type Brix,
  type Celsius,
  reference,
} from "../../measures/quantity";
import { whereReaches } from "../../measures/root";
import {
  brixOfIndex,
  refractometerCorrection,
} from "../../standards/refraction";
import { sucroseDensity } from "../../standards/sucrose-density";
import { polynomial } from "./polynomial";

/** Refractive index at the sodium D line and 20 °C. Source: refractionFit. */
export const refractiveIndex = (brix: Brix): number =>
  whereReaches((n) => polynomial(brixOfIndex, n), brix, 1.3325, 1.52);

/** Brix at 68 °F from a refractive index measured at this temperature, 10-30 °C. */
export function brixFromIndex(
  index: number,
  temperature: Celsius = reference,
): Brix {
  const [thin, thick] = sucroseDensity.range.brix;
  const least = refractiveIndex(as<Brix>(thin));
  const most = refractiveIndex(as<Brix>(thick));
  // An index is printed to four decimals, so water itself may read a trace below its own.
  if (index < least - 0.00005 || index > most + 0.00005) {
    throw unanswerable(
      `index: ${index} is outside ${least.toFixed(4)}-${most.toFixed(4)}, what 0-85 °Bx shows`,
    );
  }
  const reading = as<Brix>(polynomial(brixOfIndex, index));
  return refractometerBrix(reading, temperature);
}

/** Brix at 68 °F from the reading of a refractometer without automatic compensation. Source: refractometerTable. */
export function refractometerBrix(reading: Brix, temperature: Celsius): Brix {
  const [coldest, hottest] = refractometerCorrection.celsius;
  if (temperature < coldest - 1e-9 || temperature > hottest + 1e-9) {
    throw unanswerable(
      `temperature: ${(temperature * 1.8 + 32).toFixed(1)} °F is outside 50-86 °F, where refractometer readings can be corrected; bring the sample to room temperature`,
    );
  }
  const corrected = reading + correction(reading, temperature);
  if (corrected < -NOISE) {
    throw unanswerable(
      `reading: ${reading.toFixed(2)} °Bx comes to less than 0 °Bx at 68 °F; check the zero of the instrument`,
    );
  }
  return as<Brix>(corrected);
}

/** What a reading of plain water may be off, in °Bx. */
const NOISE = 0.05;

function correction(reading: Brix, temperature: Celsius): number {
  const b = reading / 100;
  const d = temperature - reference;
  const { linear, square } = refractometerCorrection;
  return d * polynomial(linear, b) + d * d * polynomial(square, b);
}
