import { isBlank } from "../functions/read-cell";
import { type Gallon, WHICH_GALLON } from "../measures/gallon";
import type { Book } from "./book";
import { columnAt, type Contents, contentsOf } from "./contents";
import { isSameName } from "./keys";
import { settings } from "./tables/settings";

/** What to do about a gallon that nobody has named. */
export const NAME_THE_GALLON =
  'enter US or imperial as the setting "Gallon", once for the whole book';

/** A refusal as it stands; one that waits for the gallon says where to enter it. */
export const withWhereToSay = (sentence: string): string =>
  sentence.includes(WHICH_GALLON)
    ? `${sentence}; ${NAME_THE_GALLON}`
    : sentence;

/**
 * What a bare gallon is in this book: what the setting Gallon says, else the US gallon, but in a book for Canada it is
 * not said.
 */
export const gallonOf = (book: Pick<Book, "settings">): Gallon =>
  decided(
    (name) =>
      book.settings.find(({ setting }) => isSameName(setting, name))?.value,
  );

/** The same from raw tables. */
export function gallonIn(contents: readonly Contents[]): Gallon {
  const given = contentsOf(contents, settings);
  if (!given) return "US";
  const [name, value] = [
    columnAt(given.headings, settings.columns.setting),
    columnAt(given.headings, settings.columns.value),
  ];
  return decided((wanted) =>
    given.rows
      .find((row) => isSameName(String(row[name] ?? ""), wanted))
      ?.at(value),
  );
}

function decided(setting: (name: string) => unknown): Gallon {
  const said = plain(setting("Gallon"));
  if (said === "us" || said === "imperial")
    return said === "us" ? "US" : "imperial";
  return plain(setting("Country")) === "canada" ? "unsaid" : "US";
}

const plain = (value: unknown): string =>
  isBlank(value) ? "" : String(value).trim().toLowerCase();
