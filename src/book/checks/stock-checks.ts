import { as, type Kilograms } from "../../measures/quantity";
import { KG_PER_LB } from "../../measures/units";
import { densityInAir } from "../../trade/syrup/density";
import type { Book, BookRow } from "../book";
import { type Finding, listed } from "../finding";
import { isSameName, sameName } from "../keys";
import { leftOfLot } from "../stock";
import { figure, gathered, pounds } from "./gathered";

/** Lightest table syrup allowed by the federal and Canadian standards (21 CFR 168.140; 66 % soluble solids). */
export const LEAST_BRIX = 66;

/** Scales show whole pounds, so half a pound is no difference. */
const NO_DIFFERENCE = 0.5 * KG_PER_LB;

/** Difference between count and book that is worth a look. Common practice, no source. */
const COUNT_TOLERANCE = 0.005;

/** Lots, draws and counts that do not add up, and lots too light to sell. */
export function stockChecks(book: Book): readonly Finding[] {
  return [
    ...weights(book),
    ...gathered(
      book.lots.filter((lot) => lot.inboundFreight === undefined),
      {
        column: "Inbound freight",
        found: (rows) => `blank for ${lotNames(rows)}`,
        meaning: "the landed price of the lot is before freight",
        todo: "type the freight, or 0 if there was none",
      },
    ),
    ...overdrawn(book),
    ...gathered(
      book.lots.filter(
        (lot) => lot.brix < LEAST_BRIX && leftOfLot(book, lot) > NO_DIFFERENCE,
      ),
      {
        column: "Brix at 68 °F",
        found: (rows) =>
          `light lots in stock: ${listed(rows.map((lot) => `${lot.lot} (${lot.brix} °Bx, ${pounds(leftOfLot(book, lot))} left)`))}`,
        meaning: `syrup lighter than ${LEAST_BRIX} °Bx is below the standard for table syrup`,
        todo: "blend with a heavier lot or boil it down before packing",
        atStake: (rows) =>
          rows.reduce(
            (sum, lot) =>
              sum + (leftOfLot(book, lot) / KG_PER_LB) * lot.pricePerPound,
            0,
          ),
      },
    ),
    ...counts(book),
    ...gathered(
      book.oakBarrels.filter(
        (barrel) =>
          barrel.poundsOut !== undefined && barrel.poundsOut > barrel.poundsIn,
      ),
      {
        column: "Pounds out",
        found: (rows) =>
          `more out than in: ${listed(rows.map((row) => row.barrel))}`,
        meaning: "a barrel loses weight, so one of the two weights is wrong",
        todo: "check the scale tickets of filling and emptying",
      },
    ),
  ];
}

function weights(book: Book): readonly Finding[] {
  const off = (lot: BookRow<"lots">): number | undefined => {
    const { gross, tareEach, drums, net } = lot;
    if (gross === undefined || tareEach === undefined || drums === undefined)
      return undefined;
    return gross - drums * tareEach - net;
  };
  return [
    ...book.lots.flatMap((lot) => {
      const difference = off(lot) ?? 0;
      if (Math.abs(difference) <= NO_DIFFERENCE) return [];
      const weighed = as<Kilograms>(lot.net + difference);
      return [
        {
          where: `${lot.place}, Net lb`,
          found: `${pounds(lot.net)}, but gross less ${lot.drums} tares is ${pounds(weighed)}`,
          meaning: `the net weight is used as typed; ${pounds(Math.abs(difference))} of lot ${lot.lot} are in doubt`,
          todo: "check gross, tare and drums against the scale ticket",
        },
      ];
    }),
    ...gathered(
      book.lots.filter(
        ({ net, drums, drumSize, brix }) =>
          drums !== undefined &&
          drumSize !== undefined &&
          net > drums * drumSize * densityInAir(brix),
      ),
      {
        column: "Net lb",
        found: (rows) => `more than the drums hold: ${lotNames(rows)}`,
        meaning: "the net weight, the number of drums or their size is wrong",
        todo: "check the three against the scale ticket",
      },
    ),
  ];
}

/** Names the draw at which a lot or barrel first runs out, as it stands in order of date. */
function overdrawn(book: Book): readonly Finding[] {
  const left = new Map<string, number>([
    ...book.lots.map((lot) => [sameName(lot.lot), lot.net] as const),
    ...book.oakBarrels.map(
      (row) => [sameName(row.barrel), row.poundsOut ?? row.poundsIn] as const,
    ),
  ]);
  const findings: Finding[] = [];
  const told = new Set<string>();
  const inOrder = [...book.lotUse].sort((a, b) => a.date - b.date);
  for (const use of inOrder) {
    const name = sameName(use.from);
    const before = left.get(name);
    if (before === undefined) continue;
    left.set(name, before - use.pounds);
    if (before - use.pounds >= -NO_DIFFERENCE || told.has(name)) continue;
    told.add(name);
    findings.push({
      where: `${use.place}, Pounds`,
      found: `${pounds(use.pounds)} drawn from ${use.from}, which had ${pounds(Math.max(before, 0))} left`,
      meaning: `${use.from} is overdrawn by ${pounds(use.pounds - before)}`,
      todo: "check the weight and the lot of this draw and of those before it",
    });
  }
  return findings;
}

function counts(book: Book): readonly Finding[] {
  const off = book.stockCount.filter(
    (row) =>
      row.counted !== undefined &&
      Math.abs(row.counted - row.book) > row.book * COUNT_TOLERANCE,
  );
  const stale = book.stockCount.filter((row) => {
    const lot = book.lots.find((known) => isSameName(known.lot, row.lot));
    return (
      lot !== undefined &&
      Math.abs(leftOfLot(book, lot) - row.book) > NO_DIFFERENCE
    );
  });
  return [
    ...gathered(off, {
      column: "Counted lb",
      found: (rows) =>
        `the count differs from the book: ${listed(rows.map((row) => `${row.lot} by ${pounds((row.counted ?? 0) - row.book)} (${figure((100 * ((row.counted ?? 0) - row.book)) / row.book, 2)} %)`))}`,
      meaning: `more than ${COUNT_TOLERANCE * 100} % of a lot is unexplained`,
      todo: "look for a draw that was not written down, then adjust the lot",
      atStake: (rows) => unexplained(book, rows),
    }),
    ...gathered(stale, {
      column: "Book lb",
      found: (rows) =>
        `not what Lots has left: ${listed(rows.map((row) => row.lot))}`,
      meaning: "the book weight was taken before or after other draws",
      todo: "take the book weight from Lots, Left lb, on the day of the count",
    }),
  ];
}

/** What the pounds between count and book cost, each way taken as a loss. */
function unexplained(
  book: Book,
  rows: readonly BookRow<"stockCount">[],
): number | undefined {
  const worth = rows.map((row) => {
    const lot = book.lots.find((known) => isSameName(known.lot, row.lot));
    return (
      lot &&
      (Math.abs((row.counted ?? 0) - row.book) / KG_PER_LB) * lot.pricePerPound
    );
  });
  return worth.reduce<number | undefined>(
    (sum, one) =>
      sum === undefined || one === undefined ? undefined : sum + one,
    0,
  );
}

const lotNames = (rows: readonly { readonly lot: string }[]): string =>
  listed(rows.map((row) => row.lot));
