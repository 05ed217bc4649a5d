/** Numbers and check digits as the GS1 pages print them, read in stored copies. */
export const printedExamples = [
  { page: "GS1 Hong Kong", digits: "629104150021", check: 3 },
  { page: "GS1 India", digits: "890400021003", check: 7 },
  { page: "GS1 Sweden", digits: "730001100001", check: 7 },
] as const;
