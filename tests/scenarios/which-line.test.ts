import {
  as,
  type MoneyPerHour,
  type PerHour,
  type Seconds,
  type Share,
} from "../../src/measures/quantity";
import { laborPerBottle, loadedWage } from "../../src/trade/costing/labor";
import { syrupCost } from "../../src/trade/costing/syrup-per-bottle";
import { crossover, type RunCost } from "../../src/trade/lines/crossover";
import { lineLimit, lineRate } from "../../src/trade/lines/line-rate";
import { lb, money, perLb } from "./in-pounds";

interface Line {
  readonly wages: number;
  readonly minutes: number;
  readonly purge: number;
  readonly rate: PerHour;
}

const rateOf = (
  count: number,
  fill: number,
  handling: number,
  running: number,
  station: string,
  other: number,
): PerHour =>
  lineRate(
    {
      count,
      fill: as<Seconds>(fill),
      handling: as<Seconds>(handling),
      running: as<Share>(running),
    },
    [{ name: station, rate: as<PerHour>(other) }],
  );

const smallPair: Line = {
  wages: 24 + 21 + 2 * 18.5,
  minutes: 55,
  purge: 11,
  rate: rateOf(8, 12, 10, 0.78, "cap bench", 720),
};
const bigLine: Line = {
  wages: 26 + 24 + 21 + 2 * 18.5,
  minutes: 225,
  purge: 60,
  rate: rateOf(12, 14, 3, 0.85, "labeller", 2400),
};

const crewOf = ({ wages }: Line): MoneyPerHour =>
  loadedWage(as<MoneyPerHour>(wages), as<Share>(0.18), as<Share>(0));

function costOf(line: Line, bulkPrice = 2.6): RunCost {
  const { change, running } = laborPerBottle(crewOf(line), {
    bottles: 1,
    rate: line.rate,
    setup: as<Seconds>(line.minutes * 60),
    clean: as<Seconds>(0),
  });
  return {
    fixed: money(change + syrupCost(lb(line.purge), perLb(bulkPrice))),
    each: running,
  };
}

const atRun = ({ fixed, each }: RunCost, bottles: number): number =>
  fixed + each * bottles;

describe("which line for 1,200 bottles, and for 9,000?", () => {
  const small = costOf(smallPair);
  const big = costOf(bigLine);

  test("the small pair makes 720 an hour because of the cap bench, the big line 2,160 at its heads", () => {
    expect(smallPair.rate).toBe(720);
    expect(bigLine.rate).toBeCloseTo(2160, 9);
    expect(
      lineLimit(
        {
          count: 8,
          fill: as<Seconds>(12),
          handling: as<Seconds>(10),
          running: as<Share>(0.78),
        },
        [{ name: "cap bench", rate: as<PerHour>(720) }],
      ),
    ).toBe("cap bench");
  });

  test("the crews cost 96.76 and 127.44 an hour", () => {
    expect(crewOf(smallPair)).toBeCloseTo(96.76, 9);
    expect(crewOf(bigLine)).toBeCloseTo(127.44, 9);
  });

  test("117.30 and 633.90 once a run, 13.44 ¢ and 5.90 ¢ a bottle", () => {
    // 55/60 × 96.76 + 11 × 2.60 = 88.70 + 28.60; 225/60 × 127.44 + 60 × 2.60 = 477.90 + 156.
    expect(small.fixed).toBeCloseTo(117.3, 2);
    expect(big.fixed).toBeCloseTo(633.9, 9);
    expect(small.each).toBeCloseTo(0.134389, 6);
    expect(big.each).toBeCloseTo(0.059, 9);
  });

  test("the big line pays from 6,853 bottles, 572 cases", () => {
    // 516.60 ÷ 0.075389 = 6,852.5.
    const from = crossover(small, big);
    expect(from).toBe(6853);
    expect(Math.ceil(from / 12)).toBe(572);
  });

  test("at 1,200 the small pair saves 426.14; at 9,000 the big line saves 161.90", () => {
    // 704.70 − 278.56; 1,326.80 − 1,164.90.
    expect(atRun(big, 1200) - atRun(small, 1200)).toBeCloseTo(426.14, 1);
    expect(atRun(small, 9000) - atRun(big, 9000)).toBeCloseTo(161.9, 1);
  });

  test("syrup at 3.10 a pound moves the crossover up by 325 bottles", () => {
    // Purge: 49 lb × 0.50 = 24.50 more between the lines; 541.10 ÷ 0.075389 = 7,177.5, so from 7,178.
    expect(crossover(costOf(smallPair, 3.1), costOf(bigLine, 3.1))).toBe(7178);
  });
});
