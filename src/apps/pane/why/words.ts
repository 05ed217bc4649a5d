import type { Formula } from "./formula";
import { ourFunction } from "./value";

const signs: Readonly<Record<string, string>> = {
  "*": "×",
  "/": "÷",
  "-": "−",
  "<>": "≠",
  "<=": "≤",
  ">=": "≥",
  "&": "then",
};

/** A formula with every reference replaced by what the sheet calls that cell: "“Net lb” ÷ “Lb per gal”". */
export function inWords(
  formula: Formula,
  called: (reference: Formula) => string | undefined,
): string {
  const say = (part: Formula): string => inWords(part, called);
  switch (formula.kind) {
    case "value":
    case "error":
      return formula.text;
    case "cells":
    case "columns":
    case "name": {
      const label = called(formula);
      return label === undefined ? formula.text : `“${label}”`;
    }
    case "group":
      return `(${say(formula.of)})`;
    case "sign":
      return formula.sign === "%"
        ? `${say(formula.of)} %`
        : `${formula.sign === "-" ? "−" : ""}${say(formula.of)}`;
    case "operation":
      return `${say(formula.left)} ${signs[formula.operator] ?? formula.operator} ${say(formula.right)}`;
    case "call": {
      const ours = ourFunction(formula.name);
      const name = ours
        ? ours.name.toLowerCase().replaceAll("_", " ")
        : formula.name.toUpperCase();
      const args = formula.args.map((arg) => (arg ? say(arg) : "nothing"));
      return `${name}(${args.join(", ")})`;
    }
  }
}

/** Every part of a formula, the whole first. */
export function partsOf(formula: Formula): readonly Formula[] {
  switch (formula.kind) {
    case "group":
    case "sign":
      return [formula, ...partsOf(formula.of)];
    case "operation":
      return [formula, ...partsOf(formula.left), ...partsOf(formula.right)];
    case "call":
      return [
        formula,
        ...formula.args.flatMap((arg) => (arg ? partsOf(arg) : [])),
      ];
    default:
      return [formula];
  }
}

/** The references of a formula, each once. */
export function referencesOf(formula: Formula): readonly Formula[] {
  const seen = new Set<string>();
  return partsOf(formula).filter((part) => {
    if (!["cells", "columns", "name"].includes(part.kind)) return false;
    if (seen.has(part.text)) return false;
    seen.add(part.text);
    return true;
  });
}

/** Our own calls that are not inside another of our calls. */
export function ourCallsOf(
  formula: Formula,
): readonly Extract<Formula, { kind: "call" }>[] {
  if (formula.kind === "call") {
    if (ourFunction(formula.name)) return [formula];
    return formula.args.flatMap((arg) => (arg ? ourCallsOf(arg) : []));
  }
  if (formula.kind === "operation")
    return [...ourCallsOf(formula.left), ...ourCallsOf(formula.right)];
  return formula.kind === "group" || formula.kind === "sign"
    ? ourCallsOf(formula.of)
    : [];
}
