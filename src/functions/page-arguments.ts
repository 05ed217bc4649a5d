import type { CellTerm, OptionalCell, Term } from "../terms/term";
import type { Args, Definition } from "./define";
import { code, table } from "./page-markdown";

const HEADING = [
  "Argument",
  "Meaning",
  "Unit",
  "Allowed",
  "If left out",
  "Example",
];
const COLUMN_HEADING = [
  "Column",
  "Meaning",
  "Unit",
  "Allowed",
  "If blank",
  "Example",
];

/** What a page says of one argument, or of one column of its rows. What is to be typed stands in backticks. */
export interface ArgumentFacts {
  readonly name: string;
  readonly about: string;
  readonly unit: string;
  readonly allowed: string;
  readonly otherwise: string;
  readonly example: string;
  /** Of an argument that takes rows of several columns. */
  readonly columns: readonly ArgumentFacts[];
}

export const argumentFacts = ({ args }: Definition): readonly ArgumentFacts[] =>
  Object.entries(args).map(([name, term]) => ({
    ...facts(name, term, leftOut(term)),
    columns: term.kind === "rows" ? columnFacts(term.columns) : [],
  }));

/** The arguments as a table, and under it one more table for every argument that takes rows of several columns. */
export function argumentTables(definition: Definition): readonly string[] {
  const all = argumentFacts(definition);
  return [
    table(HEADING, all.map(row)),
    ...all
      .filter(({ columns }) => columns.length > 0)
      .map(
        ({ name, columns }) =>
          `The rows of ${code(name)} have these columns, in this order, with or without a heading row. Wholly blank rows are passed over.\n\n${table(COLUMN_HEADING, columns.map(row))}`,
      ),
  ];
}

const columnFacts = (
  columns: Readonly<Record<string, CellTerm | OptionalCell>>,
): readonly ArgumentFacts[] =>
  Object.entries(columns).map(([name, term]) => {
    const otherwise =
      "mayBeBlank" in term ? "counts as left out" : "the row is refused";
    return facts(name, term, otherwise);
  });

function facts(name: string, term: Term, otherwise: string): ArgumentFacts {
  const [unit, allowed] = measure(term);
  const { about } = term;
  return {
    name,
    about,
    unit,
    allowed,
    otherwise,
    example: example(term),
    columns: [],
  };
}

const row = (facts: ArgumentFacts): readonly string[] => [
  code(facts.name),
  facts.about,
  facts.unit,
  facts.allowed,
  facts.otherwise,
  facts.example,
];

/** Unit and what is allowed. */
function measure(term: Term): readonly [string, string] {
  switch (term.kind) {
    case "rows":
      return ["", "a range of rows"];
    case "list":
      return [
        measure(term.of)[0],
        `one column or row: ${measure(term.of)[1] || "any"}`,
      ];
    case "choice":
      return ["", term.choices.map((choice) => code(`"${choice}"`)).join(", ")];
    case "date":
      return ["day", 'a worksheet date or text like `"2026-11-25"`'];
    case "yes or no":
      return ["", "`TRUE` or `FALSE`"];
    case "text":
      return ["", term.keepsZeros ? "digits as text" : "any text"];
    case "share":
      return ["share", limits(term) || "any"];
    case "money":
      return [`money ${term.unit}`.trim(), limits(term) || "any"];
    default:
      return [term.unit, limits(term) || "any"];
  }
}

type Limited = Extract<
  Term,
  { kind: "share" | "money" | "number" | "quantity" }
>;

/** "0 to 85", "more than 0", "0 % to less than 100 %", "whole numbers, 1 or more". An exclusive limit is the narrower. */
function limits(term: Limited): string {
  const from =
    term.above !== undefined
      ? `more than ${shownLimit(term, term.above)}`
      : term.min !== undefined && shownLimit(term, term.min);
  const to =
    term.below !== undefined
      ? `less than ${shownLimit(term, term.below)}`
      : term.max !== undefined && shownLimit(term, term.max);
  const span =
    from && to
      ? `${from} to ${to}`
      : from
        ? `${from}${term.above === undefined ? " or more" : ""}`
        : to && `${to}${term.below === undefined ? " or less" : ""}`;
  const whole = term.kind === "number" && term.whole && "whole numbers";
  return [whole, span].filter(Boolean).join(", ");
}

const shownLimit = (term: Limited, limit: number): string =>
  term.kind === "share"
    ? `${Number((limit * 100).toPrecision(9))} %`
    : limit.toLocaleString("en-US", { maximumFractionDigits: 9 });

function leftOut(term: Args[string]): string {
  if (!("otherwise" in term)) return "required";
  if (term.otherwise === undefined) return "may be left out";
  return shownDefault(term, term.otherwise);
}

function shownDefault(term: Term, otherwise: number | string): string {
  if (typeof otherwise === "string") return code(`"${otherwise}"`);
  if (term.kind === "share") return `${otherwise * 100} %`;
  return term.kind === "quantity"
    ? `${otherwise} ${term.unit}`
    : String(otherwise);
}

const example = (term: Term): string =>
  term.kind === "rows" ||
  term.kind === "list" ||
  term.kind === "text" ||
  term.kind === "choice"
    ? code(term.example)
    : term.example;
