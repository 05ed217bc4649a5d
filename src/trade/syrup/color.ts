import { type ColorClass, colorClasses } from "../../standards/grades";

/** Colour class for a light transmission in %, 0-100. A limit belongs to the lighter class. Source: gradeColors. */
export const colorClass = (transmittance: number): ColorClass =>
  colorClasses.find(({ atLeast }) => transmittance >= atLeast)?.name ??
  "Very Dark";
