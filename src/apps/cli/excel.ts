import { once } from "node:events";
import path from "node:path";
import { unusable } from "../../measures/cannot-answer";
import { certificate } from "./excel-certificate";
import { serveSecurely } from "./excel-server";
import { sideloadSteps } from "./excel-steps";
import { readOptions } from "./options";
import { packagedFiles } from "./package-files";
import { writePackage } from "./package-output";
import type { Command } from "./terminal";

const USAGE = "npm run excel [-- --port N]";
const PORT = 3443;

/** Serves the add-in to an Excel on this machine over https, and says how to load it there. Runs until it is stopped. */
export const excel: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    { port: { type: "string" } },
    USAGE,
  );
  if (positionals.length > 0)
    throw unusable(`"${positionals[0]}" is not known here. Usage: ${USAGE}`);
  const port = portOf(values.port);
  const folder = path.join(terminal.root, "dist/excel");
  terminal.complain("Building the add-in and the workbench …");
  const base = `https://localhost:${port}/`;
  writePackage(await packagedFiles(terminal.root, base), folder);
  const pair = await certificate(terminal.root);
  const server = await serveSecurely(terminal.root, folder, port, pair);
  const manifest = path.join(folder, "manifest.xml");
  for (const line of sideloadSteps({ base, manifest, trust: pair.trust }))
    terminal.say(line);
  await once(server, "close");
  return 0;
};

function portOf(given: string | undefined): number {
  if (given === undefined) return PORT;
  const port = Number(given);
  if (!/^\d+$/.test(given) || port < 1 || port > 65_535)
    throw unusable(`--port ${given}: not a port number from 1 to 65535.`);
  return port;
}
