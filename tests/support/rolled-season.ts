import type { CellContent, Contents } from "../../src/book/contents";
import { rollSeason } from "../../src/book/season-roll/roll-season";
import { serialOf } from "../../src/measures/read-date";
import { demoTables } from "../book/csv-folder";

/** The demo farm's book of 2027, just rolled. */
export const rolledTables = (): readonly Contents[] =>
  rollSeason(demoTables(), 2027).contents;

/**
 * The same after its first run: 60 hours on the big line with 4 of setting up and cleaning, more than all of 2026's there,
 * while 400 gallons and one run are far less.
 */
export const begunTables = (): readonly Contents[] =>
  withRow(rolledTables(), "Runs", [
    ["Run", "RUN-37"],
    ["Date", serialOf(2027, 2, 10)],
    ["Product", "G250-AM"],
    ["Line", "Big line"],
    ["Good bottles", 6000],
    ["Broken", 10],
    ["Average fill mL", 252],
    ["Syrup drawn lb", 4500],
    ["Purge lb", 60],
    ["Brix", 66.4],
    ["Setup minutes", 150],
    ["Clean down minutes", 90],
    ["Running hours", 60],
    ["Crew", 5],
    ["Fill temperature °F", 186],
    ["Source lots", "26-08:4500"],
  ]);

function withRow(
  tables: readonly Contents[],
  name: string,
  cells: readonly (readonly [string, CellContent])[],
): readonly Contents[] {
  return tables.map((table) => {
    if (table.name !== name) return table;
    const row = table.headings.map(
      (heading) => cells.find(([own]) => own === heading)?.[1] ?? null,
    );
    for (const [heading] of cells)
      if (!table.headings.includes(heading))
        throw new Error(`${name} has no column ${heading}`);
    return { ...table, rows: [...table.rows, row] };
  });
}
