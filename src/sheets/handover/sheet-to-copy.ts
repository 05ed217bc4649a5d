import type { PlacedSheet } from "../place";
import type { Stored } from "../workbook";
import type { SheetKind, Topic } from "./topics";

/** One live sheet that a copy is made of, as it was laid out and as its cells now stand. */
export interface SheetToCopy {
  readonly kind: SheetKind;
  /** What it was asked for as, for example "costing:P250-LOFT". */
  readonly asked: string;
  readonly placed: PlacedSheet;
  readonly valueAt: (row: number, column: number) => Stored;
  /** The product it is about, when it is about one. */
  readonly product?: string;
  /** Names of those it is about: its product, whose label it is, its buyer. */
  readonly about: readonly string[];
  /** The topic a whole row of a table belongs to when not everybody may see it. */
  readonly topicOfRow?: (table: string, index: number) => Topic | undefined;
}
