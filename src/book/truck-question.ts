import { unusable } from "../measures/cannot-answer";
import { as, type Kilograms } from "../measures/quantity";
import { readNumber } from "../measures/read-number";
import { readQuantity } from "../measures/read-quantity";
import { unitNamed } from "../measures/units";
import type { TruckQuestion } from "./truck-plan";

/** What a person types to plan a truck; a blank is not asked, never zero. */
export interface TypedTruck {
  readonly limit: string;
  readonly axle: string;
  readonly spots: string;
  /** Tickets parted by commas. */
  readonly tickets: string;
  /** Gross weights parted by semicolons, as a comma may part thousands. */
  readonly gross: string;
}

/** Reads a typed truck plan. Refuses (#VALUE!) a limit that is missing and figures that cannot be used, by their names. */
export function truckQuestion(
  typed: TypedTruck,
  names: Readonly<Record<keyof TypedTruck, string>>,
): TruckQuestion {
  if (typed.limit.trim() === "")
    throw unusable(
      `Needs ${names.limit}, the most cargo the truck takes: ask the carrier`,
    );
  return {
    limits: {
      payload: weight(typed.limit, names.limit),
      axles:
        typed.axle.trim() === "" ? undefined : weight(typed.axle, names.axle),
      spots:
        typed.spots.trim() === ""
          ? undefined
          : places(typed.spots, names.spots),
    },
    tickets: parts(typed.tickets, ","),
    weights: parts(typed.gross, ";").map((one) => weight(one, names.gross)),
  };
}

function weight(written: string, name: string): Kilograms {
  const read = readQuantity(written, unitNamed("lb"), name);
  if (read <= 0) throw unusable(`${name}: ${written} is not a weight above 0`);
  return as<Kilograms>(read);
}

function places(written: string, name: string): number {
  const value = readNumber(written, name);
  if (!Number.isInteger(value) || value < 1)
    throw unusable(
      `${name}: ${written} is not a whole number of places for totes, 1 or more`,
    );
  return value;
}

const parts = (written: string, mark: string): readonly string[] =>
  written
    .split(mark)
    .map((one) => one.trim())
    .filter((one) => one !== "");
