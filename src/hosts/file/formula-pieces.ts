/** A stretch of a formula: `code` may hold names and references; the rest is quoted text, a quoted sheet name or a bracket. */
export interface Piece {
  readonly code: boolean;
  readonly text: string;
}

/** A formula cut where quotes and square brackets begin and end. Joined again, the pieces are the formula. */
export function formulaPieces(formula: string): readonly Piece[] {
  const pieces: Piece[] = [];
  let start = 0;
  let at = 0;
  while (at < formula.length) {
    const end = closedAt(formula, at);
    if (end === at) {
      at += 1;
      continue;
    }
    if (at > start) pieces.push({ code: true, text: formula.slice(start, at) });
    pieces.push({ code: false, text: formula.slice(at, end) });
    start = at = end;
  }
  if (at > start) pieces.push({ code: true, text: formula.slice(start) });
  return pieces;
}

/** The formula with every code piece changed and everything quoted left alone. */
export const changeCode = (
  formula: string,
  change: (code: string) => string,
): string =>
  formulaPieces(formula)
    .map(({ code, text }) => (code ? change(text) : text))
    .join("");

/** Where the quotation or bracket that opens at `at` ends; `at` itself when none opens there. */
function closedAt(formula: string, at: number): number {
  const opening = formula[at];
  if (opening === "[") return bracketEnd(formula, at);
  if (opening !== '"' && opening !== "'") return at;
  let end = at + 1;
  while (end < formula.length) {
    if (formula[end] !== opening) end += 1;
    else if (formula[end + 1] === opening) end += 2;
    else return end + 1;
  }
  return formula.length;
}

/** In a table reference an apostrophe takes the next character as it is. */
function bracketEnd(formula: string, at: number): number {
  let depth = 0;
  for (let end = at; end < formula.length; end += 1) {
    const character = formula[end];
    if (character === "'") end += 1;
    else if (character === "[") depth += 1;
    else if (character === "]" && --depth === 0) return end + 1;
  }
  return formula.length;
}
