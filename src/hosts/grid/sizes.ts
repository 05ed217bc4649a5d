/** Pixels of a column so many characters wide, and of a row so many points high, on a screen of 96 pixels an inch. */
export const columnPixels = (characters: number): number => characters * 7 + 5;
export const rowPixels = (points: number): number => (points * 4) / 3;

/** Characters of a column and points of a row that say nothing of their own. */
export const plainColumn = 8.43;
export const plainRow = 15;

export const columnCharacters = (pixels: number): number =>
  rounded(Math.max(0, pixels - 5) / 7);
export const rowPoints = (pixels: number): number => rounded((pixels * 3) / 4);

const rounded = (size: number): number => Math.round(size * 1e4) / 1e4;
