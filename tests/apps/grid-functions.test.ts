import { gridFunctions } from "../../src/apps/grid-functions";
import { functions } from "../../src/functions";
import { CannotAnswer } from "../../src/measures/cannot-answer";

const named = (name: string): (typeof gridFunctions)[number] => {
  const found = gridFunctions.find((f) => f.name === name);
  if (!found) throw new Error(`no ${name}`);
  return found;
};

test("the grid gets every function, each with its arguments in order", () => {
  expect(gridFunctions.map((f) => f.name)).toEqual(
    functions.map((f) => f.name),
  );
  for (const [i, definition] of functions.entries())
    expect(gridFunctions[i]?.args.map((a) => a.name)).toEqual(
      Object.keys(definition.args),
    );
});

test("what may be left out and what takes a range is told to the grid", () => {
  expect(named("DENSITY").args.map((a) => [a.optional, a.range])).toEqual([
    [false, false],
    [true, false],
    [true, false],
  ]);
  expect(named("COST_TOTAL").args.map((a) => a.range)).toEqual([true, true]);
});

test("a blank is no zero: the refusal names what is needed", () => {
  expect(() => named("DENSITY").answer([null])).toThrow(CannotAnswer);
  expect(() => named("DENSITY").answer([null])).toThrow("needs brix");
});

test("an example gives in the grid's form what it gives anywhere", () => {
  const [example] = functions[0]?.examples ?? [];
  expect(gridFunctions[0]?.answer(example?.args ?? [])).toBeCloseTo(
    Number(example?.gives),
    5,
  );
});
