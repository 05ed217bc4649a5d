import { readFileSync } from "node:fs";
import { createContext, runInContext } from "node:vm";
import fc from "fast-check";
import { functionNamed } from "../../../src/functions";
import { answer } from "../../../src/functions/answer";
import { as } from "../../../src/measures/quantity";
import { syrupTerms } from "../../../src/terms/syrup";
import { boilingPoint } from "../../../src/trade/syrup/boiling";

/**
 * Water's boiling point against the IAPWS industrial formulation of 1997 (region 4, equation 31) in a library of steam
 * properties. Our own coefficients of the vapour pressure are from memory; this is what they are checked by.
 */
interface SteamTables {
  /** Kelvin at which water boils under so many megapascals. */
  readonly r4_P_Tsat: (megapascals: number) => number;
}

const steam = steamTables();
const KILOPASCALS_PER_INCH = 3.386389;
const { min: lowest = Number.NaN, max: highest = Number.NaN } =
  syrupTerms.pressure;
const celsiusBySteamTables = (kilopascals: number): number =>
  steam.r4_P_Tsat(kilopascals / 1000) - 273.15;

test("the library gives the verification values printed with its equation", () => {
  // IAPWS R7-97, table 36, as printed to nine digits and recalled here: 0.1 MPa is 372.755 919 K.
  expect(steam.r4_P_Tsat(0.1)).toBeCloseTo(372.755919, 5);
});

test("water boils where the steam tables say, over every pressure that may be typed", () => {
  fc.assert(
    fc.property(
      fc.double({ min: lowest, max: highest, noNaN: true }),
      (inches) => {
        const kilopascals = inches * KILOPASCALS_PER_INCH;
        const ours = boilingPoint(as(0), as(kilopascals));
        expect(
          Math.abs(ours - celsiusBySteamTables(kilopascals)),
        ).toBeLessThanOrEqual(0.0002);
      },
    ),
    { seed: 20_261_125, numRuns: 1000 },
  );
});

test.each([lowest, 25, 29, 29.92, 31, highest])(
  "in a cell: water under %p inHg, in °F",
  (inches) => {
    const boiling = functionNamed("BOILING_POINT");
    if (!boiling) throw new Error("There is no BOILING_POINT");
    const tables =
      celsiusBySteamTables(inches * KILOPASCALS_PER_INCH) * 1.8 + 32;
    expect(
      Math.abs(Number(answer(boiling, [0, inches])) - tables),
    ).toBeLessThanOrEqual(0.0004);
  },
);

test("the rise by sugar is laid on the water of the steam tables at every pressure", () => {
  for (let inches = lowest; inches <= highest; inches += 0.5) {
    const kilopascals = inches * KILOPASCALS_PER_INCH;
    const rise =
      boilingPoint(as(66.9), as(kilopascals)) -
      celsiusBySteamTables(kilopascals);
    // 4.2 °C at standard pressure, a little less in thin air: Starzak & Peacock, as tabled in our reading of them.
    expect(rise).toBeGreaterThan(3.9);
    expect(rise).toBeLessThan(4.3);
  }
});

/** The library is a script for a page: it asks for nothing when it is run as one. */
function steamTables(): SteamTables {
  const script = readFileSync(
    require.resolve("neutriumjs.thermo.iapws97/dist/neutriumJS.thermo.IAPWS97.pt.min.js"),
    "utf8",
  );
  const page = createContext({});
  runInContext(script, page);
  const { NeutriumJS } = page as {
    readonly NeutriumJS: {
      readonly thermo: { readonly IAPWS97: { readonly PT: SteamTables } };
    };
  };
  return NeutriumJS.thermo.IAPWS97.PT;
}
