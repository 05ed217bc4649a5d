import fc from "fast-check";
import {
  as,
  type DaySerial,
  type Kilograms,
} from "../../../src/measures/quantity";
import {
  type Movement,
  type Register,
  registerOf,
} from "../../../src/trade/totes/movements";
import { type Trace, trace } from "../../../src/trade/totes/trace";

const move = (
  day: number,
  from: string,
  to: string,
  weight: number,
): Movement => ({
  day: as<DaySerial>(46_000 + day),
  from,
  to,
  weight: as<Kilograms>(weight),
});

const LOTS = 4;
const POOLS = 5;

/**
 * Books a farm could keep: lots feed pools, pools feed later pools, runs and totes, days go on, and no pool gives what
 * it has not. A draw is a part of what the pool holds.
 */
const anyBook: fc.Arbitrary<readonly Movement[]> = fc
  .array(
    fc.record({
      from: fc.integer({ min: 0, max: LOTS + POOLS - 1 }),
      on: fc.integer({ min: 1, max: POOLS }),
      part: fc.integer({ min: 1, max: 10 }),
      later: fc.integer({ min: 0, max: 2 }),
    }),
    { minLength: 1, maxLength: 60 },
  )
  .map((steps) => {
    const held = new Map<string, number>();
    const book: Movement[] = [];
    let day = 0;
    for (const [i, { from, on, part, later }] of steps.entries()) {
      day += later;
      const source = from < LOTS ? `LOT-${from}` : `POOL-${from - LOTS}`;
      const number = from < LOTS ? on - 1 : from - LOTS + on;
      const target = number < POOLS ? `POOL-${number}` : `RUN-${i % 3}`;
      const there = from < LOTS ? 1000 : (held.get(source) ?? 0);
      const weight = (there * part) / 10;
      if (weight < 1e-3) continue;
      if (from >= LOTS) held.set(source, there - weight);
      held.set(target, (held.get(target) ?? 0) + weight);
      book.push(move(day, source, target, weight));
    }
    return book;
  })
  .filter((book) => book.length > 0);

/** The same by another way: every container is a list of pounds by lot, poured row by row. */
function poured(book: readonly Movement[]): {
  readonly cameInto: ReadonlyMap<string, ReadonlyMap<string, number>>;
  readonly now: ReadonlyMap<string, ReadonlyMap<string, number>>;
} {
  const now = new Map<string, Map<string, number>>();
  const cameInto = new Map<string, Map<string, number>>();
  const add = (
    to: Map<string, Map<string, number>>,
    name: string,
    lot: string,
    weight: number,
  ): void => {
    const of = to.get(name) ?? new Map<string, number>();
    to.set(name, of.set(lot, (of.get(lot) ?? 0) + weight));
  };
  for (const { from, to, weight } of book) {
    const source = now.get(from);
    const lots = source ?? new Map([[from, weight]]);
    const total = [...lots.values()].reduce((a, b) => a + b, 0);
    for (const [lot, held] of [...lots]) {
      const taken = (held / total) * weight;
      source?.set(lot, held - taken);
      add(now, to, lot, taken);
      add(cameInto, to, lot, taken);
    }
  }
  return { cameInto, now };
}

const names = (book: readonly Movement[], side: "from" | "to"): string[] => [
  ...new Set(book.map((row) => row[side])),
];
const sum = (weights: readonly number[]): number =>
  weights.reduce((a, b) => a + b, 0);
const into = (found: Trace, name: string): number =>
  sum(found.moves.filter(({ to }) => to === name).map((m) => m.weight));
const outOf = (found: Trace, name: string): number =>
  sum(found.moves.filter(({ from }) => from === name).map((m) => m.weight));
const lotsOf = (book: readonly Movement[]): readonly string[] =>
  names(book, "from").filter((name) => name.startsWith("LOT"));

