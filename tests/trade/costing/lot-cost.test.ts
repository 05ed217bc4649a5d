import fc from "fast-check";
import {
  as,
  type DaySerial,
  type Kilograms,
  type MoneyPerKg,
} from "../../../src/measures/quantity";
import { KG_PER_LB } from "../../../src/measures/units";
import {
  type Lot,
  lotCost,
  lotDraws,
} from "../../../src/trade/costing/lot-cost";
import { near } from "../quantities";

const lb = (pounds: number): Kilograms => as<Kilograms>(pounds * KG_PER_LB);
const perLb = (price: number): MoneyPerKg => as<MoneyPerKg>(price / KG_PER_LB);
const lot = (received: number, pounds: number, price: number): Lot => ({
  received: as<DaySerial>(received),
  left: lb(pounds),
  price: perLb(price),
});

const anyLots = fc.array(
  fc
    .tuple(
      fc.integer({ min: 46_000, max: 46_030 }),
      fc.integer({ min: 0, max: 9000 }),
      fc.integer({ min: 180, max: 320 }),
    )
    .map(([day, pounds, price]) => lot(day, pounds, price / 100)),
  { minLength: 1, maxLength: 12 },
);
const anyPart = fc.double({ min: 0, max: 1, noNaN: true });
const stock = (lots: readonly Lot[]): number =>
  lots.reduce((sum, l) => sum + l.left, 0);

test("lots of one day are drawn in the order of their rows; used-up lots are passed over", () => {
  const lots = [
    lot(46_002, 50, 3),
    lot(46_001, 100, 2),
    lot(46_000, 0, 9),
    lot(46_001, 100, 2.5),
  ];
  // 100 × 2.00 + 20 × 2.50 = 250.
  expect(lotCost("oldest first", lb(120), lots)).toBeCloseTo(250, 9);
  // 100 × 2.00 + 100 × 2.50 + 50 × 3.00 = 600, all there is.
  expect(lotCost("oldest first", lb(250), lots)).toBeCloseTo(600, 9);
});

test("more than in stock is short by the pounds missing, at oldest first and average", () => {
  const lots = [lot(46_000, 1000, 2), lot(46_010, 500, 3)];
  for (const method of ["oldest first", "average"] as const)
    expect(() => lotCost(method, lb(1620), lots)).toThrow("short by 120 lb");
  // Replacement prices syrup still to be bought.
  expect(lotCost("replacement", lb(1620), lots)).toBeCloseTo(4860, 9);
});

test("a lot received after the day asked about is not there yet", () => {
  const lots = [lot(46_000, 1000, 2), lot(46_010, 500, 3)];
  const day = as<DaySerial>(46_009);
  expect(lotCost("replacement", lb(1), lots, day)).toBeCloseTo(2, 9);
  expect(lotCost("average", lb(900), lots, day)).toBeCloseTo(1800, 9);
  expect(() => lotCost("oldest first", lb(1100), lots, day)).toThrow(
    "short by 100 lb",
  );
  expect(() =>
    lotCost("replacement", lb(1), lots, as<DaySerial>(45_000)),
  ).toThrow(/no lot had been received/);
});

test("replacement takes the newest price though that lot is used up, the last row of one day", () => {
  const lots = [lot(46_010, 0, 3), lot(46_000, 1000, 2), lot(46_010, 0, 3.1)];
  expect(lotCost("replacement", lb(100), lots)).toBeCloseTo(310, 9);
});

test("all the stock costs the same oldest first and at average", () => {
  fc.assert(
    fc.property(anyLots, (lots) => {
      const all = as<Kilograms>(stock(lots));
      return near(
        lotCost("oldest first", all, lots),
        lotCost("average", all, lots),
        1e-9,
      );
    }),
  );
});

test("oldest first draws exactly the weight, each lot at most once, between the cheapest and the dearest pound", () => {
  fc.assert(
    fc.property(anyLots, anyPart, (lots, part) => {
      fc.pre(stock(lots) > 0);
      const weight = as<Kilograms>(stock(lots) * part);
      const draws = lotDraws("oldest first", weight, lots);
      const held = lots.filter((l) => l.left > 0).map((l) => l.price);
      const cost = lotCost("oldest first", weight, lots);
      expect(draws.length).toBeLessThanOrEqual(held.length);
      expect(
        near(
          draws.reduce((sum, d) => sum + d.weight, 0),
          weight,
          1e-9,
        ),
      ).toBe(true);
      expect(cost).toBeGreaterThanOrEqual(
        weight * Math.min(...held) * (1 - 1e-9),
      );
      expect(cost).toBeLessThanOrEqual(weight * Math.max(...held) * (1 + 1e-9));
    }),
  );
});

test("where every lot was dearer than the one before, oldest first ≤ average ≤ replacement", () => {
  fc.assert(
    fc.property(anyLots, anyPart, (lots, part) => {
      fc.pre(stock(lots) > 0);
      const rising = lots.map((l, i) => ({
        ...l,
        received: as<DaySerial>(46_000 + i),
        price: perLb(2 + i / 10),
      }));
      const weight = as<Kilograms>(stock(rising) * part);
      const cost = (["oldest first", "average", "replacement"] as const).map(
        (method) => lotCost(method, weight, rising),
      );
      const [oldest = 0, average = 0, replacement = 0] = cost;
      const slack = replacement * 1e-9;
      expect(oldest).toBeLessThanOrEqual(average + slack);
      expect(average).toBeLessThanOrEqual(replacement + slack);
    }),
  );
});

test("replacement cost goes in a straight line with the price and with the weight", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 9, noNaN: true }),
      fc.double({ min: 0, max: 1e5, noNaN: true }),
      (price, pounds) => {
        const at = (p: number, w: number): number =>
          lotCost("replacement", lb(w), [lot(46_000, 1, p)]);
        return (
          near(at(2 * price, pounds), 2 * at(price, pounds)) &&
          near(at(price, 3 * pounds), 3 * at(price, pounds))
        );
      },
    ),
  );
});

test("ten thousand lots are drawn lot by lot, each once", () => {
  const lots = Array.from({ length: 10_000 }, (_, i) =>
    lot(46_000 + ((i * 7919) % 10_000), 1, 2 + (i % 50) / 100),
  );
  const draws = lotDraws("oldest first", lb(10_000), lots);
  expect(draws).toHaveLength(10_000);
  // 2.00 to 2.49 in equal numbers: 2.245 on average.
  expect(lotCost("oldest first", lb(10_000), lots)).toBeCloseTo(22_450, 6);
});
