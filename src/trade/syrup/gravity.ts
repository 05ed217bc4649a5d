import { unanswerable } from "../../measures/cannot-answer";
import {
  as,
  type Brix,
  type KgPerLitre,
  reference,
} from "../../measures/quantity";
import { baumeModulus } from "../../standards/hydrometer";
import { sucroseDensity } from "../../standards/sucrose-density";
import { brixFromDensity, density, waterDensity } from "./density";

/** True specific gravity 20/20 of syrup. */
export const specificGravity = (brix: Brix): number =>
  (density(brix) * 1000) / waterDensity(reference);

/** Brix of syrup with this true specific gravity 20/20. */
export const brixFromGravity = (gravity: number): Brix =>
  brixFromDensity(
    as<KgPerLitre>((gravity * waterDensity(reference)) / 1000),
    reference,
  );

/** Degrees Baumé, modulus 145, of syrup at its specific gravity 20/20. Source: baumeScale. */
export const baume = (brix: Brix): number =>
  baumeOfGravity(specificGravity(brix));

export const baumeOfGravity = (gravity: number): number =>
  baumeModulus - baumeModulus / gravity;

/** Brix of syrup of so many degrees Baumé; no answer beyond what 0-85 °Bx reads. */
export function brixFromBaume(degrees: number): Brix {
  const [thin, thick] = sucroseDensity.range.brix;
  const least = baume(as<Brix>(thin));
  const most = baume(as<Brix>(thick));
  if (degrees < least - 1e-9 || degrees > most + 1e-9) {
    throw unanswerable(
      `baume: ${degrees} °Bé is outside 0-${most.toFixed(1)} °Bé, what 0-85 °Bx reads`,
    );
  }
  return brixFromGravity(baumeModulus / (baumeModulus - degrees));
}
