import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";

/** Microsoft's own check of a manifest file; for a unified manifest it holds the published schema and needs no network. */
export type ManifestCheck = (file: string) => Promise<{
  readonly isValid: boolean;
  readonly report?: {
    readonly errors?: readonly {
      readonly title?: string;
      readonly content?: string;
    }[];
  };
}>;

/** What the check says against a unified manifest, or nothing. */
export async function schemaFaults(
  check: ManifestCheck,
  manifest: string,
): Promise<readonly string[]> {
  const folder = mkdtempSync(path.join(tmpdir(), "manifest-"));
  try {
    const file = path.join(folder, "manifest.json");
    writeFileSync(file, manifest);
    const { isValid, report } = await check(file);
    if (isValid) return [];
    const said = (report?.errors ?? []).map(
      ({ title, content }) => content ?? title ?? "no reason given",
    );
    return [refused(said.join(", "))];
  } catch (problem) {
    // What it cannot even read it throws.
    return [refused(problem instanceof Error ? problem.message : "unreadable")];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const refused = (said: string): string =>
  `unified/manifest.json is refused: ${said}`;

/** Loaded from the project's folder: it is no part of what is built. */
export const microsoftsCheck = (root: string): ManifestCheck =>
  (
    createRequire(path.join(root, "package.json"))("office-addin-manifest") as {
      readonly validateManifest: ManifestCheck;
    }
  ).validateManifest;
