import { spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync } from "node:fs";
import { join } from "node:path";

const root = join(__dirname, "../..");
const folder = join(root, "dist/workbench");

export interface Served {
  /** "http://127.0.0.1:40123" */
  readonly address: string;
  readonly stop: () => void;
}

/**
 * Serves the built workbench with the server that `npm start` uses, its headers included, on a free port and in a
 * process of its own, so that stopping it leaves nothing open.
 */
export async function serveWorkbench(): Promise<Served> {
  if (!existsSync(join(folder, "index.html")))
    throw new Error(
      "The workbench is not built: node tests/build.cjs workbench",
    );
  const server = spawn(
    process.execPath,
    [
      "-e",
      "require(process.argv[1]).serve(process.argv[2], 0).then(console.log)",
      join(root, "src/apps/cli/serve.cjs"),
      folder,
    ],
    { stdio: ["ignore", "pipe", "inherit"] },
  );
  const [said] = (await once(server.stdout, "data")) as [Buffer];
  return {
    address: said.toString().trim(),
    stop: () => void server.kill(),
  };
}
