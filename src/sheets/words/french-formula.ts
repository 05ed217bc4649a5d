import { sheetReference } from "../address";
import { literalInFrench } from "./french";

/** What else of a workbook changes its name, as formulas must follow. */
export interface Renamed {
  readonly sheet: (name: string) => string;
  readonly heading: (table: string, heading: string) => string;
}

const PIECE =
  /"((?:[^"]|"")*)"|(?:'((?:[^']|'')*)'|([A-Za-z_][\w.]*))!|([A-Za-z_][\w.]*)\[([^[\]#@]+)\]/g;

/** A formula that says in French what it said, and reads the same cells. */
export const formulaInFrench = (formula: string, renamed: Renamed): string =>
  withoutFormats(formula).replace(
    PIECE,
    (
      whole,
      text: string | undefined,
      quoted: string | undefined,
      bare: string | undefined,
      table: string | undefined,
      heading: string | undefined,
    ) => {
      if (text !== undefined) return literal(text);
      const sheet = quoted?.replace(/''/g, "'") ?? bare;
      if (sheet !== undefined)
        return `${sheetReference(renamed.sheet(sheet))}!`;
      return table !== undefined && heading !== undefined
        ? `${table}[${renamed.heading(table, heading)}]`
        : whole;
    },
  );

const literal = (text: string): string =>
  `"${literalInFrench(text.replace(/""/g, '"')).replace(/"/g, '""')}"`;

/**
 * The formats of TEXT follow the reader's own settings: a French Excel does not know "yyyy" and takes the comma of "#,##0"
 * for decimals. These say the same in every language.
 */
const formats: Readonly<Record<string, (of: string) => string>> = {
  "yyyy-mm-dd": (of) =>
    `(YEAR(${of})&"-"&TEXT(MONTH(${of}),"00")&"-"&TEXT(DAY(${of}),"00"))`,
  "#,##0": (of) => `FIXED(${of},0)`,
  "0.0": (of) => `FIXED(${of},1,TRUE)`,
};

/** The calls of TEXT from the last to the first, so that one inside another is met before it. */
function withoutFormats(formula: string): string {
  let written = formula;
  let before = formula.length;
  for (;;) {
    const code = written.replace(/"(?:[^"]|"")*"/g, (quoted) =>
      " ".repeat(quoted.length),
    );
    const start = lastCall(code, before);
    if (start < 0) return written;
    const end = closing(code, start + CALL.length);
    const [, of = "", format = ""] =
      /^(.*),\s*"([^"]*)"\s*$/s.exec(written.slice(start + CALL.length, end)) ??
      [];
    const better = formats[format];
    if (better)
      written = `${written.slice(0, start)}${better(of)}${written.slice(end + 1)}`;
    before = start;
  }
}

const CALL = "TEXT(";

/** Where the last call before a place begins; -1 for none. */
const lastCall = (code: string, before: number): number =>
  [...code.slice(0, before).matchAll(/(?<![\w.])TEXT\(/g)].at(-1)?.index ?? -1;

function closing(code: string, from: number): number {
  let depth = 1;
  for (let at = from; at < code.length; at += 1) {
    if (code[at] === "(") depth += 1;
    if (code[at] === ")") depth -= 1;
    if (depth === 0) return at;
  }
  throw new Error(`A bracket is missing in ${code}`);
}
