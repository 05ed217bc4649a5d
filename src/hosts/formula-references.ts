/** What a formula refers to. Rows and columns count from 0; a whole column or row runs to the end of the sheet. */
export type Reference =
  | {
      readonly kind: "area";
      readonly sheet?: string;
      readonly fromRow: number;
      readonly toRow: number;
      readonly fromColumn: number;
      readonly toColumn: number;
    }
  | {
      readonly kind: "table";
      readonly table: string;
      /** First and last heading meant; without them the whole width. */
      readonly columns?: readonly [string, string];
      readonly part: "data" | "this row" | "headings";
    }
  | { readonly kind: "name"; readonly name: string };

const lastRow = 1_048_575;
const lastColumn = 16_383;

const sheetPart = String.raw`(?:(?:'((?:[^']|'')+)'|([A-Za-z_\u00C0-\uFFFF][\w.\u00C0-\uFFFF]*))!)?`;
const token = new RegExp(
  [
    String.raw`"(?:[^"]|"")*"`,
    String.raw`${sheetPart}(?:\$?([A-Za-z]{1,3})\$?(\d{1,7})(?::\$?([A-Za-z]{1,3})\$?(\d{1,7}))?(?![\w(.])|\$?([A-Za-z]{1,3}):\$?([A-Za-z]{1,3})(?![\w(.])|\$?(\d{1,7}):\$?(\d{1,7})(?![\w.]))`,
    String.raw`([A-Za-z_\\\u00C0-\uFFFF][\w.\u00C0-\uFFFF]*)(\(|\[)?`,
    String.raw`\d+(?:\.\d*)?(?:[eE][-+]?\d+)?`,
    String.raw`[()]`,
  ].join("|"),
  "g",
);

/** These look at where a reference lies, not at what it holds. */
const onlyPlaces = new Set(["ROW", "ROWS", "COLUMN", "COLUMNS", "ISREF"]);

/** The references whose values a formula needs, in order of writing. */
export function references(formula: string): readonly Reference[] {
  const found: Reference[] = [];
  const open: string[] = [];
  const add = (reference: Reference): void => {
    if (!onlyPlaces.has(open.at(-1) ?? "")) found.push(reference);
  };
  const scan = new RegExp(token);
  for (let m = scan.exec(formula); m; m = scan.exec(formula)) {
    const [text, , , c1, , , , ca, , ra, , word, after] = m;
    if (text === "(") open.push("");
    else if (text === ")") open.pop();
    else if (c1 ?? ca ?? ra) add(area(m));
    else if (word !== undefined && after === "(") open.push(word.toUpperCase());
    else if (word !== undefined && after === "[") {
      const end = closing(formula, scan.lastIndex - 1);
      add(tablePart(word, formula.slice(scan.lastIndex, end)));
      scan.lastIndex = end + 1;
    } else if (word !== undefined && !/^(true|false)$/i.test(word))
      add({ kind: "name", name: word });
  }
  return found;
}

function area(m: RegExpExecArray): Reference {
  const [, quoted, bare, c1, r1, c2, r2, ca, cb, ra, rb] = m;
  const sheet = quoted?.replace(/''/g, "'") ?? bare;
  const columns = [c1 ?? ca, c2 ?? cb ?? c1].map((letters) =>
    letters === undefined ? undefined : columnNumber(letters),
  );
  const rows = [r1 ?? ra, r2 ?? rb ?? r1].map((digits) =>
    digits === undefined ? undefined : Number(digits) - 1,
  );
  const [fromColumn, toColumn] = ordered(columns, lastColumn);
  const [fromRow, toRow] = ordered(rows, lastRow);
  return {
    kind: "area",
    ...(sheet === undefined ? {} : { sheet }),
    fromRow,
    toRow,
    fromColumn,
    toColumn,
  };
}

const ordered = (
  ends: readonly (number | undefined)[],
  last: number,
): readonly [number, number] => {
  const [a = 0, b = last] = ends;
  return [Math.min(a, b), Math.max(a, b)];
};

const columnNumber = (letters: string): number =>
  [...letters.toUpperCase()].reduce(
    (n, letter) => n * 26 + letter.charCodeAt(0) - 64,
    0,
  ) - 1;

/** Where the bracket opened at `from` closes; a quote inside a heading escapes the next character. */
function closing(formula: string, from: number): number {
  let depth = 0;
  for (let i = from; i < formula.length; i += 1) {
    if (formula[i] === "'") i += 1;
    else if (formula[i] === "[") depth += 1;
    else if (formula[i] === "]") {
      depth -= 1;
      if (depth === 0) return i;
    }
  }
  return formula.length;
}

/** `inside` is what stands between the outer brackets: `Col`, `@Col`, or `[#This Row],[A]:[B]`. */
function tablePart(table: string, inside: string): Reference {
  const pieces = /\[/.test(inside)
    ? [...inside.matchAll(/\[((?:'.|[^\]'])*)\]/g)].map((p) => p[1] ?? "")
    : [inside.replace(/^@/, "")];
  const marks = pieces.filter((p) => p.startsWith("#"));
  const headings = pieces
    .filter((p) => p !== "" && !p.startsWith("#"))
    .map((p) => p.replace(/'(.)/g, "$1"));
  const [first, second = first] = headings;
  const has = (mark: string): boolean =>
    marks.some((m) => m.toLowerCase() === mark);
  return {
    kind: "table",
    table,
    ...(first === undefined || second === undefined
      ? {}
      : { columns: [first, second] as const }),
    part:
      has("#this row") || inside.startsWith("@")
        ? "this row"
        : has("#headers")
          ? "headings"
          : "data",
  };
}

/** The same formula written so many rows further down: references that are not fixed move along. */
export function movedDown(formula: string, rows: number): string {
  return formula.replace(
    new RegExp(
      String.raw`"(?:[^"]|"")*"|'(?:[^']|'')*'|\[(?:[^\[\]]|\[[^\]]*\])*\]|((?:\$?[A-Za-z]{1,3}))(\d{1,7})(?![\w(.!])|[A-Za-z_\\][\w.]*`,
      "g",
    ),
    (text, column: string | undefined, digits: string | undefined) =>
      column === undefined || digits === undefined
        ? text
        : `${column}${Number(digits) + rows}`,
  );
}

/** The same formula with another heading in every reference to that column of that table. */
export function renamedColumn(
  formula: string,
  table: string,
  from: string,
  to: string,
): string {
  const scan = new RegExp(token);
  let out = "";
  let copied = 0;
  for (let m = scan.exec(formula); m; m = scan.exec(formula)) {
    if (m[12] !== "[") continue;
    const end = closing(formula, scan.lastIndex - 1);
    if (m[11]?.toLowerCase() === table.toLowerCase()) {
      out += formula.slice(copied, scan.lastIndex);
      out += renamedPart(formula.slice(scan.lastIndex, end), from, to);
      copied = end;
    }
    scan.lastIndex = end + 1;
  }
  return out + formula.slice(copied);
}

function renamedPart(inside: string, from: string, to: string): string {
  const same = (heading: string): boolean =>
    heading.replace(/'(.)/g, "$1").toLowerCase() === from.toLowerCase();
  if (!inside.includes("[")) return same(inside) ? to : inside;
  return inside.replace(/\[((?:'.|[^\]'])*)\]/g, (text, heading: string) =>
    same(heading) ? `[${to}]` : text,
  );
}
