/**
 * Brix from the refractive index n at the sodium D line and 20 °C: coefficients of 1, n, n², … Range 0-85 °Bx.
 * Source: refractionFit.
 */
export const brixOfIndex = [
  -99_127.4536, 318_417.95, -413_145.8, 270_177.93, -88_885.21, 11_758.74,
] as const;

/**
 * What to add to an uncompensated reading: d × (polynomial in b) + d² × (polynomial in b), with b = °Bx/100 and
 * d = T − 20 °C. Range 10-30 °C. Source: refractometerTable.
 */
export const refractometerCorrection = {
  celsius: [10, 30],
  linear: [0.0634478, 0.0522641, -0.0460806],
  square: [1.05231e-3, -1.73718e-3, 8.22962e-4],
} as const;
