import type { DaySerial, Kilograms } from "../measures/quantity";
import type { FillOfRun } from "./binder-fill";
import type { Book, BookRow } from "./book";
import type { Finding } from "./finding";
import type { BookTrace } from "./totes-trace";

/** Everything an auditor asks of a season, on its last day or the book's newest. */
export interface Binder {
  readonly season: number;
  readonly farm: string;
  readonly asOf: DaySerial;
  readonly runs: readonly BinderRun[];
  readonly fills: readonly FillOfRun[];
  readonly lots: readonly BinderLot[];
  /** Lots and totes of the season with the Brix their density follows from. */
  readonly received: Book["lots"];
  readonly totes: Book["toteShipments"];
  readonly traces: readonly BookTrace[];
  readonly gaps: readonly Finding[];
}

export interface BinderRun {
  readonly row: BookRow<"runs">;
  readonly description: string;
  /** By the draws in Lot use. */
  readonly drawn: Kilograms;
}

/** A lot or barrel over the season: there at its start, in, out by use, and what a count found. */
export interface BinderLot {
  readonly name: string;
  readonly kind: "lot" | "barrel";
  readonly opening: Kilograms;
  readonly received: Kilograms;
  readonly byUse: ReadonlyMap<string, Kilograms>;
  readonly left: Kilograms;
  readonly counted: Kilograms | undefined;
}
