import fc from "fast-check";
import { CannotAnswer } from "../../../src/measures/cannot-answer";
import { as, type Brix, type Celsius } from "../../../src/measures/quantity";
import { boilingPoint } from "../../../src/trade/syrup/boiling";
import {
  brixFromDensity,
  density,
  densityInAir,
} from "../../../src/trade/syrup/density";
import { baume, brixFromBaume } from "../../../src/trade/syrup/gravity";
import { heatCapacity, heatEnergy } from "../../../src/trade/syrup/heat";
import {
  hydrometerBrix,
  hydrometerReading,
} from "../../../src/trade/syrup/hydrometer";
import {
  brixFromIndex,
  refractiveIndex,
} from "../../../src/trade/syrup/refraction";
import { viscosity } from "../../../src/trade/syrup/viscosity";
import { waterForBrix } from "../../../src/trade/syrup/water";
import { volumeOf, weightOf } from "../../../src/trade/syrup/weight";
import {
  anyBrix,
  anyCelsius,
  anyColdLitres,
  anyKilograms,
  near,
} from "../quantities";

const apart = fc.double({ min: 0.01, max: 20, noNaN: true });

describe("density", () => {
  test("denser with more sugar", () => {
    fc.assert(
      fc.property(anyBrix, apart, anyCelsius, (brix, more, t) => {
        fc.pre(brix + more <= 85);
        return density(as<Brix>(brix + more), t) > density(brix, t);
      }),
    );
  });

  test("syrup gets lighter as it warms", () => {
    // Below 5 °C thin syrup may behave like water, densest at 4 °C, and is left out.
    const warming = fc
      .double({ min: 5, max: 99, noNaN: true })
      .chain((from) =>
        fc.tuple(
          fc.constant(as<Celsius>(from)),
          fc.double({ min: from + 0.01, max: 100, noNaN: true }),
        ),
      );
    fc.assert(
      fc.property(
        anyBrix,
        warming,
        (brix, [from, to]) =>
          density(brix, as<Celsius>(to)) < density(brix, from),
      ),
    );
  });

  test("Brix comes back from density", () => {
    fc.assert(
      fc.property(
        anyBrix,
        anyCelsius,
        (brix, t) =>
          Math.abs(brixFromDensity(density(brix, t), t) - brix) < 1e-9,
      ),
    );
  });

  test("a density that no syrup has is refused", () => {
    expect(() => brixFromDensity(as(1.6))).toThrow(
      "density: 1.6000 kg/L is outside 0.9982-1.4459 kg/L, what 0-85 °Bx has at this temperature",
    );
    expect(() => density(as(86))).toThrow(CannotAnswer);
    expect(() => density(as<Brix>(66), as<Celsius>(101))).toThrow(
      "temperature: 101 °C is outside the published table, 0-100 °C",
    );
  });

  test("the scale in air shows a little less than the true mass", () => {
    fc.assert(
      fc.property(anyBrix, anyCelsius, (brix, t) => {
        const share = 1 - densityInAir(brix, t) / density(brix, t);
        return share > 0.0005 && share < 0.0012;
      }),
    );
  });
});

describe("weight and volume", () => {
  test("a volume weighs its weight again", () => {
    fc.assert(
      fc.property(anyColdLitres, anyBrix, anyCelsius, (volume, brix, t) =>
        near(volumeOf(weightOf(volume, brix, t), brix, t), volume),
      ),
    );
  });

  test("twice the volume weighs twice as much", () => {
    fc.assert(
      fc.property(anyColdLitres, anyBrix, anyCelsius, (volume, brix, t) =>
        near(weightOf(as(2 * volume), brix, t), 2 * weightOf(volume, brix, t)),
      ),
    );
  });
});

