import { unanswerable, unusable } from "../../measures/cannot-answer";
import { as, type Money } from "../../measures/quantity";
import { breakEvenUnits } from "./break-even";

export interface NewProduct {
  /** Spent once: artwork, plates, moulds, trials. */
  readonly oneTime: Money;
  /** What only this product costs every year. */
  readonly fixedPerYear: Money;
  /** What a unit earns over its direct cost. */
  readonly contribution: Money;
  /** Units expected to be sold in a year; undefined where nobody has said. */
  readonly forecastPerYear: number | undefined;
}

export interface BreakEven {
  /** Units that earn the one-time money and, of a forecast, the yearly costs of the months it takes. */
  readonly units: number;
  /** At the forecast, in months and parts of a month; undefined without a forecast. */
  readonly months: number | undefined;
}

/**
 * When a new product has earned back what was spent on it once. Yearly costs count month by month while it sells, so they
 * need a forecast. No answer (#N/A) where a unit, or a month at the forecast, earns nothing; a forecast must be above 0.
 */
export function breakEvenNew({
  oneTime,
  fixedPerYear,
  contribution,
  forecastPerYear: forecast,
}: NewProduct): BreakEven {
  if (forecast === undefined) {
    if (fixedPerYear > 0)
      throw unusable("needs forecast: yearly costs are earned month by month");
    return {
      units: breakEvenUnits(oneTime, contribution, as<Money>(0)),
      months: undefined,
    };
  }
  if (forecast <= 0)
    throw unusable(`forecast: ${forecast} must be above 0 units a year`);
  const perYear = forecast * contribution - fixedPerYear;
  if (contribution <= 0 || perYear <= 0)
    throw unanswerable(
      contribution <= 0
        ? "never: a unit does not earn its direct cost"
        : "never: a year at the forecast does not earn the yearly costs",
    );
  // The yearly costs take their share of every unit sold at the forecast's pace.
  const units = breakEvenUnits(
    oneTime,
    as<Money>(contribution - fixedPerYear / forecast),
    as<Money>(0),
  );
  return { units, months: (oneTime / perYear) * 12 };
}
