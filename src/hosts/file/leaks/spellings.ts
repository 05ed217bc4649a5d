/** Fewer figures than this tell nothing: 12 or 0.5 stands in every file. */
export const LEAST_DIGITS = 3;

/** A number as digits and a place, so that 2.50, 2.5 and 25e-1 are one; undefined for too few digits to be anybody's. */
export function figureKey(value: number): string | undefined {
  if (!Number.isFinite(value) || value === 0) return undefined;
  const [mantissa = "", exponent = "0"] = Math.abs(value)
    .toExponential(14)
    .split("e");
  const digits = mantissa.replace(".", "").replace(/0+$/, "");
  return digits.length < LEAST_DIGITS
    ? undefined
    : `${digits}e${Number(exponent)}`;
}

/** Every way a figure may be written that still tells it: in full, rounded to fewer decimals, in percent or cents. */
export function figureKeys(value: number): ReadonlySet<string> {
  const keys = new Set<string>();
  for (const scaled of [value, value * 100]) {
    const full = figureKey(scaled);
    if (full !== undefined) keys.add(full);
    for (let decimals = 0; decimals <= 6; decimals += 1) {
      const rounded = figureKey(Number(scaled.toFixed(decimals)));
      if (rounded !== undefined) keys.add(rounded);
    }
  }
  return keys;
}

const NUMBER =
  /(?<![A-Za-z$_\d.,])(?:\d[\d.,'\u00a0\u202f\u2009 ]*\d|\d)(?:[eE][+-]?\d+)?/g;

/** The numbers in a text, each read every way it can be meant: with comma or point for the decimals, grouped or not. */
export function figuresIn(text: string): ReadonlySet<string> {
  const keys = new Set<string>();
  for (const [run] of text.matchAll(NUMBER))
    for (const written of [run, ...run.split(SPACES), ...run.split(/[,']/)])
      for (const reading of readings(written.replace(SPACES, "")))
        if (/^\d+(\.\d+)?(e[+-]?\d+)?$/i.test(reading)) {
          const key = figureKey(Number(reading));
          if (key !== undefined) keys.add(key);
        }
  return keys;
}

const SPACES = /[\u00a0\u202f\u2009 ]/g;

function readings(written: string): readonly string[] {
  const found = [written.replace(/'/g, "")];
  if (/^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/.test(written))
    found.push(written.replace(/,/g, ""));
  if (/^[1-9]\d{0,2}(\.\d{3})+(,\d+)?$/.test(written))
    found.push(written.replace(/\./g, "").replace(",", "."));
  if (/^\d+,\d+$/.test(written)) found.push(written.replace(",", "."));
  return found;
}

/** A name as it is compared: case, spaces and signs nobody sees do not matter. */
export const plainName = (text: string): string =>
  text
    .normalize("NFKC")
    .replace(/[\u00ad\u200b-\u200f\u2060\ufeff]/g, "")
    .replace(/\s+/g, " ")
    .trim()
    .toLowerCase();

/** Whether a name is long enough to be anybody's. */
export const tellsSomething = (name: string): boolean =>
  /\d/.test(name) ? name.length >= 3 : name.length >= 4;

const INNER = /[\p{L}\p{N}]/u;

/** Whether a name stands in a text as words of its own. */
export function holdsName(text: string, name: string): boolean {
  for (let at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1)) {
    const before = text[at - 1] ?? "";
    const after = text[at + name.length] ?? "";
    if (!INNER.test(before) && !INNER.test(after)) return true;
  }
  return false;
}
