/** The error results every worksheet program knows in a file (ECMA-376 part 1, 18.18.11 and 18.17.3). */
const known: ReadonlySet<string> = new Set([
  "#NULL!",
  "#DIV/0!",
  "#VALUE!",
  "#REF!",
  "#NAME?",
  "#NUM!",
  "#N/A",
  "#GETTING_DATA",
]);

/** A younger error, such as a blocked spill, is stored as #VALUE!, which older programs can show. */
export const errorInFile = (error: string): string =>
  known.has(error) ? error : "#VALUE!";

/** Text the writing library would take for an error. */
export const looksLikeError = (text: string): boolean =>
  /^#[A-Z/0_]+[!?]?$/.test(text);
