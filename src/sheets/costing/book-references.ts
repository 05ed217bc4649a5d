/** Formula texts that reach into the farm book's tables by name, so that sorting and reordering them changes nothing. */

/** A column of Products in the row of this sheet's product. */
export const product = (heading: string): string =>
  `INDEX(Products[${heading}],{product_row})`;

export const setting = (name: string): string =>
  `INDEX(Settings[Value],MATCH("${name}",Settings[Setting],0))`;

export const energy = (item: string): string =>
  `INDEX(Energy[Value],MATCH(${item},Energy[Item],0))`;

/** A column of Lines for the line of this comparison's column. */
export const line = (heading: string): string => `INDEX(Lines[${heading}],{n})`;

/** A column of Parts for the part of this row. */
export const part = (heading: string): string =>
  `INDEX(Parts[${heading}],MATCH({row.part},Parts[Part],0))`;

/**
 * The row number of the next row in a table's column that holds a value, after the row found in the cell above
 * (the first row searches from the top). Works in any sort order and leaves "" when there is none.
 */
export const nextRow = (
  table: string,
  heading: string,
  wanted: string,
  above: string,
): string =>
  `IF(${above}="","",IFERROR(${above}+MATCH(${wanted},INDEX(${table}[${heading}],${above}+1):INDEX(${table}[${heading}],ROWS(${table}[${heading}])),0),""))`;

/** A share from a row of Settings or Energy that may be written in percent: 68 with "percent" beside it is 0.68. */
export const namedShare = (
  table: string,
  nameColumn: string,
  name: string,
): string => {
  const row = `MATCH("${name}",${table}[${nameColumn}],0)`;
  return `INDEX(${table}[Value],${row})*IF(LEFT(INDEX(${table}[Unit],${row}),7)="percent",0.01,1)`;
};
