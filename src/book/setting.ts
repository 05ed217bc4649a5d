import { isBlank } from "../functions/read-cell";
import { answerOrNone } from "../measures/cannot-answer";
import type { Gallon } from "../measures/gallon";
import { energyTerms, settingTerms } from "../terms/book-named";
import type { CellTerm, ValueOf } from "../terms/term";
import type { Book } from "./book";
import { gallonOf } from "./gallon";
import { isSameName } from "./keys";
import { readNamed } from "./named-value";

export type SettingName = keyof typeof settingTerms;
export type EnergyName = keyof typeof energyTerms;

/** A setting's value in house units; undefined when it is missing, blank or unreadable (the findings say which). */
export const setting = <N extends SettingName>(
  book: Pick<Book, "settings">,
  name: N,
): ValueOf<(typeof settingTerms)[N]> | undefined =>
  named(
    book.settings.find((row) => isSameName(row.setting, name)),
    settingTerms[name],
    name,
    gallonOf(book),
  ) as ValueOf<(typeof settingTerms)[N]> | undefined;

/** The same for a row of the Energy table. */
export const energyFigure = <N extends EnergyName>(
  book: Pick<Book, "energy">,
  name: N,
): ValueOf<(typeof energyTerms)[N]> | undefined =>
  named(
    book.energy.find((row) => isSameName(row.item, name)),
    energyTerms[name],
    name,
  ) as ValueOf<(typeof energyTerms)[N]> | undefined;

function named(
  row:
    { readonly value: unknown; readonly unit: string | undefined } | undefined,
  term: CellTerm,
  name: string,
  gallon?: Gallon,
): unknown {
  if (row === undefined || isBlank(row.value)) return undefined;
  return answerOrNone(() => readNamed(term, row.value, row.unit, name, gallon));
}
