import { argumentText } from "../../../../src/apps/pane/guide/argument-text";
import {
  emptyFillIn,
  formulaOf,
} from "../../../../src/apps/pane/guide/fill-in";
import { placeIn, type Cells } from "../../../../src/apps/pane/guide/reference";
import { functionNamed } from "../../../../src/functions";
import {
  choice,
  date,
  list,
  money,
  number,
  share,
  temperature,
  text,
  yesNo,
} from "../../../../src/terms/term";
import { opened } from "./book";

let cells: Cells;
beforeAll(async () => {
  ({ cells } = await opened());
});

const said = { label: "It", about: "it", example: "1" };
const pieces = number({ ...said, unit: "pieces" });
const perCent = number({ ...said, unit: "%" });
const cost = money({ ...said, unit: "each" });
const warm = temperature({ ...said, unit: "°F" });
const words = text(said);

// How a worksheet writes numbers, texts and references is the spreadsheet's own grammar, common to all of them.
test.each([
  ["a number", pieces, "1,224", "1224"],
  ["a number with a minus of its own", pieces, "−5", "-5"],
  [
    "a number with a decimal comma, for the function to refuse",
    pieces,
    "66,4",
    '"66,4"',
  ],
  ["a quantity without its unit", warm, " 185 ", "185"],
  ["a quantity with its unit", warm, "85 °C", '"85 °C"'],
  ["an amount of money", cost, "$2,744.50", "2744.5"],
  ["a share in per cent", share(said), "35 %", "35%"],
  ["a share as a fraction", share(said), "0.35", "0.35"],
  ["a figure in per cent", perCent, "75 %", "75"],
  ["a day", date(said), "2026-11-25", '"2026-11-25"'],
  ["a day as its number", date(said), "46351", "46351"],
  [
    "a choice",
    choice({ ...said, choices: ["oldest first"] }),
    "oldest first",
    '"oldest first"',
  ],
  ["yes", yesNo(said), "true", "TRUE"],
  ["text", words, "oldest first", '"oldest first"'],
  ["text of digits, whose zeros count", words, "012345", '"012345"'],
  ["text with quotes in it", words, 'the 12" pan', '"the 12"" pan"'],
  ["text in quotes, though it looks like a cell", words, '"L2"', '"L2"'],
  ["quotes inside quotes", words, '"a ""b"""', '"a ""b"""'],
  ["one value for a list", list(pieces, said), "12", "12"],
  ["a cell", pieces, "B1", "B1"],
  ["a cell of the same sheet", pieces, "Work!B1", "B1"],
  [
    "a cell of another sheet, named in any case",
    pieces,
    "'price BREAKS'!$B$2",
    "'Price breaks'!$B$2",
  ],
  [
    "a range",
    list(pieces, said),
    "'Price breaks'!A2:A4",
    "'Price breaks'!A2:A4",
  ],
  ["a column of a table", list(pieces, said), "Breaks[Price]", "Breaks[Price]"],
  ["a named cell", pieces, "house_brix", "house_brix"],
  ["arithmetic", pieces, "=B1*2 + 1", "B1*2 + 1"],
  ["nothing", pieces, "  ", ""],
])("%s", (_, term, typed, written) => {
  expect(argumentText(term, typed, cells)).toBe(written);
});

test.each([
  ["a sheet there is none of", "Nowhere!B1", "there is no sheet “Nowhere”"],
  [
    "arithmetic without an end",
    "=B1*",
    "It: “=B1*” is no worksheet arithmetic",
  ],
  [
    "a second formula after the first",
    '=1), HYPERLINK("x"',
    "is no worksheet arithmetic",
  ],
])("%s is refused with a sentence", (_, typed, sentence) => {
  expect(() => argumentText(pieces, typed, cells)).toThrow(sentence);
});

test("what looks like a name but is none counts as text", () => {
  expect(argumentText(words, "propane", cells)).toBe('"propane"');
  expect(argumentText(words, "Breaks[Weight]", cells)).toBe('"Breaks[Weight]"');
});

test("blanks in the middle stay as empty arguments, blanks at the end are dropped", () => {
  const density = functionNamed("DENSITY");
  if (!density) throw new Error("DENSITY is gone");
  expect(formulaOf(density, ["66.9", "", '"lb/gal"'])).toBe(
    '=SYRUP.DENSITY(66.9, , "lb/gal")',
  );
  expect(formulaOf(density, ["66.9", "", ""])).toBe("=SYRUP.DENSITY(66.9)");
  expect(formulaOf(density, ["", "", ""])).toBe("=SYRUP.DENSITY()");
  expect(emptyFillIn.typed).toEqual({});
});

test("the cell for the answer is one cell of a sheet there is", () => {
  expect(placeIn("B7", cells)).toEqual({ sheet: "Work", row: 6, column: 1 });
  expect(placeIn("'Price breaks'!D2", cells)).toEqual({
    sheet: "Price breaks",
    row: 1,
    column: 3,
  });
  expect(() => placeIn("B7:B9", cells)).toThrow("one cell is wanted");
  expect(() => placeIn("over there", cells)).toThrow("is no cell");
  expect(() => placeIn("Nowhere!A1", cells)).toThrow("there is no sheet");
});
