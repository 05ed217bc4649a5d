/** A piece of a worksheet formula with where it stands in the text. */
export interface Token {
  readonly kind:
    | "number"
    | "text"
    | "word"
    | "sheet"
    | "columns"
    | "operator"
    | "open"
    | "close"
    | "comma"
    | "error";
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** Cuts a formula into tokens; undefined when it holds something we do not read (array constants, spill marks). */
export function tokens(formula: string): readonly Token[] | undefined {
  const found: Token[] = [];
  let at = formula.startsWith("=") ? 1 : 0;
  while (at < formula.length) {
    const rest = formula.slice(at);
    const blank = /^\s+/.exec(rest);
    if (blank) {
      at += blank[0].length;
      continue;
    }
    const token = first(rest, at);
    if (!token) return undefined;
    found.push(token);
    at = token.end;
  }
  return found;
}

const patterns: readonly (readonly [Token["kind"], RegExp])[] = [
  ["text", /^"(?:[^"]|"")*"/],
  ["error", /^#(?:N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!)/i],
  ["sheet", /^(?:'(?:[^']|'')+'|[A-Za-z_][\w.]*)!/],
  ["number", /^(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?(?![A-Za-z_])/],
  // A dot belongs to a word only between letters, as in SYRUP.MARGIN.
  ["word", /^[$A-Za-z_\\][$\w.\\]*/],
  ["operator", /^(?:<>|<=|>=|[-+*/^&=<>%:])/],
  ["open", /^\(/],
  ["close", /^\)/],
  ["comma", /^,/],
];

function first(rest: string, start: number): Token | undefined {
  if (rest.startsWith("[")) return columnsToken(rest, start);
  for (const [kind, pattern] of patterns) {
    const match = pattern.exec(rest);
    if (match) {
      const text = match[0];
      return { kind, text, start, end: start + text.length };
    }
  }
  return undefined;
}

/** The bracketed part of a structured reference, brackets nested and quotes (') as worksheets write them. */
function columnsToken(rest: string, start: number): Token | undefined {
  let depth = 0;
  for (let i = 0; i < rest.length; i += 1) {
    const letter = rest[i];
    if (letter === "'") i += 1;
    else if (letter === "[") depth += 1;
    else if (letter === "]") depth -= 1;
    if (depth === 0) {
      const text = rest.slice(0, i + 1);
      return { kind: "columns", text, start, end: start + text.length };
    }
  }
  return undefined;
}
