import { parseArgs } from "node:util";
import { unusable } from "../../measures/cannot-answer";

type Options = NonNullable<
  NonNullable<Parameters<typeof parseArgs>[0]>["options"]
>;

/** Reads a command's arguments; what does not fit is refused with the command's own usage line. */
export function readOptions<const O extends Options>(
  args: readonly string[],
  options: O,
  usage: string,
): ReturnType<
  typeof parseArgs<{ options: O; allowPositionals: true; args: string[] }>
> {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true });
  } catch (problem) {
    const { code, message } = problem as NodeJS.ErrnoException;
    if (!code?.startsWith("ERR_PARSE_ARGS")) throw problem;
    throw unusable(`${firstSentence(message)}. Usage: ${usage}`);
  }
}

/** Node adds advice in sentences and lines of its own. */
function firstSentence(message: string): string {
  const ambiguous = /^Option '(?:-\w, )?(--[\w-]+)/.exec(message)?.[1];
  return ambiguous !== undefined && message.includes("ambiguous")
    ? `${ambiguous}: a value that starts with a dash is written ${ambiguous}=VALUE`
    : (message.split(/\.\s|\.$/)[0] ?? message);
}

/** Exactly one thing beside the options, or a refusal that says what is wanted. */
export function onlyPositional(
  positionals: readonly string[],
  what: string,
  usage: string,
): string {
  const [first, second] = positionals;
  if (first === undefined) throw unusable(`Needs ${what}. Usage: ${usage}`);
  if (second !== undefined)
    throw unusable(
      `"${second}" is one too many: only ${what} is wanted. Usage: ${usage}`,
    );
  return first;
}
