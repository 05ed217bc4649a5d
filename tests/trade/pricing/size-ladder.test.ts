import fc from "fast-check";
import { as } from "../../../src/measures/quantity";
import { sizeLadder } from "../../../src/trade/pricing/size-ladder";

const size = (
  name: string,
  millilitres: number,
  price: number | undefined,
) => ({
  name,
  declared: as<Parameters<typeof sizeLadder>[0][number]["declared"]>(
    millilitres / 1000,
  ),
  price:
    price === undefined
      ? undefined
      : as<NonNullable<Parameters<typeof sizeLadder>[0][number]["price"]>>(
          price,
        ),
});

test("each size is held against the next smaller one that has a price", () => {
  const ladder = sizeLadder([
    size("quart", 946, 29.99),
    size("half pint", 237, 10.49),
    size("pint", 473, undefined),
  ]);
  expect(ladder.map(({ name }) => name)).toEqual(["half pint", "quart"]);
  // 29.99 ÷ 0.946 = 31.702 a litre against 10.49 ÷ 0.237 = 44.262: 28.4 % less.
  expect(ladder[1]?.smaller).toBeCloseTo(44.262, 3);
  expect(ladder[1]?.step).toBeCloseTo(0.284, 3);
  expect(ladder.map(({ isKink }) => isKink)).toEqual([false, false]);
});

test("a half gallon dearer an ounce than two quarts is a kink, and one at twice the quart's price is none", () => {
  const kinks = (price: number): readonly boolean[] =>
    sizeLadder([
      size("quart", 946, 29.99),
      size("half gallon", 1892, price),
    ]).map(({ isKink }) => isKink);
  expect(kinks(60.99)).toEqual([false, true]);
  expect(kinks(59.98)).toEqual([false, false]);
});

test("of several smaller ones of one size their average counts", () => {
  const [, , third] = sizeLadder([
    size("a", 250, 10),
    size("b", 250, 12),
    size("c", 500, 22.5),
  ]);
  // (40 + 48) ÷ 2 = 44 a litre; 22.5 ÷ 0.5 = 45.
  expect(third?.smaller).toBeCloseTo(44, 9);
  expect(third?.isKink).toBe(true);
});

test("the smallest size is never a kink, and the order of the rows does not matter", () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.integer({ min: 50, max: 4000 }), {
        minLength: 1,
        maxLength: 8,
      }),
      fc.array(fc.integer({ min: 100, max: 9999 }), {
        minLength: 8,
        maxLength: 8,
      }),
      (volumes, cents) => {
        const sizes = volumes.map((v, i) =>
          size(String(v), v, (cents[i] ?? 100) / 100),
        );
        const ladder = sizeLadder(sizes);
        expect(ladder[0]?.isKink).toBe(false);
        expect(sizeLadder([...sizes].reverse())).toEqual(ladder);
      },
    ),
  );
});
