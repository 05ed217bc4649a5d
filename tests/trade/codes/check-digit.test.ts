import * as bwip from "bwip-js/node";
import fc from "fast-check";
import { caseCode } from "../../../src/trade/codes/case-code";
import {
  checkDigit,
  withCheckDigit,
} from "../../../src/trade/codes/check-digit";
import { palletCode } from "../../../src/trade/codes/pallet-code";

const digitsOf = (length: number): fc.Arbitrary<string> =>
  fc
    .array(fc.integer({ min: 0, max: 9 }), {
      minLength: length,
      maxLength: length,
    })
    .map((digits) => digits.join(""));

/** Whether a general bar code library draws this number; it refuses one whose check digit is wrong. */
function isDrawn(kind: string, text: string): boolean {
  try {
    return bwip.raw({ bcid: kind, text }).length > 0;
  } catch (error) {
    if (/CheckDigit/.test(String(error))) return false;
    throw error;
  }
}

const bottles = [
  { kind: "ean8", length: 7 },
  { kind: "upca", length: 11 },
  { kind: "ean13", length: 12 },
];

describe("check digits against a general bar code library (bwip-js), which refuses a wrong one", () => {
  test.each(bottles)("$kind: $length random digits", ({ kind, length }) => {
    fc.assert(
      fc.property(
        digitsOf(length),
        fc.integer({ min: 1, max: 9 }),
        (digits, off) => {
          const whole = withCheckDigit(digits);
          const wrong = `${digits}${(checkDigit(digits) + off) % 10}`;
          return isDrawn(kind, whole) && !isDrawn(kind, wrong);
        },
      ),
      { numRuns: 200 },
    );
  });

  test("cases of bottles of 8, 12 and 13 digits", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(7, 11, 12).chain(digitsOf),
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 1, max: 9 }),
        (digits, indicator, off) => {
          const code = caseCode(withCheckDigit(digits), indicator);
          const wrong = `${code.slice(0, -1)}${(Number(code.slice(-1)) + off) % 10}`;
          expect(code).toMatch(/^\d{14}$/);
          expect(code.slice(0, -1)).toBe(
            `${indicator}${digits.padStart(12, "0")}`,
          );
          for (const kind of ["itf14", "ean14"])
            expect([
              isDrawn(kind, kind === "ean14" ? `(01)${code}` : code),
              isDrawn(kind, kind === "ean14" ? `(01)${wrong}` : wrong),
            ]).toEqual([true, false]);
        },
      ),
      { numRuns: 200 },
    );
  });

  test("pallets", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 12 }).chain(digitsOf),
        fc.integer({ min: 0, max: 9999 }),
        fc.integer({ min: 0, max: 9 }),
        fc.integer({ min: 1, max: 9 }),
        (prefix, serial, extension, off) => {
          const code = palletCode(prefix, serial, extension);
          const wrong = `${code.slice(0, -1)}${(Number(code.slice(-1)) + off) % 10}`;
          expect(code).toMatch(/^\d{18}$/);
          expect(code.startsWith(`${extension}${prefix}`)).toBe(true);
          expect(Number(code.slice(1 + prefix.length, -1))).toBe(serial);
          return (
            isDrawn("sscc18", `(00)${code}`) &&
            !isDrawn("sscc18", `(00)${wrong}`)
          );
        },
      ),
      { numRuns: 200 },
    );
  });
});

// Worked out by a separate script; the pallet 37610425002123456 is an example remembered, not read.
test.each([
  ["61414100003", "614141000036"],
  ["1061414100003", "10614141000033"],
  ["9061414100003", "90614141000039"],
  ["10614141000000001", "106141410000000019"],
  ["00614141000001234", "006141410000012343"],
  ["37610425002123456", "376104250021234569"],
])("%s becomes %s", (digits, whole) => {
  expect(withCheckDigit(digits)).toBe(whole);
});

test("zeros in front change no check digit", () => {
  fc.assert(
    fc.property(
      digitsOf(11),
      (digits) =>
        checkDigit(digits) === checkDigit(`0${digits}`) &&
        checkDigit(digits) === checkDigit(`00${digits}`),
    ),
  );
});

test("one mistyped digit is always found, and the sentence names the digit that would be right", () => {
  fc.assert(
    fc.property(
      digitsOf(12),
      fc.integer({ min: 0, max: 12 }),
      fc.integer({ min: 1, max: 9 }),
      (digits, place, off) => {
        const right = withCheckDigit(digits);
        const wrong = [...right]
          .map((d, i) => (i === place ? (Number(d) + off) % 10 : d))
          .join("");
        const body = wrong.slice(0, -1);
        expect(() => caseCode(wrong, 1)).toThrow(
          `type ${body}${checkDigit(body)}`,
        );
      },
    ),
  );
});

describe("what cannot be a number is refused", () => {
  test("spaces and dashes between digits are passed over, letters are not", () => {
    expect(withCheckDigit("6-29104 15002-1")).toBe("6291041500213");
    expect(() => checkDigit("62910415OO21")).toThrow(/holds more than digits/);
  });

  test("a length that no number has is named, and a check digit that is there already", () => {
    expect(() => checkDigit("4000010010")).toThrow(
      'digits: "4000010010" has 10 digits; without its check digit a number has 7, 11, 12, 13 or 17',
    );
    expect(() => checkDigit("10614141000033")).toThrow(
      /may have its check digit already/,
    );
    expect(() => checkDigit("5")).toThrow(/has 1 digit;/);
  });

  test("a case's number is no bottle's, and a bottle has 8, 12 or 13 digits", () => {
    expect(() => caseCode("10614141000033", 1)).toThrow(/already/);
    expect(() => caseCode("61414100003", 1)).toThrow(/has 11 digits/);
  });

  test("the indicator 9 is for goods sold by measured weight", () => {
    expect(() => caseCode("614141000036", 9)).toThrow(/measured weight/);
  });

  test("a serial too long for the prefix, and a prefix too short or too long", () => {
    expect(palletCode("0614141", 999_999_999, 0)).toHaveLength(18);
    expect(() => palletCode("0614141", 1_000_000_000, 0)).toThrow(
      "serial: 1000000000 has 10 digits, but after the prefix 0614141 there is room for 9",
    );
    for (const prefix of ["061", "0614141000000"])
      expect(() => palletCode(prefix, 1, 0)).toThrow(/has 4 to 12/);
  });
});
