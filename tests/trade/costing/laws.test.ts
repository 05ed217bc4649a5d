import fc from "fast-check";
import {
  as,
  type ColdLitres,
  type DaySerial,
  type Kilograms,
  type KgPerLitre,
  type Money,
  type MoneyPerHour,
  type MoneyPerKg,
  type PerHour,
  type Seconds,
  type Share,
} from "../../../src/measures/quantity";
import { agedParts, agedPrice } from "../../../src/trade/costing/aged";
import { bestBuy, breakPrice } from "../../../src/trade/costing/breaks";
import { costTotal } from "../../../src/trade/costing/cost-total";
import { piecesToDraw } from "../../../src/trade/costing/draw";
import { laborPerBottle, loadedWage } from "../../../src/trade/costing/labor";
import { landedPrice, usablePrice } from "../../../src/trade/costing/landed";
import { priceOn } from "../../../src/trade/costing/price-list";
import { syrupPerBottle } from "../../../src/trade/costing/syrup-per-bottle";
import { near } from "../quantities";

const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });
const anyShare = between(0, 0.9).map((v) => as<Share>(v));

const anyBreaks = fc.uniqueArray(
  fc.record({
    from: fc.integer({ min: 1, max: 20_000 }),
    price: fc.integer({ min: 1, max: 400 }).map((c) => as<Money>(c / 100)),
  }),
  { minLength: 1, maxLength: 6, selector: (b) => b.from },
);

describe("pieces", () => {
  test("the draw is whole cartons, enough, and not a carton too many", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 50_000 }),
        fc.constantFrom(1, 2, 1 / 12, 1 / 6),
        anyShare,
        fc.constantFrom(1, 12, 24, 250),
        (bottles, perBottle, spoilage, carton) => {
          const drawn = piecesToDraw({ bottles, perBottle, spoilage, carton });
          const good = (pieces: number): number => pieces * (1 - spoilage);
          const need = bottles * perBottle;
          // Within a millionth of a carton the need counts as met.
          const slack = carton * 1e-6;
          expect(drawn % carton).toBe(0);
          expect(good(drawn)).toBeGreaterThanOrEqual(need - slack);
          expect(good(drawn - carton)).toBeLessThan(need + slack);
        },
      ),
    );
  });

  test("a hundred cases of twelve for 1,200 bottles, whatever 1/12 is in binary", () => {
    const draw = { perBottle: 1 / 12, spoilage: as<Share>(0), carton: 1 };
    for (let cases = 1; cases <= 2000; cases += 1)
      expect(piecesToDraw({ ...draw, bottles: cases * 12 })).toBe(cases);
  });

  test("spoiling everything is refused", () => {
    const all = {
      bottles: 10,
      perBottle: 1,
      spoilage: as<Share>(1),
      carton: 1,
    };
    expect(() => piecesToDraw(all)).toThrow(/spoilage: 100 %/);
  });
});

describe("price breaks", () => {
  test("the price is that of the highest break reached, in whatever order they stand", () => {
    fc.assert(
      fc.property(
        anyBreaks,
        fc.integer({ min: 1, max: 30_000 }),
        (breaks, pieces) => {
          // Another way to the same price: step down from the quantity until a break is met.
          const reached = breaks.filter((b) => b.from <= pieces);
          fc.pre(reached.length > 0);
          const highest = Math.max(...reached.map((b) => b.from));
          const wanted = breaks.find((b) => b.from === highest)?.price;
          expect(breakPrice(pieces, breaks)).toBe(wanted);
        },
      ),
    );
  });

  test("buying up never costs more than buying just enough, and no whole carton is cheaper", () => {
    fc.assert(
      fc.property(
        anyBreaks,
        fc.integer({ min: 1, max: 2000 }),
        fc.constantFrom(1, 12, 250),
        (breaks, need, carton) => {
          const best = bestBuy(need, breaks, carton);
          expect(best.saving).toBeGreaterThanOrEqual(0);
          expect(best.buy).toBeGreaterThanOrEqual(need);
          expect(best.leftOver).toBe(best.buy - need);
          expect(near(best.total, best.buy * best.price)).toBe(true);
          const first = Math.min(...breaks.map((b) => b.from));
          let cheapest = Infinity;
          for (
            let buy = Math.ceil(need / carton) * carton;
            buy < 24_000;
            buy += carton
          )
            if (buy >= first)
              cheapest = Math.min(cheapest, buy * breakPrice(buy, breaks));
          expect(best.total).toBeLessThanOrEqual(cheapest + 1e-6);
        },
      ),
      { numRuns: 25 },
    );
  });

  test("below the first break the minimum order is named; two prices from one quantity are refused", () => {
    const breaks = [
      { from: 2016, price: as<Money>(1.21) },
      { from: 504, price: as<Money>(1.42) },
    ];
    expect(() => breakPrice(500, breaks)).toThrow("minimum order is 504");
    const twice = [...breaks, { from: 504, price: as<Money>(1.4) }];
    expect(() => breakPrice(600, twice)).toThrow("breaks: two prices from 504");
    expect(() => breakPrice(600, [])).toThrow("needs breaks");
  });

  test("a need below the minimum order buys the minimum in whole cartons", () => {
    const breaks = [{ from: 500, price: as<Money>(2) }];
    // 500 up to cartons of 24 is 21 × 24 = 504.
    expect(bestBuy(10, breaks, 24)).toEqual({
      buy: 504,
      price: 2,
      total: 1008,
      leftOver: 494,
      saving: 0,
    });
  });
});

