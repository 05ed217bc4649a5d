import type { SaleBasis } from "../../trade/totes/sale-amount";

export type WeightUnit = "lb" | "kg";
export type Currency = "USD" | "CAD";

/** The unit of weight that a heading or the words beside a number name, in English or French. */
export function weightUnitIn(text: string): WeightUnit | undefined {
  const plain = plainText(text);
  if (/\b(kg|kgs|kilo|kilos|kilograms?|kilogrammes?)\b/.test(plain))
    return "kg";
  return /\b(lb|lbs|pounds?|livres?)\b|#/.test(plain) ? "lb" : undefined;
}

/** The money that a heading or the words beside a number name; a bare dollar sign names none. */
export function currencyIn(text: string): Currency | undefined {
  const plain = plainText(text);
  if (/\b(cad|can|cdn|ca|canadian|canadiens?)\b|\bc\$/.test(plain))
    return "CAD";
  return /\b(usd|us|americains?|eu)\b/.test(plain) ? "USD" : undefined;
}

/** What a price is for, as a heading, a cell or the words beside a number say it. */
export function basisIn(text: string): SaleBasis | undefined {
  const plain = plainText(text);
  const per = String.raw`(?:\/|\bper\b|\ba\b|\bpar\b|\ble\b|\bla\b|\bau\b|\bthe\b)\s*`;
  if (new RegExp(`${per}(us\\s+)?gal|\\bgal(lon)?s?\\b`).test(plain))
    return "per gal";
  if (new RegExp(`${per}(kg|kilo)|\\bkg\\b`).test(plain)) return "per kg";
  if (!new RegExp(`${per}(lb|pound|livre)|\\blbs?\\b|\\blivre\\b`).test(plain))
    return undefined;
  return /\b66\b/.test(plain) ? "per lb at 66" : "per lb";
}

/** Lower case without accents, marks made into spaces, "/" and "$" kept. */
export const plainText = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[^a-z0-9/$#%°.]+/g, " ")
    .replace(/\.(?!\d)/g, " ")
    .replace(/\s+/g, " ")
    .trim();
