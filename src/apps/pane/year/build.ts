import type { Change } from "../../../hosts/host";
import { cellAddress } from "../../../sheets/address";
import { channelsSheet } from "../../../sheets/channels/channels-sheet";
import { costingSheet } from "../../../sheets/costing/costing-sheet";
import { costingNames } from "../../../sheets/costing/names";
import { overheadsSheet } from "../../../sheets/overheads/overheads-sheet";
import type { DefinedName, Sheet } from "../../../sheets/workbook";
import { yearsSheet } from "../../../sheets/year-to-year/years-sheet";
import type { OpenBook } from "../open-book";
import { usualRun } from "../price/products";

export type Part = "channels" | "overheads" | "years";

/** A change that adds the sheets of one part, and in plain words what it will write. */
export interface PlannedSheets {
  readonly change: Change;
  readonly sheet: string;
  readonly writes: readonly string[];
}

interface Built {
  readonly sheet: Sheet;
  readonly names: readonly DefinedName[];
}

/** Refuses, with a sentence, a workbook that lacks a table or has such a sheet. */
export function plannedSheets(
  part: Part,
  book: OpenBook,
  product: string,
): PlannedSheets {
  const built = sheetsOf(part, book, product);
  const names = built.flatMap((one) => one.names);
  const sheet = built[0]?.sheet.name ?? "";
  return {
    sheet,
    change: {
      says: `the sheet “${sheet}”`,
      append: [],
      addSheets: built.map((one) => one.sheet),
      names,
    },
    writes: [
      ...built.map(
        ({ sheet: one }) => `the sheet “${one.name}”, ${cellsOf(one)}`,
      ),
      `${names.length} names for ${built.length === 1 ? "its" : "their"} figures`,
    ],
  };
}

function sheetsOf(
  part: Part,
  { tables: contents, sheets: existingSheets, names }: OpenBook,
  product: string,
): readonly Built[] {
  if (part === "overheads")
    return [overheadsSheet({ contents, existingSheets })];
  if (part === "years")
    return [yearsSheet({ contents, existingSheets, product })];
  const costing = costingNames(names, product).full_replacement
    ? []
    : [
        costingSheet({
          contents,
          product,
          bottles: usualRun(contents, product),
          existingSheets,
        }),
      ];
  return [
    channelsSheet({
      contents,
      existingSheets,
      product,
      names: [...names, ...costing.flatMap((one) => one.names)],
    }),
    ...costing,
  ];
}

const cellsOf = ({ cells }: Sheet): string =>
  `A1 to ${cellAddress(
    cells.reduce((last, { row }) => Math.max(last, row), 0),
    cells.reduce((last, { column }) => Math.max(last, column), 0),
  )}`;
