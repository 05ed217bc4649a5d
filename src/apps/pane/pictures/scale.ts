/** Round figures that take in the least and the most, for an axis: at most `most` steps of 1, 2 or 5 times a power of ten. */
export function ticks(low: number, high: number, most = 5): readonly number[] {
  if (!(high > low)) return [low];
  const rough = (high - low) / most;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((n) => n * power >= rough) ?? 10) * power;
  const first = Math.floor(low / step + 1e-9);
  const last = Math.ceil(high / step - 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) =>
    // Multiplying keeps 0.3 from becoming 0.30000000000000004 by adding up.
    Number(((first + i) * step).toPrecision(12)),
  );
}

/** Where a value lies between two pixels. */
export const placed = (
  value: number,
  [low, high]: readonly [number, number],
  [from, to]: readonly [number, number],
): number =>
  high === low
    ? (from + to) / 2
    : from + ((value - low) / (high - low)) * (to - from);
