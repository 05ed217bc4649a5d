import fc from "fast-check";
import {
  ReadAreas,
  type SheetArea,
} from "../../../../src/hosts/grid/recalculation/read-areas";
import { runningOrder } from "../../../../src/hosts/grid/recalculation/running-order";

interface Formula {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly reads: readonly SheetArea[];
}

const sheet = fc.constantFrom("a", "b");
const area = fc
  .record({
    sheet,
    fromRow: fc.nat(11),
    fromColumn: fc.nat(3),
    // Some areas are too large to be kept cell by cell.
    rows: fc.constantFrom(1, 1, 1, 2, 5, 40),
    columns: fc.constantFrom(1, 1, 1, 2, 4),
  })
  .map(({ rows, columns, ...from }) => ({
    ...from,
    toRow: from.fromRow + rows - 1,
    toColumn: from.fromColumn + columns - 1,
  }));
const formulas = fc.uniqueArray(
  fc.record({
    sheet,
    row: fc.nat(11),
    column: fc.nat(3),
    reads: fc.array(area, { maxLength: 3 }),
  }),
  { maxLength: 30, selector: (f) => `${f.sheet}${f.row},${f.column}` },
);

const readsFrom = (reader: Formula, read: Formula): boolean =>
  reader.reads.some(
    (one) =>
      one.sheet === read.sheet &&
      read.row >= one.fromRow &&
      read.row <= one.toRow &&
      read.column >= one.fromColumn &&
      read.column <= one.toColumn,
  );

function areasOf(all: readonly Formula[]): ReadAreas<Formula> {
  const areas = new ReadAreas<Formula>();
  for (const formula of all)
    for (const one of formula.reads) areas.add(one, formula);
  return areas;
}

/** By going over everything again and again until nothing is added; needs no order and no index. */
function followers(
  start: readonly Formula[],
  all: readonly Formula[],
): ReadonlySet<Formula> {
  const found = new Set(start);
  for (let before = -1; before !== found.size;) {
    before = found.size;
    for (const one of all)
      if ([...found].some((f) => readsFrom(one, f))) found.add(one);
  }
  return found;
}

test("whatever follows is worked out, once, and nothing before what it reads", () => {
  fc.assert(
    fc.property(formulas, fc.nat(), (all, pick) => {
      const start = all.filter((_, i) => (i + pick) % 7 === 0);
      const { formulas: order, isCircular } = runningOrder(start, areasOf(all));
      const wanted = followers(start, all);
      expect(new Set(order)).toEqual(wanted);
      expect(order).toHaveLength(wanted.size);
      // A formula that is among its own followers' followers needs its own result.
      const needsItself = [...wanted].some((one) =>
        followers(
          all.filter((other) => readsFrom(other, one)),
          all,
        ).has(one),
      );
      expect(isCircular).toBe(needsItself);
      if (isCircular) return;
      order.forEach((reader, at) => {
        for (const later of order.slice(at + 1))
          expect(readsFrom(reader, later)).toBe(false);
      });
    }),
    { numRuns: 400 },
  );
});

test("an area is found by every cell of it, and no more once nobody reads it", () => {
  fc.assert(
    fc.property(formulas, area, (all, asked) => {
      const areas = areasOf(all);
      for (let row = 0; row < 60; row += 7)
        for (let column = 0; column < 8; column += 1) {
          const cell = { sheet: asked.sheet, row, column, reads: [] };
          const readers = areas
            .at(asked.sheet, row, column)
            .flatMap((read) => [...read.readers]);
          expect(new Set(readers)).toEqual(
            new Set(all.filter((one) => readsFrom(one, cell))),
          );
        }
      const touching = new Set(
        areas.touching(asked).flatMap((read) => [...read.readers]),
      );
      for (const one of all)
        expect(touching.has(one)).toBe(one.reads.some((r) => meet(r, asked)));
      for (const one of all)
        for (const read of one.reads) areas.remove(areas.add(read, one), one);
      expect(areas.touching({ ...asked, toRow: 99, toColumn: 99 })).toEqual([]);
      expect(areas.at(asked.sheet, asked.fromRow, asked.fromColumn)).toEqual(
        [],
      );
    }),
    { numRuns: 200 },
  );
});

/** Two rectangles have a cell in common when some cell of one lies in the other. */
function meet(a: SheetArea, b: SheetArea): boolean {
  for (let row = b.fromRow; row <= b.toRow; row += 1)
    for (let column = b.fromColumn; column <= b.toColumn; column += 1)
      if (
        a.sheet === b.sheet &&
        row >= a.fromRow &&
        row <= a.toRow &&
        column >= a.fromColumn &&
        column <= a.toColumn
      )
        return true;
  return false;
}
