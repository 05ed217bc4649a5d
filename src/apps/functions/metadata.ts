import type { Definition } from "../../functions/define";
import type { CellTerm, Term } from "../../terms/term";

type Given = Term & { readonly otherwise?: number | string | undefined };

export interface ParameterMetadata {
  readonly name: string;
  readonly description: string;
  readonly type: "any" | "string" | "boolean";
  readonly dimensionality?: "matrix";
  readonly optional?: true;
}

export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl?: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly result: { readonly dimensionality?: "matrix" };
}

/** The custom-functions metadata Excel reads (functions.json), derived from the definitions; `help` is the page that lists them. */
export const metadata = (
  definitions: readonly Definition[],
  help?: string,
): { readonly functions: readonly FunctionMetadata[] } => ({
  functions: definitions.map((definition) => ({
    id: definition.name,
    name: definition.name,
    description: definition.summary,
    ...(help === undefined ? {} : { helpUrl: `${help}#${definition.name}` }),
    parameters: Object.entries(definition.args).map(([name, term]) =>
      parameter(name, term),
    ),
    result: definition.gives.spills ? { dimensionality: "matrix" } : {},
  })),
});

function parameter(name: string, term: Given): ParameterMetadata {
  return {
    name,
    description: description(term),
    type: type(term),
    ...(term.kind === "list" || term.kind === "rows"
      ? { dimensionality: "matrix" as const }
      : {}),
    ...("otherwise" in term ? { optional: true as const } : {}),
  };
}

// A quantity may be typed as text with its unit, and Excel would turn a blank given to a "number" into 0 and a number given
// to a "string" into text: "any" keeps them as they are.
const type = (term: Given): ParameterMetadata["type"] =>
  (term.kind === "text" && !term.keepsZeros) || term.kind === "choice"
    ? "string"
    : "any";

/** The longest text Excel's own schema allows to explain a parameter. */
const LONGEST = 128;

function description(term: Given): string {
  const said = capital(term.about);
  const whenLeftOut =
    "otherwise" in term && term.otherwise !== undefined
      ? `. Left out: ${term.otherwise}${typeof term.otherwise === "number" ? after(term) : ""}`
      : "";
  const fullestFirst = [
    `${said}${inUnits(term)}${whenLeftOut}.`,
    `${said}${inUnits(term)}.`,
    `${capital(inUnits(term).replace(/^[;:] /, ""))}.`,
  ];
  return (
    fullestFirst.find((text) => text.length <= LONGEST && text.length > 1) ??
    `${said.slice(0, LONGEST - 1)}…`
  );
}

function inUnits(term: Given): string {
  if (term.kind === "rows") {
    const columns = Object.values(term.columns).map(
      (column) => column.label.toLowerCase() + inBrackets(column),
    );
    return `; columns: ${columns.join(", ")}`;
  }
  if (term.kind === "list") return inBrackets(term.of);
  if (term.kind === "choice")
    return `: ${term.choices.map((choice) => `"${choice}"`).join(", ")}`;
  return inBrackets(term);
}

const inBrackets = (term: CellTerm): string => {
  const unit = unitOf(term);
  return unit === "" ? "" : ` (${unit})`;
};

const after = (term: Given): string =>
  term.kind === "quantity" && term.unit !== "" ? ` ${term.unit}` : "";

function unitOf(term: CellTerm): string {
  switch (term.kind) {
    case "share":
      return "a share, as 0.35 or 35 %";
    case "date":
      return "a date";
    case "yes or no":
      return "TRUE or FALSE";
    case "quantity":
    case "number":
      return term.unit;
    case "money":
      return term.unit === "" ? "money" : `money ${term.unit}`;
    default:
      return "";
  }
}

const capital = (words: string): string =>
  words.charAt(0).toUpperCase() + words.slice(1);
