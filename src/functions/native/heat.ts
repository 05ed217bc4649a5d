import { sucroseHeatCapacity } from "../../standards/heat-capacity";
import { celsius, decimal } from "./formula";

/** Formula text for the heat capacity in kJ/(kg·K), for a text that gives °Bx and one that gives °F. */
export function nativeHeatCapacity(brix: string, fahrenheit: string): string {
  const { water, solids, warming } = sucroseHeatCapacity;
  return `(${decimal(water)}-${decimal(solids)}*${brix}+${decimal(warming)}*${brix}*${celsius(fahrenheit)})`;
}
