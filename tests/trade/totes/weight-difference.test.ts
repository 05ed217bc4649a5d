import fc from "fast-check";
import {
  as,
  type Brix,
  type Kilograms,
  type Share,
} from "../../../src/measures/quantity";
import { KG_PER_LB } from "../../../src/measures/units";
import { saleBases } from "../../../src/trade/totes/sale-amount";
import { weightDifference } from "../../../src/trade/totes/weight-difference";

const lb = (pounds: number): Kilograms => as<Kilograms>(pounds * KG_PER_LB);
const share = (value: number): Share => as<Share>(value);

describe("what do two weighings of a tote differ by?", () => {
  test.each([
    // Hand arithmetic: 2,912 × 2.92 = 8,503.04; 2,890 × 2.92 = 8,438.80; 22 ÷ 2,912 = 0.7555 %.
    ["per lb", 2912, 2890, 2.92, 66.6, -22, -64.24],
    // Hand arithmetic: 1,320.9 kg × 8.95 = 11,822.055; 2,880 lb = 1,306.346 kg, printed 1,306.3, × 8.95 = 11,691.385.
    ["per kg", 2912, 2880, 8.95, 65.9, -32, 11_691.39 - 11_822.06],
    // Hand arithmetic: 2,923 × 65.9 ÷ 66 × 3.08 = 8,989.2988; 2,930 × 65.9 ÷ 66 × 3.08 = 9,010.8267.
    ["per lb at 66", 2923, 2930, 3.08, 65.9, 7, 9010.83 - 8989.3],
  ] as const)(
    "%s: ours %d lb, theirs %d lb",
    (basis, ours, theirs, price, brix, pounds, money) => {
      const found = weightDifference({
        ours: lb(ours),
        theirs: lb(theirs),
        price,
        basis,
        brix: as<Brix>(brix),
      });
      expect(found.weight / KG_PER_LB).toBeCloseTo(pounds, 9);
      expect(found.share).toBeCloseTo(pounds / ours, 12);
      expect(found.money).toBeCloseTo(money, 9);
    },
  );

  test("half a per cent of 2,912 lb is 14.56 lb: at it is no dispute, a hundredth beyond is one", () => {
    const at = (theirs: number, tolerance?: Share) =>
      weightDifference(
        {
          ours: lb(2912),
          theirs: lb(theirs),
          price: 2.92,
          basis: "per lb",
          brix: as<Brix>(66.6),
        },
        tolerance,
      ).isBeyond;
    expect([at(2897.44), at(2897.43), at(2926.56), at(2926.57)]).toEqual([
      false,
      true,
      false,
      true,
    ]);
    expect([at(2911.99, share(0)), at(2912, share(0))]).toEqual([true, false]);
  });

  test("law: whoever is heavier pays more, and swapping the two turns the sign", () => {
    const weights = fc
      .integer({ min: 20_000, max: 35_000 })
      .map((tenths) => tenths / 10);
    fc.assert(
      fc.property(
        weights,
        weights,
        fc.constantFrom(...saleBases),
        (a, b, basis) => {
          const asked = { price: 3.08, basis, brix: as<Brix>(66.2) };
          const there = weightDifference({
            ours: lb(a),
            theirs: lb(b),
            ...asked,
          });
          const back = weightDifference({
            ours: lb(b),
            theirs: lb(a),
            ...asked,
          });
          expect(there.money + back.money).toBeCloseTo(0, 9);
          expect(
            Math.sign(there.money) * Math.sign(b - a),
          ).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
});
