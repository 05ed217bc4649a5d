import { CannotAnswer } from "../../src/measures/cannot-answer";
import { readQuantity } from "../../src/measures/read-quantity";
import { unitNamed } from "../../src/measures/units";

const read = (raw: number | string, stated: string): number =>
  readQuantity(raw, unitNamed(stated), "amount");

// 1 lb = 0.45359237 kg and 1 US gal = 231 in³ = 3.785411784 L are exact by definition.
describe("a quantity is read in its stated unit or in the unit its text carries", () => {
  test.each([
    [250, "mL", 0.25],
    ["250", "mL", 0.25],
    ["12 fl oz", "mL", 0.35488235475],
    ["12 FL. OZ.", "mL", 0.35488235475],
    ["375 mL", "mL", 0.375],
    ["375ml", "mL", 0.375],
    ["0.5 L", "gal", 0.5],
    ["1 gal", "mL", 3.785411784],
    ["1 US gallon", "mL", 3.785411784],
    ["1 qt", "mL", 0.946352946],
    ["1 pt.", "mL", 0.473176473],
    ["2,912 lb", "lb", 2912 * 0.45359237],
    ["2,912 lbs", "lb", 2912 * 0.45359237],
    ["1 384 kg", "lb", 1384],
    ["1\u00a0384\u00a0kg", "lb", 1384],
    ["1\u202f384 kg", "lb", 1384],
    ["16 oz", "lb", 0.45359237],
    ["1,234,567 g", "g", 1234.567],
    ["66.4 °Bx", "°Bx", 66.4],
    ["66.4 Brix", "°Bx", 66.4],
    ["22 mm", "mm", 22],
    ["1 in", "mm", 25.4],
    ['1"', "mm", 25.4],
    ["15 min", "s", 900],
    ["1.328 g/mL", "kg/L", 1.328],
    ["1328 kg/m3", "kg/L", 1.328],
    ["1 kWh", "BTU", 3600],
    [".5 L", "mL", 0.5],
    ["-5 °C", "°F", -5],
  ])("%j, stated in %s", (raw, stated, house) => {
    expect(read(raw, stated)).toBeCloseTo(house, 9);
  });

  test.each([
    [32, 0],
    [185, 85],
    [212, 100],
    ["185 °F", 85],
    ["185 F", 85],
    ["185 deg F", 85],
    ["185°F", 85],
    ["85 C", 85],
    ["85 °C", 85],
    ["85 celsius", 85],
  ])("the temperature %j", (raw, celsius) => {
    expect(read(raw, "°F")).toBeCloseTo(celsius, 9);
  });
});

describe("what cannot be read is refused in one sentence that names the argument", () => {
  test.each([
    ["1 imp gal", "gal", /amount: .*imperial.*US gallons or litres/],
    ["1 imperial gallon", "gal", /imperial/],
    ["1 UK gal", "gal", /imperial/],
    ["66,4", "°Bx", /amount: "66,4" looks like 66\.4 .*type 66\.4/],
    ["66,4 °Bx", "°Bx", /"66,4" looks like 66\.4/],
    ["1,23 gal", "gal", /looks like 1\.23/],
    ["0,123 gal", "gal", /looks like 0\.123/],
    ["1,2345 lb", "lb", /looks like 1\.2345/],
    ["12,34,567 lb", "lb", /"12,34,567" is not a number/],
    ["1,384 567 kg", "lb", /is not a number/],
    ["1.234,5 kg", "lb", /is not a number/],
    ["12 furlongs", "mL", /amount: "furlongs" in "12 furlongs" is not a unit/],
    ["12 lb", "mL", /amount: "12 lb" is a mass, but a volume is wanted/],
    ["12 oz", "mL", /is a mass, but a volume is wanted/],
    ["85 C", "mL", /is a temperature, but a volume is wanted/],
    ["about a gallon", "gal", /amount: "about a gallon" is not a number/],
    ["lb", "lb", /is not a number/],
    ["12 lb 4 oz", "lb", /is not a unit/],
    ["1 .5 L", "mL", /is not a number/],
    ["--5 L", "mL", /is not a number/],
  ])("%j", (raw, stated, sentence) => {
    expect(() => read(raw, stated)).toThrow(CannotAnswer);
    expect(() => read(raw, stated)).toThrow(sentence);
  });
});
