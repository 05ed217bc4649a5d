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
      const rounded = Number(scaled.toFixed(decimals));
      if (rounded === scaled) break;
      const key = figureKey(rounded);
      if (key !== undefined) keys.add(key);
    }
  }
  return keys;
}

const NUMBER =
  /(?<![\d.,])(?:\d[\d.,'\u00a0\u202f\u2009 ]*\d|\d)(?:[eE][+-]?\d+)?/g;

/** The numbers in a text, each read every way it can be meant: with comma or point for the decimals, grouped or not. */
export function figuresIn(text: string): ReadonlySet<string> {
  const keys = new Set<string>();
  for (const { 0: run, index } of text.matchAll(NUMBER)) {
    if (
      /[A-Za-z_]\$?$/.test(text.slice(Math.max(0, index - 2), index)) &&
      isWhole(run)
    )
      continue;
    for (const written of [run, ...run.split(SPACES), ...run.split(/[,']/)])
      for (const reading of readings(written.replace(SPACES, "")))
        if (/^\d+(\.\d+)?(e[+-]?\d+)?$/i.test(reading)) {
          const key = figureKey(Number(reading));
          if (key !== undefined) keys.add(key);
        }
  }
  return keys;
}

/** Digits behind a letter are a cell, "C$24", or a code, "P250"; with decimals they are an amount, "US$24.78". */
const isWhole = (run: string): boolean => !/[.,]/.test(run);

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

/** A name as it is compared: case, spaces, kinds of dashes and quotes, and signs nobody sees do not matter. */
export const plainName = (text: string): string =>
  text
    .normalize("NFKC")
    .replace(/[\u00ad\u200b-\u200f\u2060\ufeff]/g, "")
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .replace(/[\u2018\u2019]/g, "'")
    .replace(/[\u201c\u201d]/g, '"')
    .replace(/\s+/g, " ")
    .trim()
    .toLowerCase();

/** Whether a name is long enough to be anybody's. */
export const tellsSomething = (name: string): boolean =>
  /\d/.test(name) ? name.length >= 3 : name.length >= 4;
