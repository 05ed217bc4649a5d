import { CannotAnswer } from "../../src/measures/cannot-answer";
import { type Gallon, gallonNamed } from "../../src/measures/gallon";
import { readQuantity } from "../../src/measures/read-quantity";
import { unitNamed } from "../../src/measures/units";

const read = (raw: string, stated: string, gallon?: Gallon): number =>
  readQuantity(raw, unitNamed(stated), "amount", gallon);

// 1 US gal = 231 in³ of 25.4³ mm³; 1 imperial gal = 4.54609 L, both exact by definition (the second from memory).
const US = (231 * 25.4 ** 3) / 1e6;
const IMPERIAL = 4.54609;
const POUND = 0.45359237;

test.each<[string, string, Gallon | undefined, number]>([
  ["120 gal", "gal", undefined, 120 * US],
  ["120 gal", "gal", "US", 120 * US],
  ["120 gal", "gal", "imperial", 120 * IMPERIAL],
  ["120 gallons", "mL", "imperial", 120 * IMPERIAL],
  ["120 imp gal", "gal", "imperial", 120 * IMPERIAL],
  ["1 imperial gallon", "gal", "imperial", IMPERIAL],
  ["1 UK gal.", "gal", "imperial", IMPERIAL],
  ["120 US gal", "gal", "imperial", 120 * US],
  ["120 US gallons", "gal", "unsaid", 120 * US],
  ["13.2 lb/gal", "lb/gal", "imperial", (13.2 * POUND) / IMPERIAL],
  ["13.2 lb/imp gal", "lb/gal", "imperial", (13.2 * POUND) / IMPERIAL],
  ["11 lb/us gal", "lb/gal", "imperial", (11 * POUND) / US],
  ["12 fl oz", "mL", "imperial", (12 * US) / 128],
  ["3 L", "gal", "unsaid", 3],
])("%j, stated in %s, where the gallon is %s", (raw, stated, gallon, house) => {
  expect(read(raw, stated, gallon)).toBeCloseTo(house, 12);
});

test.each<[string, string, Gallon, RegExp]>([
  ["120 gal", "gal", "unsaid", /^amount: "120 gal" may be US gallons/],
  ["1 gallon", "mL", "unsaid", /or imperial gallons \(4\.54609 L\)$/],
  ["11 lb/gal", "lb/gal", "unsaid", /may be US gallons/],
  ["5 imp gal", "gal", "unsaid", /may be US gallons/],
  ["5 imp gal", "gal", "US", /is in imperial gallons; type US gallons/],
  ["5 imp pt", "mL", "imperial", /imperial/],
  ["5 imp gal", "lb", "imperial", /imperial/],
])("%j is refused where the gallon is %s", (raw, stated, gallon, sentence) => {
  expect(() => read(raw, stated, gallon)).toThrow(CannotAnswer);
  expect(() => read(raw, stated, gallon)).toThrow(sentence);
});

test.each([
  ["$/gal", undefined],
  ["USD per US gal", "US"],
  ["per U.S. gallon", "US"],
  ["$/imp. gal", "imperial"],
  ["because of gallons", undefined],
])("%j names %s", (words, gallon) => {
  expect(gallonNamed(words)).toBe(gallon);
});
