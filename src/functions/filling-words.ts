import type { Brix, Celsius } from "../measures/quantity";
import { fromHouse, unitNamed } from "../measures/units";
import { density } from "../trade/syrup/density";
import { fahrenheit, figure } from "./wording";

export const hotFillBasis = [
  "icumsaDensity",
  "bettinSpieweck",
  "vermontChart",
] as const;
export const hotFillUncertainty = "±0.1 % of the volume at 175-210 °F.";
export const glassNote =
  "The container is taken as it is at 68 °F: hot glass holds up to 0.2 % more, and plastic must be measured.";

export const millilitres = (litres: number): string =>
  `${figure(litres * 1000)} mL`;
export const gallons = (litres: number): string =>
  `${figure(fromHouse(litres, unitNamed("gal")))} gal`;

/** "(1.3282 kg/L at 68 °F ÷ 1.2897 at 185 °F = 1.02982)" */
export const densities = (brix: Brix, fill: Celsius): string =>
  `(${figure(density(brix))} kg/L at 68 °F ÷ ${figure(density(brix, fill))} at ${fahrenheit(fill)} = ${figure(density(brix) / density(brix, fill), 6)})`;
