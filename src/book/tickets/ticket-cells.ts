import { figure } from "../../functions/wording";
import {
  as,
  type Brix,
  type DaySerial,
  type Kilograms,
} from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";
import { KG_PER_LB } from "../../measures/units";
import { datesWritten, type DateOrder } from "../ledger/written-date";
import {
  readWrittenNumber,
  type WrittenNumber,
} from "../ledger/written-number";
import { weightUnitIn, type WeightUnit } from "../ledger/written-units";
import { asked, refused, type Offer, type Reason } from "./reason";

/** What was read of one cell, and what there is to say about it. */
export interface CellReading<T> {
  readonly value: T | undefined;
  readonly reasons: readonly Reason[];
}

const nothing = (reason: Reason): CellReading<never> => ({
  value: undefined,
  reasons: [reason],
});

/** A weight in the column's unit or in the one written beside it. */
export function weightIn(
  text: string,
  name: "Gross" | "Tare" | "Net",
  unit: WeightUnit,
): CellReading<Kilograms> {
  if (text.trim() === "")
    return nothing(
      refused(`${name} is blank. A blank is never zero: weigh, or type it`),
    );
  const written = readWrittenNumber(text);
  if (!written) return nothing(refused(`${name}: "${text}" is not a weight`));
  const own = weightUnitIn(written.beside);
  if (own === undefined && written.beside !== "")
    return nothing(
      refused(
        `${name}: "${written.beside}" is not a unit of weight known here; type lb or kg`,
      ),
    );
  if (written.value <= 0)
    return nothing(refused(`${name}: ${text} is not above 0`));
  const value = as<Kilograms>(
    written.value * ((own ?? unit) === "kg" ? 1 : KG_PER_LB),
  );
  const says =
    own !== undefined && own !== unit
      ? `${name}: "${text}" is in ${own} in a column of ${unit}; read as ${pounds(value)} lb`
      : `${name}: "${text}" is read as ${figure(written.value, 9)} ${own ?? unit}`;
  return { value, reasons: written.plain ? [] : [asked(says)] };
}

/** Syrup in a tote lies in these limits; outside them a density cannot be known. */
const LIGHTEST = 60;
const HEAVIEST = 75;

export function brixIn(text: string, column: number): CellReading<Brix> {
  if (text.trim() === "")
    return nothing(refused("°Brix is blank; gallons and grade need it"));
  const written = readWrittenNumber(text);
  if (!written) return nothing(refused(`°Brix: "${text}" is not a number`));
  const { value } = written;
  if (value < LIGHTEST || value > HEAVIEST) {
    const slipped = [value / 10, value * 10, value / 100].find(
      (one) => one >= LIGHTEST && one <= HEAVIEST,
    );
    return nothing(
      slipped === undefined
        ? refused(`°Brix: ${text} is outside ${LIGHTEST} to ${HEAVIEST}`)
        : refused(
            `°Brix: ${text} looks like ${figure(slipped, 6)} with its decimal point slipped`,
            [
              {
                label: `Use ${figure(slipped, 6)}`,
                cells: { [column]: figure(slipped, 6) },
              },
            ],
          ),
    );
  }
  return { value: as<Brix>(value), reasons: asText("°Brix", text, written) };
}

/** What is said of a number that a worksheet would take for text. */
export const asText = (
  name: string,
  text: string,
  written: WrittenNumber,
): readonly Reason[] =>
  written.plain || !written.decimalComma
    ? []
    : [
        asked(
          `${name}: "${text}" has a decimal comma; read as ${written.value}`,
        ),
      ];

/** A day; one that can be two days is asked about, with both to choose from. */
export function dayIn(
  text: string,
  column: number,
  order: DateOrder | undefined,
): CellReading<DaySerial> {
  if (text.trim() === "") return nothing(refused("The date is blank"));
  const days = datesWritten(text);
  const [first, second] = days;
  if (first === undefined)
    return nothing(
      refused(
        /\d{4}|\d+\D+\d+/.test(text)
          ? `Date: there is no day "${text}"`
          : `Date: "${text}" is not a date; type it as 2026-03-05`,
      ),
    );
  if (second === undefined) return { value: first, reasons: [] };
  const offers: readonly Offer[] = days.map((day) => ({
    label: isoDate(day),
    cells: { [column]: isoDate(day) },
  }));
  const [likely] = order === undefined ? [] : datesWritten(text, order);
  return likely === undefined
    ? {
        value: undefined,
        reasons: [
          {
            ...asked(
              `Date: "${text}" can be ${isoDate(first)} or ${isoDate(second)}; which?`,
              offers,
            ),
            mustChoose: true,
          },
        ],
      }
    : {
        value: likely,
        reasons: [
          asked(
            `Date: "${text}" is read as ${isoDate(likely)}, as the other dates are written ${order}`,
            offers,
          ),
        ],
      };
}

const toTenths = new Intl.NumberFormat("en-US", { maximumFractionDigits: 1 });

export const pounds = (weight: Kilograms): string =>
  toTenths.format(weight / KG_PER_LB);
