/** Colour classes of maple syrup by % transmission at 560 nm, 10 mm, glycerol = 100, darkest last. Source: gradeColors. */
export const colorClasses = [
  { name: "Golden", atLeast: 75 },
  { name: "Amber", atLeast: 50 },
  { name: "Dark", atLeast: 25 },
  { name: "Very Dark", atLeast: 0 },
] as const;

export type ColorClass = (typeof colorClasses)[number]["name"];

/** Solids by mass that graded maple syrup must keep to, at 68 °F. Source: gradeSolids. */
export const solidsLimits = { least: 66, most: 68.9 } as const;

/** Above this many °Bx syrup is likely to form crystals in store. Source: commonPractice. */
export const crystalsAbove = 68.5;
