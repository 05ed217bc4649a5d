import fc from "fast-check";
import { functions } from "../../src/functions";
import { CannotAnswer } from "../../src/measures/cannot-answer";
import { readArgument } from "../../src/functions/read-argument";
import {
  date,
  list,
  listWithBlanks,
  mass,
  mayBeBlank,
  money,
  number,
  optional,
  rows,
  share,
  temperature,
  text,
  yesNo,
  choice,
} from "../../src/terms/term";
import { anyArguments } from "../support/any-argument";

const said = { label: "Label", about: "what it is", example: "1" };
const tare = mass({ ...said, unit: "lb", min: 0 });
const fill = temperature({
  ...said,
  unit: "°F",
  min: 32,
  max: 212,
  beyondIsUnanswerable: true,
});
const refusal = (read: () => unknown): CannotAnswer => {
  try {
    read();
  } catch (error) {
    if (error instanceof CannotAnswer) return error;
    throw error;
  }
  throw new Error("nothing was refused");
};

describe("a blank is never zero", () => {
  test.each([[null], [undefined], [""], ["  "], [[[null]]], [[[""], [null]]]])(
    "%j",
    (blank) => {
      const refused = refusal(() => readArgument(tare, blank, "tare"));
      expect([refused.code, refused.message]).toEqual([
        "#VALUE!",
        "needs tare",
      ]);
    },
  );

  test("a blank optional argument counts as what it says it does", () => {
    expect(readArgument(optional(fill, 68), null, "temperature")).toBeCloseTo(
      20,
      12,
    );
    expect(
      readArgument(optional(tare, undefined), null, "tare"),
    ).toBeUndefined();
    expect(readArgument(optional(tare, 0), "2 kg", "tare")).toBe(2);
  });

  test("a zero is a zero", () => {
    expect(readArgument(tare, 0, "tare")).toBe(0);
  });
});

describe("limits", () => {
  test("outside a published table there is no answer; a wrong figure cannot be used", () => {
    const hot = refusal(() => readArgument(fill, 260, "fill_temperature"));
    expect([hot.code, hot.message]).toEqual([
      "#N/A",
      "fill temperature: 260 °F is above 212 °F",
    ]);
    const negative = refusal(() => readArgument(tare, -3, "tare"));
    expect([negative.code, negative.message]).toEqual([
      "#VALUE!",
      "tare: -3 lb is below 0 lb",
    ]);
  });

  test("a value exactly at a limit passes, in either unit", () => {
    expect(readArgument(fill, 212, "t")).toBeCloseTo(100, 12);
    expect(readArgument(fill, "100 °C", "t")).toBeCloseTo(100, 12);
    expect(readArgument(fill, "0 °C", "t")).toBeCloseTo(0, 12);
    expect(readArgument(fill, 32, "t")).toBeCloseTo(0, 12);
  });

  test("exclusive limits and shares say what is allowed", () => {
    const bottle = mass({ ...said, unit: "lb", above: 0 });
    expect(() => readArgument(bottle, 0, "bottle")).toThrow(
      "bottle: 0 lb must be more than 0 lb",
    );
    const loss = share({ ...said, below: 1 });
    expect(() => readArgument(loss, 1, "loss")).toThrow(
      "loss: 100 % must be less than 100 %",
    );
    expect(() => readArgument(loss, -0.07, "loss")).toThrow(
      "loss: -7 % is below 0 %",
    );
  });
});

describe("cells that hold something else", () => {
  test.each([
    [true, "tare: TRUE is not a number"],
    [Number.NaN, "tare: not an ordinary number"],
    [1e308, "tare: not an ordinary number"],
    [{ error: "#REF!" }, "tare: the cell holds the error #REF!"],
    [[[1], [2]], "tare: one value is wanted, not 2 cells"],
  ])("%j", (raw, sentence) => {
    expect(() => readArgument(tare, raw, "tare")).toThrow(sentence);
  });

  test("a range of one cell is that cell", () => {
    expect(readArgument(tare, [[10]], "tare")).toBeCloseTo(4.5359237, 9);
  });

  test("a choice is taken in any case and refused with the list", () => {
    const unit = choice({ ...said, choices: ["lb", "kg"] });
    expect(readArgument(unit, " KG ", "unit")).toBe("kg");
    expect(() => readArgument(unit, "stone", "unit")).toThrow(
      'unit: "stone" is not one of "lb", "kg"',
    );
  });

  test("yes or no, money, whole numbers and text", () => {
    expect(readArgument(yesNo(said), "Yes", "organic")).toBe(true);
    expect(readArgument(yesNo(said), false, "organic")).toBe(false);
    expect(() => readArgument(yesNo(said), "maybe", "organic")).toThrow(
      /neither yes nor no/,
    );
    expect(
      readArgument(money({ ...said, unit: "per lb" }), "$2,744.50", "price"),
    ).toBe(2744.5);
    expect(() =>
      readArgument(money({ ...said, unit: "per lb" }), "1e400", "price"),
    ).toThrow('price: "1e400" is too large a number');
    expect(() =>
      readArgument(number({ ...said, unit: "", whole: true }), 1.5, "heads"),
    ).toThrow("heads: 1.5 is not a whole number");
    expect(readArgument(text(said), 123, "lot")).toBe("123");
  });
});

