import fc from "fast-check";
import { CannotAnswer } from "../../../src/measures/cannot-answer";
import {
  allowedShort,
  type ShortfallRule,
} from "../../../src/trade/contents/allowed-short";
import { mL } from "../../scenarios/in-pounds";

const allowed = (size: number, rule: ShortfallRule): number =>
  allowedShort(mL(size), rule).allowed * 1000;

// By an independent script from the tables; that EU percentages are rounded up to 0.1 mL, and all of R 87, is from memory.
test.each([
  { size: 50, eu: 4.5, oiml: 4.5 },
  { size: 150, eu: 6.8, oiml: 6.8 },
  { size: 236, eu: 9, oiml: 9 },
  { size: 375, eu: 11.3, oiml: 11.3 },
  { size: 473, eu: 14.2, oiml: 14.2 },
  { size: 500, eu: 15, oiml: 15 },
  { size: 540, eu: 15, oiml: 15 },
  { size: 1000, eu: 15, oiml: 15 },
  { size: 1892, eu: 28.4, oiml: 29 },
  { size: 4000, eu: 60, oiml: 60 },
])("$size mL may be short by $eu mL in the EU, $oiml mL by R 87", (row) => {
  expect(allowed(row.size, "EU")).toBeCloseTo(row.eu, 12);
  expect(allowed(row.size, "OIML")).toBeCloseTo(row.oiml, 12);
});

test("a limit belongs to the row below it", () => {
  // 50 mL: 9 % is 4.5; 100 mL: 4.5; 100.1 mL: 4.5 % is 4.5045, up to 4.6; 300.1 mL: 3 % is 9.003, up to 9.1.
  const sizes = [50, 50.1, 100, 100.1, 200, 300, 300.1, 500.1, 1000.1];
  expect(sizes.map((size) => allowed(size, "EU"))).toEqual(
    [4.5, 4.5, 4.5, 4.6, 9, 9, 9.1, 15, 15.1].map((mL) =>
      expect.closeTo(mL, 12),
    ),
  );
});

test("R 87 goes on to 50 L, the directive to 10 L", () => {
  // From memory: 1.5 % of 10 L, 150 mL, 1 % of 20.05 L up to a whole mL.
  expect(allowed(10_000, "EU")).toBeCloseTo(150, 9);
  expect(allowed(12_000, "OIML")).toBeCloseTo(150, 9);
  expect(allowed(20_050, "OIML")).toBeCloseTo(201, 9);
  expect(() => allowed(50_001, "OIML")).toThrow("outside the OIML table");
  expect(() => allowed(4.9, "OIML")).toThrow("5 to 50,000 mL");
});

test("the US table is asked for, never made up", () => {
  const ask = (): number => allowed(250, "US");
  expect(ask).toThrow(CannotAnswer);
  expect(ask).toThrow(
    /^enter the MAV from Table 2-6 of the handbook edition your state uses$/,
  );
});

test("rounding up gives no less than the table and less than a step more", () => {
  fc.assert(
    fc.property(fc.double({ min: 5, max: 10_000, noNaN: true }), (size) => {
      const { allowed, unrounded } = allowedShort(mL(size), "EU");
      const more = (allowed - unrounded) * 1000;
      return more > -1e-6 && more < 0.1 + 1e-9;
    }),
  );
});
