import { CannotAnswer, unusable } from "../../../measures/cannot-answer";
import { readNumber } from "../../../measures/read-number";
import type { Term } from "../../../terms/term";
import { readFormula } from "../why/formula";
import { referenceIn, type Cells } from "./reference";

/**
 * What a person typed for an argument as a formula writes it: a reference as it is, a number as a worksheet number,
 * everything else in quotes. Text that starts with "=" is taken as worksheet arithmetic. Throws a sentence for a
 * reference or arithmetic that leads nowhere; whether a value can be used, the function itself says.
 */
export function argumentText(term: Term, typed: string, cells: Cells): string {
  const written = typed.trim();
  if (written === "") return "";
  if (written.startsWith("=")) return arithmetic(term, written);
  const own = /^"((?:[^"]|"")*)"$/.exec(written);
  if (own) return quoted((own[1] ?? "").replaceAll('""', '"'));
  const reference = referenceIn(written, cells);
  if (reference) return reference.text;
  return value(term.kind === "list" ? term.of : term, written);
}

function value(term: Term, written: string): string {
  switch (term.kind) {
    case "number":
      // A share typed as per cent would reach a figure in per cent as a hundredth of itself.
      return (
        number(term.unit === "%" ? written.replace(/\s*%$/, "") : written) ??
        quoted(written)
      );
    case "quantity":
    case "date":
      return number(written) ?? quoted(written);
    case "share": {
      const percent = /^(.*?)\s*%$/.exec(written)?.[1];
      return (
        (percent === undefined ? number(written) : perCent(percent)) ??
        quoted(written)
      );
    }
    case "money":
      return number(written.replace(/^([-−]?)\$\s*/, "$1")) ?? quoted(written);
    case "yes or no":
      return /^(true|false)$/i.test(written)
        ? written.toUpperCase()
        : quoted(written);
    default:
      return quoted(written);
  }
}

/** As a worksheet writes it; undefined for text that is no plain number, which the function then has a sentence for. */
function number(written: string): string | undefined {
  try {
    return String(readNumber(written.replace(/^−/, "-"), "")).toUpperCase();
  } catch (refusal) {
    if (!(refusal instanceof CannotAnswer)) throw refusal;
    return undefined;
  }
}

const perCent = (written: string): string | undefined => {
  const figure = number(written);
  return figure === undefined ? undefined : `${figure}%`;
};

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

function arithmetic(term: Term, written: string): string {
  if (!readFormula(written))
    throw unusable(
      `${term.label}: “${written}” is no worksheet arithmetic that can be read here`,
    );
  return written.slice(1).trim();
}
