import { atTwenty } from "../metric/metric-words";
import { inFrench, layoutInFrench } from "../words/french";

/** Whether a copy may have said one of our texts so: as it is, in French, or with 68 °F as 20 °C. */
export function isSaid(ours: string, text: string): boolean {
  if (text === ours) return true;
  const french = layoutInFrench(ours);
  return (
    text === french || text === atTwenty(ours) || text === atTwenty(french)
  );
}

/** Whether a sheet of a copy may have got one of our sheet names, in any case of letters. */
export const isSheetSaid = (ours: string, name: string): boolean =>
  [ours, inFrench("sheets", ours)].some(
    (one) => one?.toLowerCase() === name.toLowerCase(),
  );