describe("on any book, against pouring it row by row", () => {
  test("forward, every container gets the lot's pounds that were poured into it", () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const { cameInto } = poured(book);
        for (const lot of lotsOf(book)) {
          const found = trace(registerOf(book), lot, "forward");
          for (const name of names(book, "to"))
            expect(into(found, name)).toBeCloseTo(
              cameInto.get(name)?.get(lot) ?? 0,
              4,
            );
        }
      }),
    );
  });

  test("back, every container came from the lots that were poured into it, and nothing is missing", () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const { cameInto } = poured(book);
        for (const name of names(book, "to")) {
          const found = trace(registerOf(book), name, "back");
          const wanted = cameInto.get(name);
          for (const lot of lotsOf(book))
            expect(outOf(found, lot)).toBeCloseTo(wanted?.get(lot) ?? 0, 4);
          expect(sum(found.ends.map(({ weight }) => weight))).toBeCloseTo(
            found.total,
            4,
          );
          const shares = found.moves.filter(({ step }) => step === 1);
          expect(sum(shares.map(({ share }) => share))).toBeCloseTo(1, 9);
        }
      }),
    );
  });

  test("the pounds of a lot in a container are the same forward and back", () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const register = registerOf(book);
        for (const lot of lotsOf(book)) {
          const onward = trace(register, lot, "forward");
          for (const name of names(book, "to"))
            expect(outOf(trace(register, name, "back"), lot)).toBeCloseTo(
              into(onward, name),
              4,
            );
        }
      }),
    );
  });

  test("what left a lot lies at the ends, pound for pound", () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const { now } = poured(book);
        for (const lot of lotsOf(book)) {
          const { ends, total } = trace(registerOf(book), lot, "forward");
          const left = sum(
            book.filter(({ from }) => from === lot).map((row) => row.weight),
          );
          expect(total).toBeCloseTo(left, 6);
          expect(sum(ends.map(({ weight }) => weight))).toBeCloseTo(left, 4);
          for (const { name, weight } of ends)
            expect(weight).toBeCloseTo(now.get(name)?.get(lot) ?? 0, 4);
        }
      }),
    );
  });

  test("a share is a part, and no movement carries more than it moves", () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const moved = sum(book.map(({ weight }) => weight));
        for (const lot of lotsOf(book)) {
          const { moves } = trace(registerOf(book), lot, "forward");
          for (const { share } of moves) {
            expect(share).toBeGreaterThan(0);
            expect(share).toBeLessThanOrEqual(1 + 1e-9);
          }
          expect(sum(moves.map(({ weight }) => weight))).toBeLessThanOrEqual(
            moved * (1 + 1e-9),
          );
        }
      }),
    );
  });

  test("the order of the rows does not matter where the days say it", () => {
    fc.assert(
      fc.property(anyBook, fc.integer(), (book, seed) => {
        const dated = book.map((row, i) => ({
          ...row,
          day: as<DaySerial>(46_000 + i),
        }));
        const mixed = dated
          .map((row, i) => ({ row, key: Math.sin(seed + i * 7919) }))
          .sort((a, b) => a.key - b.key)
          .map(({ row }) => row);
        const lot = lotsOf(book)[0];
        fc.pre(lot !== undefined);
        expect(trace(registerOf(mixed), lot ?? "", "forward").moves).toEqual(
          trace(registerOf(dated), lot ?? "", "forward").moves,
        );
      }),
    );
  });
});

const registered = (...rows: readonly Movement[]): Register => registerOf(rows);

describe("order", () => {
  test("what went out before the lot came in carries nothing of it", () => {
    const register = registered(
      move(1, "A", "BLEND", 100),
      move(2, "BLEND", "RUN-1", 50),
      move(3, "B", "BLEND", 50),
      move(4, "BLEND", "RUN-2", 100),
    );
    expect(trace(register, "B", "forward").moves).toMatchObject([
      { step: 1, to: "BLEND", weight: 50, share: 1 },
      { step: 2, to: "RUN-2", weight: 50, share: 0.5 },
    ]);
  });

  test("the step is the shortest way, and names match without regard to case and outer spaces", () => {
    const register = registered(
      move(1, "lot-1", "BLEND", 100),
      move(2, " LOT-1", "TANK", 50),
      move(3, "BLEND", "tank ", 100),
      move(4, "Tank", "RUN-1", 150),
    );
    const steps = trace(register, "LOT-1 ", "forward").moves.map(
      ({ step, from, to }) => `${step} ${from} > ${to}`,
    );
    expect(steps).toEqual([
      "1 lot-1 > BLEND",
      "1 lot-1 > TANK",
      "2 BLEND > TANK",
      "2 TANK > RUN-1",
    ]);
  });

  test("syrup that goes back on a later day is followed round", () => {
    const register = registered(
      move(1, "LOT", "KETTLE", 100),
      move(2, "KETTLE", "FILLER", 100),
      move(3, "FILLER", "KETTLE", 20),
      move(4, "KETTLE", "RUN", 20),
    );
    expect(trace(register, "LOT", "forward").ends).toEqual([
      { name: "FILLER", weight: 80 },
      { name: "RUN", weight: 20 },
    ]);
    expect(trace(register, "RUN", "back").ends).toEqual([
      { name: "LOT", weight: expect.closeTo(20, 9) },
    ]);
  });
});

