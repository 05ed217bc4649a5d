import { tableList } from "../../../src/book/book";
import { tableAllowed } from "../../../src/sheets/handover/cut-tables";
import { topics, type Topic } from "../../../src/sheets/handover/topics";
import { canadaClassWords } from "../../../src/standards/canada-label-words";
import { piecesOf } from "../../../src/sheets/words/phrase";
import { entriesOf, type Part } from "../../../src/sheets/words/entries";

const parts: readonly Part[] = ["sheets", "layout", "said", "papers"];
const every = parts.flatMap((part) =>
  entriesOf(part).map((entry) => ({ part, ...entry })),
);

const repeated = (texts: readonly string[]): readonly string[] =>
  texts.filter((text, i) => texts.indexOf(text) !== i);

test("every text has both languages", () => {
  expect(every.length).toBeGreaterThan(350);
  expect(
    every.filter(({ en, fr }) => en.trim() === "" || fr.trim() === ""),
  ).toEqual([]);
});

test.each(parts)("a text of %s is said once", (part) => {
  expect(repeated(entriesOf(part).map(({ en }) => en))).toEqual([]);
});

test("holes are the same and in the same order, so that the pieces of a formula fit", () => {
  const holes = (text: string): readonly string[] =>
    [...text.matchAll(/\{[^}]*\}/g)].map(([hole]) => hole);
  expect(
    every.filter(({ en, fr }) => String(holes(en)) !== String(holes(fr))),
  ).toEqual([]);
});

test("a piece of a formula has one French form, and keeps the spaces it joins with", () => {
  const pieces = new Map<string, Set<string>>();
  for (const { en, fr } of entriesOf("said"))
    piecesOf(en).forEach((piece, i) => {
      const french = piecesOf(fr)[i] ?? "";
      pieces.set(piece, (pieces.get(piece) ?? new Set()).add(french));
    });
  expect([...pieces].filter(([, french]) => french.size > 1)).toEqual([]);
  const loses = (piece: string, french: string, space: RegExp): boolean =>
    space.test(piece) && !space.test(french);
  expect(
    [...pieces].filter(([piece, [french = ""]]) =>
      [/^\s/, /\s$/].some((space) => loses(piece, french, space)),
    ),
  ).toEqual([]);
});

test("signs that French sets off stand behind a space that does not break", () => {
  expect(
    every.filter(({ fr }) =>
      / [:%»]|« |\S:(?!words|number)\s/.test(fr.replace(/\u00a0:/g, "")),
    ),
  ).toEqual([]);
});

/** Columns of the book a copy may carry rows of when everything is shown. */
const carried = tableList.flatMap(([, { name, columns }]) =>
  Object.values(columns)
    .filter(({ heading }) =>
      tableAllowed("partner", {
        hide: [],
        show: Object.keys(topics) as Topic[],
        mayStand: [],
      })(name, heading),
    )
    .map(({ heading, term }) => ({ name, heading, term })),
);
const layout = new Map(entriesOf("layout").map(({ en, fr }) => [en, fr]));

test("a heading of a table has French, and is called what its term is called", () => {
  expect(carried.length).toBeGreaterThan(15);
  const unlike = carried.flatMap(({ name, heading, term }) => {
    const french = layout.get(heading);
    return french !== undefined &&
      (heading !== term.label ||
        term.french === undefined ||
        french === term.french)
      ? []
      : [`${name}, ${heading}: ${french}, but its term says ${term.french}`];
  });
  expect(unlike).toEqual([]);
});

test("headings of tables keep to letters, digits, spaces, % and °, and differ within a table", () => {
  const french = carried.map(({ name, heading }) => ({
    name,
    heading: layout.get(heading) ?? heading,
  }));
  expect(
    french.filter(({ heading }) => !/^[\p{L}\d %°]+$/u.test(heading)),
  ).toEqual([]);
  expect(
    repeated(french.map(({ name, heading }) => `${name}, ${heading}`)),
  ).toEqual([]);
});

test("colour classes are called what a Canadian label calls them", () => {
  const said = new Map(entriesOf("said").map(({ en, fr }) => [en, fr]));
  for (const [name, [, french]] of Object.entries(canadaClassWords))
    expect(french.split(",")[0]).toBe(said.get(name));
});
