import type { Parts } from "../package-parts";

/** Gives every part a name nobody uses yet: its own, with the next free number in its folder. */
export function freshNames(
  taken: Parts,
  wanted: readonly string[],
): ReadonlyMap<string, string> {
  const used = new Set(Object.keys(taken).map((name) => name.toLowerCase()));
  const fresh = new Map<string, string>();
  for (const name of wanted) {
    const [, stem = "", end = ""] =
      /^(.*?)\d*(\.[A-Za-z0-9]+)$/.exec(name) ?? [];
    let number = 1;
    while (used.has(`${stem}${number}${end}`.toLowerCase())) number += 1;
    const given = `${stem}${number}${end}`;
    used.add(given.toLowerCase());
    fresh.set(name, given);
  }
  return fresh;
}

/** Where the relationships of a part are kept. */
export const relationsName = (part: string): string =>
  part.replace(/([^/]*)$/, "_rels/$1.rels");

/** A relationships part whose targets have been renamed within their folders. */
export const renamedTargets = (
  rels: string,
  names: ReadonlyMap<string, string>,
): string => {
  const byFile = new Map(
    [...names].map(([from, to]) => [lastOf(from), lastOf(to)]),
  );
  return rels.replace(
    /(Target=")([^"]*?)([^"/]+)(")/g,
    (_, start: string, folder: string, file: string, end: string) =>
      `${start}${folder}${byFile.get(file) ?? file}${end}`,
  );
};

const lastOf = (name: string): string => name.split("/").pop() ?? name;
