import { readBook } from "../../../src/book/read";
import { billOfLading } from "../../../src/sheets/papers/bill-of-lading";
import { paperFacts } from "../../../src/sheets/papers/facts";
import { toteCodes } from "../../../src/sheets/papers/tote-codes";
import { toteLabel } from "../../../src/sheets/papers/tote-label";
import { weightTicket } from "../../../src/sheets/papers/weight-ticket";
import { entriesOf } from "../../../src/sheets/words/entries";
import { demoTables } from "../../book/csv-folder";

const { book } = readBook(demoTables());
const facts = paperFacts(book, "T-044");
const draw = (): string => "";

/** What a person reads on a page, text by text. */
const texts = (page: string): readonly string[] =>
  page
    .replace(/<style>[\s\S]*?<\/style>/, "")
    .replace(/<[^>]+>/g, "\n")
    .replace(/&#(\d+);/g, (_, code: string) =>
      String.fromCharCode(Number(code)),
    )
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");

const pages = [
  ["weight ticket", weightTicket(facts, "fr"), weightTicket(facts)],
  ["bill of lading", billOfLading(facts, "fr"), billOfLading(facts)],
  [
    "tote label",
    toteLabel(facts, toteCodes(facts), draw, "fr"),
    toteLabel(facts, toteCodes(facts), draw),
  ],
] as const;

test.each(pages)(
  "the %s is in French and keeps what was typed",
  (_, french, english) => {
    expect(french.page).toContain('<html lang="fr">');
    const shown = new Set(texts(french.page));
    // Where both languages write a word alike, it is French as well.
    const alike = new Set(
      entriesOf("papers").flatMap(({ en, fr }) => (en === fr ? [en] : [])),
    );
    const left = texts(english.page).filter(
      (text) => shown.has(text) && /[a-z]{3}/i.test(text) && !alike.has(text),
    );
    expect(left.filter((text) => !TYPED.includes(text))).toEqual([]);
    expect(texts(french.page)).toHaveLength(texts(english.page).length);
  },
);

/** Names of the demo farm, and codes. */
const TYPED = [
  "Fernkettle Hollow Packing",
  "Larkspindle Foods (Canada)",
  "BOL-026",
  "T-044",
  "C-2603",
];

test("weights, volumes and Brix are written the French way", () => {
  // Source: tote_shipments.csv, row T-044; kilograms: 2,912 × 0.45359237 = 1,320.86.
  const shown = texts(weightTicket(facts, "fr").page);
  for (const text of [
    "Bon de pesée",
    "3\u00a0047 lb",
    "2\u00a0912 lb",
    "1\u00a0320,9 kg",
    "65,9 °Bx",
    "264,13 gal US",
    "26-04 (1\u00a0913 lb), 26-05 (999 lb)",
    "neuve",
    "2026-11-19",
  ])
    expect(shown).toContain(text);
});

test("a name that is a word of ours stays as it was typed", () => {
  const named = {
    ...facts,
    farm: "Net",
    ticket: { ...facts.ticket, buyer: "Lots" },
  };
  const shown = texts(weightTicket(named, "fr").page);
  expect(shown).toContain("Net");
  expect(shown.filter((text) => text === "Lots")).toHaveLength(2);
});

test("files are named in French, and what a label lacks is said in French", () => {
  expect(pages.map(([, { name }]) => name)).toEqual([
    "bon-de-pesee-T-044",
    "connaissement-BOL-026",
    "etiquette-de-citerne-T-044",
  ]);
  expect(texts(pages[2][1].page)).toContain(
    "Code à barres omis\u00a0: il faut un numéro d'article, pour le poids net et le lot.",
  );
});
