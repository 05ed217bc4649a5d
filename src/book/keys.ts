import type { Finding } from "./finding";
import type { AnyRow } from "./any-row";
import type { TableReading } from "./read-table";
import type { Table } from "./table";

/** Leaves out every row whose key an earlier good row has already, and names every row that shares its key. */
export function withoutRepeats(
  table: Table,
  { rows, leftOut }: Pick<TableReading, "rows" | "leftOut">,
): { readonly rows: readonly AnyRow[]; readonly findings: readonly Finding[] } {
  if (table.key.length === 0) return { rows, findings: [] };
  const keyOf = (row: AnyRow): string =>
    table.key.map((part) => sameName(row[part])).join("\u0000");
  const bad = new Map(leftOut.map((row) => [keyOf(row), row]));
  const seen = new Map<string, AnyRow>();
  const findings: Finding[] = [];
  const repeat = (row: AnyRow, meaning: string): void => {
    findings.push({
      where: `${row.place}, ${table.columns[table.key[0] ?? ""]?.heading ?? ""}`,
      found: `"${table.key.map((part) => String(row[part])).join(", ")}" for the second time`,
      meaning,
      todo: "keep the right one of the two rows, or correct its name",
    });
  };
  const kept = rows.filter((row) => {
    const key = keyOf(row);
    const earlier = seen.get(key);
    if (earlier !== undefined) {
      repeat(
        row,
        `${earlier.place} has it already; this row is left out and the earlier one counts`,
      );
      return false;
    }
    seen.set(key, row);
    const unusable = bad.get(key);
    if (unusable !== undefined)
      repeat(
        row,
        `${unusable.place} has it too but cannot be used; this row counts`,
      );
    return true;
  });
  return { rows: kept, findings };
}

/** Names are matched as a worksheet matches them: without regard to case or outer spaces. */
export const sameName = (value: unknown): string =>
  String(value).trim().toLowerCase();

/** Whether two names mean the same thing to a person. */
export const isSameName = (a: string, b: string): boolean =>
  sameName(a) === sameName(b);
