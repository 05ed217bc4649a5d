/** A structured reference: some columns of a table, all rows or the row of the formula. */
export interface ColumnsOf {
  readonly table: string;
  /** First and last heading; undefined for every column. */
  readonly from?: string;
  readonly to?: string;
  readonly rows: "data" | "this row" | "headings" | "all";
}

const parts: Readonly<Record<string, ColumnsOf["rows"]>> = {
  "#data": "data",
  "#this row": "this row",
  "#headers": "headings",
  "#all": "all",
};

/** Reads `[Column]`, `[[#This Row],[Column]]` or `[[A]:[B]]` after a table's name. */
export function readColumns(
  table: string,
  brackets: string,
): ColumnsOf | undefined {
  const inner = brackets.slice(1, -1).trim();
  if (inner === "") return { table, rows: "data" };
  if (!inner.startsWith("[")) {
    const part = parts[inner.toLowerCase()];
    if (part) return { table, rows: part };
    return { table, from: plain(inner), to: plain(inner), rows: "data" };
  }
  const items = inner.match(/\[(?:'.|[^\]'])*\]|[:,]/g) ?? [];
  let rows: ColumnsOf["rows"] = "data";
  const headings: string[] = [];
  for (const item of items) {
    if (item === ":" || item === ",") continue;
    const text = item.slice(1, -1);
    const part = parts[text.trim().toLowerCase()];
    if (part) rows = part;
    else if (text.startsWith("#")) return undefined;
    else headings.push(plain(text));
  }
  const [from, to = from] = headings;
  return from === undefined || to === undefined
    ? { table, rows }
    : { table, from, to, rows };
}

/** Worksheets put a quote before a special letter inside a heading. */
const plain = (heading: string): string =>
  heading.replace(/'(.)/g, "$1").trim();
