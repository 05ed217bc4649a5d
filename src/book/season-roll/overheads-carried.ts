import { type Book, bookTables } from "../book";
import {
  type CellContent,
  columnAt,
  type Contents,
  placeOf,
} from "../contents";
import { sameName } from "../keys";
import { rowOf } from "./carried-rows";

const { columns } = bookTables.overheads;

/** Rows for the next season's overheads, each that of the closing season as an estimate; none where the season has its own. */
export function estimatesFor(
  contents: Contents,
  rows: Book["overheads"],
  season: number,
): readonly (readonly CellContent[])[] {
  const own = new Set(
    rows
      .filter((row) => row.season === season)
      .map(({ item }) => sameName(item)),
  );
  const estimated = new Set(
    rows
      .filter(
        (row) => row.season === season - 1 && !own.has(sameName(row.item)),
      )
      .map(({ place }) => place),
  );
  const noteAt = columnAt(contents.headings, columns.note);
  return contents.rows
    .filter((_, i) => estimated.has(placeOf(contents, i)))
    .map((row) =>
      rowOf(
        contents,
        [
          [columns.season, season],
          [columns.note, noted(row[noteAt], season - 1)],
        ],
        row,
      ),
    );
}

function noted(note: CellContent | undefined, season: number): string {
  const says = `estimate: as in ${season}`;
  return typeof note === "string" && note.trim() !== ""
    ? `${note}; ${says}`
    : says;
}