describe("ranges", () => {
  const lots = rows(
    {
      name: text(said),
      weight: tare,
      price: mayBeBlank(money({ ...said, unit: "per lb" })),
    },
    said,
  );

  test("wholly blank rows are skipped, a heading row is known by its words", () => {
    const given = [
      ["Lot", "Weight", "Price"],
      ["A", 10, 2],
      [null, "", null],
      ["B", "5 kg", null],
    ];
    expect(readArgument(lots, given, "lots")).toEqual([
      { name: "A", weight: expect.closeTo(4.5359237, 9), price: 2 },
      { name: "B", weight: 5, price: undefined },
    ]);
  });

  test("a half-filled row is an error that names the row and the column", () => {
    expect(() =>
      readArgument(
        lots,
        [
          ["Lot", "Weight", "Price"],
          ["A", 10, 2],
          ["B", null, 2],
        ],
        "lots",
      ),
    ).toThrow("lots, row 3: needs weight");
    expect(() => readArgument(lots, [["A", -1, 2]], "lots")).toThrow(
      "lots, row 1, weight: -1 lb is below 0 lb",
    );
  });

  test("too few or too many columns are refused with the columns wanted", () => {
    expect(() => readArgument(lots, [["A"]], "lots")).toThrow(
      "lots: 3 columns are wanted (name, weight, price), not 1",
    );
    expect(() => readArgument(lots, [["A", 1, 2, 3]], "lots")).toThrow(/not 4/);
  });

  test("a list is one row or one column, with or without blanks and heading", () => {
    const amounts = number({ ...said, unit: "" });
    expect(
      readArgument(
        list(amounts, said),
        [["amount"], [1], [null], [3]],
        "amounts",
      ),
    ).toEqual([1, 3]);
    expect(readArgument(list(amounts, said), [[1, 2, 3]], "amounts")).toEqual([
      1, 2, 3,
    ]);
    expect(
      readArgument(
        listWithBlanks(amounts, said),
        [[1], [null], [3]],
        "amounts",
      ),
    ).toEqual([1, undefined, 3]);
    expect(() =>
      readArgument(
        list(amounts, said),
        [
          [1, 2],
          [3, 4],
        ],
        "amounts",
      ),
    ).toThrow("amounts: one column or one row is wanted");
    expect(() =>
      readArgument(list(amounts, said), [[1], ["66,4"]], "amounts"),
    ).toThrow(/amounts, item 2: "66,4" looks like 66\.4/);
  });

  test("a date is read in a range as elsewhere", () => {
    const dated = rows(
      { from: date(said), price: money({ ...said, unit: "" }) },
      said,
    );
    expect(() =>
      readArgument(
        dated,
        [
          ["from", "price"],
          ["03/04/2026", 2],
        ],
        "prices",
      ),
    ).toThrow(/prices, row 2, from: "03\/04\/2026" could be/);
  });
});

describe("a plain number is read like the same number with its unit", () => {
  const quantities = functions.flatMap(({ name, args }) =>
    Object.entries(args).flatMap(([argument, term]) =>
      term.kind === "quantity" && term.unit !== ""
        ? [{ name, argument, term }]
        : [],
    ),
  );

  test.each(quantities)("$name, $argument", ({ argument, term }) => {
    const figures = fc.sample(anyArguments({ [argument]: term }), {
      seed: 3,
      numRuns: 50,
    });
    for (const [figure] of figures) {
      if (figure === null) continue;
      const plain = Number(readArgument(term, figure, argument));
      const said = Number(
        readArgument(term, `${String(figure)} ${term.unit}`, argument),
      );
      expect(Math.abs(plain - said)).toBeLessThanOrEqual(
        1e-12 * Math.max(1, Math.abs(said)),
      );
    }
  });
});
