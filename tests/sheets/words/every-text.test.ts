import { tableList } from "../../../src/book/book";
import { readBook } from "../../../src/book/read";
import { as, type Kilograms } from "../../../src/measures/quantity";
import {
  audienceNames,
  noTicks,
  tryRule,
} from "../../../src/sheets/handover/audiences";
import { copyFor } from "../../../src/sheets/handover/copy";
import { tableAllowed } from "../../../src/sheets/handover/cut-tables";
import { figuresOf } from "../../../src/sheets/handover/figures";
import type { SheetToCopy } from "../../../src/sheets/handover/sheet-to-copy";
import { type Topic, topics } from "../../../src/sheets/handover/topics";
import { billOfLading } from "../../../src/sheets/papers/bill-of-lading";
import { type PaperFacts, paperFacts } from "../../../src/sheets/papers/facts";
import { toteCodes } from "../../../src/sheets/papers/tote-codes";
import { toteLabel } from "../../../src/sheets/papers/tote-label";
import { weightTicket } from "../../../src/sheets/papers/weight-ticket";
import {
  type Entry,
  entriesOf,
  type Part,
} from "../../../src/sheets/words/entries";
import { inFrench, literalInFrench } from "../../../src/sheets/words/french";
import { hasHoles, phraseOf, piecesOf } from "../../../src/sheets/words/phrase";
import { demoTables } from "../../book/csv-folder";
import { rolledTables } from "../../support/rolled-season";
import { rowNames } from "./explained";
import { everySheet, literalsIn, shownTexts, textsIn } from "./shown-texts";

const contents = demoTables();
const { sheets, workbook: live } = everySheet(contents);
// A book made by a season's roll says more; two of its products say all of that.
const rolled = everySheet(
  rolledTables().map((table) =>
    table.name === "Products"
      ? {
          ...table,
          rows: table.rows.filter(([code]) =>
            ["P250-LOFT", "B250-OAK"].includes(String(code)),
          ),
        }
      : table,
  ),
);
const shown = shownTexts([...sheets, ...rolled.sheets]);
const shows: readonly Topic[] = Object.keys(topics) as Topic[];

/** Copies as they are laid out when every cell holds something: titles, notes, feet, what may be typed. */
const copies = [
  ...audienceNames.map((audience) => ({ audience, show: shows })),
  { audience: "partner" as const, show: [] },
].map(({ audience, show }) =>
  copyFor({
    contents,
    audience,
    ticks: { ...noTicks, show },
    farm: "Fernkettle Hollow Packing",
    day: "2026-11-20",
    otherFigures: [],
    sheets: sheets
      .filter(
        ({ kind, product }, i) =>
          (kind !== "totes" || show.length > 0) &&
          (product === "P250-LOFT" ||
            sheets.findIndex((one) => one.kind === kind) === i),
      )
      .map((sheet): SheetToCopy => ({ ...sheet, valueAt: () => 1 })),
  }),
);

/** The book's own choices that a copy may carry in a table or show on a sheet. */
const choices = tableList.flatMap(([, { name, columns }]) =>
  Object.values(columns).flatMap(({ heading, term }) =>
    term.kind === "choice" &&
    (tableAllowed("partner", { ...noTicks, show: shows })(name, heading) ||
      ["Lots", "Overheads", "ToteShipments"].includes(name))
      ? term.choices
      : [],
  ),
);

const typed = new Set(
  contents.flatMap(({ rows }) => rows.flat().map((cell) => String(cell ?? ""))),
);

/** Compared with the book's own words or joined to one, and never shown. */
const matched = new Set([
  " price",
  "Heat in ",
  "percent",
  "average",
  "oldest first",
  "Oak",
  "aging",
  "kept",
  "yyyy-mm-dd",
  "Breakage",
  "lots bought",
  "hours of a line",
  "bottles of the newest run",
  "Brix of the newest run",
]);

const isPlain = (text: string): boolean => !/\p{L}/u.test(text);

test("every label, unit, hint and heading that anybody may be shown has French", () => {
  expect(shown.layout.size).toBeGreaterThan(200);
  expect(
    [...shown.layout].filter(
      (text) =>
        !isPlain(text) &&
        inFrench("layout", text) === undefined &&
        inFrench("said", text) === undefined,
    ),
  ).toEqual([]);
});

test("everything a formula may say has French; the rest is looked up in the book", () => {
  const french = new Set(
    entriesOf("said").flatMap(({ en }) => [en, ...piecesOf(en)]),
  );
  expect(shown.literals.size).toBeGreaterThan(50);
  expect(
    [...shown.literals].filter(
      (text) =>
        !isPlain(text) &&
        !french.has(text) &&
        !typed.has(text) &&
        !rowNames.has(text) &&
        !matched.has(text),
    ),
  ).toEqual([]);
});

