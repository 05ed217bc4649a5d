/**
 * Density of sucrose solutions in kg/m³: water(T) + S0(w) + S1(w)·t + … with w = °Bx/100 and t = (T − 20 °C)/100.
 * Each row of `solution` holds the coefficients of w, w², … Range 0-85 °Bx, 0-100 °C.
 * Sources: icumsaDensity, bettinSpieweck.
 */
export const sucroseDensity = {
  range: { brix: [0, 85], celsius: [0, 100] },
  /** Numerator coefficients of 1, T, T², … and the denominator 1 + d·T. */
  water: {
    numerator: [
      999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9,
      -281.03006e-12,
    ],
    denominator: 16.887236e-3,
  },
  solution: [
    [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
    [-46.272, -7.172, 1.1597, 5.1126, 17.5254],
    [59.7712, 7.2491, 12.363, -35.4791],
    [-47.2207, -21.6977, 27.6301],
    [18.3184, 12.3081],
  ],
} as const;

/** Air of 1.2 kg/m³ and weights of 8400 kg/m³ (brass), as customary lb/gal tables take them. Source: airBuoyancy. */
export const weighingInAir = { air: 1.2, weights: 8400 } as const;
