import { unanswerable } from "../../measures/cannot-answer";
import { roundHalfUp } from "../../measures/money";
import { as, type ColdLitres } from "../../measures/quantity";
import { wholeUp } from "../../measures/whole-up";
import { allowedShortfall } from "../../standards/allowed-shortfall";
import { allowedShortfallScope } from "../../standards/allowed-shortfall-scope";

export type ShortfallRule = "US" | keyof typeof allowedShortfallScope;

export interface AllowedShort {
  readonly allowed: ColdLitres;
  /** What the table says, before rounding up. */
  readonly unrounded: ColdLitres;
  readonly percent: number | undefined;
}

/**
 * How far one bottle may be short of the declared volume. No answer outside the table; none for the US, whose table by
 * volume was not read. Sources: euPrepackages, euLargerPacks, oimlR87, canadaShortfall.
 */
export function allowedShort(
  declared: ColdLitres,
  rule: ShortfallRule,
): AllowedShort {
  if (rule === "US")
    throw unanswerable(
      "enter the MAV from Table 2-6 of the handbook edition your state uses",
    );
  const { least, most, steps } = allowedShortfallScope[rule];
  const volume = roundHalfUp(declared * 1000, 9);
  const row = allowedShortfall.find(({ upTo }) => volume <= upTo);
  if (!row || volume < least || volume > most)
    throw unanswerable(
      `declared: ${volume.toLocaleString("en-US")} mL is outside the ${rule} table, which is for ${least} to ${most.toLocaleString("en-US")} mL`,
    );
  const percent = "percent" in row ? row.percent : undefined;
  const unrounded = "amount" in row ? row.amount : (volume * row.percent) / 100;
  const step = steps.find(({ upTo }) => volume <= upTo)?.step;
  return {
    allowed: millilitres(step ? roundedUp(unrounded, step) : unrounded),
    unrounded: millilitres(unrounded),
    percent,
  };
}

/** Counted in whole steps of a tenth, so that no binary noise is left: 6.8, not 6.800000000000001. */
const roundedUp = (value: number, step: number): number =>
  wholeUp(value / step) / Math.round(1 / step);

const millilitres = (volume: number): ColdLitres =>
  as<ColdLitres>(volume / 1000);
