import type { Line } from "../model";
import { namedShare, setting } from "./book-references";

const line = (name: string, label: string, formula: string): Line => ({
  name,
  label,
  role: "calculated",
  format: "#,##0",
  content: { formula: `=${formula}` },
});

/** Bottles that break are filled from the kettle too; a farm that has not entered them counts none, as a run plan does. */
const BREAKAGE = `IFERROR(${namedShare("Settings", "Setting", "Breakage")},0)`;

const bottlesFrom = (purge: string): string =>
  `SYRUP.KETTLE_BOTTLES(${setting("Kettle working fill")},{brix},{pack_temperature},{fill},${setting("Kettle left-behind")},${purge},${BREAKAGE})`;

/** How often the kettle is filled, by the rule of a run plan: the line is purged once, out of the first fill. */
export const kettleLines: readonly Line[] = [
  {
    ...line(
      "kettle_bottles",
      "Good bottles from the first kettle",
      bottlesFrom("{purge}"),
    ),
    unit: "bottles",
    hint: "the purge of the line comes out of it",
  },
  {
    ...line(
      "kettle_later",
      "Good bottles from each later kettle",
      bottlesFrom("0"),
    ),
    unit: "bottles",
  },
  line(
    "kettles",
    "Kettle fills",
    "IF({bottles}<={kettle_bottles},1,1+ROUNDUP(({bottles}-{kettle_bottles})/{kettle_later},0))",
  ),
];
