import { changeCode, formulaPieces } from "./formula-pieces";
import { futurePrefix } from "./future-functions";

const called = /(?<![\w.\\])([A-Za-z_][\w.]*)(?=\()/g;
const name = /(?<![\w.\\])[A-Za-z_\\][\w.\\?]*/g;

/** A formula as a file stores it: no "=", our functions and the younger worksheet functions under their stored names. */
export function formulaInFile(formula: string): string {
  const body = formula.replace(/^=/, "");
  const local = localNames(body);
  return changeCode(body, (code) => {
    const renamed = code.replace(called, (given) => storedName(given));
    return local.size === 0
      ? renamed
      : renamed.replace(name, (given) =>
          local.has(given.toUpperCase()) ? `_xlpm.${given}` : given,
        );
  });
}

/** The formula of a file as a person writes it, with "=". Names of functions nobody here knows stay as stored. */
export const formulaFromFile = (stored: string): string =>
  `=${changeCode(stored, (code) =>
    code
      .replace(
        /_xldudf_SYRUP_(\w+)(?=\()/gi,
        (_, ours: string) => `SYRUP.${ours.toUpperCase()}`,
      )
      .replace(
        /_xlfn\.(?:_xlws\.)?([A-Za-z][\w.]*)(?=\()/gi,
        (whole, younger: string) =>
          futurePrefix.has(younger.toUpperCase())
            ? younger.toUpperCase()
            : whole,
      )
      .replace(/_xlpm\./gi, ""),
  )}`;

/** Whether a formula, in either form, calls a function that only an add-in supplies. */
export const callsAddIn = (formula: string): boolean =>
  formulaPieces(formula).some(
    ({ code, text }) =>
      code && /_xldudf_|(?<![\w.])SYRUP\.\w+\s*\(/i.test(text),
  );

function storedName(given: string): string {
  const capitals = given.toUpperCase();
  if (capitals.startsWith("SYRUP."))
    return `_xldudf_${capitals.replace(/\./g, "_")}`;
  const prefix = futurePrefix.get(capitals);
  return prefix === undefined ? given : prefix + capitals;
}

interface Call {
  readonly function: string;
  argument: number;
  /** The names and other things met in the argument so far. */
  met: string[];
}

/** The names a formula gives to values of its own with LET and LAMBDA, in capitals; a file marks each use of them. */
function localNames(formula: string): ReadonlySet<string> {
  const found = new Set<string>();
  if (!/\b(LET|LAMBDA)\(/i.test(formula)) return found;
  const calls: Call[] = [{ function: "", argument: 0, met: [] }];
  for (const token of tokensOf(formula)) {
    const call = calls[calls.length - 1] as Call;
    if (token === "(" || token === "{") {
      const before = token === "(" ? call.met.pop() : undefined;
      call.met.push("a value");
      calls.push({
        function: (before ?? "").toUpperCase(),
        argument: 0,
        met: [],
      });
    } else if (token === ")" || token === "}") {
      if (calls.length > 1) calls.pop();
    } else if (token === ",") {
      const declares =
        call.function === "LAMBDA" ||
        (call.function === "LET" && call.argument % 2 === 0);
      const [only] = call.met;
      if (declares && only && call.met.length === 1)
        found.add(only.toUpperCase());
      call.argument += 1;
      call.met = [];
    } else call.met.push(token);
  }
  return found;
}

const tokensOf = (formula: string): readonly string[] =>
  formulaPieces(formula).flatMap(({ code, text }) =>
    code ? (text.match(/[A-Za-z_\\][\w.\\?]*|[(){},]|[^\s]/g) ?? []) : ['"'],
  );
