import { unusable } from "../../measures/cannot-answer";
import { withoutNoise } from "../../measures/exact";
import type { Kilograms } from "../../measures/quantity";
import { KG_PER_LB } from "../../measures/units";
import { counted, endsRight, onlyDigits } from "./check-digit";

/** One element of a label's bar code: what it says (application identifier) and its value. */
export interface CodeElement {
  readonly identifier: string;
  readonly value: string;
}

/** One bar code's content, as people read it and as a scanner gives it. */
export interface ElementString {
  /** "(00)…(3400)…". */
  readonly text: string;
  /** The data between the bars; FUNCTION_1 parts what has no fixed length. */
  readonly data: string;
}

/** How a scanner passes on the symbol that ends an element of open length. */
export const FUNCTION_1 = "\u001d";

/** Most characters one such bar code may hold, separators counted. Source: gs1Keys (from memory). */
const MOST_CHARACTERS = 48;

/** Identifiers that begin elements of a length every scanner knows, so that nothing has to part them from the next. */
const FIXED = /^(0[0-4]|1[1-9]|20|3[1-6]|41)/;

/** The 18 digits of a pallet or tote on its way. Refuses (#VALUE!) a wrong length or check digit. */
export const logisticUnit = (number: string): CodeElement => ({
  identifier: "00",
  value: keyed(number, 18, "the number of the unit"),
});

/** The 14 digits of what is sold. Refuses (#VALUE!) a wrong length or check digit. */
export const soldItem = (number: string): CodeElement => ({
  identifier: "01",
  value: keyed(number, 14, "the item number"),
});

/** The 14 digits of what is packed inside a unit, and how many of it. Refuses (#VALUE!) no count of whole pieces. */
export function packedInside(
  number: string,
  count: number,
): readonly [CodeElement, CodeElement] {
  if (!Number.isInteger(count) || count < 1 || count > 99_999_999)
    throw unusable(
      `count: ${count} is not a whole number of pieces from 1 to 99,999,999`,
    );
  return [
    { identifier: "02", value: keyed(number, 14, "the item number") },
    { identifier: "37", value: String(count) },
  ];
}

/** A lot of up to 20 characters. Refuses (#VALUE!) what a bar code of this kind cannot hold. */
export function lotElement(lot: string): CodeElement {
  const value = lot.trim();
  const strange = [...value].find((letter) => !LOT_CHARACTERS.test(letter));
  if (strange !== undefined)
    throw unusable(
      `lot: "${lot}" holds "${strange}", which the bar code cannot; letters A to Z, digits and - _ . / are safe`,
    );
  if (value === "" || value.length > 20)
    throw unusable(
      `lot: "${lot}" has ${value.length} characters; the bar code holds 1 to 20`,
    );
  return { identifier: "10", value };
}

const LOT_CHARACTERS = /[!"%&'()*+,\-./0-9:;<=>?A-Z_a-z]/;

/**
 * A weight in pounds in six digits, with the decimals it was written with and no more; the identifier's last digit counts
 * them. Refuses (#VALUE!) a weight that six digits cannot hold exactly: the bars and the words must say the same.
 */
export function poundsElement(
  kind: "net" | "gross",
  weight: Kilograms,
): CodeElement {
  const pounds = withoutNoise(weight / KG_PER_LB);
  const [whole = "", decimals = ""] = plainDecimal(pounds).split(".");
  const digits = `${whole}${decimals}`.replace(/^0+(?=\d)/, "");
  if (!(pounds > 0) || decimals.length > 5 || digits.length > 6)
    throw unusable(
      `${kind} weight: ${pounds} lb does not fit the six digits of the bar code; weigh it to fewer decimals`,
    );
  return {
    identifier: `${WEIGHTS[kind]}${decimals.length}`,
    value: digits.padStart(6, "0"),
  };
}

const WEIGHTS = { net: "320", gross: "340" } as const;

/** Without the exponent that a very small number is otherwise written with. */
const plainDecimal = (value: number): string =>
  /e/.test(String(value))
    ? value.toFixed(20).replace(/0+$/, "")
    : String(value);

/**
 * The elements of one bar code, put together. Refuses (#VALUE!) an element twice, one whose companion is missing and two
 * that exclude each other: a lot or a net weight needs an item, 02 and 37 need each other, 01 stands with neither, and a
 * gross weight needs the number of the unit.
 */
export function elementString(elements: readonly CodeElement[]): ElementString {
  const has = (identifier: string): boolean =>
    elements.some((one) => one.identifier === identifier);
  for (const { identifier } of elements) {
    if (elements.filter((one) => one.identifier === identifier).length > 1)
      throw unusable(`(${identifier}) stands twice in one bar code`);
    const needs = companions.find(({ of }) => of.test(identifier))?.needs;
    if (needs && !needs.some(has))
      throw unusable(
        `(${identifier}) needs (${needs.join(") or (")}) in the same bar code`,
      );
  }
  const banned = ["02", "37"].find(has);
  if (has("01") && banned !== undefined)
    throw unusable(
      `(01) and (${banned}) exclude each other: what is sold whole is not also packed inside`,
    );
  const data = elements
    .map(({ identifier, value }, i) => {
      const isParted = i < elements.length - 1 && !FIXED.test(identifier);
      return `${identifier}${value}${isParted ? FUNCTION_1 : ""}`;
    })
    .join("");
  if (data.length > MOST_CHARACTERS)
    throw unusable(
      `the bar code would hold ${data.length} characters, above ${MOST_CHARACTERS}; part it in two`,
    );
  return {
    text: elements
      .map(({ identifier, value }) => `(${identifier})${value}`)
      .join(""),
    data,
  };
}

/** Source: the element syntax dictionary (02 with 37; 01 with neither); the rest from memory, held to a bar code library. */
const companions = [
  { of: /^02$/, needs: ["37"] },
  { of: /^37$/, needs: ["02"] },
  { of: /^(10|320\d)$/, needs: ["01", "02"] },
  { of: /^340\d$/, needs: ["00"] },
];

function keyed(number: string, length: number, name: string): string {
  const digits = onlyDigits(number, name);
  if (digits.length !== length)
    throw unusable(
      `${name}: "${number}" has ${counted(digits.length)}; it needs ${length}, check digit counted`,
    );
  if (!endsRight(digits))
    throw unusable(
      `${name}: the last digit of "${number}" is not its check digit; look for a mistyped digit`,
    );
  return digits;
}
