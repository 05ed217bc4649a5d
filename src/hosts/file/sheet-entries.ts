import { relationsOf, type Parts } from "./package-parts";
import { textFromFile } from "./worksheet-text";
import { childNamed, childrenNamed, relationId, type XmlElement } from "./xml";

/** A sheet of any kind as the workbook lists it. */
export interface SheetEntry {
  readonly name: string;
  readonly hidden: boolean;
  readonly kind: string;
  readonly part: string;
}

/** The sheets in the order of their tabs. Throws an ordinary error when a sheet's part is missing. */
export function sheetEntries(
  parts: Parts,
  workbookName: string,
  book: XmlElement,
): readonly SheetEntry[] {
  const relations = relationsOf(parts, workbookName);
  return childrenNamed(childNamed(book, "sheets"), "sheet").map((element) => {
    const name = textFromFile(element.attributes["name"] ?? "");
    const relation = relations.find(({ id }) => id === relationId(element));
    if (!relation || !parts[relation.target])
      throw new Error(`the part of sheet ${name} is missing`);
    return {
      name,
      hidden: (element.attributes["state"] ?? "visible") !== "visible",
      kind: relation.kind,
      part: relation.target,
    };
  });
}
