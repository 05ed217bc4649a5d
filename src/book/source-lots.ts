import { answerOrNone } from "../measures/cannot-answer";
import { as, type Kilograms } from "../measures/quantity";
import { readNumber } from "../measures/read-number";
import { KG_PER_LB } from "../measures/units";

/** One lot named in a row, and how much came of it where that is written. */
export interface SourceLot {
  readonly lot: string;
  readonly weight: Kilograms | undefined;
}

/** Reads "26-11:274; 26-12:2633": lots and pounds, parted by semicolons. Pounds that cannot be read are left out. */
export const sourceLots = (written: string | undefined): readonly SourceLot[] =>
  (written ?? "")
    .split(";")
    .map((part) => part.trim())
    .filter((part) => part !== "")
    .map((part) => {
      const [lot = "", pounds] = part.split(":");
      const read =
        pounds === undefined
          ? undefined
          : answerOrNone(() => readNumber(pounds.trim(), "pounds"));
      return {
        lot: lot.trim(),
        weight:
          read === undefined ? undefined : as<Kilograms>(read * KG_PER_LB),
      };
    });

/** The same lots by name alone. */
export const lotsNamed = (written: string | undefined): readonly string[] =>
  (written ?? "")
    .split(";")
    .map((part) => (part.split(":")[0] ?? "").trim())
    .filter((lot) => lot !== "");
