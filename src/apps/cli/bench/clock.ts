type Work = () => unknown;

/** How long two pieces of work took side by side, in milliseconds, and how many times as long the first one was. */
export interface Compared {
  readonly milliseconds: number;
  readonly yardstick: number;
  readonly ratio: number;
}

/**
 * Times work and yardstick in turn, so that a machine that slows down slows both, and takes the middle of the rounds. A
 * first round that is not counted warms up.
 */
export async function compared(
  rounds: number,
  work: Work,
  yardstick: Work,
): Promise<Compared> {
  await work();
  await yardstick();
  const pairs: { readonly work: number; readonly yardstick: number }[] = [];
  for (let round = 0; round < rounds; round += 1)
    pairs.push({
      yardstick: await elapsed(yardstick),
      work: await elapsed(work),
    });
  return {
    milliseconds: median(pairs.map((pair) => pair.work)),
    yardstick: median(pairs.map((pair) => pair.yardstick)),
    ratio: median(pairs.map((pair) => pair.work / pair.yardstick)),
  };
}

async function elapsed(work: Work): Promise<number> {
  const started = performance.now();
  await work();
  return performance.now() - started;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  const [low = Number.NaN, high = low] = Number.isInteger(half)
    ? sorted.slice(half - 1, half + 1)
    : sorted.slice(Math.floor(half));
  return Number.isInteger(half) ? (low + high) / 2 : low;
}
