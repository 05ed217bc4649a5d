import fc from "fast-check";
import { as, type Money, type Share } from "../../../src/measures/quantity";
import { breakPrice } from "../../../src/trade/costing/breaks";
import {
  type Material,
  materialCost,
} from "../../../src/trade/costing/material-cost";

const labels: Material = {
  part: "LBL-PL-F",
  needed: 600,
  spoilage: as<Share>(0.03),
  carton: 250,
  minimumOrder: 250,
  bought: "for each run",
  freight: as<Money>(28),
  breaks: [
    { from: 250, price: as<Money>(0.58) },
    { from: 500, price: as<Money>(0.41) },
    { from: 1000, price: as<Money>(0.29) },
    { from: 2500, price: as<Money>(0.2) },
  ],
};

describe("a part bought for the run", () => {
  test("619 labels are bought as 1,000, which cost less than 750", () => {
    // 600 ÷ 0.97 = 618.6; 750 × 0.41 = 307.50 against 1,000 × 0.29 = 290.
    expect(materialCost(labels)).toEqual({
      part: "LBL-PL-F",
      drawn: 750,
      pieces: 1000,
      cost: expect.closeTo(290, 9),
      freight: 28,
      buysUp: true,
    });
  });

  test("485 labels are bought as the two rolls they are", () => {
    // 480 ÷ 0.97 = 494.8; 500 × 0.41 = 205 against 1,000 × 0.29 = 290.
    expect(materialCost({ ...labels, needed: 480 })).toMatchObject({
      pieces: 500,
      cost: expect.closeTo(205, 9),
      buysUp: false,
    });
  });

  test("a private label for a few bottles pays the minimum order", () => {
    expect(
      materialCost({
        ...labels,
        needed: 20,
        breaks: labels.breaks.slice(0, 1),
      }),
    ).toMatchObject({ pieces: 250, cost: expect.closeTo(145, 9) }); // 250 × 0.58
  });

  test("a minimum order made up to whole cartons is not bought up to a break", () => {
    // 500 up to cartons of 12 is 504; 504 × 1.42 = 715.68 against 2,016 × 1.21 = 2,439.36.
    const bottles: Material = {
      ...labels,
      part: "BTL-250",
      needed: 100,
      carton: 12,
      minimumOrder: 500,
      breaks: [
        { from: 500, price: as<Money>(1.42) },
        { from: 2016, price: as<Money>(1.21) },
      ],
    };
    expect(materialCost(bottles)).toMatchObject({
      pieces: 504,
      cost: expect.closeTo(715.68, 9),
      buysUp: false,
    });
  });

  test("without freight entered there is none, without a price no cost", () => {
    expect(materialCost({ ...labels, freight: undefined })?.freight).toBe(0);
    expect(materialCost({ ...labels, breaks: [] })).toBeUndefined();
  });
});

describe("a part from stock", () => {
  const caps: Material = {
    ...labels,
    part: "CAP-28",
    needed: 1200,
    spoilage: as<Share>(0.008),
    carton: 2500,
    minimumOrder: 2500,
    bought: "from stock",
    freight: as<Money>(38),
    breaks: [
      { from: 2500, price: as<Money>(0.115) },
      { from: 10_000, price: as<Money>(0.088) },
    ],
  };

  test("1,210 caps are charged as drawn, at the price of the 2,500 they came in, without freight", () => {
    // 1,200 ÷ 0.992 = 1,209.7; 1,210 × 0.115 = 139.15.
    expect(materialCost(caps)).toEqual({
      part: "CAP-28",
      drawn: 1210,
      pieces: 1210,
      cost: expect.closeTo(139.15, 9),
      freight: 0,
      buysUp: false,
    });
  });

  test("the price is that of the minimum order, where it reaches past the first break", () => {
    // 102 cases came in an order of 500, so at 1.62: 165.24, not at 2.05.
    const cases: Material = {
      ...caps,
      part: "CTN-12G",
      needed: 100,
      spoilage: as<Share>(0.01),
      minimumOrder: 500,
      breaks: [
        { from: 100, price: as<Money>(2.05) },
        { from: 500, price: as<Money>(1.62) },
      ],
    };
    expect(materialCost(cases)).toMatchObject({
      pieces: 102,
      cost: expect.closeTo(165.24, 9),
    });
  });

  test("12,000 caps reach the price of 10,000", () => {
    // 12,000 ÷ 0.992 = 12,096.8; 12,097 × 0.088 = 1,064.536.
    expect(materialCost({ ...caps, needed: 12_000 })).toMatchObject({
      pieces: 12_097,
      cost: expect.closeTo(1064.536, 9),
    });
  });
});

