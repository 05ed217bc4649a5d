/** What a number can measure. One house unit each: kg, L, °C, kg/L, °Bx, mm, s, kJ. */
export type Dimension =
  | "mass"
  | "volume"
  | "temperature"
  | "density"
  | "brix"
  | "length"
  | "time"
  | "energy"
  | "pressure";

/** How one unit turns into the house unit of its dimension: house = value × scale + offset. */
export interface Unit {
  readonly symbol: string;
  readonly dimension: Dimension;
  readonly scale: number;
  readonly offset: number;
  /** Other spellings people type, lower case, without dots. */
  readonly spellings: readonly string[];
}

/** Exact by definition (international pound; US gallon of 231 cubic inches). */
export const KG_PER_LB = 0.45359237;
export const LITRES_PER_GALLON = 3.785411784;
export const KILOJOULES_PER_BTU = 1.05505585262;

const unit = (
  dimension: Dimension,
  symbol: string,
  scale: number,
  spellings: readonly string[] = [],
  offset = 0,
): Unit => ({ symbol, dimension, scale, offset, spellings });

export const units: readonly Unit[] = [
  unit("mass", "kg", 1, ["kgs", "kilogram", "kilograms"]),
  unit("mass", "g", 0.001, ["gram", "grams"]),
  unit("mass", "lb", KG_PER_LB, ["lbs", "pound", "pounds"]),
  unit("mass", "oz", KG_PER_LB / 16, ["ounce", "ounces"]),
  unit("volume", "L", 1, ["l", "litre", "litres", "liter", "liters"]),
  unit("volume", "mL", 0.001, [
    "ml",
    "millilitre",
    "milliliter",
    "millilitres",
    "milliliters",
  ]),
  unit("volume", "gal", LITRES_PER_GALLON, [
    "gallon",
    "gallons",
    "us gal",
    "us gallon",
    "us gallons",
  ]),
  unit("volume", "qt", LITRES_PER_GALLON / 4, ["quart", "quarts"]),
  unit("volume", "pt", LITRES_PER_GALLON / 8, ["pint", "pints"]),
  unit("volume", "fl oz", LITRES_PER_GALLON / 128, [
    "floz",
    "fluid ounce",
    "fluid ounces",
  ]),
  unit("temperature", "°C", 1, ["c", "deg c", "celsius", "° c"]),
  unit(
    "temperature",
    "°F",
    5 / 9,
    ["f", "deg f", "fahrenheit", "° f"],
    -160 / 9,
  ),
  unit("density", "kg/L", 1, ["kg/l"]),
  unit("density", "g/mL", 1, ["g/ml", "g/cm3"]),
  unit("density", "kg/m3", 0.001, ["kg/m³"]),
  unit("density", "lb/gal", KG_PER_LB / LITRES_PER_GALLON, [
    "lb/us gal",
    "lbs/gal",
  ]),
  unit("brix", "°Bx", 1, ["bx", "brix", "° brix", "°brix", "deg brix"]),
  unit("length", "mm", 1, [
    "millimetre",
    "millimetres",
    "millimeter",
    "millimeters",
  ]),
  unit("length", "cm", 10, ["centimetre", "centimeter"]),
  unit("length", "in", 25.4, ["inch", "inches", '"']),
  unit("time", "s", 1, ["sec", "second", "seconds"]),
  unit("time", "min", 60, ["mins", "minute", "minutes"]),
  unit("time", "h", 3600, ["hr", "hrs", "hour", "hours"]),
  unit("energy", "kJ", 1, ["kj"]),
  unit("energy", "BTU", KILOJOULES_PER_BTU, ["btu", "btus"]),
  unit("energy", "kWh", 3600, ["kwh"]),
  unit("pressure", "kPa", 1, ["kpa"]),
  unit("pressure", "inHg", 3.386389, ["inhg", "in hg"]),
];

const bySymbol: ReadonlyMap<string, Unit> = new Map(
  units.map((u) => [u.symbol, u]),
);

/** The unit a person wrote, if we know it: exact symbols first ("L"), then spellings in any case. */
export function findUnit(written: string): Unit | undefined {
  const plain = written
    .trim()
    .replace(/\.(?=\s|$|[a-z])/gi, "")
    .replace(/\s+/g, " ");
  const exact = bySymbol.get(plain);
  if (exact) return exact;
  const lower = plain.toLowerCase();
  return units.find(
    (u) => u.symbol.toLowerCase() === lower || u.spellings.includes(lower),
  );
}

/** The unit with exactly this symbol; a symbol that does not exist is a programmer's mistake. */
export function unitNamed(symbol: string): Unit {
  const found = bySymbol.get(symbol);
  if (!found) throw new Error(`No unit "${symbol}"`);
  return found;
}

export const toHouse = (value: number, u: Unit): number =>
  value * u.scale + u.offset;
export const fromHouse = (value: number, u: Unit): number =>
  (value - u.offset) / u.scale;
