import { entered } from "./wording";

/** Shown wherever a figure could be taken for a ruling on net contents. */
export const arithmeticOnly =
  "Measure your own bottles. This is arithmetic, not a licence: your weights-and-measures authority decides.";

/** "250 mL", as it was entered. */
export const enteredMillilitres = (litres: number): string =>
  `${entered(litres * 1000)} mL`;
