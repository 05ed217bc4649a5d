import path from "node:path";
import { unusable } from "../../measures/cannot-answer";
import { baseAddress } from "../base-address";
import { readOptions } from "./options";
import { packageFaults } from "./package-check";
import { packagedFiles } from "./package-files";
import { writePackage } from "./package-output";
import { microsoftsCheck, schemaFaults } from "./package-schema";
import type { Command } from "./terminal";

const USAGE = "npm run package -- --base https://ADDRESS/ [--out FOLDER]";

/** Makes the folder any static host can serve: the add-in, its manifests and the workbench. */
export const packageAddIn: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    { base: { type: "string" }, out: { type: "string" } },
    USAGE,
  );
  if (positionals.length > 0)
    throw unusable(`"${positionals[0]}" is not known here. Usage: ${USAGE}`);
  if (values.base === undefined)
    throw unusable(
      `Needs --base, the https address the folder will be served at. Usage: ${USAGE}`,
    );
  const base = baseAddress(values.base);
  const out = path.resolve(values.out ?? path.join(terminal.root, "dist"));
  terminal.complain("Building the add-in and the workbench …");
  const files = await packagedFiles(terminal.root, base);
  const faults = [
    ...packageFaults(files, base),
    ...(await schemaFaults(
      microsoftsCheck(terminal.root),
      files.get("unified/manifest.json")?.toString("utf8") ?? "",
    )),
  ];
  if (faults.length > 0)
    throw new Error(`The package has faults: ${faults.join("; ")}`);
  writePackage(files, out);
  terminal.say(
    `${values.out ?? "dist"}: ${files.size} files, to be served at ${base}. People install ${base}manifest.xml; docs/install.md says how.`,
  );
  return 0;
};
