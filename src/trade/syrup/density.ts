import {
  as,
  type Brix,
  type Celsius,
  type KgPerLitre,
  reference,
} from "../../measures/quantity";
import { unanswerable } from "../../measures/cannot-answer";
import { whereReaches } from "../../measures/root";
import { KG_PER_LB, LITRES_PER_GALLON } from "../../measures/units";
import { sucroseDensity, weighingInAir } from "../../standards/sucrose-density";
import { polynomial } from "./polynomial";

/**
 * True density of syrup taken as sucrose of equal Brix. Valid 0-85 °Bx and 0-100 °C; outside, no answer.
 * Good to ±0.02 % at 20 °C and ±0.1 % at 80-98 °C. Source: icumsaDensity.
 */
export function density(
  brix: Brix,
  temperature: Celsius = reference,
): KgPerLitre {
  within(brix, sucroseDensity.range.brix, "brix", "°Bx");
  within(temperature, sucroseDensity.range.celsius, "temperature", "°C");
  const w = brix / 100;
  const t = (temperature - 20) / 100;
  const solution = sucroseDensity.solution.reduce<number>(
    (sum, coefficients, power) =>
      sum + polynomial([0, ...coefficients], w) * t ** power,
    0,
  );
  return as<KgPerLitre>((waterDensity(temperature) + solution) / 1000);
}

/** Density of water in kg/m³, 0-100 °C. Source: bettinSpieweck. */
export function waterDensity(temperature: Celsius): number {
  const { numerator, denominator } = sucroseDensity.water;
  return polynomial(numerator, temperature) / (1 + denominator * temperature);
}

/** Density as a balance in air shows it, which is what customary lb/gal tables hold. Source: airBuoyancy. */
export function densityInAir(
  brix: Brix,
  temperature: Celsius = reference,
): KgPerLitre {
  const { air, weights } = weighingInAir;
  return as<KgPerLitre>(
    (density(brix, temperature) * 1000 - air) / (1 - air / weights) / 1000,
  );
}

/**
 * Brix of syrup that has this true density at this temperature; no answer where the table of densities does not reach.
 */
export function brixFromDensity(
  wanted: KgPerLitre,
  temperature: Celsius = reference,
): Brix {
  const [thin, thick] = sucroseDensity.range.brix;
  const least = density(as<Brix>(thin), temperature);
  const most = density(as<Brix>(thick), temperature);
  if (wanted < least - 1e-12 || wanted > most + 1e-12) {
    throw unanswerable(
      `density: ${plain(wanted)} kg/L is outside ${plain(least)}-${plain(most)} kg/L, what 0-85 °Bx has at this temperature`,
    );
  }
  return as<Brix>(
    whereReaches(
      (brix) => density(as<Brix>(brix), temperature),
      wanted,
      thin,
      thick,
    ),
  );
}

const plain = (value: number): string => value.toFixed(4);

/** Pounds a US gallon weighs in air. */
export const poundsPerGallon = (
  brix: Brix,
  temperature: Celsius = reference,
): number => (densityInAir(brix, temperature) * LITRES_PER_GALLON) / KG_PER_LB;

function within(
  value: number,
  [low, high]: readonly [number, number],
  name: string,
  unit: string,
): void {
  if (value < low || value > high) {
    throw unanswerable(
      `${name}: ${value} ${unit} is outside the published table, ${low}-${high} ${unit}`,
    );
  }
}
