import { unusable } from "./cannot-answer";
import { type Gallon, imperialUnit, unitBy, WHICH_GALLON } from "./gallon";
import { readNumber } from "./read-number";
import { type Dimension, findUnit, toHouse, type Unit, units } from "./units";

const NUMBER_THEN_UNIT =
  /^([+-]?[\d.,\s\u00a0\u202f]*\d\.?)\s*([^\d\s.,+-].*)?$/;

/**
 * Reads a quantity in its stated unit (a number), or in the unit its text carries ("12 fl oz", "185 °F", "2,912 lb").
 * Gives the value in the house unit of the dimension. Refusals (#VALUE!) name the argument and what was read. `gallon` says
 * what a bare "gal" is; without it that is the US one, and an imperial one is refused.
 */
export function readQuantity(
  raw: number | string,
  stated: Unit,
  name: string,
  gallon: Gallon = "US",
): number {
  if (typeof raw === "number") return toHouse(raw, stated);
  const parts = NUMBER_THEN_UNIT.exec(raw.trim());
  if (!parts)
    throw unusable(`${name}: "${raw}" is not a number in ${stated.symbol}`);
  const written = parts[2]?.trim();
  const unit =
    written === undefined
      ? stated
      : unitOf(written, stated.dimension, raw, name, gallon);
  return toHouse(readNumber(parts[1] ?? "", name), unit);
}

function unitOf(
  written: string,
  wanted: Dimension,
  raw: string,
  name: string,
  gallon: Gallon,
): Unit {
  if (/\bimp(erial)?\b|\buk\b/i.test(written)) {
    const imperial = imperialUnit(written);
    if (gallon === "imperial" && imperial?.dimension === wanted)
      return imperial;
    if (gallon === "unsaid" && imperial)
      throw unusable(`${name}: "${raw}" ${WHICH_GALLON}`);
    throw unusable(
      `${name}: "${raw}" is in imperial gallons; type US gallons or litres (1 imperial gallon is 4.546 L)`,
    );
  }
  const unit = findUnit(written);
  const known = units
    .filter((u) => u.dimension === wanted)
    .map((u) => u.symbol);
  if (!unit) {
    throw unusable(
      `${name}: "${written}" in "${raw}" is not a unit known here; use ${known.join(", ")}`,
    );
  }
  if (unit.dimension !== wanted) {
    throw unusable(
      `${name}: "${raw}" is a ${unit.dimension}, but a ${wanted} is wanted, in ${known.join(", ")}`,
    );
  }
  const meant = unitBy(gallon, unit, written);
  if (!meant) throw unusable(`${name}: "${raw}" ${WHICH_GALLON}`);
  return meant;
}
