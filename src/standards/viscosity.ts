/**
 * Viscosity η in mPa·s of sucrose solutions, with x = B / (1900 − 18 B) and p = (30 − T) / (91 + T):
 * log10 η = a·x − b + p (c + d·x^e). Range 0-100 °C; about 1 % by its authors, 4 % as checked up to 70 °Bx.
 * Source: genotelle.
 */
export const sucroseViscosity = {
  a: 22.46,
  b: 0.114,
  c: 1.1,
  d: 43.1,
  e: 1.25,
  checkedTo: 70,
} as const;
