/** A number as people write it in a ticket or a ledger, with the words that stand beside it. */
export interface WrittenNumber {
  readonly value: number;
  /** Nothing but digits and one point: a worksheet reads it the same way. */
  readonly plain: boolean;
  readonly decimalComma: boolean;
  /** What stands before and after the number: a unit, a currency. */
  readonly beside: string;
}

const NUMBER = /[-+−]?\s?\d[\d.,'’\s\u00a0\u202f]*/g;

/** Undefined where there is no number, or more than one. */
export function readWrittenNumber(text: string): WrittenNumber | undefined {
  const found = [...text.trim().matchAll(NUMBER)];
  const [only, more] = found;
  if (!only || more) return undefined;
  const token = only[0].replace(/[.,\s\u00a0\u202f]+$/, "");
  const sign = /^[-−]/.test(token) ? -1 : 1;
  const digits = token.replace(/^[-+−]\s?/, "");
  const plain = pointed(digits);
  if (plain === undefined) return undefined;
  const trimmed = text.trim();
  const before = trimmed.slice(0, only.index);
  const after = trimmed.slice(only.index + token.length);
  return {
    value: sign * Number(plain),
    plain: /^[-+]?\d+(\.\d+)?$/.test(trimmed),
    decimalComma: /,/.test(digits) && plain.includes("."),
    beside: `${before} ${after}`.trim(),
  };
}

const GROUPS = /^\d{1,3}(['’\s\u00a0\u202f]\d{3})+(?=[.,]|$)/;

/** The same digits with a point before the decimals and nothing between the thousands. */
function pointed(digits: string): string | undefined {
  const whole = GROUPS.test(digits)
    ? digits.replace(/['’\s\u00a0\u202f]/g, "")
    : digits;
  if (/[^\d.,]/.test(whole)) return undefined;
  const [comma, point] = [whole.lastIndexOf(","), whole.lastIndexOf(".")];
  if (comma >= 0 && point >= 0) {
    const [grouping, decimal] = comma < point ? [",", "."] : [".", ","];
    const [front = "", back = "", ...rest] = whole.split(decimal);
    return rest.length > 0 || !grouped(front, grouping)
      ? undefined
      : `${front.replaceAll(grouping, "")}.${back}`;
  }
  if (comma >= 0) {
    if (grouped(whole, ",")) return whole.replaceAll(",", "");
    return whole.split(",").length === 2 ? whole.replace(",", ".") : undefined;
  }
  if (whole.split(".").length > 2)
    return grouped(whole, ".") ? whole.replaceAll(".", "") : undefined;
  return whole;
}

const grouped = (text: string, mark: string): boolean => {
  const [first = "", ...rest] = text.split(mark);
  return (
    /^[1-9]\d{0,2}$/.test(first) &&
    rest.length > 0 &&
    rest.every((part) => /^\d{3}$/.test(part))
  );
};
