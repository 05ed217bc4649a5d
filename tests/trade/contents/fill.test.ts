import normal from "@stdlib/stats-base-dists-normal-quantile";
import fc from "fast-check";
import { as, type Brix, type Share } from "../../../src/measures/quantity";
import { whereReaches } from "../../../src/measures/root";
import {
  type Filling,
  fillTarget,
} from "../../../src/trade/contents/fill-target";
import { headSpread } from "../../../src/trade/contents/head-spread";
import { netVolume } from "../../../src/trade/contents/net-volume";
import { overfillCost } from "../../../src/trade/contents/overfill";
import { typeHeight } from "../../../src/trade/contents/type-height";
import { densityInAir } from "../../../src/trade/syrup/density";
import { weightOf } from "../../../src/trade/syrup/weight";
import { mL } from "../../scenarios/in-pounds";
import { anyBrix, anyCelsius, near } from "../quantities";

const grams = (weight: number) => as<Kg>(weight / 1000);
type Kg = Parameters<typeof netVolume>[0]["gross"];

describe("what is in a bottle", () => {
  test("the weighing procedure of Handbook 133 gives the same errors", () => {
    // Procedure from memory, density invented; errors by an independent script: 16 fl oz at 1.329 g/mL, tare 46.2 g.
    const brix = as<Brix>(
      whereReaches((b) => densityInAir(as<Brix>(b)), 1.329, 0, 85),
    );
    const errors = [676, 674.1, 675.5].map(
      (gross) =>
        netVolume({
          gross: grams(gross),
          tare: grams(46.2),
          brix,
          temperature: as(20),
        }) *
          1000 -
        473.176,
    );
    expect(errors[0]).toBeCloseTo(0.71, 2);
    expect(errors[1]).toBeCloseTo(-0.72, 2);
    expect(errors[2]).toBeCloseTo(0.34, 2);
  });

  test("a bottle filled with a volume weighs back to it", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 4000, noNaN: true }),
        anyBrix,
        (volume, brix) => {
          const gross = as<Kg>(weightOf(mL(volume), brix) + 0.25);
          const bottle = { gross, tare: as<Kg>(0.25), brix };
          return near(
            netVolume({ ...bottle, temperature: as(20) }) * 1000,
            volume,
            1e-8,
          );
        },
      ),
    );
  });

  test("it hardly matters how warm the syrup is on the scale", () => {
    fc.assert(
      fc.property(anyBrix, anyCelsius, (brix, temperature) => {
        const bottle = { gross: grams(580), tare: grams(248), brix };
        const cold = netVolume({ ...bottle, temperature: as(20) });
        return near(netVolume({ ...bottle, temperature }), cold, 0.00006);
      }),
    );
  });

  test("an empty bottle heavier than the full one is refused", () => {
    const swapped = { gross: grams(248), tare: grams(580) };
    expect(() =>
      netVolume({ ...swapped, brix: as(66.9), temperature: as(20) }),
    ).toThrow("are gross and tare swapped?");
  });
});

describe("what to aim at", () => {
  const filling: Filling = {
    declared: mL(250),
    spread: mL(4.2),
    allowedShort: mL(9),
    risk: as<Share>(0.005),
    margin: mL(0),
  };

  test("a tight machine aims at the label, a loose one above it", () => {
    // 241 + 2.575829 × 4.2, the quantile from an independent library.
    const z = normal(0.995, 0, 1);
    expect(fillTarget(filling).target * 1000).toBeCloseTo(241 + z * 4.2, 9);
    expect(
      fillTarget({ ...filling, spread: mL(1.4) }).target * 1000,
    ).toBeCloseTo(250, 9);
  });

  test("a wider spread, a larger margin or less risk never lowers the target", () => {
    const more = fc.double({ min: 0, max: 5, noNaN: true });
    const share = fc.double({ min: 0.0001, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(more, more, share, share, (wider, margin, a, b) => {
        const [small, large] = [Math.min(a, b), Math.max(a, b)];
        const at = (change: Partial<Filling>): number =>
          fillTarget({ ...filling, ...change }).target;
        return (
          at({ spread: mL(1 + wider) }) >= at({ spread: mL(1) }) &&
          at({ margin: mL(margin) }) >= at({}) &&
          at({ risk: as<Share>(small) }) >= at({ risk: as<Share>(large) })
        );
      }),
    );
  });

  test("no spread at all asks for more bottles", () => {
    expect(() => fillTarget({ ...filling, spread: mL(0) })).toThrow(
      "weigh more bottles",
    );
  });
});

describe("head by head", () => {
  const anyBottle = fc.record({
    volume: fc.double({ min: 200, max: 300, noNaN: true }).map(mL),
    head: fc.integer({ min: 1, max: 12 }),
  });

  test("the differences, weighed by bottles, sum to nothing", () => {
    fc.assert(
      fc.property(fc.array(anyBottle, { minLength: 1 }), (bottles) => {
        const sum = headSpread(bottles).reduce(
          (total, { head, difference }) => {
            const count = bottles.filter((b) => b.head === head).length;
            return total + count * difference;
          },
          0,
        );
        return Math.abs(sum) < 1e-9;
      }),
    );
  });

  test("heads come in their order, each once, whatever the order of the bottles", () => {
    fc.assert(
      fc.property(fc.array(anyBottle, { minLength: 1 }), (bottles) => {
        const fills = headSpread(bottles);
        const heads = fills.map(({ head }) => head);
        expect(heads).toEqual(
          [...new Set(bottles.map(({ head }) => head))].sort((a, b) => a - b),
        );
        headSpread([...bottles].reverse()).forEach((fill, i) =>
          expect(fill.mean).toBeCloseTo(fills[i]?.mean ?? Number.NaN, 12),
        );
      }),
    );
  });
});

describe("giveaway", () => {
  test("as much over as short costs as much, with the other sign", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 20, noNaN: true }),
        anyBrix,
        (by, brix) => {
          const cost = (volume: number): number =>
            overfillCost(
              {
                volumes: [mL(volume)],
                declared: mL(250),
                bottles: 1200,
                brix,
              },
              as(5.73),
            );
          return near(cost(250 + by), -cost(250 - by), 1e-7);
        },
      ),
    );
  });
});

test("a larger panel never needs smaller type", () => {
  // The two lowest steps are read, the others from memory: 3/16, 1/4 and 1/2 inch above 25, 100 and 400 in².
  expect([35, 100, 101, 400, 420].map((a) => typeHeight(a).height)).toEqual([
    0.1875, 0.1875, 0.25, 0.25, 0.5,
  ]);
  const area = fc.double({ min: 0.01, max: 1000, noNaN: true });
  fc.assert(
    fc.property(
      area,
      area,
      (a, more) => typeHeight(a + more).height >= typeHeight(a).height,
    ),
  );
});
