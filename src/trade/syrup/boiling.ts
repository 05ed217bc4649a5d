import {
  as,
  type Brix,
  type Celsius,
  type Kilopascals,
} from "../../measures/quantity";
import { whereReaches } from "../../measures/root";
import {
  molarMass,
  steamPressure,
  waterActivity,
} from "../../standards/boiling";

const KELVIN = 273.15;

/**
 * Temperature at which syrup boils under this air pressure: where its water's vapour pressure reaches it. Pure
 * sucrose; 0.06-0.1 °F above the figures printed for maple syrup. Sources: starzakPeacock, steamPressure.
 */
export const boilingPoint = (brix: Brix, pressure: Kilopascals): Celsius =>
  as<Celsius>(
    whereReaches(
      (celsius) =>
        vapourPressure(celsius + KELVIN) * activity(brix, celsius + KELVIN),
      pressure,
      0,
      200,
    ),
  );

function vapourPressure(kelvin: number): number {
  const { criticalKelvin, criticalKilopascals, terms } = steamPressure;
  const tau = 1 - kelvin / criticalKelvin;
  const sum = terms.reduce((s, [a, power]) => s + a * tau ** power, 0);
  return criticalKilopascals * Math.exp((criticalKelvin / kelvin) * sum);
}

function activity(brix: Brix, kelvin: number): number {
  const sucrose = brix / molarMass.sucrose;
  const x = sucrose / (sucrose + (100 - brix) / molarMass.water);
  const { q, gas, a, b } = waterActivity;
  return (
    (1 - x) * Math.exp((q / (gas * kelvin)) * x * x * (1 + a * x + b * x * x))
  );
}
