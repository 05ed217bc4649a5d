import { as, type Brix, type Celsius } from "../../src/measures/quantity";
import { hotVolume } from "../../src/trade/filling/hot-volume";
import { brixFromBaume } from "../../src/trade/syrup/gravity";
import {
  hydrometerBrix,
  hydrometerReading,
} from "../../src/trade/syrup/hydrometer";
import { hydrometerGlass } from "../../src/standards/hydrometer";
import { agreesWithPrinted } from "../support/published";
import { baume, brix, hotMark, hotMarkBrix } from "./maple-hydrometer-chart";

const celsius = (fahrenheit: number): Celsius => as((fahrenheit - 32) / 1.8);
const sixty = celsius(60);
/** The chart's syrup: what reads 36 °Bé at 60 °F. It pins the 60 °F row; the other 17 are free. */
const chartSyrup: Brix = hydrometerBrix(brixFromBaume(36), sixty, sixty);

agreesWithPrinted(
  baume,
  (f) => hydrometerReading(chartSyrup, celsius(f), sixty, "Baume"),
  {
    within: 0.096,
    because:
      "the chart gives every step of 7-10 °F the same 0.25 °Bé, so that a smooth curve runs up to 0.1 °Bé beside it",
  },
);
agreesWithPrinted(
  brix,
  (f) => hydrometerReading(chartSyrup, celsius(f), sixty, "Brix"),
  {
    within: 0.28,
    because:
      "the same even steps of 0.25 °Bé, and a Brix column rounded once more",
  },
);

const aboveItsOwnChart =
  "the mark contradicts its own chart, which reads 32.0 °Bé and 59.0 °Bx two degrees cooler; the float sinks as syrup warms";

agreesWithPrinted(
  hotMark,
  (f) => hydrometerReading(chartSyrup, celsius(f), sixty, "Baume"),
  undefined,
  [{ at: [211], within: 0.145, because: aboveItsOwnChart }],
);
agreesWithPrinted(
  hotMarkBrix,
  (f) => hydrometerReading(chartSyrup, celsius(f), sixty, "Brix"),
  undefined,
  [{ at: [211], within: 0.17, because: aboveItsOwnChart }],
);

describe("the hot fill swells as the chart's float sinks", () => {
  const gravity = (degrees: number): number => 145 / (145 - degrees);
  test.each(
    baume.rows.map(([f = Number.NaN, degrees = Number.NaN]) => ({
      f,
      degrees,
    })),
  )("60 to $f °F", ({ f, degrees }) => {
    const byChart =
      (gravity(36) / gravity(degrees)) *
      (1 + hydrometerGlass * (celsius(f) - sixty));
    const ours =
      hotVolume(as(1), chartSyrup, celsius(f)) /
      hotVolume(as(1), chartSyrup, sixty);
    // The chart goes in steps of 0.25 °Bé, which leaves ±0.05 % of the volume; the hot result is stated as ±0.1 %.
    expect(Math.abs(ours - byChart)).toBeLessThanOrEqual(0.001);
  });

  test("at 185 °F the two agree to 0.01 %", () => {
    const byChart =
      (gravity(36) / gravity(32.75)) *
      (1 + hydrometerGlass * (celsius(185) - sixty));
    const ours =
      hotVolume(as(1), chartSyrup, celsius(185)) /
      hotVolume(as(1), chartSyrup, sixty);
    expect(Math.abs(ours / byChart - 1)).toBeLessThanOrEqual(0.0001);
  });
});
