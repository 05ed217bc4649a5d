import {
  existsSync,
  mkdirSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import path from "node:path";
import { unusable } from "../../measures/cannot-answer";

/** Writes a file as a whole or not at all: it appears under its name only when its last byte is written. */
export function writeWhole(file: string, content: string | Uint8Array): void {
  mkdirSync(path.dirname(file), { recursive: true });
  const unfinished = path.join(
    path.dirname(file),
    `.${path.basename(file)}.${process.pid}.unfinished`,
  );
  try {
    writeFileSync(unfinished, content);
    renameSync(unfinished, file);
  } catch (problem) {
    rmSync(unfinished, { force: true });
    throw problem;
  }
}

/** Refuses, before any work is done, an output that is no .xlsx name, has no folder, or would replace a file unasked. */
export function checkedOutput(
  file: string,
  force: boolean,
  option = "--out",
  extension = ".xlsx",
): string {
  const full = path.resolve(file);
  if (path.extname(file).toLowerCase() !== extension)
    throw unusable(`${option} ${file}: the name must end with ${extension}.`);
  if (!existsSync(path.dirname(full)))
    throw unusable(`${option} ${file}: the folder does not exist.`);
  if (existsSync(full) && !force)
    throw unusable(
      `${option} ${file}: the file exists already and was left as it is; add --force to replace it.`,
    );
  return full;
}
