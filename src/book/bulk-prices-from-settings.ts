import { bulkPrices } from "./tables/bulk-prices";
import { settings } from "./tables/settings";
import { happenings } from "./book-days";
import { tableList } from "./book";
import {
  type CellContent,
  columnAt,
  type Contents,
  contentsOf,
} from "./contents";
import { isBlank } from "../functions/read-cell";
import { answerOrNone } from "../measures/cannot-answer";
import { readDate } from "../measures/read-date";

const REPLACEMENT = /^\s*replacement price,\s*(.+?)\s*$/i;

/** A "Replacement price, Amber" row of Settings, whose price belongs among the bulk prices. */
export const replacementKind = (name: unknown): string | undefined =>
  REPLACEMENT.exec(String(name))?.[1];

/**
 * The table Bulk prices made of the replacement prices among the settings, valid from the count date or else from
 * the last day anything happened. Undefined when no setting gives such a price or no day is known.
 */
export function bulkPricesFromSettings(
  all: readonly Contents[],
): Contents | undefined {
  const given = contentsOf(all, settings);
  if (given === undefined) return undefined;
  const nameAt = columnAt(given.headings, settings.columns.setting);
  const valueAt = columnAt(given.headings, settings.columns.value);
  const day = countDay(given, nameAt, valueAt) ?? newestDay(all);
  const found = given.rows.flatMap((row, i) => {
    const kind = replacementKind(row[nameAt]);
    return kind === undefined || day === undefined
      ? []
      : [{ i, cells: [kind, day, row[valueAt] ?? null] }];
  });
  if (found.length === 0) return undefined;
  const headings = Object.values(bulkPrices.columns).map((c) => c.heading);
  return {
    name: bulkPrices.name,
    sheet: bulkPrices.sheet,
    row: 0,
    column: 0,
    headings,
    rows: found.map(({ cells }) => cells),
    from: {
      file: given.from?.file ?? given.sheet,
      counts: given.from?.counts ?? "row",
      lines: found.map(({ i }) => given.from?.lines[i] ?? given.row + i + 2),
      columns: ["setting", "valid from", "value"],
    },
  };
}

function countDay(
  given: Contents,
  nameAt: number,
  valueAt: number,
): number | undefined {
  const row = given.rows.find(
    (cells) => String(cells[nameAt]).trim().toLowerCase() === "count date",
  );
  return dayIn(row?.[valueAt]);
}

function newestDay(all: readonly Contents[]): number | undefined {
  const days = happenings.flatMap(([name, key]) => {
    const table = tableList.find(([, known]) => known.name === name)?.[1];
    const column = table?.columns[key];
    const given = table && contentsOf(all, table);
    if (given === undefined || column === undefined) return [];
    const at = columnAt(given.headings, column);
    return given.rows.flatMap((row) => dayIn(row[at]) ?? []);
  });
  return days.length === 0
    ? undefined
    : days.reduce((a, b) => Math.max(a, b), 0);
}

function dayIn(content: CellContent | undefined): number | undefined {
  if (isBlank(content)) return undefined;
  if (typeof content !== "number" && typeof content !== "string")
    return undefined;
  return answerOrNone(() => readDate(content, "date"));
}
