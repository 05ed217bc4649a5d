import { number, text, type TextTerm } from "./term";

/** A code whose leading zeros count; a number cell, which has lost them, is refused. */
export const digitsText = (said: Parameters<typeof text>[0]): TextTerm => ({
  ...text(said),
  keepsZeros: true,
});

/** Arguments of the codes on bottles, cases and pallets. */
export const codeTerms = {
  digits: digitsText({
    label: "Digits",
    about: "the number without its check digit: 7, 11, 12, 13 or 17 digits",
    example: "40000100100",
    french: "Chiffres",
  }),
  gtin: digitsText({
    label: "Bottle's number",
    about: "the number of one bottle with its check digit: 8, 12 or 13 digits",
    example: "400001001004",
    french: "Numéro de la bouteille",
  }),
  indicator: number({
    label: "Indicator",
    about: "first digit of a case: 1 to 8, one for each size of case",
    unit: "",
    whole: true,
    min: 1,
    max: 9,
    example: "1",
    french: "Indicateur",
  }),
  prefix: digitsText({
    label: "Company prefix",
    about: "the company prefix your numbers begin with: 4 to 12 digits",
    example: "0400001",
    french: "Préfixe d'entreprise",
  }),
  serial: number({
    label: "Serial",
    about: "the pallet's own number, never used twice",
    unit: "",
    whole: true,
    min: 0,
    max: 999_999_999_999,
    example: "1234",
    french: "Numéro de palette",
  }),
  extension: number({
    label: "Extension",
    about: "first digit of a pallet's number, free to choose",
    unit: "",
    whole: true,
    min: 0,
    max: 9,
    example: "0",
    french: "Extension",
  }),
} as const;
