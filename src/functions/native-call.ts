import type { Definition } from "./define";

/** The native form of one call, for argument texts as they stand in a formula; an argument left out takes its default. */
export function nativeCall(
  definition: Definition,
  args: readonly string[],
): string {
  if (!definition.native)
    throw new Error(`SYRUP.${definition.name} has no native form`);
  const texts: Record<string, string> = {};
  for (const [i, [name, term]] of Object.entries(definition.args).entries()) {
    const given = args[i];
    texts[name] =
      given === undefined || given === ""
        ? literal(term.otherwise)
        : safe(given);
  }
  return `(${definition.native(texts)})`;
}

const literal = (value: number | string | undefined): string =>
  value === undefined
    ? '""'
    : typeof value === "number"
      ? String(value)
      : `"${value}"`;

/** References, numbers and quoted texts can stand anywhere; everything else needs its brackets. */
const safe = (text: string): string =>
  /^[$\w.:'! ]+$|^"[^"]*"$/.test(text) &&
  !/ /.test(text.replace(/'[^']*'/g, ""))
    ? text
    : `(${text})`;
