/** Finds where an increasing function reaches a value, by halving the interval until it cannot shrink. */
export function whereReaches(
  rising: (x: number) => number,
  wanted: number,
  from: number,
  to: number,
): number {
  let low = from;
  let high = to;
  for (let step = 0; step < 200; step += 1) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (rising(middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
