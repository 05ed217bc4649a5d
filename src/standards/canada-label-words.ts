/**
 * Words of a Canadian label in both official languages. The English classes and tastes were read (gradeColors); the French
 * ones and the wording of the grade and of the origin are from memory (canadaLabelWords).
 */
export const canadaLabelWords = {
  product: ["Maple Syrup", "Sirop d'érable"],
  grade: ["Canada Grade A", "Canada Catégorie A"],
  origin: ["Product of Canada", "Produit du Canada"],
} as const;

/** Colour class and taste, by the English name of the class. */
export const canadaClassWords = {
  Golden: ["Golden, Delicate Taste", "Doré, goût délicat"],
  Amber: ["Amber, Rich Taste", "Ambré, goût riche"],
  Dark: ["Dark, Robust Taste", "Foncé, goût robuste"],
  "Very Dark": ["Very Dark, Strong Taste", "Très foncé, goût prononcé"],
} as const;
