import type { BookRow } from "../../book/book";
import { type Contents, contentsOf } from "../../book/contents";
import { readTable } from "../../book/read-table";
import { setting } from "../../book/setting";
import { settings } from "../../book/tables/settings";
import { unusable } from "../../measures/cannot-answer";
import type { Copy } from "../handover/copy";
import { metricCopy } from "./metric-copy";

export const unitSystems = ["US", "metric"] as const;
export type UnitSystem = (typeof unitSystems)[number];

/** A system of units by its name; refuses (#VALUE!) any other. */
export function unitSystemNamed(written: string, option: string): UnitSystem {
  const found = unitSystems.find(
    (one) => one.toLowerCase() === written.trim().toLowerCase(),
  );
  if (found) return found;
  throw unusable(
    `${option}: "${written}" is neither ${unitSystems.join(" nor ")}.`,
  );
}

/** The units of copies of this book where nobody says: its setting Units, else US. */
export function unitSystemOf(given: readonly Contents[]): UnitSystem {
  const contents = contentsOf(given, settings);
  if (contents === undefined) return "US";
  const rows = readTable(settings, contents)
    .rows as unknown as readonly BookRow<"settings">[];
  return setting({ settings: rows }, "Units") ?? "US";
}

/** The copy in the units of its reader. */
export const copyInUnits = (copy: Copy, units: UnitSystem): Copy =>
  units === "metric" ? metricCopy(copy) : copy;
