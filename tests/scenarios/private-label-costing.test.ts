import {
  as,
  type Money,
  type MoneyPerHour,
  type Share,
} from "../../src/measures/quantity";
import {
  bottleCost,
  type BottleFacts,
} from "../../src/trade/costing/bottle-cost";
import { channelPrice } from "../../src/trade/pricing/channel-price";
import { money, perLb } from "./in-pounds";
import { privateLabelFacts as run } from "./private-label-facts";

const share = (value: number): Share => as<Share>(value);

function costOf(facts: BottleFacts) {
  const cost = bottleCost(facts);
  const total = cost.direct.replacement;
  if (total === undefined)
    throw new Error(`withheld for ${cost.missing.join(", ")}`);
  const part = (name: string): number =>
    (cost.parts.find((p) => p.name === name)?.perBottle ?? Number.NaN) *
    facts.bottles;
  return { ...cost, run: total * facts.bottles, each: total, part };
}

describe("1,200 of the private label, with whole pieces", () => {
  const cost = costOf(run(1200, 2));

  test.each([
    ["Syrup in the bottle", 2294.86], // 252.2 × 11.04 ÷ 3,785.41 = 0.735531 lb × 2.60 × 1,200
    ["Start and purge syrup", 28.6], // 11 × 2.60
    ["Freight in", 241], // 185 + 28 + 28
    ["Crew", 249.96], // 96.76 × (55/60 + 1,200/720)
    ["Heat and power", 4.68], // (893.64 × 125 × 0.66 + 14,000 × 2.5833) ÷ 0.68 ÷ 91,500 × 2.65
  ])("%s comes to %d, as in the example", (name, amount) => {
    expect(cost.part(name)).toBeCloseTo(amount, 2);
  });

  test("whole caps, bands, cases and case labels add 1.70 to the example's 2,790.10", () => {
    // 1,210 − 1,209.677 caps × 0.115 = 0.0371; 1,225 − 1,224.490 bands × 0.034 = 0.0173;
    // 102 − 101.010 cases × 1.62 = 1.6036; 207 − 206.186 case labels × 0.052 = 0.0423; together 1.7004.
    expect(cost.part("Materials")).toBeCloseTo(2790.1036 + 1.7004, 3);
  });

  test("5,610.90, which is the example's 5,609.20 and those 1.70", () => {
    expect(cost.run).toBeCloseTo(5610.9, 2);
    expect(cost.each).toBeCloseTo(4.6743 + 1.7004 / 1200, 4);
  });

  test("at 7.20 the direct margin is 35.1 %; a goal of 32 % with 0.5 % of returns asks for 6.93", () => {
    const priced = channelPrice(
      {
        name: "Private label",
        goal: share(0.32),
        shares: share(0.005),
        fixedPerBottle: money(0),
        price: money(7.2),
      },
      cost.full.replacement,
      cost.direct.replacement,
      money(0.93),
    );
    expect(priced.directMargin).toBeCloseTo(0.351, 3); // (7.20 − 4.6757) ÷ 7.20 = 35.06 %
    // 4.6757 ÷ 0.675 = 6.9270, a fifth of a cent above the example's 6.9249.
    expect(priced.goalPrice).toBe(6.93);
    expect(priced.underGoal).toBe(false);
  });

  test("bulk 10 ¢ a pound dearer adds 89.36 to the run", () => {
    // 0.735531 × 1,200 + 11 = 893.637 lb × 0.10.
    const dearer = costOf({ ...run(1200, 2), bulkPrice: perLb(2.7) });
    expect(dearer.run - cost.run).toBeCloseTo(89.36, 2);
  });
});

describe("600 of the private label, with whole pieces", () => {
  const cost = costOf(run(600, 1));

  test("1,000 of each label are bought where 619 are needed", () => {
    const labels = cost.materials.filter(({ part }) => /labels$/.test(part));
    const [front, back] = labels;
    // 1,000 × 0.29 = 290 beats 750 × 0.41 = 307.50; 1,000 × 0.24 = 240 beats 750 × 0.33 = 247.50.
    expect([front?.pieces, front?.cost, front?.buysUp]).toEqual([
      1000,
      expect.closeTo(290, 9),
      true,
    ]);
    expect([back?.pieces, back?.cost, back?.buysUp]).toEqual([
      1000,
      expect.closeTo(240, 9),
      true,
    ]);
  });

  test("3,183.69, which is the example's 3,182.793 before rounding and 0.893 of whole pieces", () => {
    // The example's lines to a hundredth of a cent: 1,147.4283 + 28.60 + 869.04 + 69.5565 + 20.8163 + 530 + 81.8182 + 5.3608
    // + 1.26 + 15.95 + 241 + 169.33 + 2.6327 = 3,182.7928, and on top of them
    // 605 − 604.839 caps × 0.115 = 0.0185; 613 − 612.245 bands × 0.034 = 0.0257; 51 − 50.505 cases × 1.62 = 0.8018;
    // 104 − 103.093 case labels × 0.052 = 0.0472; together 0.8932.
    expect(cost.run).toBeCloseTo(3183.69, 2);
    expect(cost.each).toBeCloseTo(5.3047 + 0.8932 / 600, 4);
    expect(cost.part("Crew")).toBeCloseTo(169.33, 2); // 96.76 × 1.75
    expect(cost.part("Heat and power")).toBeCloseTo(2.63, 2); // (452.32 × 82.5 + 24,500) ÷ 62,220 × 2.65
  });
});

describe("what is missing withholds the cost and is named", () => {
  const missing = (facts: BottleFacts) => {
    const cost = bottleCost(facts);
    expect(cost.direct.replacement).toBeUndefined();
    expect(cost.full.replacement).toBeUndefined();
    expect(cost.perCase.replacement).toBeUndefined();
    return cost.missing;
  };

  test("a part without a price", () => {
    const facts = run(1200, 2);
    const materials = facts.materials.map((m) =>
      m.part === "caps" ? { ...m, breaks: [] } : m,
    );
    expect(missing({ ...facts, materials })).toEqual(["a price for caps"]);
  });

  test("a part that no list holds, and a product without any part", () => {
    expect(missing({ ...run(1200, 2), unknownParts: ["CORK-9"] })).toEqual([
      "CORK-9 in Parts",
    ]);
    expect(missing({ ...run(1200, 2), materials: [] })).toEqual([
      "any material",
    ]);
  });

  test("the bulk price, the Brix, the crew's wages, the energy figures", () => {
    const facts = run(1200, 2);
    expect(missing({ ...facts, bulkPrice: undefined })).toEqual([
      "a bulk price for Amber",
    ]);
    expect(missing({ ...facts, brix: undefined })).toContain(
      "a Brix, as no Amber lot is in stock",
    );
    const unpaid = facts.lines.map((line) => ({
      ...line,
      crew: as<MoneyPerHour>(0),
    }));
    expect(missing({ ...facts, lines: unpaid })).toContain(
      "a line with its crew and wages",
    );
    expect(missing({ ...facts, heating: undefined })).toHaveLength(1);
  });

  test("an overhead that nothing shares out leaves the direct cost standing", () => {
    const cost = bottleCost({
      ...run(1200, 2),
      overheads: [
        {
          item: "Insurance",
          perYear: 3100 as Money,
          toBulk: share(0),
          driver: "square feet",
        },
      ],
    });
    expect(cost.missing).toEqual(["what shares out Insurance"]);
    expect(cost.direct.replacement).toBeCloseTo(5610.9 / 1200, 4);
    expect(cost.full.replacement).toBeUndefined();
  });
});
