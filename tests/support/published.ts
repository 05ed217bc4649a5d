/** A table copied from a source as printed. Values recalled from memory or worked out by us may not stand in one. */
export interface Printed {
  readonly source: string;
  readonly readAt: string;
  readonly quantity: string;
  readonly unit: string;
  readonly columns: readonly string[];
  /** Decimals as printed; half a unit of the last one is the tolerance. */
  readonly decimals: number;
  /** The columns, then the printed value. */
  readonly rows: readonly (readonly number[])[];
}

/** A wider tolerance than half the last printed digit, and why. */
export interface Wider {
  readonly within: number;
  /** The tolerance is a share of the printed value. */
  readonly relative?: boolean;
  readonly because: string;
}

/** One row that lies further off than the rest of its table, and why. */
export interface RowApart extends Wider {
  /** The columns of the row, without the printed value. */
  readonly at: readonly number[];
}

/**
 * One test a row; its title shows what the source prints. A row apart must really lie outside what holds for the rest,
 * so that no wider tolerance outlives its reason.
 */
export function agreesWithPrinted(
  table: Printed,
  ours: (first: number, second: number) => number,
  wider?: Wider,
  apart: readonly RowApart[] = [],
): void {
  const usual = wider ?? { within: 0.5 * 10 ** -table.decimals };
  const off = (row: readonly number[]): number => {
    const [first = Number.NaN, second = Number.NaN] = row;
    return Math.abs(ours(first, second) - (row.at(-1) ?? Number.NaN));
  };
  const rowOf = ({ at }: RowApart): readonly number[] =>
    table.rows.find((row) => at.every((value, c) => row[c] === value)) ?? [];
  const apartRows = apart.map(rowOf);
  const title = `${table.quantity}, ${table.source}${wider ? ` (${reason(wider)})` : ""}`;
  describe(title, () => {
    for (const row of table.rows.filter((row) => !apartRows.includes(row)))
      test(says(table, row), () => {
        // A printed half may be rounded either way; the last binary digit must not decide it.
        expect(off(row)).toBeLessThanOrEqual(
          tolerance(usual, row) * (1 + 1e-9),
        );
      });

    for (const row of apart)
      test(`leaves the table: ${says(table, rowOf(row))} (${reason(row)})`, () => {
        const printed = rowOf(row);
        expect(off(printed)).toBeGreaterThan(tolerance(usual, printed));
        expect(off(printed)).toBeLessThanOrEqual(tolerance(row, printed));
      });
  });
}

const reason = ({ within, relative, because }: Wider): string =>
  `within ${within}${relative ? " of the value" : ""}: ${because}`;

const tolerance = (
  { within, relative }: Pick<Wider, "within" | "relative">,
  row: readonly number[],
): number => within * (relative ? Math.abs(row.at(-1) ?? Number.NaN) : 1);

function says(table: Printed, row: readonly number[]): string {
  const at = table.columns.map((column, i) => `${row[i]} ${column}`).join(", ");
  return `${at}: ${row.at(-1)?.toFixed(table.decimals)} ${table.unit}`.trim();
}
