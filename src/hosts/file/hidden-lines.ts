import { partXml, unpack, workbookPart } from "./package-parts";
import { sheetEntries } from "./sheet-entries";
import { childNamed, childrenNamed, flagOf } from "./xml";

/** Rows and columns of a sheet that are not shown, counted from 0. */
export interface HiddenLines {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
}

/** What a sheet of an .xlsx file does not show, within its first `columns` columns. The file must be a sound one. */
export function hiddenLines(
  bytes: Uint8Array,
  sheet: string,
  columns: number,
): HiddenLines {
  const parts = unpack(bytes);
  const workbookName = workbookPart(parts) ?? "";
  const entry = sheetEntries(
    parts,
    workbookName,
    partXml(parts, workbookName),
  ).find(({ name }) => name === sheet);
  if (!entry) throw new Error(`there is no sheet ${sheet}`);
  const worksheet = partXml(parts, entry.part);
  const hiddenColumns = childrenNamed(childNamed(worksheet, "cols"), "col")
    .filter((column) => flagOf(column, "hidden"))
    .flatMap(({ attributes: { min = "1", max = min } }) => {
      const [first, last] = [Number(min) - 1, Math.min(Number(max), columns)];
      return Array.from(
        { length: Math.max(0, last - first) },
        (_, i) => first + i,
      );
    });
  let row = -1;
  const rows: number[] = [];
  for (const line of childrenNamed(childNamed(worksheet, "sheetData"), "row")) {
    const { r } = line.attributes;
    row = r === undefined ? row + 1 : Number(r) - 1;
    if (flagOf(line, "hidden")) rows.push(row);
  }
  return { rows, columns: hiddenColumns };
}
