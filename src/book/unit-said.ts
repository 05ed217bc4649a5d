import type { Gallon } from "../measures/gallon";

/** A unit as it is said in a book whose own gallon is another than the columns'. */
export const unitSaid = (unit: string, gallon: Gallon | undefined): string =>
  gallon === undefined || gallon === "US"
    ? unit
    : unit.replace(/\bgal\b/, "US gal");