const anyBreaks = fc.uniqueArray(
  fc.record({
    from: fc.integer({ min: 1, max: 5000 }),
    price: fc.integer({ min: 1, max: 400 }).map((c) => as<Money>(c / 100)),
  }),
  { minLength: 1, maxLength: 5, selector: (b) => b.from },
);
const anyMaterial: fc.Arbitrary<Material> = fc.record({
  part: fc.constant("part"),
  needed: fc.integer({ min: 1, max: 4000 }),
  spoilage: fc.integer({ min: 0, max: 30 }).map((p) => as<Share>(p / 100)),
  carton: fc.constantFrom(1, 12, 25, 250),
  minimumOrder: fc.integer({ min: 0, max: 1500 }),
  bought: fc.constantFrom("for each run" as const, "from stock" as const),
  freight: fc.constantFrom(undefined, as<Money>(28)),
  breaks: anyBreaks,
});

test("what a run pays for a part is the least of all the orders it could place", () => {
  fc.assert(
    fc.property(anyMaterial, (material) => {
      const cost = materialCost({ ...material, bought: "for each run" });
      const { carton, breaks, needed, spoilage, minimumOrder } = material;
      const first = Math.min(...breaks.map(({ from }) => from));
      // Beyond the last break more pieces only cost more.
      const enough =
        Math.max(needed / (1 - spoilage), minimumOrder, 5000) + 2 * carton;
      let least = Infinity;
      for (let order = carton; order <= enough; order += carton) {
        const good = order * (1 - spoilage) >= needed - carton * 1e-6;
        if (!good || order < minimumOrder || order < first) continue;
        least = Math.min(least, order * breakPrice(order, breaks));
      }
      expect(cost?.cost).toBeCloseTo(least, 6);
      expect((cost?.pieces ?? 0) % carton).toBe(0);
    }),
    { numRuns: 200 },
  );
});

test("a part from stock is charged for every piece drawn and no more", () => {
  fc.assert(
    fc.property(anyMaterial, (material) => {
      const cost = materialCost({ ...material, bought: "from stock" });
      const prices = material.breaks.map(({ price }) => price);
      const pieces = cost?.pieces ?? 0;
      const need = material.needed / (1 - material.spoilage);
      expect(pieces).toBeGreaterThanOrEqual(need - 1e-6);
      expect(pieces).toBeLessThan(need + 1);
      expect(cost?.cost).toBeGreaterThanOrEqual(
        pieces * Math.min(...prices) - 1e-9,
      );
      expect(cost?.cost).toBeLessThanOrEqual(
        pieces * Math.max(...prices) + 1e-9,
      );
      expect(cost?.freight).toBe(0);
    }),
  );
});

test("whether it buys up: there is a smaller order that would do and would cost more", () => {
  fc.assert(
    fc.property(anyMaterial, (material) => {
      const cost = materialCost({ ...material, bought: "for each run" });
      const { carton, breaks, minimumOrder } = material;
      const first = Math.min(...breaks.map(({ from }) => from));
      const enough =
        Math.ceil(Math.max(cost?.drawn ?? 0, minimumOrder, first) / carton) *
        carton;
      const smaller = enough * breakPrice(enough, breaks);
      expect(cost?.buysUp).toBe(smaller > (cost?.cost ?? 0) + 1e-9);
    }),
    { numRuns: 300 },
  );
});
