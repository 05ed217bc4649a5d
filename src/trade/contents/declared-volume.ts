import { unusable } from "../../measures/cannot-answer";
import { as, type ColdLitres } from "../../measures/quantity";
import { readQuantity } from "../../measures/read-quantity";
import { findUnit, unitNamed } from "../../measures/units";

/** One way a label says its contents: "12 fl oz", or "1 qt 8 fl oz", which is one amount in two units. */
export interface Statement {
  readonly text: string;
  readonly volume: ColdLitres;
}

export interface Declaration {
  readonly statements: readonly Statement[];
  /** The larger statement, which is the one tested. Source: largerDeclaration. */
  readonly larger: Statement;
}

/**
 * Reads the declaration of contents from a label: "12 fl oz (355 mL)". Refuses (#VALUE!) what is no volume, a number
 * without a unit, an imperial measure, and a label with nothing to read.
 */
export function declaredVolume(label: string): Declaration {
  if (/\b(imp|imperial|uk|british)\b/i.test(label))
    throw unusable(
      `label: "${label}" speaks of imperial measures; US gallons, pints and fluid ounces, litres and millilitres are read here`,
    );
  const statements = label
    .replace(/\bU\.?S\.?(?=[\s)]|$)/gi, " ")
    .split(BREAKS)
    .flatMap((part) => statementsIn(part, label));
  const larger = statements.reduce<Statement | undefined>(
    (most, s) => (most && most.volume >= s.volume ? most : s),
    undefined,
  );
  if (!larger)
    throw unusable(
      `label: "${label}" declares no volume; type it as 12 fl oz (355 mL)`,
    );
  return { statements, larger };
}

/** What parts two statements: brackets, strokes, "or", a comma or dash between words. */
const BREAKS = /[()[\]/|;·•=]|\bor\b|,(?!\d)|\s[-–—]\s/i;
const AMOUNT = /([+-]?\d(?:[\d.,\s]*\d)?)\s*([^\d+-]*)/g;

interface Amount extends Statement {
  readonly isMetric: boolean;
  readonly unitSize: number;
}

function statementsIn(part: string, label: string): readonly Statement[] {
  const statements: Statement[] = [];
  let before: Amount | undefined;
  for (const [, number = "", words = ""] of part.matchAll(AMOUNT)) {
    const amount = amountOf(number, words, label);
    // "1 qt 8 fl oz" goes on in a smaller unit of its own kind; "12 fl oz 355 mL" starts anew.
    const goesOn =
      before !== undefined &&
      before.isMetric === amount.isMetric &&
      amount.unitSize < before.unitSize;
    const last = goesOn ? statements.pop() : undefined;
    statements.push(last ? together(last, amount) : amount);
    before = amount;
  }
  return statements;
}

const together = (a: Statement, b: Statement): Statement => ({
  text: `${a.text} ${b.text}`,
  volume: as<ColdLitres>(a.volume + b.volume),
});

function amountOf(number: string, words: string, label: string): Amount {
  // The estimated sign and the words around a declaration say nothing of its size.
  const unit = words
    .replace(/(\s|^)(e|℮|net|contents)[\s.:]*$/i, "")
    .replace(/[\s,:]+$/, "")
    .trim();
  if (unit === "")
    throw unusable(
      `label: ${number} in "${label}" has no unit; type it as 12 fl oz (355 mL)`,
    );
  const text = `${number} ${unit}`;
  const volume = as<ColdLitres>(readQuantity(text, unitNamed("mL"), "label"));
  if (volume <= 0) throw unusable(`label: "${text}" must be more than nothing`);
  const found = findUnit(unit);
  return {
    text,
    volume,
    isMetric: found?.symbol === "L" || found?.symbol === "mL",
    unitSize: found?.scale ?? 0,
  };
}