test("everything else of a finished copy has French", () => {
  const texts = copies.flatMap(({ workbook }) => textsIn(workbook));
  const missing = texts.filter(
    ({ text }) =>
      !isPlain(text) &&
      !typed.has(text) &&
      (["sheets", "layout", "said"] as const).every(
        (part) => inFrench(part, text) === undefined,
      ),
  );
  expect(missing).toEqual([]);
});

test("every choice of the book that a copy may show has French", () => {
  expect(choices.length).toBeGreaterThan(15);
  expect(
    choices.filter(
      (choice) =>
        inFrench("said", choice) === undefined && !/^[A-Z]{3}$/.test(choice),
    ),
  ).toEqual([]);
});

/** The papers of a tote, with nothing left out and with as much left out as may be. */
const papers = (): readonly string[] => {
  const { book } = readBook(contents);
  const whole = paperFacts(book, "T-044");
  const {
    billOfLading: _,
    toteKind: __,
    ...row
  } = { ...whole.ticket.row, sourceLots: undefined };
  const bare: PaperFacts = {
    farm: "",
    load: [],
    ticket: {
      ...whole.ticket,
      row: row as unknown as PaperFacts["ticket"]["row"],
      buyer: "",
      gallons: undefined,
      lots: [],
      net: as<Kilograms>(1320),
    },
  };
  const draw = (): string => "";
  return [
    weightTicket(whole),
    weightTicket(bare),
    billOfLading(whole),
    billOfLading(paperFacts(book, "T-043")),
    toteLabel(whole, toteCodes(whole), draw),
  ].flatMap(({ name, page }) => [
    name.replace(/-(T|BOL)-\d+$/, ""),
    page
      .replace(/<style>[\s\S]*?<\/style>/, "")
      .replace(/<[^>]+>/g, "\n")
      .replace(/&#(\d+);/g, (__, code: string) =>
        String.fromCharCode(Number(code)),
      ),
  ]);
};

describe("no text stands in the words that nothing shows", () => {
  const unused = (
    part: Part,
    isUsed: (entry: Entry) => boolean,
  ): readonly string[] =>
    entriesOf(part)
      .filter((entry) => !isUsed(entry))
      .map(({ en }) => en);
  const fits =
    (texts: readonly string[]) =>
    (entry: Entry): boolean =>
      hasHoles(entry)
        ? texts.some(
            (text) => phraseOf(entry).french(text, (one) => one) !== undefined,
          )
        : texts.includes(entry.en);

  test("names of sheets", () => {
    const names = copies.flatMap(({ workbook }) =>
      workbook.sheets.map(({ name }) => name),
    );
    expect(unused("sheets", fits(names))).toEqual([]);
  });

  test("labels, units, hints, headings, notes and feet", () => {
    const texts = [
      ...shown.layout,
      ...sheets.flatMap(({ kind, placed }) => [
        ...figuresOf(placed).flatMap(
          ({ name }) => tryRule(kind, name)?.says ?? [],
        ),
        // A quote's page goes out whole, with its notes.
        ...placed.description.blocks.flatMap((block) =>
          kind === "quote" && block.kind === "notes" ? block.lines : [],
        ),
      ]),
      ...copies.flatMap(({ workbook }) =>
        textsIn(workbook).flatMap(({ text }) => [
          text,
          ...text.split(/ · figures|, for |\. Figures|: a copy for /),
        ]),
      ),
      ...tableList.flatMap(([, { name, columns }]) =>
        Object.values(columns)
          .map(({ heading }) => heading)
          .filter((heading) =>
            tableAllowed("partner", { ...noTicks, show: shows })(name, heading),
          ),
      ),
    ];
    expect(unused("layout", fits(texts))).toEqual([]);
  });

  test("what formulas and the book's choices say", () => {
    const lines = [...typed].filter((text) => text.endsWith("-line hours"));
    const texts = [
      ...shown.literals,
      ...choices,
      ...lines,
      // What sheets behind a copy say, and what they start with.
      ...[live, ...copies.map(({ workbook }) => workbook)].flatMap((book) =>
        [...literalsIn(book), ...textsIn(book)].map(({ text }) => text),
      ),
    ];
    expect(
      unused(
        "said",
        (entry) =>
          fits(texts)(entry) ||
          (hasHoles(entry) &&
            piecesOf(entry.en).every(
              (piece) => isPlain(piece) || shown.literals.has(piece),
            )),
      ),
    ).toEqual([]);
  });

  test("papers", () => {
    const lines = papers().flatMap((text) =>
      text.split("\n").map((line) => line.trim()),
    );
    const inner = lines.flatMap((line) => [
      line.split(", ")[0] ?? "",
      /^Bar code left off: needs (.*)\.$/.exec(line)?.[1] ?? "",
    ]);
    expect(unused("papers", fits([...lines, ...inner]))).toEqual([]);
  });
});

test("a literal that is no text of ours stays", () => {
  expect(literalInFrench("Hold loss")).toBe("Hold loss");
});
