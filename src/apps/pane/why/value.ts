import { functionNamed } from "../../../functions";
import { answer } from "../../../functions/answer";
import { CannotAnswer } from "../../../measures/cannot-answer";
import type { CellPlace } from "../../../hosts/host";
import type { Stored } from "../../../sheets/workbook";
import type { Formula } from "./formula";
import type { Value } from "./received";
import { plainFunction } from "./worksheet-functions";
import { meaningOf, rangeOf, type Surroundings } from "./surroundings";

/** Works a formula out where it holds only references, plain values, arithmetic, our own functions and a few plain ones; else undefined. */
export async function valueOf(
  formula: Formula,
  at: CellPlace,
  around: Surroundings,
): Promise<{ readonly value: Value } | undefined> {
  switch (formula.kind) {
    case "value":
      return { value: formula.value };
    case "error":
      return { value: { error: formula.error } };
    case "group":
      return valueOf(formula.of, at, around);
    case "cells":
    case "columns":
      return referred(formula, at, around);
    case "name": {
      if (rangeOf(formula, at, around)) return referred(formula, at, around);
      const meant = meaningOf(formula.name, around);
      return meant && valueOf(meant, at, around);
    }
    case "sign":
      return combined([formula.of], at, around, ([of]) =>
        signed(formula.sign, of),
      );
    case "operation":
      return combined([formula.left, formula.right], at, around, ([a, b]) =>
        worked(formula.operator, a, b),
      );
    case "call":
      return called(formula, at, around);
  }
}

/** An argument left out counts as blank. */
export const valueOfArgument = async (
  arg: Formula | undefined,
  at: CellPlace,
  around: Surroundings,
): Promise<{ readonly value: Value } | undefined> =>
  arg ? valueOf(arg, at, around) : { value: null };

async function referred(
  formula: Formula,
  at: CellPlace,
  around: Surroundings,
): Promise<{ readonly value: Value } | undefined> {
  const range = rangeOf(formula, at, around);
  if (!range) return undefined;
  const { sheet, row, column, rows, columns } = range;
  const cells = await around.host.readArea(sheet, row, column, rows, columns);
  return {
    value: rows === 1 && columns === 1 ? (cells[0]?.[0] ?? null) : cells,
  };
}

async function called(
  formula: Extract<Formula, { kind: "call" }>,
  at: CellPlace,
  around: Surroundings,
): Promise<{ readonly value: Value } | undefined> {
  const definition = ourFunction(formula.name);
  if (/^(IF|IFERROR)$/i.test(formula.name)) return chosen(formula, at, around);
  const given = await Promise.all(
    formula.args.map((arg) => valueOfArgument(arg, at, around)),
  );
  const raw: Value[] = [];
  for (const known of given) {
    if (!known) return undefined;
    raw.push(known.value);
  }
  if (!definition)
    return raw.find(isError)
      ? { value: raw.find(isError) ?? null }
      : plainFunction(formula.name, raw);
  try {
    return { value: answer(definition, raw) };
  } catch (refusal) {
    if (refusal instanceof CannotAnswer)
      return { value: { error: refusal.code } };
    throw refusal;
  }
}

/** IF and IFERROR work out only the branch they take. */
async function chosen(
  { name, args }: Extract<Formula, { kind: "call" }>,
  at: CellPlace,
  around: Surroundings,
): Promise<{ readonly value: Value } | undefined> {
  const [first, yes, no] = args;
  const known = first && (await valueOf(first, at, around));
  if (!known || isRows(known.value)) return undefined;
  if (/^IFERROR$/i.test(name))
    return isError(known.value) && yes ? valueOf(yes, at, around) : known;
  if (isError(known.value)) return known;
  const branch = asNumber(known.value) === 0 ? no : yes;
  return branch ? valueOf(branch, at, around) : { value: false };
}

/** Our function behind a call, if it is one of ours. */
export const ourFunction = (name: string): ReturnType<typeof functionNamed> =>
  /^SYRUP\./i.test(name) ? functionNamed(name) : undefined;

async function combined(
  parts: readonly Formula[],
  at: CellPlace,
  around: Surroundings,
  how: (values: readonly Stored[]) => Stored | undefined,
): Promise<{ readonly value: Value } | undefined> {
  const values = await Promise.all(
    parts.map((part) => valueOf(part, at, around)),
  );
  const cells: Stored[] = [];
  for (const known of values) {
    if (!known || isRows(known.value)) return undefined;
    if (isError(known.value)) return known;
    cells.push(known.value);
  }
  const value = how(cells);
  return value === undefined ? undefined : { value };
}

export const isRows = (value: Value): value is readonly (readonly Stored[])[] =>
  Array.isArray(value);

export const isError = (
  value: Value | undefined,
): value is { readonly error: string } =>
  typeof value === "object" && value !== null && "error" in value;

function signed(sign: "-" | "+" | "%", of: Stored | undefined): Stored {
  const number = asNumber(of);
  if (number === undefined) return { error: "#VALUE!" };
  return sign === "%" ? number / 100 : sign === "-" ? -number : number;
}

function worked(
  operator: string,
  left: Stored | undefined,
  right: Stored | undefined,
): Stored | undefined {
  if (operator === "=" || operator === "<>")
    return isSame(left, right) === (operator === "=");
  if (operator === "&") return `${asText(left)}${asText(right)}`;
  const [a, b] = [asNumber(left), asNumber(right)];
  // Comparing text follows the worksheet's own order of letters, which we do not copy.
  if (a === undefined || b === undefined)
    return "+-*/^".includes(operator) ? { error: "#VALUE!" } : undefined;
  switch (operator) {
    case "+":
      return a + b;
    case "-":
      return a - b;
    case "*":
      return a * b;
    case "/":
      return b === 0 ? { error: "#DIV/0!" } : a / b;
    case "^":
      return a ** b;
    default:
      return undefined;
  }
}

/** As a worksheet compares: text in any case, a blank equal to nothing and to zero. */
function isSame(left: Stored | undefined, right: Stored | undefined): boolean {
  if (typeof left === "string" || typeof right === "string")
    return (
      typeof left !== "number" &&
      typeof right !== "number" &&
      asText(left).toLowerCase() === asText(right).toLowerCase()
    );
  return asNumber(left) === asNumber(right);
}

/** As worksheet arithmetic reads a cell: blank is 0, yes is 1, text that is a number counts. */
function asNumber(value: Stored | undefined): number | undefined {
  if (value === null || value === undefined) return 0;
  if (typeof value === "number") return value;
  if (typeof value === "boolean") return value ? 1 : 0;
  if (typeof value === "string" && value.trim() !== "") {
    const number = Number(value);
    return Number.isFinite(number) ? number : undefined;
  }
  return undefined;
}

const asText = (value: Stored | undefined): string =>
  value === null || value === undefined
    ? ""
    : typeof value === "boolean"
      ? String(value).toUpperCase()
      : String(value);
