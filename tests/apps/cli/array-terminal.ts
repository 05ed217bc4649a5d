import { runCommand } from "../../../src/apps/cli/run-command";
import { root } from "../../architecture/project-files";

export interface Outcome {
  readonly code: 0 | 1 | 2;
  readonly said: readonly string[];
  readonly complained: readonly string[];
}

/** Runs a command as the command line would, with what it says kept in lists. */
export async function run(
  args: readonly string[],
  input: readonly string[] = [],
): Promise<Outcome> {
  const said: string[] = [];
  const complained: string[] = [];
  const code = await runCommand(args, {
    root,
    lines: async function* () {
      yield* input;
    },
    say: (line) => said.push(line),
    complain: (line) => complained.push(line),
  });
  return { code, said, complained };
}
