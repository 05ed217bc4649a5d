import { unusable } from "../measures/cannot-answer";
import { as, type PerHour } from "../measures/quantity";
import { readNumber } from "../measures/read-number";
import type { lineTerms } from "../terms/lines";
import type { ValueOf } from "../terms/term";
import type { Station } from "../trade/lines/line-rate";

type Given = ValueOf<typeof lineTerms.stations>;

/** Stations given as names and rates, or as one column of rates only, which then have no names. */
export function readStations(given: Given | undefined): readonly Station[] {
  if (given === undefined) return [];
  const oneColumn = given.every(({ rate }) => rate === undefined);
  return oneColumn
    ? withoutHeading(given).map(({ name }) => bareRate(name ?? ""))
    : given.map(named);
}

/** The same where an answer must name the station. */
export function readNamedStations(
  given: Given | undefined,
): readonly Station[] {
  const stations = readStations(given);
  const bare = stations.find(({ name }) => name === "");
  if (bare)
    throw unusable(
      `stations: the one of ${bare.rate} per h needs its name beside it`,
    );
  return stations;
}

const isNumber = (text: string | undefined): boolean =>
  /^[+-]?[\d.,\s]*\d$/.test(text ?? "");

const withoutHeading = (rows: Given): Given =>
  rows.length > 1 && !isNumber(rows[0]?.name) ? rows.slice(1) : rows;

function bareRate(text: string): Station {
  if (!isNumber(text)) throw unusable(`stations: "${text}" needs its rate`);
  const rate = readNumber(text, "stations");
  if (rate <= 0)
    throw unusable(`stations: ${rate} per h must be more than 0 per h`);
  return { name: "", rate: as<PerHour>(rate) };
}

function named({ name, rate }: Given[number]): Station {
  if (name === undefined)
    throw unusable(`stations: the one of ${rate} per h needs its name`);
  if (isNumber(name))
    throw unusable(
      `stations: ${name} is not a station's name; give names beside the rates, or one column of rates`,
    );
  if (rate === undefined) throw unusable(`stations: "${name}" needs its rate`);
  return { name, rate: as<PerHour>(rate) };
}