describe("readings", () => {
  test("Brix comes back from Baumé and from the refractive index", () => {
    fc.assert(
      fc.property(
        anyBrix,
        (brix) =>
          Math.abs(brixFromBaume(baume(brix)) - brix) < 1e-9 &&
          Math.abs(brixFromIndex(refractiveIndex(brix)) - brix) < 1e-7,
      ),
    );
  });

  test("Brix comes back from what a hydrometer reads", () => {
    const calibration = fc.constantFrom(as<Celsius>(140 / 9), as<Celsius>(20));
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 80, noNaN: true }),
        anyCelsius,
        calibration,
        (brix, t, mark) => {
          const reading = hydrometerReading(as(brix), t, mark, "Brix");
          return Math.abs(hydrometerBrix(as(reading), t, mark) - brix) < 1e-8;
        },
      ),
    );
  });

  test("an instrument marked for 68 °F reads true Brix at 68 °F", () => {
    expect(hydrometerReading(as(66.9), as(20), as(20), "Brix")).toBeCloseTo(
      66.9,
      9,
    );
  });

  test("a refractometer is corrected only near room temperature, and not below nothing", () => {
    expect(() => brixFromIndex(1.45, as<Celsius>(35))).toThrow(
      /temperature: 95\.0 °F is outside 50-86 °F/,
    );
    expect(() => brixFromIndex(1.3335, as<Celsius>(10))).toThrow(
      /reading: .*less than 0 °Bx/,
    );
    expect(() => brixFromIndex(1.6)).toThrow(/index: 1\.6 is outside 1\.3330-/);
    expect(brixFromIndex(1.333)).toBeCloseTo(0, 1);
    expect(() => brixFromBaume(50)).toThrow(/baume: 50 °Bé is outside 0-4/);
  });
});

describe("heat", () => {
  // An independent way: heat in small steps, trapezoids.
  test("the heat of a warming is the sum of its small steps", () => {
    fc.assert(
      fc.property(
        anyKilograms,
        anyBrix,
        anyCelsius,
        anyCelsius,
        (weight, brix, from, to) => {
          const steps = 200;
          const width = (to - from) / steps;
          let sum = 0;
          for (let i = 0; i < steps; i += 1) {
            const low = heatCapacity(brix, as(from + i * width));
            const high = heatCapacity(brix, as(from + (i + 1) * width));
            sum += (weight * width * (low + high)) / 2;
          }
          return (
            Math.abs(heatEnergy(weight, brix, from, to) - sum) <=
            1e-9 * weight * 500
          );
        },
      ),
    );
  });

  test("what warms syrup is given back when it cools", () => {
    fc.assert(
      fc.property(
        anyKilograms,
        anyBrix,
        anyCelsius,
        anyCelsius,
        (weight, brix, from, to) =>
          near(
            heatEnergy(weight, brix, from, to),
            -heatEnergy(weight, brix, to, from),
          ) || from === to,
      ),
    );
  });

  test("sweeter syrup boils hotter, and lower under thinner air", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 84, noNaN: true }),
        fc.double({ min: 70, max: 105, noNaN: true }),
        (brix, pressure) => {
          const at = boilingPoint(as(brix), as(pressure));
          return (
            boilingPoint(as(brix + 1), as(pressure)) > at &&
            boilingPoint(as(brix), as(pressure - 1)) < at
          );
        },
      ),
    );
  });

  test("syrup runs thinner as it warms and thicker as it sweetens", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 84, noNaN: true }),
        fc.double({ min: 0, max: 99, noNaN: true }),
        (brix, t) =>
          viscosity(as(brix), as(t + 1)) < viscosity(as(brix), as(t)) &&
          viscosity(as(brix + 1), as(t)) > viscosity(as(brix), as(t)),
      ),
    );
  });
});

test("water changes the weight, never the solids", () => {
  const thick = fc
    .double({ min: 1, max: 85, noNaN: true })
    .map((v) => as<Brix>(v));
  fc.assert(
    fc.property(anyKilograms, thick, thick, (weight, brix, target) =>
      near(
        (weight + waterForBrix(weight, brix, target)) * target,
        weight * brix,
      ),
    ),
  );
});
