import { KG_PER_LB, LITRES_PER_GALLON, type Unit, unitNamed } from "./units";

/**
 * Which gallon a bare "gal" is. "unsaid": it could be either, so it is refused until somebody says. Where it is the US
 * gallon, an imperial one is refused too.
 */
export type Gallon = "US" | "imperial" | "unsaid";

/** Exact by definition: the gallon of the United Kingdom's and of Canada's weights and measures acts (from memory). */
export const LITRES_PER_IMPERIAL_GALLON = 4.54609;

/** The part of a refusal that says what is not known; whoever shows it adds where it is said. */
export const WHICH_GALLON =
  "may be US gallons (3.785411784 L) or imperial gallons (4.54609 L)";

/** The gallon that words name: "us gal", "imp gal"; undefined where they name none. */
export function gallonNamed(words: string): "US" | "imperial" | undefined {
  if (/\b(imp(erial)?|uk|british)\b/i.test(words)) return "imperial";
  return /\bu\.?s\b/i.test(words) ? "US" : undefined;
}

/** The unit that imperial words ask for, "imp gal" or "lb/imp gal"; undefined for every other imperial measure. */
export const imperialUnit = (words: string): Unit | undefined => {
  const plain = words
    .replace(/\b(imp(erial)?|uk|british)\b\.?\s*/i, "")
    .replace(/[()]/g, "")
    .trim();
  if (/^gal(lon)?s?\.?$/i.test(plain)) return IMPERIAL.gal;
  return /^lbs?\s*(\/|per)\s*gal(lon)?\.?$/i.test(plain)
    ? IMPERIAL["lb/gal"]
    : undefined;
};

/** The unit a bare word stands for, in a book of that gallon; undefined where that is not said. */
export function unitBy(
  gallon: Gallon,
  unit: Unit,
  words: string,
): Unit | undefined {
  if (!isOfGallon(unit) || gallonNamed(words) === "US" || gallon === "US")
    return unit;
  return gallon === "imperial" ? IMPERIAL[unit.symbol] : undefined;
}

const isOfGallon = (
  unit: Unit,
): unit is Unit & { readonly symbol: keyof typeof IMPERIAL } =>
  unit.symbol in IMPERIAL;

const IMPERIAL = {
  gal: { ...unitNamed("gal"), scale: LITRES_PER_IMPERIAL_GALLON },
  "lb/gal": {
    ...unitNamed("lb/gal"),
    scale: KG_PER_LB / LITRES_PER_IMPERIAL_GALLON,
  },
} as const;

/** How many US gallons one of the book's gallons is; undefined where that is not said. */
export const usGallonsEach = (gallon: Gallon): number | undefined =>
  gallon === "unsaid"
    ? undefined
    : gallon === "imperial"
      ? LITRES_PER_IMPERIAL_GALLON / LITRES_PER_GALLON
      : 1;
