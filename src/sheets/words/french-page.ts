import type { Sheet } from "../workbook";
import { inFrench } from "./french";
import { sheetInFrench } from "./french-sheet";
import type { Language } from "./language";
import { newNames } from "./sheet-names";

/** One worked-out page of formulas and labels in the language of its reader. */
export function pageIn(page: Sheet, language: Language): Sheet {
  if (language === "en") return page;
  const names = newNames(
    [page.name],
    (name) => inFrench("sheets", name) ?? name,
  );
  return sheetInFrench(
    page,
    {
      sheet: (name) => names.get(name) ?? name,
      heading: (_, heading) => heading,
    },
    ({ formula }) => (formula === undefined ? "layout" : "said"),
  );
}
