import fc from "fast-check";
import {
  as,
  type Brix,
  type DaySerial,
  type Kilograms,
  type Money,
} from "../../../src/measures/quantity";
import { KG_PER_LB } from "../../../src/measures/units";
import { ageBand, ageBands, daysLate } from "../../../src/trade/totes/ageing";
import { contractLeft, massBalance } from "../../../src/trade/totes/balance";
import { toteNet } from "../../../src/trade/totes/net";
import { saleAmount } from "../../../src/trade/totes/sale-amount";
import { functionNamed } from "../../../src/functions";
import { answer } from "../../../src/functions/answer";
import { near } from "../quantities";

const lb = (pounds: number): Kilograms => as<Kilograms>(pounds * KG_PER_LB);
const inPounds = (weight: Kilograms): number => weight / KG_PER_LB;

/** A decimal as a person types it: its whole units of the last place, and how many places. */
const typed = (most: number, places: number): fc.Arbitrary<bigint> =>
  fc.bigInt({ min: 1n, max: BigInt(most) * 10n ** BigInt(places) });
const text = (units: bigint, places: number): string => {
  const digits = units.toString().padStart(places + 1, "0");
  return `${digits.slice(0, -places)}.${digits.slice(-places)}`;
};

/** Hundredths of a product with five decimals, half up, in whole numbers alone. */
const centsOf = (product: bigint): bigint => (product + 500n) / 1000n;

const sold = (net: string | number, price: string, basis: string): unknown => {
  const sale = functionNamed("SALE_AMOUNT");
  if (!sale) throw new Error("No SALE_AMOUNT");
  return answer(sale, [net, price, basis]);
};

describe("amounts are exact to the cent, a half up, against sums in whole numbers", () => {
  const weights = typed(20_000, 2);
  const prices = typed(99, 3);

  test("pounds given as pounds, by the pound; kilograms given as kilograms, by the kilogram", () => {
    fc.assert(
      fc.property(weights, prices, (weight, price) => {
        const wanted = Number(centsOf(weight * price)) / 100;
        const [net, each] = [text(weight, 2), text(price, 3)];
        expect(sold(Number(net), each, "per lb")).toBe(wanted);
        expect(sold(`${net} kg`, each, "per kg")).toBe(wanted);
      }),
      { numRuns: 2000 },
    );
  });

  test("products that end in half a cent, where binary figures go either way", () => {
    fc.assert(
      fc.property(weights, prices, (weight, price) => {
        // Half a cent is 500 of the fifth decimal: an odd multiple of it is made by a price of 500 thousandths × odd.
        const half = price * 2n + 1n;
        const wanted = Number(centsOf(half * 500n)) / 100;
        expect(sold(Number(text(half, 2)), "0.500", "per lb")).toBe(wanted);
        expect(sold(`${text(half, 2)} kg`, "0.500", "per kg")).toBe(wanted);
        return weight > 0n;
      }),
      { numRuns: 1000 },
    );
  });
});

describe("price bases", () => {
  const net = lb(2912);

  test("at 66.0 °Bx a price per pound at 66 is a price per pound", () => {
    expect(saleAmount(net, 3.08, "per lb at 66", as<Brix>(66))).toBe(
      saleAmount(net, 3.08, "per lb"),
    );
  });

  test("the money for solids goes with the Brix", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 600, max: 700 }),
        fc.integer({ min: 1, max: 40_000 }),
        (tenths, pounds) => {
          const brix = as<Brix>(tenths / 10);
          const paid = saleAmount(lb(pounds), 3, "per lb at 66", brix);
          return Math.abs(paid - (pounds * 3 * tenths) / 660) <= 0.005 + 1e-9;
        },
      ),
    );
  });

  test("thicker syrup fetches less a pound by the gallon", () => {
    const at = (brix: number): number =>
      saleAmount(net, 34.1, "per gal", as<Brix>(brix));
    expect(at(66)).toBeGreaterThan(at(67));
  });

  test("a basis that needs the Brix asks for it", () => {
    for (const basis of ["per gal", "per lb at 66"] as const)
      expect(() => saleAmount(net, 3, basis)).toThrow(/^needs brix: /);
  });
});

