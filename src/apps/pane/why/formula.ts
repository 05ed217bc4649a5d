import type { Area, CellValue } from "../../../sheets/workbook";
import { readAreaAddress } from "./address";
import { readColumns, type ColumnsOf } from "./structured";
import { tokens, type Token } from "./tokens";

interface Span {
  /** The formula's own text of this part. */
  readonly text: string;
}

/** A worksheet formula as a tree. */
export type Formula = Span &
  (
    | { readonly kind: "value"; readonly value: CellValue }
    | { readonly kind: "error"; readonly error: string }
    | {
        readonly kind: "cells";
        readonly sheet?: string;
        readonly area: Area;
      }
    | { readonly kind: "columns"; readonly of: ColumnsOf }
    | { readonly kind: "name"; readonly name: string }
    | {
        readonly kind: "call";
        readonly name: string;
        readonly args: readonly (Formula | undefined)[];
      }
    | {
        readonly kind: "operation";
        readonly operator: string;
        readonly left: Formula;
        readonly right: Formula;
      }
    | {
        readonly kind: "sign";
        readonly sign: "-" | "+" | "%";
        readonly of: Formula;
      }
    | { readonly kind: "group"; readonly of: Formula }
  );

/** Reads a formula; undefined when it uses something beyond our reading. */
export function readFormula(source: string): Formula | undefined {
  const cut = tokens(source);
  if (!cut) return undefined;
  const cursor: Cursor = { source, cut, at: 0 };
  const read = operation(cursor, 0);
  return read && cursor.at >= cut.length ? read : undefined;
}

interface Cursor {
  readonly source: string;
  readonly cut: readonly Token[];
  at: number;
}

/** From the loosest to the tightest, as worksheets bind them. */
const levels: readonly (readonly string[])[] = [
  ["=", "<>", "<", ">", "<=", ">="],
  ["&"],
  ["+", "-"],
  ["*", "/"],
  ["^"],
];

function operation(cursor: Cursor, level: number): Formula | undefined {
  const operators = levels[level];
  if (!operators) return signed(cursor);
  const start = startOf(cursor);
  let left = operation(cursor, level + 1);
  while (left && isOperator(cursor, operators)) {
    const operator = take(cursor)?.text ?? "";
    const right = operation(cursor, level + 1);
    if (!right) return undefined;
    const text = since(cursor, start);
    left = { kind: "operation", operator, left, right, text };
  }
  return left;
}

function signed(cursor: Cursor): Formula | undefined {
  const start = startOf(cursor);
  if (isOperator(cursor, ["-", "+"])) {
    const sign = take(cursor)?.text === "-" ? "-" : "+";
    const of = signed(cursor);
    return of && { kind: "sign", sign, of, text: since(cursor, start) };
  }
  let of = single(cursor);
  while (of && isOperator(cursor, ["%"])) {
    take(cursor);
    of = { kind: "sign", sign: "%", of, text: since(cursor, start) };
  }
  return of;
}

function single(cursor: Cursor): Formula | undefined {
  const start = startOf(cursor);
  const token = take(cursor);
  if (!token) return undefined;
  const { kind, text } = token;
  switch (kind) {
    case "number":
      return { kind: "value", value: Number(text), text };
    case "text":
      return { kind: "value", value: unquoted(text, '"'), text };
    case "error":
      return { kind: "error", error: text, text };
    case "open": {
      const of = operation(cursor, 0);
      if (!of || take(cursor)?.kind !== "close") return undefined;
      return { kind: "group", of, text: since(cursor, start) };
    }
    case "sheet": {
      const read = cells(cursor, start);
      return read && { ...read, sheet: unquoted(text.slice(0, -1), "'") };
    }
    case "word":
      return word(cursor, token);
    default:
      return undefined;
  }
}

function word(cursor: Cursor, { text, start }: Token): Formula | undefined {
  const next = cursor.cut[cursor.at];
  if (next?.kind === "open") return call(cursor, text, start);
  if (next?.kind === "columns") {
    take(cursor);
    const of = readColumns(text, next.text);
    return of && { kind: "columns", of, text: since(cursor, start) };
  }
  if (/^(TRUE|FALSE)$/i.test(text))
    return { kind: "value", value: text.toUpperCase() === "TRUE", text };
  cursor.at -= 1;
  const read = cells(cursor, start);
  if (read) return read;
  cursor.at += 1;
  return { kind: "name", name: text, text };
}

function call(
  cursor: Cursor,
  name: string,
  start: number,
): Formula | undefined {
  take(cursor);
  const args: (Formula | undefined)[] = [];
  if (cursor.cut[cursor.at]?.kind === "close") take(cursor);
  else
    for (;;) {
      const next = cursor.cut[cursor.at]?.kind;
      const isLeftOut = next === "comma" || next === "close";
      const arg = isLeftOut ? undefined : operation(cursor, 0);
      if (!isLeftOut && !arg) return undefined;
      args.push(arg);
      const mark = take(cursor)?.kind;
      if (mark === "close") break;
      if (mark !== "comma") return undefined;
    }
  return { kind: "call", name, args, text: since(cursor, start) };
}

function cells(
  cursor: Cursor,
  start: number,
): Extract<Formula, { kind: "cells" }> | undefined {
  const [from, colon, to] = cursor.cut.slice(cursor.at, cursor.at + 3);
  if (from?.kind !== "word") return undefined;
  const ranged =
    colon?.text === ":" && to?.kind === "word"
      ? readAreaAddress(`${from.text}:${to.text}`)
      : undefined;
  const area = ranged ?? readAreaAddress(from.text);
  if (!area) return undefined;
  cursor.at += ranged ? 3 : 1;
  return { kind: "cells", area, text: since(cursor, start) };
}

const startOf = (cursor: Cursor): number =>
  cursor.cut[cursor.at]?.start ?? cursor.source.length;

const since = (cursor: Cursor, start: number): string =>
  cursor.source.slice(start, cursor.cut[cursor.at - 1]?.end);

function isOperator(cursor: Cursor, operators: readonly string[]): boolean {
  const token = cursor.cut[cursor.at];
  return token?.kind === "operator" && operators.includes(token.text);
}

function take(cursor: Cursor): Token | undefined {
  const token = cursor.cut[cursor.at];
  cursor.at += 1;
  return token;
}

/** Text inside its quotes, doubled quotes made single; text without quotes as it is. */
const unquoted = (text: string, quote: string): string =>
  text.startsWith(quote)
    ? text.slice(1, -1).replaceAll(quote + quote, quote)
    : text;
