/** One line of what was pasted: as it stands, and its cells. */
export interface PastedLine {
  /** Counted from 0 among all lines, blank ones included. */
  readonly line: number;
  readonly text: string;
  readonly cells: readonly string[];
}

export interface Pasted {
  readonly lines: readonly PastedLine[];
  /** What parts the cells, for writing a line again. */
  readonly mark: string;
}

const MARKS = ["\t", ";", "|", ","] as const;
/** Columns lined up with spaces, as an e-mail often has them. */
const SPACES = "  ";

/** Takes a paste apart: cells parted by tabs, semicolons, bars, commas or two spaces, whichever parts most lines alike. */
export function pastedLines(text: string): Pasted {
  const lines = text.replace(/\r\n?/g, "\n").split("\n");
  const mark = markOf(lines.filter(isContent));
  return {
    mark,
    lines: lines.flatMap((line, i) =>
      isContent(line)
        ? [{ line: i, text: line, cells: cellsOf(line, mark) }]
        : [],
    ),
  };
}

/** The same text with some cells of a line written anew; every other line stays as it is. */
export function withCells(
  text: string,
  line: number,
  cells: Readonly<Record<number, string>>,
): string {
  const { lines, mark } = pastedLines(text);
  const old = lines.find((one) => one.line === line);
  if (!old) return text;
  const width = Math.max(
    old.cells.length,
    ...Object.keys(cells).map((c) => Number(c) + 1),
  );
  const fresh = Array.from({ length: width }, (_, c) =>
    quoted(cells[c] ?? old.cells[c] ?? "", mark),
  );
  return text
    .replace(/\r\n?/g, "\n")
    .split("\n")
    .map((one, i) => (i === line ? fresh.join(mark) : one))
    .join("\n");
}

/** A rule drawn under headings, and the quotation marks of a forwarded e-mail, hold nothing. */
const isContent = (line: string): boolean => /[^\s|+=:>-]/.test(line);

function markOf(lines: readonly string[]): string {
  const rated = MARKS.map((mark) => {
    const counts = lines.map((line) => cellsOf(line, mark).length);
    const most = commonest(counts.filter((count) => count > 1));
    return { mark, alike: counts.filter((count) => count === most).length };
  });
  const best = rated.reduce((a, b) => (b.alike > a.alike ? b : a));
  return best.alike > 0 ? best.mark : SPACES;
}

function commonest(counts: readonly number[]): number {
  const seen = new Map<number, number>();
  for (const count of counts) seen.set(count, (seen.get(count) ?? 0) + 1);
  return [...seen].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 0;
}

function cellsOf(line: string, mark: string): readonly string[] {
  const plain = line.replace(/^\s*(>\s?)+/, "");
  if (mark === SPACES) return plain.trim().split(/\s{2,}/);
  if (mark === "|")
    return plain
      .trim()
      .replace(/^\||\|$/g, "")
      .split("|")
      .map((cell) => cell.trim());
  const cells: string[] = [];
  const pattern = new RegExp(
    `(?:^|${mark})(?:\\s*"((?:[^"]|"")*)"\\s*(?=${mark}|$)|([^${mark}]*))`,
    "g",
  );
  for (const [, inside, open = ""] of plain.matchAll(pattern))
    cells.push((inside?.replaceAll('""', '"') ?? open).trim());
  return cells;
}

const quoted = (cell: string, mark: string): string =>
  mark.trim() !== "" && (cell.includes(mark) || cell.includes('"'))
    ? `"${cell.replaceAll('"', '""')}"`
    : cell;
