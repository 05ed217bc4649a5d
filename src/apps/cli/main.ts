import path from "node:path";
import { createInterface } from "node:readline";
import { runCommand } from "./run-command";
import type { Terminal } from "./terminal";

const terminal: Terminal = {
  // Built, this file lies in dist/cli.
  root: path.join(__dirname, "../.."),
  lines: () => createInterface({ input: process.stdin, crlfDelay: Infinity }),
  say: (line) => process.stdout.write(`${line}\n`),
  complain: (line) => process.stderr.write(`${line}\n`),
};

// A reader that stops early, as `head` does, is no fault.
process.stdout.on("error", (problem: NodeJS.ErrnoException) => {
  if (problem.code === "EPIPE") process.exit(0);
  throw problem;
});

void runCommand(process.argv.slice(2), terminal).then((code) => {
  process.exitCode = code;
  // The calculation engine keeps timers of its own; nothing of ours is left to do once the answer is written.
  process.stdout.write("", () => process.exit());
});
