import { CannotAnswer } from "../../measures/cannot-answer";
import type { Command, Terminal } from "./terminal";

// Each command is loaded when it is asked for, so that `call` never waits for the calculation engine.
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  call: async () => (await import("./call")).call,
  cost: async () => (await import("./cost")).cost,
  book: async () => (await import("./book")).book,
  plan: async () => (await import("./plan")).plan,
  prices: async () => (await import("./prices")).prices,
  quote: async () => (await import("./quote")).quote,
  totes: async () => (await import("./totes")).totes,
  truck: async () => (await import("./truck")).truck,
  bulk: async () => (await import("./bulk")).bulk,
  trace: async () => (await import("./trace")).traceLot,
  papers: async () => (await import("./papers")).papers,
  label: async () => (await import("./label")).label,
  exchange: async () => (await import("./exchange")).exchange,
  compare: async () => (await import("./compare")).compare,
  handover: async () => (await import("./handover")).handover,
  samples: async () => (await import("./samples")).samples,
  docs: async () => (await import("./docs")).docs,
  bench: async () => (await import("./bench/bench")).bench,
  package: async () => (await import("./package")).packageAddIn,
  excel: async () => (await import("./excel")).excel,
  overheads: async () => (await import("./overheads")).overheads,
  channels: async () => (await import("./channels")).channels,
  years: async () => (await import("./years")).years,
  findings: async () => (await import("./findings")).findings,
  roll: async () => (await import("./roll")).roll,
  binder: async () => (await import("./binder")).binder,
};

/** Runs one command; gives 0, 2 for input that cannot be used, or 1 for a fault of our own. */
export async function runCommand(
  [name, ...args]: readonly string[],
  terminal: Terminal,
): Promise<0 | 1 | 2> {
  const load =
    name !== undefined && Object.hasOwn(commands, name)
      ? commands[name]
      : undefined;
  if (!load) {
    terminal.complain(
      `${name === undefined ? "No command was given" : `"${name}" is no command of ours`}; there are ${Object.keys(commands).join(", ")} and start.`,
    );
    return 2;
  }
  try {
    const command = await load();
    return await command(args, terminal);
  } catch (problem) {
    if (problem instanceof CannotAnswer) {
      terminal.complain(problem.message);
      return 2;
    }
    terminal.complain(
      `${name}: a fault of the program, not of your input. ${problem instanceof Error ? (problem.stack ?? problem.message) : String(problem)}`,
    );
    return 1;
  }
}
