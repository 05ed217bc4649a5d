import { tableList } from "../../../book/book";
import type { Stored } from "../../../sheets/workbook";
import type { CellTerm } from "../../../terms/term";

/** The term of a farm-book column by the table's name and heading; in Settings and Energy the row's name decides. */
export function columnTerm(
  tableName: string,
  heading: string,
  rowName: Stored | undefined,
): CellTerm | undefined {
  const table = tableList.find(
    ([, t]) => t.name.toLowerCase() === tableName.toLowerCase(),
  )?.[1];
  const wanted = heading.toLowerCase();
  const column = Object.values(table?.columns ?? {}).find((c) =>
    [c.heading, ...(c.aliases ?? [])].some((h) => h.toLowerCase() === wanted),
  );
  const own =
    typeof rowName === "string" ? column?.byName?.[rowName] : undefined;
  return own ?? column?.term;
}
