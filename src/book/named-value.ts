import { type Gallon, imperialUnit } from "../measures/gallon";
import { findUnit } from "../measures/units";
import { readCell } from "../functions/read-cell";
import type { CellTerm } from "../terms/term";

/** The term a row's own name asks for, whatever its case. */
export function termNamed(
  terms: Readonly<Record<string, CellTerm>>,
  name: unknown,
): CellTerm | undefined {
  const wanted = String(name).trim().toLowerCase();
  return Object.entries(terms).find(
    ([known]) => known.toLowerCase() === wanted,
  )?.[1];
}

/** Reads a setting's value with the unit written beside it: 120 and "gal", 2.7 and "percent of hot volume". */
export function readNamed(
  term: CellTerm,
  value: unknown,
  unit: unknown,
  words: string,
  gallon?: Gallon,
): unknown {
  return readCell(term, withUnit(term, value, unit), words, gallon);
}

function withUnit(term: CellTerm, value: unknown, unit: unknown): unknown {
  if (typeof value !== "number" || typeof unit !== "string") return value;
  if (term.kind === "share")
    return /^\s*(percent|%)/i.test(unit) ? `${value} %` : value;
  if (term.kind !== "quantity") return value;
  const dimension = (findUnit(unit) ?? imperialUnit(unit))?.dimension;
  return dimension === term.dimension ? `${value} ${unit}` : value;
}
