import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

/** The text of every part of a package. */
export const partsOf = (bytes: Uint8Array): Record<string, string> =>
  Object.fromEntries(
    Object.entries(unzipSync(bytes)).map(([name, part]) => [
      name,
      strFromU8(part),
    ]),
  );

/** A package with some parts given anew; a part given as undefined is left out. */
export function withParts(
  bytes: Uint8Array,
  changes: Readonly<
    Record<string, ((text: string) => string) | string | undefined>
  >,
): Uint8Array {
  const parts: Record<string, Uint8Array> = { ...unzipSync(bytes) };
  for (const [name, change] of Object.entries(changes)) {
    const before = parts[name];
    if (change === undefined) delete parts[name];
    else if (typeof change === "string") parts[name] = strToU8(change);
    else {
      if (!before) throw new Error(`no part ${name}`);
      const after = change(strFromU8(before));
      if (after === strFromU8(before))
        throw new Error(`${name} stayed as it was`);
      parts[name] = strToU8(after);
    }
  }
  return zipSync(parts);
}

/** A change that puts text before the first place where `mark` stands. */
export const before =
  (mark: string, text: string) =>
  (part: string): string =>
    part.replace(mark, () => text + mark);
