import { functionNamed } from "../../functions";
import { answer } from "../../functions/answer";
import { CannotAnswer, unusable } from "../../measures/cannot-answer";
import type { Command, Terminal } from "./terminal";

const USAGE = `npm run -s call -- NAME '[arguments as JSON]', or npm run -s call -- - with one {"name":…,"args":[…]} a line`;

type Reply =
  | { readonly name: string; readonly value: unknown }
  | {
      readonly name: string | null;
      readonly error: { readonly code: string; readonly message: string };
    };

/** Answers one function, or every line of standard input, as a worksheet would: one line of JSON for each. */
export const call: Command = async (args, terminal) => {
  const [name, written = "[]", ...more] = args;
  if (name === undefined)
    throw unusable(`Needs a function's name. Usage: ${USAGE}`);
  if (name === "-") {
    if (args.length > 1)
      throw unusable(
        `"${written}" is one too many: the calls come from standard input. Usage: ${USAGE}`,
      );
    return answerLines(terminal);
  }
  if (more.length > 0)
    throw unusable(
      `"${more[0]}" is one too many: write all arguments as one JSON array. Usage: ${USAGE}`,
    );
  const reply = replyTo(name, argumentsFrom(written), terminal);
  terminal.say(JSON.stringify(reply));
  return "error" in reply ? 2 : 0;
};

async function answerLines(terminal: Terminal): Promise<0 | 2> {
  let code: 0 | 2 = 0;
  for await (const line of terminal.lines()) {
    if (line.trim() === "") continue;
    const reply = replyToLine(line, terminal);
    terminal.say(JSON.stringify(reply));
    if ("error" in reply) code = 2;
  }
  return code;
}

function replyToLine(line: string, terminal: Terminal): Reply {
  const asked = parsed(line);
  if (typeof asked !== "object" || asked === null || Array.isArray(asked))
    return refused(null, `this line is not {"name":…,"args":[…]}: ${line}`);
  const { name, args = [] } = asked as { name?: unknown; args?: unknown };
  if (typeof name !== "string")
    return refused(null, `this line names no function: ${line}`);
  if (!Array.isArray(args))
    return refused(name, "args: a JSON array is wanted");
  return replyTo(name, args, terminal);
}

function replyTo(
  given: string,
  args: readonly unknown[],
  terminal: Terminal,
): Reply {
  const definition = functionNamed(given);
  if (!definition)
    return {
      name: given,
      error: {
        code: "#NAME?",
        message: `there is no function SYRUP.${given.replace(/^SYRUP\./i, "")}`,
      },
    };
  const { name } = definition;
  try {
    return { name, value: answer(definition, args) };
  } catch (problem) {
    if (problem instanceof CannotAnswer)
      return { name, error: { code: problem.code, message: problem.message } };
    // One faulty function must not silence the lines that follow.
    terminal.complain(String((problem as Error).stack ?? problem));
    return refused(
      name,
      `SYRUP.${name} has a fault of its own; the figures are not to blame`,
    );
  }
}

const refused = (name: string | null, message: string): Reply => ({
  name,
  error: { code: "#VALUE!", message },
});

function argumentsFrom(written: string): readonly unknown[] {
  const value = parsed(written);
  if (!Array.isArray(value))
    throw unusable(
      `The arguments must be one JSON array such as '[66.9, "185 °F"]', not: ${written}`,
    );
  return value;
}

/** Undefined for text that is no JSON; JSON itself never gives undefined. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
