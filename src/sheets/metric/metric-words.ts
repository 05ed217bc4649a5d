import type { UsUnit } from "./figure-units";

type Words = readonly (readonly [RegExp, string])[];

/** Words of our own labels, in either language, for each unit; a gap may be one that does not break. */
const words: Readonly<Record<UsUnit, Words>> = {
  lb: [[/\blb\b/g, "kg"]],
  gal: [[/\bgal( US)?\b/g, "L"]],
  "lb/gal": [
    [/\blb\/gal( US)?\b/g, "kg/L"],
    [/\bgallon( US)?\b/g, "litre"],
  ],
  "per lb": [[/\blb\b/g, "kg"]],
  "per gal": [[/\bgal(lon)?( US)?\b/g, "L"]],
  "°F": [[/°F/g, "°C"]],
};

/** 68 °F is 20 °C exactly, the temperature every declared volume refers to. */
export const atTwenty = (text: string): string =>
  text.replace(/\b68([\s\u00a0])°F/g, "20$1°C");

/** A label, unit or remark beside a figure that is in metric now. */
export const labelInMetric = (text: string, unit: UsUnit): string =>
  words[unit].reduce(
    (label, [from, to]) => label.replace(from, to),
    atTwenty(text),
  );