describe("weights", () => {
  test("a full tote less its empty weight is exact, in pounds and in kilograms", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4_000_000 }),
        fc.integer({ min: 1, max: 4_000_000 }),
        (net, tare) => {
          const definition = functionNamed("TOTE_NET");
          if (!definition) throw new Error("No TOTE_NET");
          expect(answer(definition, [(net + tare) / 1000, tare / 1000])).toBe(
            net / 1000,
          );
          const kilograms = toteNet(
            as<Kilograms>((net + tare) / 1000),
            as<Kilograms>(tare / 1000),
          );
          expect(kilograms).toBe(net / 1000);
        },
      ),
    );
  });

  test("a tare that is not below the gross may be swapped; a tote above its plate limit is not answered", () => {
    expect(() => toteNet(lb(132), lb(3044))).toThrow(
      "tare: 3,044 lb is not below the gross 132 lb; the two may be swapped",
    );
    expect(() => toteNet(lb(132), lb(132))).toThrow(/swapped/);
    expect(() => toteNet(lb(3310), lb(132), lb(3300))).toThrow(
      "gross: 3,310 lb is above the 3,300 lb on the tote's plate; draw off 10 lb",
    );
    expect(inPounds(toteNet(lb(3300), lb(132), lb(3300)))).toBeCloseTo(3168, 9);
  });

  test("what was shipped and what is left make the contract", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60_000 }),
        fc.array(fc.integer({ min: 0, max: 3_000_000 }), { maxLength: 30 }),
        (contract, shipped) => {
          const left = contractLeft(
            lb(contract),
            shipped.map((weight) => lb(weight / 1000)),
          );
          const total = shipped.reduce((sum, weight) => sum + weight, 0);
          return (
            Math.abs(inPounds(left) - (contract - total / 1000)) < 1e-9 * 1e5
          );
        },
      ),
    );
  });

  test("a lot that balances leaves exactly nothing, whatever its pounds are in binary", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 900_000 }), {
          minLength: 1,
          maxLength: 40,
        }),
        fc.integer({ min: 0, max: 900_000 }),
        (out, stock) => {
          const received = out.reduce((sum, weight) => sum + weight, stock);
          const balance = (missing: number): number =>
            massBalance(
              lb((received + missing) / 100),
              out.map((weight) => lb(weight / 100)),
              lb(stock / 100),
            );
          expect(balance(0)).toBe(0);
          expect(near(inPounds(as<Kilograms>(balance(7))), 0.07, 1e-6)).toBe(
            true,
          );
          expect(balance(-7)).toBeLessThan(0);
        },
      ),
    );
  });
});

describe("late money", () => {
  const due = as<DaySerial>(46_000);
  const day = (late: number): DaySerial => as<DaySerial>(46_000 + late);

  test("bands begin and end where they say", () => {
    const bands = [0, 1, 30, 31, 60, 61, 90, 91].map((late) =>
      ageBand(due, day(late)),
    );
    expect(bands).toEqual([
      "not due",
      "1-30",
      "1-30",
      "31-60",
      "31-60",
      "61-90",
      "61-90",
      "over 90",
    ]);
  });

  test("a day later is a day later, and never in an earlier band", () => {
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 400 }), (late) => {
        const place = (n: number): number =>
          ageBands.indexOf(ageBand(due, day(n)));
        return (
          daysLate(due, day(late)) === Math.max(0, late) &&
          place(late + 1) >= place(late)
        );
      }),
    );
  });

  test("nothing owed, and a credit, are never late; half a cent of noise is nothing", () => {
    for (const balance of [0, -250, 0.000001])
      expect(daysLate(due, day(40), as<Money>(balance))).toBe(0);
    expect(daysLate(due, day(40), as<Money>(0.01))).toBe(40);
  });
});
