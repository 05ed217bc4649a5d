import { unusable } from "../../measures/cannot-answer";

/** A season as it is asked for: the calendar year it runs in. */
export function readSeason(given: string | undefined, usage: string): number {
  if (given === undefined)
    throw unusable(`Needs --season, a year such as 2027. Usage: ${usage}`);
  const year = /^\s*(\d{4})\s*$/.exec(given)?.[1];
  if (year === undefined || Number(year) < 1990 || Number(year) > 2100)
    throw unusable(
      `--season: "${given}" is no year between 1990 and 2100. Usage: ${usage}`,
    );
  return Number(year);
}
