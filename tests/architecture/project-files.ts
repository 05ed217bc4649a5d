import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

export const root = path.join(__dirname, "../..");

const MADE_OR_FETCHED = new Set([
  ".git",
  "node_modules",
  "dist",
  "coverage",
  "tests/output",
]);

/** Every file of the project that people or generators keep, by path from the top, below `folder`. */
export function projectFiles(folder = ""): readonly string[] {
  return readdirSync(path.join(root, folder), { withFileTypes: true })
    .map((entry) => ({ entry, name: path.posix.join(folder, entry.name) }))
    .filter(({ name }) => !MADE_OR_FETCHED.has(name))
    .flatMap(({ entry, name }) =>
      entry.isDirectory() ? projectFiles(name) : [name],
    );
}

export const textOf = (file: string): string =>
  readFileSync(path.join(root, file), "utf8");
