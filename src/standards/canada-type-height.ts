/**
 * Least height in mm of the numerals that declare the contents in Canada, by the principal display surface in cm². Source:
 * canadaTypeHeight, from memory.
 */
export const canadaTypeHeights = [
  { upTo: 32, height: 1.6 },
  { upTo: 258, height: 3.2 },
  { upTo: 645, height: 6.4 },
  { upTo: 2_580, height: 9.5 },
  { upTo: Infinity, height: 12.7 },
] as const;
