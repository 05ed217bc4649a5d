import { functionNamed } from "../../src/functions";
import { answer } from "../../src/functions/answer";
import { CannotAnswer } from "../../src/measures/cannot-answer";

function refusal(name: string, args: readonly unknown[]): string {
  const definition = functionNamed(name);
  if (!definition) throw new Error(`There is no ${name}`);
  try {
    answer(definition, args);
  } catch (error) {
    if (error instanceof CannotAnswer) return `${error.code} ${error.message}`;
    throw error;
  }
  return "answered";
}

const lots = [
  ["2026-03-20", 1000, 2.4],
  ["2026-04-08", 2000, 2.6],
];

test.each<readonly [string, readonly unknown[], string]>([
  [
    "LINE_RATE",
    [8, 12, 10, 78],
    "#VALUE! running: 78 reads as 7800 %; type 78 % or 0.78",
  ],
  [
    "LINE_RATE",
    [8, 12, 10, 1, [["cap bench", null]]],
    '#VALUE! stations: "cap bench" needs its rate',
  ],
  [
    "LINE_RATE",
    [8, 12, 10, 1, [[720, 900]]],
    "#VALUE! stations: 720 is not a station's name; give names beside the rates, or one column of rates",
  ],
  [
    "LINE_LIMIT",
    [8, 12, 10, 1, 720],
    "#VALUE! stations: the one of 720 per h needs its name beside it",
  ],
  ["RUN_HOURS", [1200, 0], "#VALUE! rate: 0 per h must be more than 0 per h"],
  [
    "LINE_CROSSOVER",
    [100, 0.1, 600, 0.2],
    "#N/A never: b costs more than a at every run size",
  ],
  [
    "LOT_CODE",
    ["11/25/2026", "2"],
    '#VALUE! date: "11/25/2026" reads as 2026-11-25; type it that way',
  ],
  [
    "LOT_CODE",
    ["2026-11-25", "2", "25:10"],
    '#VALUE! time: "25:10" is not a time of day such as 14:30',
  ],
  ["SYRUP_PER_BOTTLE", [null, 66], "#VALUE! needs volume"],
  ["SYRUP_COST", [252, 666, 2.6], "#N/A brix: 666 °Bx is above 85 °Bx"],
  [
    "PIECES_TO_DRAW",
    [1200, 1, 1],
    "#VALUE! spoilage: 100 % must be less than 100 %",
  ],
  [
    "BREAK_PRICE",
    [
      500,
      [
        [504, 1.42],
        [2016, 1.21],
      ],
    ],
    "#N/A minimum order is 504",
  ],
  [
    "BREAK_PRICE",
    [
      600,
      [
        [504, 1.42],
        [504, 1.4],
      ],
    ],
    "#VALUE! breaks: two prices from 504",
  ],
  [
    "BREAK_PRICE",
    [
      600,
      [
        [504, 1.42],
        [2016, null],
      ],
    ],
    "#VALUE! breaks, row 2: needs price",
  ],
  ["LANDED_PRICE", [0, 2400], "#VALUE! net: 0 lb must be more than 0 lb"],
  [
    "USABLE_PRICE",
    [2.4, 1000, 0.5, 500],
    "#VALUE! filter loss and heel: they leave nothing of 1,000 lb",
  ],
  [
    "LOADED_WAGE",
    [20, 18],
    "#VALUE! add ons: 18 reads as 1800 %; type 18 % or 0.18",
  ],
  [
    "LABOR_PER_BOTTLE",
    [96.76, 0, 720],
    "#VALUE! bottles: 0 bottles must be more than 0 bottles",
  ],
  ["LOT_COST", ["oldest first", 3120, lots], "#N/A short by 120 lb"],
  [
    "LOT_COST",
    ["newest first", 10, lots],
    '#VALUE! method: "newest first" is not one of "oldest first", "average", "replacement"',
  ],
  [
    "PRICE_ON",
    ["CAP-28", "2026-01-01", [["CAP-28", "2026-05-01", 0.12]]],
    "#N/A no price for CAP-28 on or before 2026-01-01",
  ],
  [
    "COST_TOTAL",
    [
      [["syrup"], ["caps"]],
      [[1.91], [null]],
    ],
    "#VALUE! needs caps",
  ],
  [
    "COST_TOTAL",
    [[["syrup"], ["caps"]], [[1.91]]],
    "#VALUE! names and amounts: 2 names do not stand beside 1 amounts; give both without headings, row by row",
  ],
  ["ALLOCATE", [100, [[1], [null], [1]]], "#VALUE! drivers: item 2 is blank"],
  [
    "ALLOCATE",
    [100, [[0], [0]]],
    "#VALUE! drivers: they sum to 0, so there is nothing to share by",
  ],
  [
    "AGED_PRICE",
    [1000, 400, 200, 0, 12],
    "#VALUE! fills: 0 fills must be more than 0 fills",
  ],
  [
    "PRICE_FOR_MARGIN",
    [4.85, 0.86, 0.145, 0.225],
    "#N/A no price works: margin and fees take 100.5 % of it",
  ],
  ["MARGIN", [0, 4.85], "#VALUE! price: 0 each must be more than 0 each"],
  ["MARKUP", [7.2, null], "#VALUE! needs cost"],
  [
    "ROUND_PRICE",
    [0.5, 0.99, "down"],
    "#N/A no price ending in 0.99 is at or below 0.5",
  ],
  [
    "NET_FROM_SHELF",
    [13.49, 1],
    "#VALUE! shop margin: 100 % must be less than 100 %",
  ],
  [
    "ORDER_PROFIT",
    [-2, 15, 4.85],
    "#VALUE! units: -2 units must be more than 0 units",
  ],
  [
    "BREAK_EVEN_UNITS",
    [1850, 4.5, 4.7],
    "#N/A never: a unit sold at 4.5 does not earn its cost of 4.7",
  ],
  [
    "PALLETS",
    [1500, 0, 14, 6],
    "#VALUE! per case: 0 bottles is below 1 bottles",
  ],
])("%s(%j) is refused: %s", (name, args, sentence) => {
  expect(refusal(name, args)).toBe(sentence);
});

test("ten thousand lots are read and drawn in one call", () => {
  const many = Array.from({ length: 10_000 }, (_, i) => [46_000 + i, 1, 2]);
  const lotCost = functionNamed("LOT_COST");
  expect(lotCost).toBeDefined();
  if (lotCost)
    expect(answer(lotCost, ["oldest first", 10_000, many])).toBeCloseTo(
      20_000,
      6,
    );
});
