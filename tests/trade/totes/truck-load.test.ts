import fc from "fast-check";
import { as, type Kilograms } from "../../../src/measures/quantity";
import { KG_PER_LB } from "../../../src/measures/units";
import {
  type FilledTote,
  truckFit,
  truckLoad,
} from "../../../src/trade/totes/truck-load";

const lb = (pounds: number): Kilograms => as<Kilograms>(pounds * KG_PER_LB);
const limits = (payload: number, spots?: number, axles?: number) => ({
  payload: lb(payload),
  axles: axles === undefined ? undefined : lb(axles),
  spots,
});
const tote = (name: string, gross: number, plate?: number): FilledTote => ({
  name,
  gross: lb(gross),
  plateLimit: plate === undefined ? undefined : lb(plate),
});

describe("how many totes fit on a truck?", () => {
  test.each([
    // Hand arithmetic: 44,000 ÷ 3,047 = 14.44; 20 places.
    [
      "weight binds, not the floor",
      3047,
      limits(44_000, 20),
      14,
      ["the truck's limit"],
    ],
    // 44,000 ÷ 2,200 = 20 exactly, and 20 places: both stop the next.
    [
      "both at once",
      2200,
      limits(44_000, 20),
      20,
      ["the truck's limit", "the floor"],
    ],
    ["a floor for ten", 3047, limits(44_000, 10), 10, ["the floor"]],
    // 30,000 ÷ 3,047 = 9.85.
    [
      "axles full before",
      3047,
      limits(44_000, 20, 30_000),
      9,
      ["the axle limit"],
    ],
    ["none at all", 3047, limits(3000), 0, ["the truck's limit"]],
  ])("%s", (_, gross, of, totes, binds) => {
    expect(truckFit(lb(gross), of)).toMatchObject({ totes, binds });
  });

  test("law: what fits is never over, and one more always is", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1000, max: 4000 }),
        fc.integer({ min: 1000, max: 60_000 }),
        fc.integer({ min: 1, max: 30 }),
        (gross, payload, spots) => {
          const { totes } = truckFit(lb(gross), limits(payload, spots));
          const load = (count: number) =>
            truckLoad(
              Array.from({ length: count }, (_, i) => tote(`T-${i}`, gross)),
              limits(payload, spots),
            ).over;
          expect(load(totes)).toEqual([]);
          expect(load(totes + 1)).not.toEqual([]);
        },
      ),
    );
  });
});

describe("do the chosen totes ride?", () => {
  // Source: tote_shipments.csv, T-042 to T-044: 3,056, 3,009 and 3,047 lb gross.
  const three = [tote("T-042", 3056), tote("T-043", 3009), tote("T-044", 3047)];

  test("their gross weights are added up, and what is left is said", () => {
    const load = truckLoad(three, limits(44_000, 20));
    // Hand arithmetic: 3,056 + 3,009 + 3,047 = 9,112; 44,000 less that is 34,888.
    expect(load.gross / KG_PER_LB).toBeCloseTo(9112, 9);
    expect(load.left / KG_PER_LB).toBeCloseTo(34_888, 9);
    expect(load).toMatchObject({ totes: 3, spotsLeft: 17, over: [] });
    expect(load.riding).toEqual(["T-042", "T-043", "T-044"]);
  });

  test("over the limit: by how much, and which still ride in the order given", () => {
    const load = truckLoad(three, limits(9000, 2));
    expect(load.left / KG_PER_LB).toBeCloseTo(-112, 9);
    expect(load).toMatchObject({
      spotsLeft: -1,
      over: ["the truck's limit", "the floor"],
      riding: ["T-042", "T-043"],
    });
  });

  test("a tote above its own plate stops the load; at the plate it rides", () => {
    expect(() =>
      truckLoad([tote("T-042", 3056, 3000)], limits(44_000)),
    ).toThrow(
      "T-042: 3,056 lb is above the 3,000 lb on the tote's plate; draw off 56 lb and weigh again",
    );
    expect(
      truckLoad([tote("T-042", 3056, 3056)], limits(44_000)).plateUnknown,
    ).toEqual([]);
  });

  test("a plate nobody has read is asked about, never assumed", () => {
    expect(
      truckLoad(
        [tote("T-042", 3056, 3300), tote("T-043", 3009)],
        limits(44_000),
      ).plateUnknown,
    ).toEqual(["T-043"]);
  });
});
