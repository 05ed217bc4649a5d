import { answer } from "../../../functions/answer";
import { as } from "../../../measures/quantity";
import { KG_PER_LB } from "../../../measures/units";
import { type Lot, lotCost } from "../../../trade/costing/lot-cost";
import { definitionOf, same } from "./calls";
import { compared } from "./clock";
import { type Figure, milliseconds } from "./figure";

const FIRST_DAY = 44_000;

/** LOT_COST over a long table of lots, against the same draw from lots that have been read already. */
export async function lotFigures(rounds: number): Promise<readonly Figure[]> {
  const definition = definitionOf("LOT_COST");
  const figures: Figure[] = [];
  for (const { count, aim } of [
    { count: 1_000, aim: 2 },
    { count: 10_000, aim: 20 },
  ]) {
    const rows = lotRows(count);
    const lots: readonly Lot[] = rows.map(([received, left, price]) => ({
      received: as(received),
      left: as(left * KG_PER_LB),
      price: as(price / KG_PER_LB),
    }));
    const pounds = rows.reduce((sum, [, left]) => sum + left, 0) / 2;
    const asked = ["oldest first", pounds, rows];
    const bare = (): number =>
      lotCost("oldest first", as(pounds * KG_PER_LB), lots);
    same("LOT_COST", answer(definition, asked), bare());
    const times = await compared(rounds, () => answer(definition, asked), bare);
    figures.push({
      work: `\`LOT_COST\`, oldest first, ${count.toLocaleString("en-US")} lots`,
      takes: milliseconds(times.milliseconds),
      yardstick: milliseconds(times.yardstick),
      ratio: times.ratio,
      aim: `under ${aim} ms`,
      isMet: times.milliseconds < aim,
    });
  }
  return figures;
}

/** Lots as a worksheet hands them over: day, pounds left, price; in no order of days. */
const lotRows = (
  count: number,
): readonly (readonly [number, number, number])[] =>
  Array.from({ length: count }, (_, i) => [
    FIRST_DAY + ((i * 7919) % count),
    500 + (i % 100),
    2 + (i % 37) / 100,
  ]);
