import { reference } from "../../measures/quantity";
import { KG_PER_LB, LITRES_PER_GALLON } from "../../measures/units";
import { sucroseDensity, weighingInAir } from "../../standards/sucrose-density";
import { waterDensity } from "../../trade/syrup/density";
import { celsius, decimal, horner } from "./formula";

/** Formula text for the true density in kg/m³, for a text that gives °Bx and one that gives °F. */
export function nativeDensity(brix: string, fahrenheit: string): string {
  const hot = celsius(fahrenheit);
  const t = `((${hot}-20)/100)`;
  const { numerator, denominator } = sucroseDensity.water;
  const water = `${horner(numerator, hot)}/(1+${decimal(denominator)}*${hot})`;
  const inTemperature = sucroseDensity.solution
    .map((coefficients) => inSolids(coefficients, brix))
    .reduceRight((sum, s) => `(${s}+${t}*${sum})`);
  return `(${water}+${inTemperature})`;
}

/** The same at 68 °F, where only the first row of the polynomial is left. */
export const nativeColdDensity = (brix: string): string =>
  `(${decimal(waterDensity(reference))}+${inSolids(sucroseDensity.solution[0], brix)})`;

/** Formula text for the kg/m³ that a scale in air shows, for a text that gives the true density in kg/m³. */
export const nativeInAir = (density: string): string =>
  `((${density}-${weighingInAir.air})/(1-${weighingInAir.air}/${weighingInAir.weights}))`;

/** Formula text for pounds per US gallon weighed in air. */
export const nativePoundsPerGallon = (
  brix: string,
  fahrenheit: string,
): string =>
  `(${nativeInAir(nativeDensity(brix, fahrenheit))}*${decimal(LITRES_PER_GALLON)}/1000/${decimal(KG_PER_LB)})`;

const inSolids = (coefficients: readonly number[], brix: string): string =>
  horner([0, ...coefficients], `(${brix}/100)`);