describe("loops are named and refused", () => {
  test("within a day, where no order can be known", () => {
    const register = registered(
      move(1, "LOT", "A", 100),
      move(1, "A", "B", 50),
      move(1, "B", "C", 50),
      move(1, "C", "A", 50),
    );
    for (const [name, direction] of [
      ["LOT", "forward"],
      ["B", "back"],
    ] as const)
      expect(() => trace(register, name, direction)).toThrow(
        /a loop.*(A → B → C → A|B → C → A → B)/,
      );
  });

  test("back into the lot that is traced, on any day", () => {
    const register = registered(
      move(1, "A", "B", 100),
      move(2, "B", "C", 60),
      move(3, "C", "A", 60),
    );
    expect(() => trace(register, "A", "forward")).toThrow(
      "movements: a loop: A → B → C → A on 2025-12-12; syrup cannot come back into A",
    );
    expect(() => trace(register, "A", "back")).toThrow(
      /a loop: A → B → C → A on/,
    );
  });

  test("from a container into itself", () => {
    expect(() =>
      trace(registered(move(1, "A", "a", 9)), "A", "forward"),
    ).toThrow(/a loop: A → A/);
    const later = registered(move(1, "LOT", "A", 9), move(2, "A", "A", 3));
    expect(() => trace(later, "LOT", "forward")).toThrow(/a loop on .*: A → A/);
  });

  test("a loop that the traced syrup never meets does not stand in its way", () => {
    const register = registered(
      move(1, "LOT", "RUN", 100),
      move(1, "A", "B", 50),
      move(1, "B", "A", 50),
    );
    expect(trace(register, "LOT", "forward").moves).toHaveLength(1);
  });
});

describe("what cannot be known is refused where it matters, and only there", () => {
  const overdrawn = [
    move(1, "LOT", "BLEND", 100),
    move(2, "BLEND", "RUN", 120),
    move(2, "OTHER", "TOTE", 50),
  ];

  test("a draw of more than came in", () => {
    for (const [name, direction] of [
      ["LOT", "forward"],
      ["RUN", "back"],
    ] as const)
      expect(() => trace(registerOf(overdrawn), name, direction)).toThrow(
        /BLEND is overdrawn by 44.09 lb: 264.55 lb into RUN on 2025-12-11/,
      );
    expect(trace(registerOf(overdrawn), "OTHER", "forward").total).toBe(50);
    expect(trace(registerOf(overdrawn), "TOTE", "back").total).toBe(50);
  });

  test("a container that gives before anything came into it, and is filled later", () => {
    const register = registered(
      move(1, "TANK", "RUN-1", 50),
      move(2, "LOT", "TANK", 100),
      move(3, "TANK", "RUN-2", 80),
    );
    expect(() => trace(register, "LOT", "forward")).toThrow(
      /TANK is drawn, .* into RUN-1 on 2025-12-10, before anything comes into it/,
    );
    expect(() => trace(register, "RUN-2", "back")).toThrow(/TANK is drawn/);
    expect(trace(register, "RUN-1", "back").ends).toEqual([
      { name: "TANK", weight: 50 },
    ]);
  });

  test("noise in the last bits of the pounds empties a container, it does not overdraw it", () => {
    const register = registered(
      ...[0.1, 0.2, 0.3].map((weight) => move(1, "LOT", "BLEND", weight)),
      move(2, "BLEND", "RUN-1", 0.6),
      move(3, "NEW", "BLEND", 1),
      move(4, "BLEND", "RUN-2", 1),
    );
    expect(trace(register, "LOT", "forward").ends).toEqual([
      { name: "RUN-1", weight: expect.closeTo(0.6, 12) },
    ]);
    expect(trace(register, "RUN-2", "back").ends).toEqual([
      { name: "NEW", weight: 1 },
    ]);
  });

  test("an unknown lot, a lot nothing left, a container nothing came into", () => {
    const register = registered(move(1, "26-09", "T-026", 2124));
    expect(() => trace(register, "26-90", "forward")).toThrow(
      'lot: "26-90" is in none of the movements; the nearest name is "26-09"',
    );
    expect(() => trace(register, "T-026", "forward")).toThrow(
      /nothing has left T-026/,
    );
    expect(() => trace(register, "26-09", "back")).toThrow(
      /nothing has come into 26-09/,
    );
    expect(() => trace(registered(), "A", "back")).toThrow(/"A" is in none/);
  });
});
