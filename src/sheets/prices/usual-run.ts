import { carriedOfRun } from "../costing/season-before";

const NEWEST_RUN = "SUMPRODUCT(MAX((Runs[Product]={row.product})*Runs[Date]))";
// Row numbers instead of MATCH: over a table of one run its array is a single value, which MATCH takes in some programs only.
const ITS_ROW = `SUMPRODUCT(MIN(ROW(Runs[Product])+(1-(Runs[Product]={row.product})*(Runs[Date]=${NEWEST_RUN}))*10^7))-SUMPRODUCT(MIN(ROW(Runs[Product])))+1`;

/** The good bottles of the product's newest run (of two on one day, the upper row), or 1,200; a rolled book knows its size from the closed season. */
export const usualRunFormula = (rolled: boolean): string => {
  const never = rolled
    ? `IFERROR(${carriedOfRun("bottles of the newest run", "{row.product}")},1200)`
    : "1200";
  return `IF({row.product}="","",IF(COUNTIFS(Runs[Product],{row.product})=0,${never},INDEX(Runs[Good bottles],${ITS_ROW})))`;
};
