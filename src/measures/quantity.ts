declare const unit: unique symbol;

/** A number that carries its unit in the type and costs nothing at run time. */
export type Quantity<U extends string> = number & { readonly [unit]: U };

export type Kilograms = Quantity<"kg">;
/** Volume as it is at the reference temperature, 20 °C (68 °F). */
export type ColdLitres = Quantity<"L at 20 °C">;
/** Volume as it is at filling temperature. */
export type HotLitres = Quantity<"L hot">;
/** Volume at whatever temperature is stated beside it. */
export type Litres = ColdLitres | HotLitres;
export type Celsius = Quantity<"°C">;
/** Dissolved solids as percent by mass. */
export type Brix = Quantity<"°Bx">;
export type KgPerLitre = Quantity<"kg/L">;
export type Kilojoules = Quantity<"kJ">;
export type KilojoulesPerKgK = Quantity<"kJ/kg·K">;
export type Kilopascals = Quantity<"kPa">;
export type Millimetres = Quantity<"mm">;
export type Seconds = Quantity<"s">;
export type Hours = Quantity<"h">;
/** A part of a whole: 0.35 for 35 %. */
export type Share = Quantity<"share">;
/** Pieces per hour. */
export type PerHour = Quantity<"1/h">;
/** An amount in the books' one currency. */
export type Money = Quantity<"money">;
export type MoneyPerKg = Quantity<"money/kg">;
export type MoneyPerLitre = Quantity<"money/L">;
export type MoneyPerHour = Quantity<"money/h">;
/** A day as worksheets count it: 1 is 1 January 1900. */
export type DaySerial = Quantity<"day">;

/** The one place where a plain number takes on a unit. */
export const as = <Q extends Quantity<string>>(value: number): Q => value as Q;

/** 68 °F, the temperature that declared volumes and Brix readings refer to. */
export const reference = as<Celsius>(20);
