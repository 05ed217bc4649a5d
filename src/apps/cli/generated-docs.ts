import { existsSync, readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { functions } from "../../functions";
import { documentation } from "../../functions/pages";
import { unusable } from "../../measures/cannot-answer";
import { layersTable, type Layers } from "./layers-table";

const START = "<!-- layers: written by `npm run docs` -->";
const END = "<!-- end of layers -->";

/** What `npm run docs` makes, by path under docs/, and the files in the folders it owns that it no longer makes. */
export interface GeneratedDocs {
  readonly files: ReadonlyMap<string, string>;
  readonly obsolete: readonly string[];
}

export function generatedDocs(root: string): GeneratedDocs {
  const files = new Map(documentation(functions));
  files.set("architecture.md", architecture(root));
  // A folder that pages are made into belongs to them wholly; the top of docs/ is shared with pages people write.
  const folders = new Set(
    [...files.keys()].map((file) => path.posix.dirname(file)),
  );
  folders.delete(".");
  const obsolete = [...folders]
    .flatMap((folder) => filesIn(root, folder))
    .filter((file) => !files.has(file));
  return { files, obsolete };
}

/** The text of a file under docs/, or undefined when there is none. */
export function docsFile(root: string, file: string): string | undefined {
  const full = path.join(root, "docs", file);
  return existsSync(full) ? readFileSync(full, "utf8") : undefined;
}

const filesIn = (root: string, folder: string): readonly string[] => {
  const full = path.join(root, "docs", folder);
  return existsSync(full)
    ? readdirSync(full, { withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => path.posix.join(folder, entry.name))
    : [];
};

function architecture(root: string): string {
  const written = docsFile(root, "architecture.md") ?? "";
  const start = written.indexOf(START);
  const end = written.indexOf(END);
  if (start < 0 || end < start)
    throw unusable(
      `docs/architecture.md: the table of layers goes between a line "${START}" and a line "${END}"; they are missing.`,
    );
  // Not bundled: the same object is what the architecture test reads.
  const { layers } = createRequire(path.join(root, "package.json"))(
    "./tests/architecture/layers.cjs",
  ) as { readonly layers: Layers };
  return `${written.slice(0, start + START.length)}\n\n${layersTable(layers)}\n\n${written.slice(end)}`;
}
