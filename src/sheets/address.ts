/** "A", "Z", "AA", … for column 0, 25, 26, … */
export function columnLetters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
}

/** "B4" for row 3, column 1. */
export const cellAddress = (row: number, column: number): string =>
  `${columnLetters(column)}${row + 1}`;

/** "$B$4" for row 3, column 1. */
export const fixedAddress = (row: number, column: number): string =>
  `$${columnLetters(column)}$${row + 1}`;

/** A place as one number, by which cells are found many times faster than by a text; no sheet has more columns. */
export const placeNumber = (row: number, column: number): number =>
  row * 16_384 + column;

/** A sheet's name as a formula writes it, quoted where it must be. */
export const sheetReference = (name: string): string =>
  `'${name.replace(/'/g, "''")}'`;
