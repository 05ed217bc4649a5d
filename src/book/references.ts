import { type Book, bookTables, tableList } from "./book";
import type { Finding } from "./finding";
import { sameName } from "./keys";
import type { AnyRow } from "./any-row";
import type { Column } from "./table";

type Rows = Readonly<Record<keyof Book, readonly AnyRow[]>>;

/** Gives every name that refers to another table that table's own spelling; names found nowhere are findings. */
export function checkReferences(book: Rows): {
  readonly book: Rows;
  readonly findings: readonly Finding[];
} {
  const findings: Finding[] = [];
  const checked: Record<string, readonly AnyRow[]> = { ...book };
  for (const [tableKey, table] of tableList) {
    for (const [key, column] of Object.entries(table.columns)) {
      const known = column.refersTo && namesKnown(book, column.refersTo);
      if (known === undefined) continue;
      const unknown = new Map<string, AnyRow[]>();
      checked[tableKey] = (checked[tableKey] ?? []).map((row) => {
        const name = row[key];
        if (name === undefined) return row;
        const own = known.get(sameName(name));
        if (own !== undefined)
          return own === name ? row : { ...row, [key]: own };
        const missed = unknown.get(String(name)) ?? [];
        unknown.set(String(name), [...missed, row]);
        return row;
      });
      for (const [name, rows] of unknown)
        findings.push(unknownName(column, name, rows));
    }
  }
  return { book: checked as Rows, findings };
}

/** Nothing is unknown where the other table is missing or empty: that has its own finding. */
function namesKnown(
  book: Rows,
  places: readonly string[],
): ReadonlyMap<string, string> | undefined {
  const names = places.flatMap((place) => {
    const [table, key] = placeParts(place);
    return book[table].map((row) => String(row[key]));
  });
  return names.length === 0
    ? undefined
    : new Map(names.map((name) => [sameName(name), name]));
}

/** The table's key in the book and the column's key, for "Parts.part". */
export function placeParts(place: string): readonly [keyof Book, string] {
  const [name, key] = place.split(".");
  const table = tableList.find(([, known]) => known.name === name);
  if (table === undefined || key === undefined)
    throw new Error(`No column "${place}" in the farm book`);
  return [table[0], key];
}

function unknownName(
  column: Column,
  name: string,
  rows: readonly AnyRow[],
): Finding {
  const tables = (column.refersTo ?? []).map(
    (place) => bookTables[placeParts(place)[0]].sheet,
  );
  const more = rows.length - 1;
  return {
    where: `${rows[0]?.place ?? ""}, ${column.heading}`,
    found: `"${name}"${more > 0 ? ` (and in ${more} more ${more === 1 ? "row" : "rows"})` : ""}`,
    meaning: `there is no such ${column.term.label.toLowerCase()} in ${tables.join(" or ")}`,
    todo: `correct the name, or add a row for it to ${tables.join(" or ")}`,
  };
}
