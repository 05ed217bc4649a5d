import { KG_PER_LB, LITRES_PER_GALLON } from "../measures/units";
import { molarMass, steamPressure, waterActivity } from "../standards/boiling";
import { fuels } from "../standards/fuels";
import { colorClasses } from "../standards/grades";
import { sucroseHeatCapacity } from "../standards/heat-capacity";
import { baumeModulus, hydrometerGlass } from "../standards/hydrometer";
import { brixOfIndex, refractometerCorrection } from "../standards/refraction";
import type { SourceId } from "../standards/sources";
import { sucroseDensity, weighingInAir } from "../standards/sucrose-density";
import { sucroseViscosity } from "../standards/viscosity";
import type { Definition } from "./define";

/** The formulas and coefficients that a function stands on, with the range they hold in, as its page lists them. */
export const coefficientsOf = ({ basis }: Definition): readonly string[] =>
  basis.flatMap((id) => coefficients[id as SourceId] ?? []);

const { solution, water, range } = sucroseDensity;

/** By source; every figure comes from the table the functions themselves calculate with. */
const coefficients: Readonly<Partial<Record<SourceId, readonly string[]>>> = {
  icumsaDensity: [
    `Density in kg/m³ = water + ${solution.map((_, i) => `S${i}${power("t", i, "·")}`).join(" + ")}, with w = °Bx ÷ 100 and t = (°C − 20) ÷ 100; ${range.brix.join("-")} °Bx, ${range.celsius.join("-")} °C.`,
    ...solution.map((row, i) => `S${i} = ${sum(row, "w", 1)}.`),
  ],
  bettinSpieweck: [
    `Water in kg/m³ = (${sum(water.numerator, "T", 0)}) ÷ (1 + ${plain(water.denominator)} T), T in °C, ${range.celsius.join("-")} °C.`,
  ],
  airBuoyancy: [
    `Density as weighed in air = (density − ${weighingInAir.air}) ÷ (1 − ${weighingInAir.air} ÷ ${weighingInAir.weights}), in kg/m³.`,
  ],
  usCustomary: [`1 lb = ${KG_PER_LB} kg; 1 US gal = ${LITRES_PER_GALLON} L.`],
  baumeScale: [
    `°Bé = ${baumeModulus} − ${baumeModulus} ÷ specific gravity 20/20.`,
  ],
  hydrometerGlass: [
    `Glass of the float: ${plain(hydrometerGlass)} of its volume per °C, from memory.`,
  ],
  refractionFit: [
    `°Bx = ${sum(brixOfIndex, "n", 0)}, n the refractive index at 20 °C; ${range.brix.join("-")} °Bx.`,
  ],
  refractometerTable: [
    `To add to a reading: d (${sum(refractometerCorrection.linear, "b", 0)}) + d² (${sum(refractometerCorrection.square, "b", 0)}), with b = °Bx ÷ 100 and d = °C − 20; ${refractometerCorrection.celsius.join("-")} °C.`,
  ],
  genotelle: [
    `log₁₀ of mPa·s = ${sucroseViscosity.a} x − ${sucroseViscosity.b} + p (${sucroseViscosity.c} + ${sucroseViscosity.d} x^${sucroseViscosity.e}), with x = °Bx ÷ (1900 − 18 °Bx) and p = (30 − °C) ÷ (91 + °C); checked to ${sucroseViscosity.checkedTo} °Bx.`,
  ],
  starzakPeacock: [
    `Activity of the water = (1 − x) e^(${plain(waterActivity.q)} ÷ (${waterActivity.gas} K) · x² (${sum([1, waterActivity.a, waterActivity.b], "x", 0)})), x the share of sucrose among the molecules (${molarMass.sucrose} and ${molarMass.water} g/mol), K in kelvin.`,
  ],
  steamPressure: [
    `Vapour pressure of water in kPa = ${steamPressure.criticalKilopascals} e^(${steamPressure.criticalKelvin} ÷ K · (${joined(steamPressure.terms.map(([a, exponent]) => [a, power("τ", exponent)]))})), τ = 1 − K ÷ ${steamPressure.criticalKelvin}.`,
  ],
  heatCapacityForm: [
    `kJ/kg·K = ${sucroseHeatCapacity.water} − ${sucroseHeatCapacity.solids} °Bx + ${plain(sucroseHeatCapacity.warming)} °Bx · °C; ${range.brix.join("-")} °Bx, ${range.celsius.join("-")} °C.`,
  ],
  fuelHeat: [
    `${Object.entries(fuels)
      .map(
        ([fuel, { btu, soldBy }]) =>
          `${fuel} ${btu.toLocaleString("en-US")} BTU/${soldBy}`,
      )
      .join("; ")}.`,
  ],
  gradeColors: [
    `${colorClasses.map(({ name, atLeast }) => `${name} from ${atLeast} %`).join(", ")}.`,
  ],
};

/** "385.1761 w + 135.3705 w² − …", from the power of the first coefficient on. */
function sum(values: readonly number[], name: string, first: number): string {
  return joined(values.map((value, i) => [value, power(name, first + i)]));
}

function joined(
  terms: readonly (readonly [value: number, factor: string])[],
): string {
  return terms
    .map(([value, factor], i) => {
      const sign = value < 0 ? "− " : i === 0 ? "" : "+ ";
      return `${sign}${plain(Math.abs(value))}${factor && ` ${factor}`}`;
    })
    .join(" ");
}

function power(name: string, exponent: number, before = ""): string {
  if (exponent === 0) return "";
  return `${before}${name}${exponent === 1 ? "" : raised(exponent)}`;
}

function raised(exponent: number): string {
  const digits = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  return Number.isInteger(exponent)
    ? [...String(exponent)].map((digit) => digits[Number(digit)]).join("")
    : `^${exponent}`;
}

/** Without an exponent, every digit there is. */
function plain(value: number): string {
  const text = /e/.test(String(value))
    ? value.toFixed(20).replace(/0+$/, "")
    : String(value);
  return text.replace("-", "−");
}
