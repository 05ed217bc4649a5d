import { answer } from "../../../functions/answer";
import { definitionOf } from "./calls";
import { compared } from "./clock";
import { type Figure, milliseconds as inMilliseconds } from "./figure";

const FIRST_DAY = 44_000;
const AT_10_000_MS = 100;
/** How much longer one table may take than ten tables of a tenth of its rows: growth close to a straight line. */
const GROWTH = 3;
/** Short tables are worked through again and again, so that every figure is of about as many rows. */
const ROWS_A_ROUND = 20_000;

interface LongTable {
  readonly name: string;
  readonly rows: string;
  readonly args: (count: number) => readonly unknown[];
}

const tables: readonly LongTable[] = [
  {
    name: "LOT_COST",
    rows: "lots",
    args: (count) => [
      "oldest first",
      count * 250,
      Array.from({ length: count }, (_, i) => [
        FIRST_DAY + ((i * 7919) % count),
        500 + (i % 100),
        2 + (i % 37) / 100,
      ]),
    ],
  },
  {
    name: "TRACE",
    rows: "movements, one lot in half of them",
    args: (count) => ["L-1", movements(count)],
  },
  {
    name: "ALLOCATE",
    rows: "drivers",
    args: (count) => [
      10_600 * count,
      Array.from({ length: count }, (_, i) => [1 + ((i * 7919) % 997)]),
    ],
  },
];

/** A lot that goes through a barrel into many runs, each shipped to a customer, among as many of another lot. */
function movements(count: number): readonly (readonly unknown[])[] {
  const runs = Math.floor((count - 4) / 4);
  const filled = ["1", "2"].flatMap((lot) => [
    [FIRST_DAY, `L-${lot}`, `B-${lot}`, runs * 100],
    [FIRST_DAY + 1, `B-${lot}`, `T-${lot}`, runs * 100],
  ]);
  const packed = Array.from({ length: runs }, (_, i) => i).flatMap((i) =>
    ["1", "2"].flatMap((lot) => [
      [FIRST_DAY + 2 + i, `T-${lot}`, `R-${lot}-${i}`, 100],
      [FIRST_DAY + 3 + i, `R-${lot}-${i}`, `C-${i % 50}`, 100],
    ]),
  );
  return [...filled, ...packed];
}

/** Functions over long tables as a worksheet calls them; the yardstick is ten calls over a tenth of the rows. */
export async function longTableFigures(
  rounds: number,
  counts: readonly number[] = [1_000, 10_000, 100_000],
): Promise<readonly Figure[]> {
  const figures: Figure[] = [];
  for (const { name, rows, args } of tables) {
    const definition = definitionOf(name);
    for (const count of counts) {
      const [all, tenth] = [args(count), args(count / 10)];
      const repeats = Math.max(1, ROWS_A_ROUND / count);
      const times = await compared(
        rounds,
        () => again(repeats, () => answer(definition, all)),
        () => again(repeats * 10, () => answer(definition, tenth)),
      );
      const mustBeQuick = count === 10_000;
      const milliseconds = times.milliseconds / repeats;
      figures.push({
        work: `\`${name}\`, ${count.toLocaleString("en-US")} ${rows}`,
        takes: inMilliseconds(milliseconds),
        yardstick: inMilliseconds(times.yardstick / repeats),
        ratio: times.ratio,
        aim: `under ${GROWTH} times${mustBeQuick ? ` and ${AT_10_000_MS} ms` : ""}`,
        isMet:
          times.ratio < GROWTH && (!mustBeQuick || milliseconds < AT_10_000_MS),
      });
    }
  }
  return figures;
}

function again(times: number, work: () => unknown): unknown {
  let last: unknown;
  for (let i = 0; i < times; i += 1) last = work();
  return last;
}
