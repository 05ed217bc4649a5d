import fc from "fast-check";
import {
  calendarOf,
  isoDate,
  readDate,
  serialOf,
} from "../../src/measures/read-date";

// Worksheets count 1 January 2000 as day 36526 and 1 March 1900 as day 61.
test.each([
  ["2000-01-01", 36_526],
  ["1900-03-01", 61],
  ["2026-11-25", 46_351],
  ["2024-02-29", 45_351],
])("%s is day %i of the worksheet", (text, serial) => {
  expect(readDate(text, "due")).toBe(serial);
  expect(isoDate(readDate(serial, "due"))).toBe(text);
});

test("a time of day is left out", () => {
  expect(readDate(36_526.75, "due")).toBe(36_526);
});

test.each([
  [
    "03/04/2026",
    'due: "03/04/2026" could be 2026-03-04 or 2026-04-03; type the one you mean',
  ],
  ["25/12/2026", 'due: "25/12/2026" reads as 2026-12-25; type it that way'],
  ["12/25/2026", 'due: "12/25/2026" reads as 2026-12-25; type it that way'],
  ["4.3.2026", /could be 2026-04-03 or 2026-03-04/],
  ["2026-02-29", "due: there is no day 2026-02-29"],
  ["1800-01-01", /due: 1800-01-01 is before 1900-03-01/],
  ["2026-13-01", "due: there is no day 2026-13-01"],
  ["next Tuesday", /due: "next Tuesday" is not a date; type it as 2026-11-25/],
  ["40/40/2026", /"40\/40\/2026" is not a date/],
  ["31/02/2026", /"31\/02\/2026" is not a date/],
  ["26-11-25", /is not a date/],
  [0, /due: 0 is not a worksheet date/],
  [-1, /is not a worksheet date/],
  [2_958_466, /is not a worksheet date/],
  [Number.NaN, /is not a worksheet date/],
])("%j is refused with the reading it might have had", (raw, sentence) => {
  expect(() => readDate(raw, "due")).toThrow(sentence);
});

test("every day reads back as itself", () => {
  fc.assert(
    fc.property(fc.integer({ min: 61, max: 2_958_465 }), (serial) => {
      const { year, month, day } = calendarOf(readDate(serial, "due"));
      return (
        serialOf(year, month, day) === serial &&
        readDate(isoDate(readDate(serial, "due")), "due") === serial
      );
    }),
  );
});
