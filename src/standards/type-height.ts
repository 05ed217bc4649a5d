/**
 * Least height of the type that declares the contents, in inches, by the area of the main panel in square inches. Sources:
 * typeHeight for the two smallest, typeHeightAbove for the others.
 */
export const typeHeights = [
  { upTo: 5, height: 1 / 16 },
  { upTo: 25, height: 1 / 8 },
  { upTo: 100, height: 3 / 16 },
  { upTo: 400, height: 1 / 4 },
  { upTo: Infinity, height: 1 / 2 },
] as const;
