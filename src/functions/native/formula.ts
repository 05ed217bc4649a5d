/** Formula text for °C, for a text that gives °F. */
export const celsius = (fahrenheit: string): string =>
  `((${fahrenheit}-32)*5/9)`;

/** Formula text for a polynomial with the coefficients of 1, x, x², … */
export const horner = (coefficients: readonly number[], x: string): string =>
  coefficients
    .map(decimal)
    .reduceRight((sum, c) =>
      c === "0" ? `(${x}*${sum})` : `(${c}+${x}*${sum})`,
    );

/** A number as every worksheet reads it: no exponent, negative numbers in brackets. */
export function decimal(value: number): string {
  const text = /e/i.test(String(value))
    ? value.toFixed(20).replace(/0+$/, "")
    : String(value);
  return value < 0 ? `(${text})` : text;
}

/** Formula text that picks by a text's value, in any case of letters; a text that is none of them gives #N/A. */
export const pick = (
  text: string,
  entries: readonly (readonly [value: string, formula: string])[],
): string =>
  entries.reduceRight(
    (otherwise, [value, formula]) =>
      `IF(${text}="${value}",${formula},${otherwise})`,
    "NA()",
  );