describe("syrup and labour", () => {
  test("what is drawn less what is lost is what stays in the bottle", () => {
    fc.assert(
      fc.property(between(0.01, 4), between(1, 1.4), anyShare, (v, d, loss) => {
        const volume = as<ColdLitres>(v);
        const density = as<KgPerLitre>(d);
        return near(syrupPerBottle(volume, density, loss) * (1 - loss), v * d);
      }),
    );
  });

  test("the money paid for a lot is all carried by the pounds that can be packed", () => {
    fc.assert(
      fc.property(
        between(100, 50_000),
        between(0, 1e5),
        between(0, 500),
        between(0, 0.1),
        between(0, 5),
        (net, syrup, freight, filter, heel) => {
          const purchase = {
            net: as<Kilograms>(net),
            syrup: as<Money>(syrup),
            freight: as<Money>(freight),
            tests: as<Money>(0),
          };
          const losses = {
            net: purchase.net,
            filterLoss: as<Share>(filter),
            heel: as<Kilograms>(heel),
          };
          const usable = net * (1 - filter) - heel;
          return near(
            usablePrice(landedPrice(purchase), losses) * usable,
            syrup + freight,
          );
        },
      ),
    );
  });

  test("losses that leave nothing to pack are refused", () => {
    const losses = {
      net: as<Kilograms>(45.359237),
      filterLoss: as<Share>(0.5),
      heel: as<Kilograms>(30),
    };
    expect(() => usablePrice(as<MoneyPerKg>(5), losses)).toThrow(
      "they leave nothing of 100 lb",
    );
  });

  test("the crew is paid once: all bottles together carry the run's hours", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20_000 }),
        between(100, 3000),
        between(0, 4 * 3600),
        (bottles, rate, change) => {
          const { change: once, running } = laborPerBottle(
            as<MoneyPerHour>(96.76),
            {
              bottles,
              rate: as<PerHour>(rate),
              setup: as<Seconds>(change / 2),
              clean: as<Seconds>(change / 2),
            },
          );
          const hours = change / 3600 + bottles / rate;
          return near((once + running) * bottles, 96.76 * hours);
        },
      ),
    );
  });

  test("hours paid but not worked make the worked hour dearer", () => {
    const wage = as<MoneyPerHour>(20);
    // 20 × 1.2 ÷ 0.96 = 25.
    expect(loadedWage(wage, as<Share>(0.2), as<Share>(0.04))).toBeCloseTo(25);
    expect(() => loadedWage(wage, as<Share>(0), as<Share>(1))).toThrow(/idle/);
  });
});

describe("lists and totals", () => {
  const day = (n: number): DaySerial => as<DaySerial>(46_000 + n);
  const prices = [
    { item: "CAP-28", from: day(100), price: as<Money>(0.12) },
    { item: "CAP-28", from: day(10), price: as<Money>(0.1) },
    { item: "BTL-250", from: day(0), price: as<Money>(1.42) },
  ];

  test("a price holds from its day until a later one holds", () => {
    expect(priceOn("cap-28 ", day(99), prices).price).toBe(0.1);
    expect(priceOn("CAP-28", day(100), prices).price).toBe(0.12);
    expect(priceOn("CAP-28", day(5000), prices).price).toBe(0.12);
  });

  test("no price yet, no such item and two prices from one day are told apart", () => {
    expect(() => priceOn("CAP-28", day(9), prices)).toThrow(
      "no price for CAP-28 on or before 2025-12-18",
    );
    expect(() => priceOn("CORK", day(9), prices)).toThrow(
      "no price for CORK in the list",
    );
    const twice = [...prices, { ...prices[1]!, price: as<Money>(0.2) }];
    expect(() => priceOn("CAP-28", day(50), twice)).toThrow(
      "prices: CAP-28 has two prices from 2025-12-19",
    );
  });

  test("a part without an amount withholds the total and is named", () => {
    const parts = [
      { name: "syrup", amount: as<Money>(1.91) },
      { name: "caps", amount: undefined },
      { name: "labels", amount: undefined },
      { name: undefined, amount: undefined },
    ];
    expect(() => costTotal(parts)).toThrow("needs caps, labels");
    expect(costTotal(parts.slice(0, 1))).toBe(1.91);
    expect(() =>
      costTotal([{ name: undefined, amount: as<Money>(3) }]),
    ).toThrow("the amount 3 has no name beside it");
  });

  test("the parts of an aged barrel add up to its price, by what comes out", () => {
    const aging = {
      syrup: as<Money>(1430),
      out: as<Kilograms>(250),
      barrel: as<Money>(165),
      resale: as<Money>(45),
      fills: 2,
      months: 8,
      storagePerMonth: as<Money>(5),
      moneyRatePerYear: as<Share>(0.09),
    };
    // 1,430 + 60 + 40 + 85.80 = 1,615.80; ÷ 250 = 6.4632.
    expect(agedParts(aging).money).toBeCloseTo(85.8, 9);
    expect(agedPrice(aging)).toBeCloseTo(6.4632, 9);
    expect(() => agedParts({ ...aging, resale: as<Money>(170) })).toThrow(
      /resale: 170 is more than/,
    );
  });
});
