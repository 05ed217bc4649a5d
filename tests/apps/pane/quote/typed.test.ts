import {
  readAmount,
  readDays,
  readPounds,
  readQuantities,
} from "../../../../src/apps/pane/quote/typed";

test.each([
  ["300; 600; 1,200", [300, 600, 1200]],
  ["300,600,1200", [300, 600, 1200]],
  ["300, 600, 1,200", [300, 600, 1200]],
  ["1,200", [1200]],
  ["12,000 24,000", [12_000, 24_000]],
  ["120000; 300", [120_000, 300]],
  ["480", [480]],
])("%j is read as %j bottles", (typed, quantities) => {
  expect(readQuantities(typed)).toEqual(quantities);
});

test.each([
  ["", "Type one to six quantities"],
  ["1;2;3;4;5;6;7", "At most 6"],
  ["600; 600", "600 stands twice"],
  ["300,600", "300,600 could be one quantity or more"],
  ["some", "some"],
  ["0", "bottles"],
])("%j is refused in a sentence", (typed, sentence) => {
  expect(() => readQuantities(typed)).toThrow(sentence);
});

test("an empty field is a blank cell, never zero", () => {
  expect(readAmount(" ")).toBeNull();
  expect(readPounds("")).toBeNull();
  expect(readAmount("240")).toBe(240);
  expect(() => readAmount("-1")).toThrow("amount");
});

test("a quote stands whole days, at most a year", () => {
  expect(readDays("30")).toBe(30);
  for (const typed of ["", "0", "1.5", "366", "soon"])
    expect(() => readDays(typed)).toThrow("whole days");
});
