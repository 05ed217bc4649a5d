import type { CellFacts, CellPlace } from "../../../hosts/host";
import type { Term } from "../../../terms/term";
import { sentence } from "../sentence";
import { explainCall, type CallShown } from "./call";
import { readFormula, type Formula } from "./formula";
import { addressOf, labelOf } from "./labels";
import { columnTerm } from "./column-term";
import { dateTermFor, howToType, shown } from "./shown";
import {
  rangeOf,
  tableAt,
  type Range,
  type Surroundings,
} from "./surroundings";
import type { Value } from "./received";
import { isError } from "./value";
import { inWords, ourCallsOf, referencesOf } from "./words";

/** A cell that a formula uses. */
export interface Used {
  readonly address: string;
  readonly label?: string;
  readonly value: string;
  readonly isError: boolean;
  readonly place: CellPlace;
}

interface Titled {
  /** What the sheet calls the cell. */
  readonly label?: string;
}

/** Why a cell shows what it shows. */
export type Explanation = Titled &
  (
    | { readonly kind: "empty"; readonly hint: string }
    | {
        readonly kind: "typed";
        readonly value: string;
        /** What belongs here, from the column's term. */
        readonly means?: string;
      }
    | {
        readonly kind: "formula";
        readonly value: string;
        readonly formula: string;
        readonly words?: string;
        /** A sentence when the cell shows an error. */
        readonly problem?: string;
        readonly calls: readonly CallShown[];
        readonly uses: readonly Used[];
      }
  );

export async function explain(
  facts: CellFacts,
  around: Surroundings,
): Promise<Explanation> {
  const label = await labelOf({ ...facts, rows: 1, columns: 1 }, around);
  const titled = label === undefined ? {} : { label };
  const term = termAt(facts, around);
  if (facts.formula !== undefined)
    return {
      ...titled,
      ...(await formulaShown(facts, facts.formula, around)),
      value: shown(facts.value, term ?? dateTermFor(label)),
    };
  if (facts.value === null || facts.value === "") {
    const hint = term
      ? `This cell is blank. ${howToType(term)}`
      : "This cell is blank. Select a cell with a figure to see where it comes from.";
    // Beside a blank cell outside a table, the nearest words are likely another block's.
    return { ...(term ? titled : {}), kind: "empty", hint };
  }
  return {
    ...titled,
    kind: "typed",
    value: shown(facts.value, term),
    ...(term ? { means: howToType(term) } : {}),
  };
}

/** What belongs in a cell of a farm-book table, from the column's own declaration. */
function termAt(at: CellPlace, around: Surroundings): Term | undefined {
  const table = tableAt(at, around.tables);
  const heading = table?.headings[at.column - table.column];
  if (!table || heading === undefined || at.row === table.row) return undefined;
  const rowName = table.rows[at.row - table.row - 1]?.[0];
  return columnTerm(table.name, heading, rowName);
}

async function formulaShown(
  facts: CellFacts,
  formula: string,
  around: Surroundings,
): Promise<Extract<Explanation, { kind: "formula" }>> {
  const base = { kind: "formula" as const, formula, value: shown(facts.value) };
  const read = readFormula(formula);
  if (!read)
    return { ...base, ...problemOf(facts, [], []), calls: [], uses: [] };
  const references = await Promise.all(
    referencesOf(read).map(async (reference) => {
      const range = rangeOf(reference, facts, around);
      const used = range && (await usedCell(range, facts.sheet, around));
      return { reference, used };
    }),
  );
  const labels = new Map(
    references.map(({ reference, used }) => [reference.text, used?.label]),
  );
  const calls = await Promise.all(
    ourCallsOf(read).map((call) => explainCall(call, facts, around)),
  );
  // A refusal in a branch the formula did not take is no news about this cell.
  const known = calls.flatMap((call) =>
    call && (!call.refusal || isError(facts.value)) ? [call] : [],
  );
  const uses = references.flatMap(({ used }) => (used ? [used] : []));
  return {
    ...base,
    ...problemOf(facts, known, uses),
    words: inWords(read, (reference: Formula) => labels.get(reference.text)),
    calls: known,
    uses: uses.filter((use) => !isArgument(use, known)),
  };
}

/** What is an argument of one of our calls is already told there. */
const isArgument = (use: Used, calls: readonly CallShown[]): boolean =>
  calls.some(({ args }) => args.some(({ text }) => text === use.address));

async function usedCell(
  range: Range,
  here: string,
  around: Surroundings,
): Promise<Used> {
  const { sheet, row, column, rows, columns } = range;
  const [label, cells] = await Promise.all([
    labelOf(range, around),
    around.host.readArea(sheet, row, column, rows, columns),
  ]);
  const single = rows === 1 && columns === 1;
  const value: Value = single ? (cells[0]?.[0] ?? null) : cells;
  return {
    address: addressOf(range, here),
    ...(label === undefined ? {} : { label }),
    value: shown(value, dateTermFor(label)),
    isError: cells.flat().some((cell) => isError(cell)),
    place: { sheet, row, column },
  };
}

const meanings: Readonly<Record<string, string>> = {
  "#DIV/0!": "It divides by a cell that is zero or blank.",
  "#N/A": "There is no answer: something it looks for is not there.",
  "#VALUE!":
    "It was given something it cannot work with, such as text where a number belongs.",
  "#REF!": "It points at cells that have been deleted.",
  "#NAME?": "It uses a name or function that this workbook does not know.",
  "#NUM!": "The figures lead to no ordinary number.",
  "#NULL!": "Two ranges in it do not meet.",
  "#SPILL!": "Its answer needs more cells, and some of them are not empty.",
};

/** The host's own sentence counts first; then the first of our calls that refuses; then where the error comes from. */
function problemOf(
  facts: CellFacts,
  calls: readonly CallShown[],
  uses: readonly Used[],
): { readonly problem?: string } {
  if (!isError(facts.value)) return {};
  const refusal = facts.refusal ?? calls.find((c) => c.refusal)?.refusal;
  if (refusal !== undefined) return { problem: sentence(refusal) };
  const from = uses.filter((use) => use.isError);
  if (from.length > 0)
    return {
      problem: `The error comes from ${from.map((use) => (use.label ? `${use.label} (${use.address})` : use.address)).join(" and ")}. Go there to see why.`,
    };
  return {
    problem: meanings[facts.value.error] ?? "The formula gives an error.",
  };
}
