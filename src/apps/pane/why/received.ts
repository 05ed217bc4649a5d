import type { Stored } from "../../../sheets/workbook";

/** A value as a function receives it: one cell, or rows of cells. */
export type Value = Stored | readonly (readonly Stored[])[];
