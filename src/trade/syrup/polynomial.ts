/** The value at x of the polynomial with these coefficients of 1, x, x², … */
export const polynomial = (
  coefficients: readonly number[],
  x: number,
): number => coefficients.reduceRight((sum, c) => sum * x + c, 0);
