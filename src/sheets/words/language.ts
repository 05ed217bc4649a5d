import { unusable } from "../../measures/cannot-answer";

export const languages = ["en", "fr"] as const;
export type Language = (typeof languages)[number];

/** Each language as its own readers call it. */
export const languageWords: Readonly<Record<Language, string>> = {
  en: "English",
  fr: "Français",
};

/** A language by its short name; refuses (#VALUE!) any other. */
export function languageNamed(written: string, option: string): Language {
  const found = languages.find((one) => one === written.trim().toLowerCase());
  if (found) return found;
  throw unusable(
    `${option}: "${written}" is neither ${languages.join(" nor ")}.`,
  );
}
