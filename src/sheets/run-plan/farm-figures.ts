import { findUnit, units } from "../../measures/units";
import { namedShare, setting } from "../costing/book-references";
import type { Block, Line } from "../model";

/** Figures of the farm that a plan follows from; each comes from Settings where it is entered there. */
export const farmFiguresBlock = (lossIsSet: boolean): Block => ({
  kind: "lines",
  title: "The farm's own figures",
  lines: [
    {
      name: "brix_typed",
      label: "Brix to pack at",
      unit: "°Bx",
      role: "input",
      format: "0.0",
      content: undefined,
      hint: "blank = the weighted Brix of the lots in stock",
      rule: { kind: "number", min: 60, max: 75 },
      ruleSays: "Brix at 68 °F, between 60 and 75.",
    },
    {
      name: "loss",
      label: "Syrup lost between drum and bottle",
      role: "input",
      format: "0.0%",
      content: lossIsSet
        ? { formula: `=${namedShare("Settings", "Setting", "Syrup loss")}` }
        : 0,
      rule: { kind: "number", min: 0, max: 0.5 },
      ruleSays: "A share from 0 % to 50 %.",
    },
    {
      name: "breakage_typed",
      label: "Filled bottles that break",
      role: "input",
      format: "0.0%",
      content: {
        formula: `=IFERROR(IF(ISNUMBER(${setting("Breakage")}),${namedShare("Settings", "Setting", "Breakage")},""),"")`,
      },
      hint: 'setting "Breakage"; none counted without it',
      rule: { kind: "number", min: 0, max: 0.9 },
      ruleSays: "A share of the filled bottles, below 90 %.",
    },
    entered("break_after", "A break after", "h of work", "Break after", 24),
    entered("break_length", "A break lasts", "min", "Break length", 240),
    entered("day_length", "A working day", "h of work", "Day length", 24),
    entered(
      "least_fill",
      "Least kettle fill that circulates",
      "gal hot",
      "Least kettle fill",
      10_000,
    ),
    entered("empty_case", "Empty case", "g", "Empty case", 20_000),
    entered("empty_pallet", "Empty pallet", "lb", "Empty pallet", 500),
    entered(
      "months",
      "Best by, after packing",
      "months",
      "Best-by months",
      120,
    ),
    {
      name: "pattern",
      label: "Lot code pattern",
      role: "input",
      content: {
        formula: `=IFERROR(${setting("Lot code pattern")}&"","YYDDD-L-HHMM")`,
      },
      hint: "YY year, DDD day of the year, L line, HHMM time",
    },
    {
      name: "letters",
      label: "Line in the lot code",
      role: "input",
      content: {
        formula:
          '=IFERROR(UPPER(LEFT({chosen_line},1)&IF(ISNUMBER(FIND(" ",{chosen_line})),MID({chosen_line},FIND(" ",{chosen_line})+1,1),"")),"")',
      },
      hint: "the first letters of its name, unless you type others",
    },
  ],
});

const entered = (
  name: string,
  label: string,
  unit: string,
  settingName: string,
  max: number,
): Line => ({
  name,
  label,
  unit,
  role: "input",
  format: "#,##0.##",
  content: {
    formula: `=IFERROR(IF(ISNUMBER(${setting(settingName)}),${setting(settingName)}*${inUnit(unit.split(" ")[0] ?? "", settingName)},""),"")`,
  },
  hint: `setting "${settingName}", or typed here`,
  rule: { kind: "number", min: 0, max },
  ruleSays: `${label}: a number of ${unit}, up to ${max.toLocaleString("en-US")}.`,
});

/** What a setting is multiplied by to come in a unit, by the unit written beside it; 1 where none is. */
function inUnit(symbol: string, settingName: string): string {
  const wanted = findUnit(symbol);
  if (!wanted) return "1";
  const written = `INDEX(Settings[Unit],MATCH("${settingName}",Settings[Setting],0))`;
  return units
    .filter((u) => u.dimension === wanted.dimension && u !== wanted)
    .reduce(
      (otherwise, { symbol: own, spellings, scale }) =>
        `IF(OR(${[own, ...spellings].map((text) => `${written}="${text}"`).join(",")}),${scale / wanted.scale},${otherwise})`,
      "1",
    );
}

/** Orders on their way, which the book keeps nowhere. */
export const orderedBlock: Block = {
  kind: "table",
  name: "ordered",
  title: "Ordered already and not here yet",
  rows: 4,
  columns: [
    { name: "part", label: "Part", role: "input", content: "" },
    {
      name: "pieces",
      label: "Pieces",
      role: "input",
      format: "#,##0",
      content: "",
    },
  ],
};
