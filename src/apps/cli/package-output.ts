import { existsSync, readFileSync, rmSync, statSync } from "node:fs";
import path from "node:path";
import { unusable } from "../../measures/cannot-answer";
import type { PackageFiles } from "./package-files";
import { writeWhole } from "./write-files";

/** Names what a package wrote, so that the next one replaces its own files and no others. */
const LIST = "packaged-files.txt";

/**
 * Puts a package into a folder. Files of an earlier package are replaced or removed; a file that is not ours is never
 * touched: if one is in the way nothing is written and the sentence names it.
 */
export function writePackage(files: PackageFiles, out: string): void {
  if (existsSync(out) && !statSync(out).isDirectory())
    throw unusable(`--out ${out}: that is a file, not a folder.`);
  const earlier = new Set(earlierFiles(out));
  for (const [file, bytes] of files) {
    const full = path.join(out, file);
    if (!existsSync(full) || earlier.has(file)) continue;
    if (!statSync(full).isFile() || !readFileSync(full).equals(bytes))
      throw unusable(
        `--out ${out}: ${file} is there already and is not from an earlier package; nothing was written. Choose an empty folder.`,
      );
  }
  // Listed before they are written: a run that is broken off leaves nothing it would later take for foreign.
  const all = new Set([...earlier, ...files.keys()]);
  writeWhole(path.join(out, LIST), listText(all));
  for (const [file, bytes] of files) writeWhole(path.join(out, file), bytes);
  for (const file of earlier)
    if (!files.has(file)) rmSync(path.join(out, file), { force: true });
  writeWhole(path.join(out, LIST), listText(files.keys()));
}

const listText = (files: Iterable<string>): string =>
  [...files]
    .sort()
    .map((file) => `${file}\n`)
    .join("");

function earlierFiles(out: string): readonly string[] {
  const list = path.join(out, LIST);
  if (!existsSync(list)) return [];
  return (
    readFileSync(list, "utf8")
      .split("\n")
      // The list lies where anybody may edit it; what points out of the folder is not ours.
      .filter(
        (file) =>
          file !== "" &&
          !path.isAbsolute(file) &&
          !path.normalize(file).startsWith(".."),
      )
  );
}
