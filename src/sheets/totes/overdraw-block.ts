import type { Block, Column, Line } from "../model";
import { column, day, weight } from "./columns";
import type { ToteFacts } from "./facts";

/** Lots that are overdrawn are few; the last line says when there are more. */
const SHOWN = 3;
/** Halvings that find any day to the year 2079, and any of 131,072 rows of Lot use. */
const HALVINGS = 17;

/** The first draw each overdrawn lot does not cover, in words. */
export const overdrawnBlock: Block = {
  kind: "lines",
  title: "The first draw that a lot does not cover",
  lines: ["first", "second", "third"].map((which, i): Line => ({
    name: `overdrawn_${i + 1}`,
    label: `Overdrawn, ${which} lot`,
    role: "check",
    content: { formula: `=${inWords(i + 1)}` },
  })),
};

function inWords(place: number): string {
  const of = (name: string): string => `INDEX({overdraws.${name}},${place})`;
  const more =
    place === SHOWN
      ? `&IF(MAX({lots.overdrawn})>${SHOWN},"; "&(MAX({lots.overdrawn})-${SHOWN})&" more lots are overdrawn","")`
      : "";
  return `IF(ISNUMBER(${of("at")}),${of("name")}&": "&TEXT(${of("pounds")},"#,##0.0")&" lb for "&${of("to")}&" on "&TEXT(${of("day")},"yyyy-mm-dd")&", Lot use row "&${of("row")}&", "&TEXT(${of("short")},"#,##0.0")&" lb too many"${more},"${place === 1 ? "none" : ""}")`;
}

/**
 * The working behind it. The day is found by halving, because pounds drawn by a day only grow, and the row of that day
 * likewise, in the order the rows are listed. Nothing is worked out for a lot that is not overdrawn.
 */
export const overdrawBlock = (facts: ToteFacts): Block => {
  const of = (key: "pounds" | "from" | "date" | "to" | "what"): string =>
    facts.column("lotUse", key);
  const known = (name: string, formula: string): string =>
    `IF(ISNUMBER({row.${name}}),${formula},"")`;
  const drawnBy = (date: string): string =>
    `SUMIFS(${of("pounds")},${of("from")},{row.name},${of("date")},"<="&${date})`;
  // Cut with INDEX: a comparison with ROW() over many rows comes out wrong in the grid.
  const upTo = (key: "pounds" | "from" | "date", row: string): string =>
    `INDEX(${of(key)},1):INDEX(${of(key)},MIN(ROWS(${of(key)}),${row}))`;
  const drawnThatDay = (row: string): string =>
    `SUMIFS(${upTo("pounds", row)},${upTo("from", row)},{row.name},${upTo("date", row)},{row.day})`;
  const at = (key: "pounds" | "to" | "what"): string =>
    `INDEX(${of(key)},{row.place})`;
  return {
    kind: "table",
    name: "overdraws",
    title: "Working: the first draw that a lot does not cover",
    rows: SHOWN,
    columns: [
      column("name", "Lot", known("at", "INDEX({lots.name},{row.at})")),
      column(
        "row",
        "Row of Lot use",
        known("at", `ROW(INDEX(${of("from")},1))+{row.place}-1`),
        "0",
      ),
      column("day", "Drawn on", known("at", `{row.day_${HALVINGS}}+1`), day),
      column("pounds", "Drawn lb", known("at", at("pounds")), weight),
      column(
        "short",
        "Too many, lb",
        known("at", `ROUND(${drawnThatDay("{row.place}")}-{row.before},6)`),
        weight,
      ),
      column(
        "to",
        "For",
        known("at", `IF(${at("to")}&""="",${at("what")}&"",${at("to")}&"")`),
      ),
      column(
        "at",
        "Lot, row",
        'IFERROR(MATCH({n},{lots.overdrawn},0),"")',
        "0",
      ),
      column(
        "place",
        "Among the draws, row",
        known("at", `{row.row_${HALVINGS}}+1`),
        "0",
      ),
      column("in", "In lb", known("at", "INDEX({lots.in},{row.at})"), weight),
      column(
        "before",
        "Left before that day, lb",
        known("at", `{row.in}-${drawnBy("({row.day}-1)")}`),
        weight,
      ),
      ...halvings("day", (from, step) =>
        known(
          "at",
          `${from}+IF(${drawnBy(`(${from}+${step})`)}>{row.in}+0.000001,0,${step})`,
        ),
      ),
      ...halvings("row", (from, step) =>
        known(
          "at",
          `${from}+IF(${drawnThatDay(`(${from}+${step})`)}>{row.before}+0.000001,0,${step})`,
        ),
      ),
    ],
  };
};

/** Columns that halve their way up from 0, each by half the step before. */
const halvings = (
  name: string,
  next: (from: string, step: number) => string,
): readonly Column[] =>
  Array.from({ length: HALVINGS }, (_, i) =>
    column(
      `${name}_${i + 1}`,
      `Up to ${name} ${i + 1}`,
      next(i === 0 ? "0" : `{row.${name}_${i}}`, 2 ** (HALVINGS - 1 - i)),
      "0",
    ),
  );
