/** A formula with its cells and numbers taken out: what is left is alike in many rows, and `parts` differ. */
export interface FormulaShape {
  readonly outline: string;
  /** The cells and numbers in order of writing, a cell without the name of its sheet. */
  readonly parts: readonly string[];
}

const cell = String.raw`\$?[A-Za-z]{1,3}\$?\d{1,7}(?![\w(.!\u00C0-\uFFFF])`;
const number = String.raw`\d+(?:\.\d*)?|\.\d+`;
const kept = [
  String.raw`"(?:[^"]|"")*"`,
  String.raw`'(?:[^']|'')*'`,
  String.raw`\[(?:[^\[\]]|\[[^\]]*\])*\]`,
  String.raw`\{[^}]*\}`,
].join("|");
const word = String.raw`[A-Za-z_\\\u00C0-\uFFFF][\w.\u00C0-\uFFFF]*`;
const piece = new RegExp(`${kept}|(${cell})|${word}|(${number})`, "g");

/** Stand where a cell or a number was; no formula that is typed holds them. */
const cellMark = "\u0001";
const numberMark = "\u0002";

export function shapeOf(formula: string): FormulaShape {
  const parts: string[] = [];
  const outline = formula.replace(
    piece,
    (text, found: string | undefined, digits: string | undefined) => {
      if (found === undefined && digits === undefined) return text;
      parts.push(text);
      return found === undefined ? numberMark : cellMark;
    },
  );
  return { outline, parts };
}
