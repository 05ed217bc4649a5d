import { functionsFor } from "../../../../src/apps/pane/guide/search";
import { sameInTheTrade } from "../../../../src/apps/pane/guide/trade-words";
import { wordsOf } from "../../../../src/apps/pane/guide/words-of";
import { functions } from "../../../../src/functions";

const found = (question: string): readonly string[] =>
  (functionsFor(functions, question) ?? []).map(({ name }) => name);

/** Questions as a packer words them; which function answers each is common practice, no source. */
const asked: readonly (readonly [string, string])[] = [
  ["how much do I fill hot", "HOT_VOLUME"],
  ["hot pack volume", "HOT_VOLUME"],
  ["shrink", "SHRINKAGE"],
  ["shrinks when it cools", "SHRINKAGE"],
  ["pallets", "PALLETS"],
  ["how many skids", "PALLETS"],
  ["margin", "MARGIN"],
  ["Margins", "MARGIN"],
  ["baumé", "BAUME"],
  ["baume to brix", "BRIX_FROM_BAUME"],
  ["pounds per gallon", "POUNDS_PER_GALLON"],
  ["lb per gal", "POUNDS_PER_GALLON"],
  ["propane", "FUEL_FOR_HEAT"],
  ["how thick", "VISCOSITY"],
  ["viscosty", "VISCOSITY"],
  ["headspace", "HEADSPACE"],
  ["when do I draw off", "BOILING_POINT"],
  ["bottleneck of the line", "LINE_LIMIT"],
  ["best by date", "BEST_BY"],
  ["price break", "BREAK_PRICE"],
  ["break even", "BREAK_EVEN_UNITS"],
  ["colour grade", "COLOR_CLASS"],
  ["wage per hour", "LOADED_WAGE"],
  ["split a bill", "ALLOCATE"],
  ["oldest lots first", "LOT_COST"],
  ["oak barrel", "AGED_PRICE"],
  ["SYRUP.LINE_CROSSOVER", "LINE_CROSSOVER"],
  ["=syrup.order_profit(", "ORDER_PROFIT"],
];

test.each(asked)("“%s” finds %s among the first three", (question, name) => {
  expect(found(question).slice(0, 3)).toContain(name);
});

test.each(functions.map((f) => [f.question, f.name] as const))(
  "its own question, “%s”, finds %s first",
  (question, name) => expect(found(question)[0]).toBe(name),
);

test.each(functions.map((f) => [f.name] as const))(
  "its own name finds %s first",
  (name) => {
    expect(found(name)[0]).toBe(name);
    expect(found(`SYRUP.${name.toLowerCase()}`)[0]).toBe(name);
  },
);

test("words that tell nothing apart are no question", () => {
  expect(functionsFor(functions, "")).toBeUndefined();
  expect(functionsFor(functions, "how much is the")).toBeUndefined();
});

test("what else answers is shown as well, after the best", () => {
  expect(found("margin").slice(1)).toContain("PRICE_FOR_MARGIN");
});

test("the trade's words are written as the search compares them", () => {
  for (const word of sameInTheTrade.flat())
    expect(wordsOf(word)).toEqual([word]);
});

test("words of another trade find nothing", () => {
  expect(found("xylophone")).toEqual([]);
});
