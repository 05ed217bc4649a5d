import { bookColumn } from "../../../sheets/book-cells";
import { leaksIn } from "../../../hosts/file/leaks/leak-check";
import { writeCopy } from "../../../hosts/file/leaks/write-copy";
import { writeXlsx } from "../../../hosts/file/write-xlsx";
import type { Contents } from "../../../book/contents";
import { noTicks } from "../../../sheets/handover/audiences";
import type { Copy } from "../../../sheets/handover/copy";
import type { Asked } from "../../../sheets/handover/read-asked";
import { handoverCopy, workedOut, type WorkedOut } from "../handover-copy";
import { compared } from "./clock";
import { type Figure, kilobytes, milliseconds } from "./figure";

const COPY_AIM_MS = 5000;
/** A file may take so many times what its two halves take: growth close to a straight line. */
const GROWTH = 1.5;

/** Handing the price list and every product's costing to a partner, and how the search for leaks grows with the file. */
export async function handoverFigures(
  contents: readonly Contents[],
  rounds: number,
): Promise<readonly Figure[]> {
  const products = bookColumn(contents, "products", "product").map(String);
  const costings = products.map((of): Asked => ({ kind: "costing", of }));
  const prices = await workedOut(contents, { asked: [{ kind: "prices" }] });
  const worked = await workedOut(contents, { asked: costings });
  return [
    await copyFigure("The price list for a partner", prices, rounds),
    await copyFigure(
      `${products.length} costing sheets for a partner in one file`,
      worked,
      rounds,
    ),
    await growthFigure(worked, rounds),
  ];
}

const copyOf = (worked: WorkedOut, from = 0, to = Infinity): Copy =>
  handoverCopy(
    { ...worked, sheets: worked.sheets.slice(from, to) },
    "partner",
    noTicks,
  );

async function copyFigure(
  what: string,
  worked: WorkedOut,
  rounds: number,
): Promise<Figure> {
  const { workbook } = copyOf(worked);
  const times = await compared(
    rounds,
    () => writeCopy(copyOf(worked)),
    () => writeXlsx(workbook),
  );
  return {
    work: `${what}: cut, written and searched`,
    takes: milliseconds(times.milliseconds),
    yardstick: `${milliseconds(times.yardstick)}, written only`,
    ratio: times.ratio,
    aim: `under ${COPY_AIM_MS / 1000} s`,
    isMet: times.milliseconds < COPY_AIM_MS,
  };
}

async function growthFigure(
  worked: WorkedOut,
  rounds: number,
): Promise<Figure> {
  const half = Math.ceil(worked.sheets.length / 2);
  const [whole, ...halves] = await Promise.all(
    [copyOf(worked), copyOf(worked, 0, half), copyOf(worked, half)].map(
      async ({ workbook, secrets }) => {
        const bytes = await writeXlsx(workbook);
        return {
          size: bytes.length,
          search: () => leaksIn(bytes, workbook, secrets),
        };
      },
    ),
  );
  if (!whole) throw new Error("there is no copy to search");
  const times = await compared(rounds, whole.search, async () => {
    for (const { search } of halves) await search();
  });
  const sizes = halves.map(({ size }) => kilobytes(size)).join(" and ");
  return {
    work: `The search for leaks in ${kilobytes(whole.size)}`,
    takes: milliseconds(times.milliseconds),
    yardstick: `${milliseconds(times.yardstick)}, its halves of ${sizes}`,
    ratio: times.ratio,
    aim: `at most ${GROWTH} times its halves`,
    isMet: times.ratio <= GROWTH,
  };
}
