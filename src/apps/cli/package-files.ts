import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";

/** A package in memory: path below its folder (with /) and bytes. */
export type PackageFiles = ReadonlyMap<string, Buffer>;

/** Builds everything that is served: the add-in for this address, its pane, and the workbench beside them. */
export async function packagedFiles(
  root: string,
  base: string,
): Promise<PackageFiles> {
  const { build, buildWhenStale } = builder(root);
  const staged = mkdtempSync(path.join(tmpdir(), "package-"));
  try {
    await build(root, "functions", { base }, staged);
    await buildWhenStale(root, "taskpane");
    await buildWhenStale(root, "workbench");
    return new Map([
      ...filesIn(staged),
      ...filesIn(path.join(root, "dist/taskpane")),
      ...filesIn(path.join(root, "dist/workbench"), "workbench/"),
    ]);
  } finally {
    rmSync(staged, { recursive: true, force: true });
  }
}

interface Builder {
  build(
    root: string,
    name: string,
    settings: { readonly base: string },
    folder: string,
  ): Promise<void>;
  buildWhenStale(root: string, name: string): Promise<void>;
}

// Not bundled: webpack is no part of what it builds.
const builder = (root: string): Builder =>
  createRequire(path.join(root, "package.json"))(
    "./src/apps/cli/build-when-stale.cjs",
  ) as Builder;

/** What a build leaves behind for itself. */
const NOT_SERVED = new Set(["built-from.txt"]);

function filesIn(
  folder: string,
  prefix = "",
): readonly (readonly [string, Buffer])[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter(({ name }) => !NOT_SERVED.has(name))
    .flatMap((entry) => {
      const full = path.join(folder, entry.name);
      return entry.isDirectory()
        ? filesIn(full, `${prefix}${entry.name}/`)
        : [[`${prefix}${entry.name}`, readFileSync(full)] as const];
    });
}
