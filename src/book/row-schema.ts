import { z } from "zod";
import { isBlank, readCell } from "../functions/read-cell";
import type { Gallon } from "../measures/gallon";
import { CannotAnswer } from "../measures/cannot-answer";
import { readNamed, termNamed } from "./named-value";
import type { Column, Table } from "./table";

/** The shape of one row: raw cells by key in, typed values out, an issue for every cell that cannot be used. */
export function rowSchema(table: Table, gallon?: Gallon) {
  const fields = Object.entries(table.columns)
    .filter(([, column]) => column.formula === undefined)
    .map(([key, column]) => [key, cellSchema(column, gallon)] as const);
  return z.object(Object.fromEntries(fields)).superRefine((row, context) => {
    for (const [key, column] of Object.entries(table.columns)) {
      const term =
        column.byName && termNamed(column.byName, Object.values(row)[0]);
      if (term === undefined || row[key] === undefined) continue;
      report(context, [key], () =>
        readNamed(term, row[key], row["unit"], column.heading, gallon),
      );
    }
  });
}

const cellSchema = (column: Column, gallon: Gallon | undefined) =>
  z.unknown().transform((raw, context): unknown => {
    if (isBlank(raw)) {
      if (column.blankIs === undefined) {
        if (column.mayBeBlank) return undefined;
        context.addIssue({ code: "custom", message: "blank" });
        return z.NEVER;
      }
      return readCell(column.term, column.blankIs, column.heading);
    }
    if (column.byName && typeof raw !== "object")
      return typeof raw === "string" ? raw.trim() : raw;
    return report(context, [], () =>
      readCell(column.term, raw, column.heading, gallon),
    );
  });

function report(
  context: z.RefinementCtx,
  path: readonly string[],
  read: () => unknown,
): unknown {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof CannotAnswer)) throw error;
    const { message } = error;
    context.addIssue({ code: "custom", message, path: [...path] });
    return z.NEVER;
  }
}
