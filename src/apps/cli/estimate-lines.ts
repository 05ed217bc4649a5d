import { estimateWords } from "../../book/season-totals";

/** What stands under full costs some of whose overheads are shared over a closed season. */
export const estimateLines = (season: number | null): readonly string[] =>
  season === null ? [] : [`Full cost: ${estimateWords(season)}`];
