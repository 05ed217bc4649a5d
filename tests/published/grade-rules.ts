/** Maple Products Regulations (C.R.C., c. 289) Schedule III; the same limits in the Canadian Grade Compendium vol. 7, Quebec P-29 r.1 Schedule 8.B and, for Golden and Dark, the US standards of 2 March 2015. Lower limits in % transmission. */
export const colorLimits = [
  { name: "Golden", atLeast: 75.0 },
  { name: "Amber", atLeast: 50.0 },
  { name: "Dark", atLeast: 25.0 },
] as const;

/** Canadian Grade Compendium vol. 7 section 3 and US standards 52.5961-52.5962: % soluble solids at 20 °C. */
export const solids = { least: 66, most: 68.9 } as const;

/** Readings on both sides of the limits, by the half-open classes of Schedule III. */
export const betweenClasses = [
  { percent: 50, name: "Amber" },
  { percent: 49.95, name: "Dark" },
  { percent: 25, name: "Dark" },
  { percent: 24.9, name: "Very Dark" },
] as const;
