import { readPercent, readShare } from "../../src/measures/read-share";

describe("a share is a part of one", () => {
  test.each([
    [0.35, 0.35],
    ["0.35", 0.35],
    ["35 %", 0.35],
    ["35%", 0.35],
    ["1.5 %", 0.015],
    [0, 0],
    [1, 1],
    ["100 %", 1],
  ])("%j", (raw, share) => {
    expect(readShare(raw, "margin")).toBeCloseTo(share, 12);
  });

  test("35 is refused with the reading it would have had", () => {
    expect(() => readShare(35, "margin")).toThrow(
      "margin: 35 reads as 3500 %; type 35 % or 0.35",
    );
    expect(() => readShare("35", "margin")).toThrow(/type 35 % or 0\.35/);
    expect(() => readShare(1.1, "margin")).toThrow(
      "margin: 1.1 reads as 110 %; type 1.1 % or 0.011",
    );
  });

  test("a comma or words are refused", () => {
    expect(() => readShare("3,5 %", "loss")).toThrow(/looks like 3\.5/);
    expect(() => readShare("a third", "loss")).toThrow(/is not a number/);
  });
});

describe("a figure stated in per cent", () => {
  test.each([
    [75, 75],
    ["75", 75],
    ["75 %", 75],
    ["0.8 %", 0.8],
    [0, 0],
    [1.5, 1.5],
  ])("%j", (raw, percent) => {
    expect(readPercent(raw, "transmission")).toBe(percent);
  });

  test("a number up to 1 may be a cell formatted as per cent and is refused", () => {
    expect(() => readPercent(0.75, "transmission")).toThrow(
      'transmission: 0.75 could be 0.75 % or 75 %; type "0.75 %" or 75',
    );
    expect(() => readPercent(1, "transmission")).toThrow(/1 % or 100 %/);
  });
});
