import type { Answer, Answers, Definition } from "../../../functions/define";
import { answerShown, type Grid } from "../../../functions/page-examples";
import type { CellPlace } from "../../../hosts/host";
import { CannotAnswer } from "../../../measures/cannot-answer";
import { argumentText } from "./argument-text";
import { explainCall, type CallShown } from "../why/call";
import { readFormula } from "../why/formula";
import type { Range } from "../why/surroundings";
import { formulaOf, type FillIn } from "./fill-in";
import { rangesIn, type Cells } from "./reference";

/** The call as it now stands: its formula, and its answer or what keeps it from one. */
export interface Preview {
  readonly formula: string;
  /** A sentence for each argument whose text cannot be written into a formula. */
  readonly troubles: Readonly<Record<string, string>>;
  /** Names of the arguments that must be given and are not. */
  readonly missing: readonly string[];
  /** Every rectangle of cells the formula reads. */
  readonly reads: readonly Range[];
  /** The call worked out; undefined while something is missing. */
  readonly call: CallShown | undefined;
  readonly gives: string | Grid | undefined;
  /** How many cells the answer fills, as far as is known. */
  readonly rows: number;
  readonly columns: number;
}

export async function previewOf(
  definition: Definition,
  fillIn: FillIn,
  cells: Cells,
): Promise<Preview> {
  const { texts, troubles, reads } = written(definition, fillIn, cells);
  const formula = formulaOf(definition, texts);
  const missing = Object.entries(definition.args).flatMap(([name, term], i) =>
    !("otherwise" in term) && texts[i] === "" && !(name in troubles)
      ? [name]
      : [],
  );
  const isWhole = missing.length === 0 && Object.keys(troubles).length === 0;
  const call = isWhole ? await workedOut(formula, cells) : undefined;
  const { answer, given = [] } = call ?? {};
  return {
    formula,
    troubles,
    missing,
    reads,
    call,
    gives:
      answer === undefined
        ? undefined
        : answerShown(definition, { args: given, gives: answer }),
    ...size(definition, answer),
  };
}

function written(
  { args }: Definition,
  fillIn: FillIn,
  cells: Cells,
): Pick<Preview, "troubles" | "reads"> & { readonly texts: readonly string[] } {
  const troubles: Record<string, string> = {};
  const reads: Range[] = [];
  const texts = Object.entries(args).map(([name, term]) => {
    const typed = fillIn.typed[name] ?? "";
    try {
      const text = argumentText(term, typed, cells);
      reads.push(...rangesIn(text, cells));
      return text;
    } catch (refusal) {
      if (!(refusal instanceof CannotAnswer)) throw refusal;
      troubles[name] = refusal.message;
      return "";
    }
  });
  return { texts, troubles, reads };
}

async function workedOut(
  formula: string,
  cells: Cells,
): Promise<CallShown | undefined> {
  const read = readFormula(formula);
  if (read?.kind !== "call") return undefined;
  const at: CellPlace = { sheet: cells.home, row: 0, column: 0 };
  return explainCall(read, at, cells);
}

function size(
  { gives }: Definition,
  answer: Answer | Answers | undefined,
): { readonly rows: number; readonly columns: number } {
  if (!Array.isArray(answer))
    return { rows: 1, columns: gives.spills?.length ?? 1 };
  const rows = answer as Answers;
  return { rows: rows.length, columns: rows[0]?.length ?? 1 };
}
