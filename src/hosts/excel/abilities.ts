import { unusable } from "../../measures/cannot-answer";

/** The least this host works with: areas of several ranges, filters and events of the whole workbook came with it. */
export const neededApi = "1.9";

const later = {
  mergedAreas: "1.13",
  insertSheets: "1.13",
  notes: "1.18",
} as const;

export type Ability = keyof typeof later;

/** What this Excel can do beyond the least we need; the client library that is loaded may lag behind Excel itself. */
export const isAble = (ability: Ability): boolean =>
  Office.context.requirements.isSetSupported("ExcelApi", later[ability]) &&
  (ability !== "notes" || "NoteCollection" in Excel);

export function refuseOldExcel(): void {
  if (!Office.context.requirements.isSetSupported("ExcelApi", neededApi))
    throw unusable(
      "This Excel is too old for the pane; the functions work in cells all the same, and the workbench shows everything",
    );
}

const without: Readonly<Record<Ability, string>> = {
  mergedAreas:
    "This Excel does not tell where cells are merged, so look out for them yourself",
  insertSheets:
    "This Excel cannot take in sheets from a file; open the file and move its sheets over",
  notes: "This Excel cannot be given notes on cells, so a new sheet has none",
};

/** One sentence for each thing this Excel is too old for. */
export const missing = (): readonly string[] =>
  (Object.keys(later) as readonly Ability[])
    .filter((ability) => !isAble(ability))
    .map((ability) => without[ability]);
