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

/** One test a row; its title shows what the source prints. */
export function agreesWithPrinted(
  table: Printed,
  ours: (first: number, second: number) => number,
  wider?: Wider,
): void {
  const title = wider
    ? `${table.quantity}, ${table.source} (within ${wider.within}${wider.relative ? " of the value" : ""}: ${wider.because})`
    : `${table.quantity}, ${table.source}`;
  describe(title, () => {
    test.each(table.rows.map((row) => ({ row, says: says(table, row) })))(
      "$says",
      ({ row }) => {
        const printed = row.at(-1) ?? Number.NaN;
        const tolerance = wider
          ? wider.within * (wider.relative ? Math.abs(printed) : 1)
          : 0.5 * 10 ** -table.decimals;
        const [first = Number.NaN, second = Number.NaN] = row;
        const difference = Math.abs(ours(first, second) - printed);
        // A printed half may be rounded either way; the last binary digit must not decide it.
        expect(difference).toBeLessThanOrEqual(tolerance * (1 + 1e-9));
      },
    );
  });
}

function says(table: Printed, row: readonly number[]): string {
  const at = table.columns.map((column, i) => `${row[i]} ${column}`).join(", ");
  return `${at}: ${row.at(-1)?.toFixed(table.decimals)} ${table.unit}`.trim();
}
