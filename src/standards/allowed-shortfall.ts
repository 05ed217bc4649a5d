/**
 * How far a single pack may be short of its declared volume, in mL: an amount, or per cent of the declared volume.
 * Sources: euPrepackages to 1,000 mL, euLargerPacks above; the same rows in canadaShortfall to 50,000 mL and, from memory, in
 * oimlR87.
 */
export const allowedShortfall = [
  { over: 0, upTo: 50, percent: 9 },
  { over: 50, upTo: 100, amount: 4.5 },
  { over: 100, upTo: 200, percent: 4.5 },
  { over: 200, upTo: 300, amount: 9 },
  { over: 300, upTo: 500, percent: 3 },
  { over: 500, upTo: 1_000, amount: 15 },
  { over: 1_000, upTo: 10_000, percent: 1.5 },
  { over: 10_000, upTo: 15_000, amount: 150 },
  { over: 15_000, upTo: 50_000, percent: 1 },
] as const;
