import { rmSync } from "node:fs";
import path from "node:path";
import { unusable } from "../../measures/cannot-answer";
import { docsFile, generatedDocs } from "./generated-docs";
import { readOptions } from "./options";
import type { Command } from "./terminal";
import { writeWhole } from "./write-files";

const USAGE = "npm run docs [-- --check]";

/** Writes the pages made from definitions; with --check writes nothing and names the pages that are not current. */
export const docs: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    { check: { type: "boolean", default: false } },
    USAGE,
  );
  if (positionals.length > 0)
    throw unusable(`"${positionals[0]}" is not known here. Usage: ${USAGE}`);
  const { files, obsolete } = generatedDocs(terminal.root);
  const stale = [...files]
    .filter(([file, text]) => docsFile(terminal.root, file) !== text)
    .map(([file]) => file);
  if (values.check) {
    for (const file of [...stale, ...obsolete])
      terminal.complain(
        `docs/${file} is not current: run \`npm run docs\` and keep what it writes.`,
      );
    return stale.length + obsolete.length > 0 ? 2 : 0;
  }
  for (const file of stale)
    writeWhole(path.join(terminal.root, "docs", file), files.get(file) ?? "");
  for (const file of obsolete) rmSync(path.join(terminal.root, "docs", file));
  terminal.say(
    `${files.size} pages, ${stale.length} written, ${obsolete.length} removed.`,
  );
  return 0;
};
