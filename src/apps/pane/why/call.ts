import { explained } from "../../../functions/answer";
import type {
  Answer,
  Answers,
  Args,
  Definition,
} from "../../../functions/define";
import { CannotAnswer } from "../../../measures/cannot-answer";
import type { CellPlace } from "../../../hosts/host";
import type { Term } from "../../../terms/term";
import type { Formula } from "./formula";
import { addressOf } from "./labels";
import { howToType, shown } from "./shown";
import { rangeOf, type Surroundings } from "./surroundings";
import type { Value } from "./received";
import { ourFunction, valueOfArgument } from "./value";

export interface ArgumentShown {
  readonly label: string;
  /** The formula's own text of this argument, or that it was left out. */
  readonly text: string;
  readonly value: string;
  readonly unit: string;
  readonly place?: CellPlace;
}

/** One call of one of our functions, worked out in the pane for the person who asks why. */
export interface CallShown {
  readonly definition: Definition;
  /** The line of arithmetic, where every argument could be read and there is an answer. */
  readonly line?: string;
  readonly answer?: Answer | Answers;
  readonly refusal?: string;
  /** What to type instead, a sentence for each argument the refusal names. */
  readonly instead: readonly string[];
  readonly args: readonly ArgumentShown[];
  /** What the function was given, where all of it could be read. */
  readonly given?: readonly Value[];
}

type Call = Extract<Formula, { kind: "call" }>;

export async function explainCall(
  call: Call,
  at: CellPlace,
  around: Surroundings,
): Promise<CallShown | undefined> {
  const definition = ourFunction(call.name);
  if (!definition) return undefined;
  const read = await Promise.all(
    call.args.map((arg) => valueOfArgument(arg, at, around)),
  );
  const args = Object.entries(definition.args).map(([, term], i) =>
    shownArgument(term, call.args[i], read[i]?.value, at, around),
  );
  const base = { definition, args, instead: [] };
  if (read.some((known) => known === undefined)) return base;
  const given = read.map((known) => known?.value ?? null);
  try {
    const { answer, why } = explained(definition, given);
    return { ...base, given, line: why, answer };
  } catch (refusal) {
    if (!(refusal instanceof CannotAnswer)) throw refusal;
    const sentence = refusal.message;
    return {
      ...base,
      given,
      refusal: sentence,
      instead: whatInstead(definition, sentence),
    };
  }
}

function shownArgument(
  term: Args[string],
  arg: Formula | undefined,
  value: Value | undefined,
  at: CellPlace,
  around: Surroundings,
): ArgumentShown {
  const unit = unitOf(term);
  if (!arg)
    return {
      label: term.label,
      text: "left out",
      value: counted(term),
      unit: "",
    };
  const range = rangeOf(arg, at, around);
  return {
    label: term.label,
    text: range ? addressOf(range, at.sheet) : arg.text,
    value: shown(value, term),
    unit: typeof value === "number" ? unit : "",
    ...(range
      ? { place: { sheet: range.sheet, row: range.row, column: range.column } }
      : {}),
  };
}

function counted(term: Args[string]): string {
  if (!("otherwise" in term)) return "missing";
  return term.otherwise === undefined
    ? "not used"
    : `counts as ${shown(term.otherwise, term)}${typeof term.otherwise === "number" && unitOf(term) ? ` ${unitOf(term)}` : ""}`;
}

const unitOf = (term: Term): string => ("unit" in term ? term.unit : "");

/** The sentence names its arguments; their terms say what to type. */
function whatInstead(
  definition: Definition,
  sentence: string,
): readonly string[] {
  const lower = sentence.toLowerCase();
  return Object.entries(definition.args)
    .filter(([name]) => {
      const words = name.replaceAll("_", " ").toLowerCase();
      return (
        lower.startsWith(`${words}:`) ||
        lower.startsWith(`${words},`) ||
        lower.startsWith(`needs ${words}`)
      );
    })
    .map(([, term]) => howToType(term));
}
