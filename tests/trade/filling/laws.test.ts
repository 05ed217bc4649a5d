import fc from "fast-check";
import {
  as,
  type Brix,
  type Celsius,
  type Share,
} from "../../../src/measures/quantity";
import { fuelForHeat } from "../../../src/trade/filling/fuel";
import {
  coldVolume,
  hotVolume,
  shrinkage,
} from "../../../src/trade/filling/hot-volume";
import { type Kettle, kettleYield } from "../../../src/trade/filling/kettle";
import { headspace, levelDrop } from "../../../src/trade/filling/level";
import { density } from "../../../src/trade/syrup/density";
import { weightOf } from "../../../src/trade/syrup/weight";
import { anyBrix, anyCelsius, anyColdLitres, near } from "../quantities";

const hot = fc
  .double({ min: 60, max: 100, noNaN: true })
  .map((v) => as<Celsius>(v));

describe("hot and cold", () => {
  test("a hot fill cools back to the volume it was set for", () => {
    fc.assert(
      fc.property(anyColdLitres, anyBrix, anyCelsius, (volume, brix, fill) =>
        near(coldVolume(hotVolume(volume, brix, fill), brix, fill), volume),
      ),
    );
  });

  test("no mass is lost between hot and cold", () => {
    fc.assert(
      fc.property(anyColdLitres, anyBrix, anyCelsius, (volume, brix, fill) =>
        near(
          hotVolume(volume, brix, fill) * density(brix, fill),
          volume * density(brix),
        ),
      ),
    );
  });

  test("the shrinkage is the part of the hot volume that is gone", () => {
    fc.assert(
      fc.property(anyColdLitres, anyBrix, hot, (volume, brix, fill) => {
        const filled = hotVolume(volume, brix, fill);
        return near((filled - volume) / filled, shrinkage(brix, fill), 1e-7);
      }),
    );
  });

  test("hotter fills shrink more", () => {
    fc.assert(
      fc.property(
        anyBrix,
        fc.double({ min: 60, max: 98, noNaN: true }),
        (brix, t) => shrinkage(brix, as(t + 1)) > shrinkage(brix, as(t)),
      ),
    );
  });
});

describe("level and headspace", () => {
  test("the drop fills exactly the volume that is gone", () => {
    fc.assert(
      fc.property(
        anyColdLitres,
        anyBrix,
        hot,
        fc.double({ min: 5, max: 100, noNaN: true }),
        (volume, brix, fill, bore) => {
          const litres =
            (levelDrop(volume, brix, fill, as(bore)) * Math.PI * bore ** 2) /
            4 /
            1e6;
          return near(litres, hotVolume(volume, brix, fill) - volume, 1e-7);
        },
      ),
    );
  });

  test("a fill that is more than brimful has no headspace", () => {
    expect(() => headspace(as(0.25), as(0.25), as(66.9), as(85))).toThrow(
      "brimful: the fill will not fit, it is 257.5 mL hot and the container holds 250.0 mL",
    );
    expect(
      headspace(
        hotVolume(as(0.25), as(66.9), as(85)),
        as(0.25),
        as(66.9),
        as(85),
      ),
    ).toBe(0);
  });
});

describe("bottles from a kettle", () => {
  const kettle: Kettle = {
    hotVolume: as(120 * 3.785411784),
    brix: as<Brix>(66.9),
    fill: as<Celsius>(85),
    leftBehind: as(0),
    purge: as(0),
    bottle: as(0.252),
    breakage: as<Share>(0),
  };

  test("the bottles hold no more syrup than was drawn, and one more bottle would", () => {
    const anyKettle = fc.record({
      hotVolume: fc.double({ min: 50, max: 2000, noNaN: true }),
      leftBehind: fc.double({ min: 0, max: 40, noNaN: true }),
      purge: fc.double({ min: 0, max: 8, noNaN: true }),
      bottle: fc.double({ min: 0.05, max: 4, noNaN: true }),
    });
    fc.assert(
      fc.property(anyKettle, anyBrix, hot, (k, brix, fill) => {
        const given = { ...kettle, ...k, brix, fill } as Kettle;
        const drawn =
          weightOf(as(k.hotVolume - k.leftBehind), brix, fill) - k.purge;
        fc.pre(drawn > 1);
        const each = weightOf(given.bottle, brix);
        const { bottles } = kettleYield(given);
        // Buoyancy differs by a few millionths between hot and cold weighings.
        return (
          bottles * each <= drawn * 1.00005 &&
          (bottles + 1) * each > drawn * 0.99995
        );
      }),
    );
  });

  test("a kettle that gives exactly a thousand bottles gives a thousand", () => {
    const exact = {
      ...kettle,
      hotVolume: hotVolume(as(252), kettle.brix, kettle.fill),
    };
    expect(kettleYield(exact).bottles).toBe(1000);
  });

  test("leaving everything behind or purging everything is refused", () => {
    expect(() =>
      kettleYield({ ...kettle, leftBehind: kettle.hotVolume }),
    ).toThrow(/^left behind: /);
    expect(() => kettleYield({ ...kettle, purge: as(1e4) })).toThrow(
      /^purge: /,
    );
  });
});

test("half the efficiency takes twice the fuel", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 1e7, noNaN: true }),
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      (energy, efficiency) =>
        near(
          fuelForHeat(as(energy), "propane", as(efficiency / 2)),
          2 * fuelForHeat(as(energy), "propane", as(efficiency)),
        ),
    ),
  );
  expect(() => fuelForHeat(as(1), "propane", as(0))).toThrow(
    "efficiency: at 0 % no fuel would be enough",
  );
});
