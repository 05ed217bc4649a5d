/** A formula as it compares: one way of quoting, spacing and capitals, with rows moved to where they now stand. */
export function comparableFormula(
  formula: string,
  sheet: string,
  rowNow: (sheet: string, row: number) => number,
): string {
  return pieces(formula)
    .map(({ text, quoted }) => (quoted ? text : code(text, sheet, rowNow)))
    .join("");
}

/** Strings apart from the rest; sheet names in single quotes stay with the rest. */
function pieces(
  formula: string,
): readonly { readonly text: string; readonly quoted: boolean }[] {
  return formula
    .split(/("(?:[^"]|"")*")/)
    .map((text, i) => ({ text, quoted: i % 2 === 1 }));
}

const reference =
  /(?:('(?:[^']|'')+'|[A-Za-z_][\w.]*)!)?(\$?)([A-Z]{1,3})(\$?)(\d{1,7})(?![\w(])/gi;

const code = (
  text: string,
  sheet: string,
  rowNow: (sheet: string, row: number) => number,
): string => {
  let last = sheet;
  return (
    text
      .replace(
        reference,
        (
          _,
          named: string | undefined,
          fixedColumn: string,
          column: string,
          fixedRow: string,
          row: string,
          at: number,
          whole: string,
        ) => {
          // The second corner of an area stands on the sheet of the first.
          const continued = whole[at - 1] === ":";
          const on =
            named === undefined ? (continued ? last : sheet) : plainName(named);
          last = on;
          const start = named === undefined ? "" : `'${on}'!`;
          return `${start}${fixedColumn}${column}${fixedRow}${rowNow(on, Number(row) - 1) + 1}`;
        },
      )
      .replace(/\s+/g, "")
      // A file keeps 15 digits of a number; some programs write more.
      .replace(/(?<![\w.$])\d+\.\d{12,}/g, (number) =>
        String(Number(Number(number).toPrecision(14))),
      )
      .replace(/\b(TRUE|FALSE)\(\)/gi, "$1")
      .replace(/_xlfn\.|_xlws\./gi, "")
      .toUpperCase()
  );
};

const plainName = (named: string): string =>
  named.startsWith("'") ? named.slice(1, -1).replace(/''/g, "'") : named;
