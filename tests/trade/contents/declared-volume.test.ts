import fc from "fast-check";
import { declaredVolume } from "../../../src/trade/contents/declared-volume";
import { near } from "../quantities";

const declared = (label: string): number =>
  declaredVolume(label).larger.volume * 1000;

// By an independent script: 1 US fl oz = 29.5735295625 mL; the rule that the larger statement is tested is quoted in a
// letter of a metrology mailing list.
test.each([
  [8, 236, 236.588],
  [8, 237, 237],
  [12, 354, 354.882],
  [12.7, 375, 375.584],
  [16, 473, 473.176],
  [16, 474, 474],
  [32, 946, 946.353],
  [32, 947, 947],
  [64, 1890, 1892.706],
  [64, 1892, 1892.706],
  [64, 1893, 1893],
  [128, 3780, 3785.412],
  [128, 3785, 3785.412],
])("%d fl oz (%d mL) is tested as %d mL", (ounces, millilitres, tested) => {
  expect(declared(`${ounces} fl oz (${millilitres} mL)`)).toBeCloseTo(
    tested,
    3,
  );
});

test.each([
  ["12 fl oz (355 mL)", 355],
  ["NET CONTENTS: 12 FL. OZ. (355 ML)", 355],
  ["12 fl oz / 355 mL", 355],
  ["12 fl oz 355 mL", 355],
  ["355 mL ℮", 355],
  ["355 mL e", 355],
  ["12 U.S. FL OZ, 355 mL.", 355],
  ["1 PINT (473 mL)", 473.176473],
  ["1 gal (3.78 L)", 3785.411784],
  ["ONE QUALITY: 1 qt or 946 mL", 946.352946],
  ["1 QT (32 FL OZ) 946 mL", 946.352946],
  ["1 qt 8 fl oz (1.18 L)", 1182.941183],
  ["1 L 250 mL", 1250],
  ["1,250 mL", 1250],
  ["500 mL", 500],
])("%s declares %d mL", (label, volume) => {
  expect(declared(label)).toBeCloseTo(volume, 5);
});

test.each([
  ["Pure maple syrup", "declares no volume"],
  ["12 (355 mL)", 'label: 12 in "12 (355 mL)" has no unit'],
  ["NET WT 16 oz", '"16 oz" is a mass, but a volume is wanted'],
  ["1 imp gal (4.55 L)", "speaks of imperial measures"],
  ["1 gal (imperial)", "speaks of imperial measures"],
  ["1 UK pt", "speaks of imperial measures"],
  ["66,4 mL", "type 66.4"],
  ["12 fl oz -355 mL", '"-355 mL" must be more than nothing'],
  ["0 mL", "must be more than nothing"],
  ["12 1/2 fl oz", "has no unit"],
  ["12½ fl oz", "is not a unit known here"],
  ["355 millimetres", "is a length, but a volume is wanted"],
])("%s is refused: %s", (label, sentence) => {
  expect(() => declaredVolume(label)).toThrow(sentence);
});

test("two statements bind to the larger, in either order", () => {
  const amount = fc.integer({ min: 1, max: 5000 });
  fc.assert(
    fc.property(amount, amount, (ounces, millilitres) => {
      const one = declared(`${ounces} fl oz (${millilitres} mL)`);
      const other = declared(`${millilitres} mL (${ounces} fl oz)`);
      return (
        near(one, Math.max(ounces * 29.5735295625, millilitres)) &&
        near(one, other)
      );
    }),
  );
});
