/** The text an argument without a default arrives as when it is left out. */
export const leftOut = '""';

interface Line {
  readonly heads: string;
  readonly fill: string;
  readonly handling: string;
  readonly running: string;
  readonly stations: string;
}

const headsRate = ({ heads, fill, handling, running }: Line): string =>
  `${heads}/(${fill}+${handling})*3600*${running}`;

/** Names among the stations do not disturb MIN, which passes over text in a range. */
export const nativeLineRate = (line: Line): string =>
  line.stations === leftOut
    ? headsRate(line)
    : `MIN(${headsRate(line)},${line.stations})`;

export const nativeLineLimit = (line: Line): string =>
  line.stations === leftOut
    ? '"heads"'
    : `IF(OR(COUNT(${line.stations})=0,${headsRate(line)}<=MIN(${line.stations})),"heads",` +
      `INDEX(INDEX(${line.stations},0,1),MATCH(MIN(${line.stations}),INDEX(${line.stations},0,2),0)))`;

export const nativeRunHours = (run: {
  readonly bottles: string;
  readonly rate: string;
  readonly setup: string;
  readonly clean: string;
}): string => `(${run.bottles}/${run.rate}+(${run.setup}+${run.clean})/60)`;

export const nativeCrossover = (lines: {
  readonly fixed_a: string;
  readonly each_a: string;
  readonly fixed_b: string;
  readonly each_b: string;
}): string =>
  `IF(AND(${lines.fixed_b}>${lines.fixed_a},${lines.each_a}>${lines.each_b}),` +
  `MAX(1,${wholeUp(`(${lines.fixed_b}-${lines.fixed_a})/(${lines.each_a}-${lines.each_b})`)}),NA())`;

/** The next whole number up, passing over binary noise, of any sign. */
export const wholeUp = (text: string): string => `-INT(-ROUND(${text},6))`;
