import { as, type ColdLitres } from "../../../src/measures/quantity";
import { canadaTypeHeight } from "../../../src/trade/contents/canada-type-height";
import {
  type LabelQuestion,
  labelFacts,
} from "../../../src/trade/contents/label-facts";
import { metricDeclaration } from "../../../src/trade/contents/metric-declaration";

const litres = (volume: number): ColdLitres => as<ColdLitres>(volume);

const bottle: LabelQuestion = {
  declared: litres(0.35488),
  declaredText: "12 fl oz (355 mL)",
  fill: litres(0.358),
  colorClass: "Amber",
  surface: 100,
  isProductOfCanada: undefined,
  lotCode: "26324-B",
  packer: "Fernkettle Hollow Packing",
};

const fact = (changes: Partial<LabelQuestion>, what: string) => {
  const found = labelFacts({ ...bottle, ...changes }).find(
    (one) => one.what === what,
  );
  if (!found) throw new Error(`no fact "${what}"`);
  return found;
};

// Source: Maple Products Regulations, section 19, as the reference notes have it: millilitres below 1 L. Three figures: from memory.
test.each([
  [0.05, 50, "mL"],
  [0.25, 250, "mL"],
  [0.35488, 354, "mL"],
  [0.9999, 999, "mL"],
  [1, 1, "L"],
  [1.89271, 1.89, "L"],
  [3.785411784, 3.78, "L"],
  [0.1 + 0.2, 300, "mL"],
])("%d L is declared as %d %s", (volume, amount, unit) => {
  expect(metricDeclaration(litres(volume))).toMatchObject({ amount, unit });
});

// Source: the schedule of numeral heights of the Safe Food for Canadians Regulations, from memory; the code and this list are one recollection.
test.each([
  [32, 1.6],
  [32.01, 3.2],
  [258, 3.2],
  [259, 6.4],
  [645, 6.4],
  [646, 9.5],
  [2580, 9.5],
  [2581, 12.7],
])("a display surface of %d cm² asks for numerals of %d mm", (area, height) => {
  expect(canadaTypeHeight(area)).toBe(height);
});

test("no surface is refused", () => {
  expect(() => canadaTypeHeight(0)).toThrow("more than 0 cm²");
});

test("the label's own metric words are taken, and kept in both languages", () => {
  expect(fact({}, "Net quantity")).toMatchObject({
    english: "355 mL",
    french: "355\u00a0mL",
  });
  const large = {
    declared: litres(3.78541),
    declaredText: "128 fl oz (3.78 L)",
  };
  expect(fact(large, "Net quantity").french).toBe("3,78\u00a0L");
  expect(fact(large, "With the US declaration").english).toBe(
    "128 fl oz (3.78 L)",
  );
});

test("without words on the label both declarations come from the volume and never say more", () => {
  const plain = { declaredText: undefined };
  expect(fact(plain, "Net quantity").english).toBe("354 mL");
  // 354.88 mL is 12.0000 fl oz of 29.5735 mL, and a hair less than 12: rounded down in three figures.
  expect(fact(plain, "With the US declaration").english).toBe(
    "11.9 fl oz (354 mL)",
  );
});

test("the larger of two declarations is the one tested", () => {
  // Source: the worked pairs of the reference notes: 12 fl oz (355 mL) as 355 mL, 1 gal (3.78 L) as 3785.41 mL.
  const what = "Tested against, in the United States";
  expect(fact({}, what).english).toBe("355 mL");
  expect(
    fact({ declared: litres(3.78541), declaredText: "1 gal (3.78 L)" }, what)
      .english,
  ).toBe("3785.41 mL");
});

test.each([
  // Source: Weights and Measures Regulations, C.R.C., c. 1605, Schedule II Part III.
  ["50 mL", 0.05, "4.5 mL"],
  ["250 mL", 0.25, "9 mL"],
  ["375 mL", 0.375, "11.25 mL"],
  ["750 mL", 0.75, "15 mL"],
  ["4 L", 4, "60 mL"],
])("%s may be short by the Canadian table", (text, volume, short) => {
  expect(
    fact(
      { declared: litres(volume), declaredText: text },
      "A single bottle may be short by",
    ).english,
  ).toBe(short);
});

test("origin is said only by the farm", () => {
  expect(fact({}, "Origin").missing).toContain("the farm has to say so");
  expect(fact({ isProductOfCanada: true }, "Origin")).toMatchObject({
    english: "Product of Canada",
    french: "Produit du Canada",
  });
  const other = fact({ isProductOfCanada: false }, "Origin");
  expect([other.english, other.missing]).toEqual([
    undefined,
    expect.stringContaining("the country"),
  ]);
});

test("what no source was read for, and what nobody said, is missing and never guessed", () => {
  const missing = labelFacts({
    ...bottle,
    colorClass: undefined,
    surface: undefined,
    lotCode: undefined,
    packer: undefined,
  }).flatMap(({ what, missing: lacking, english, french }) =>
    lacking === undefined ? [] : [[what, english, french]],
  );
  expect(missing).toEqual(
    [
      "Least height of the numerals",
      "Grade and colour class",
      "Origin",
      "Lot code",
      "Packed by",
      "Address of the packer",
      "Standard container sizes",
      "Best before, in the bilingual form",
    ].map((what) => [what, undefined, undefined]),
  );
});

test("every fact that is said has both languages and a source", () => {
  for (const { missing, english, french, sources, what } of labelFacts(bottle))
    if (missing === undefined) {
      expect([what, english]).not.toContain(undefined);
      expect(french).not.toBe(undefined);
      expect(sources.length).toBeGreaterThan(0);
    }
});
