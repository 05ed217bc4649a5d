/** Most letters a sheet's name may have. */
const MOST = 31;

/** New names of sheets, cut where they are too long; two that would be alike are told apart by a number. */
export function newNames(
  names: readonly string[],
  renamed: (name: string) => string,
): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const taken = new Set<string>();
  for (const name of names) {
    const wanted = renamed(name);
    let given = wanted.slice(0, MOST);
    for (let n = 2; taken.has(given.toLowerCase()); n += 1)
      given = `${wanted.slice(0, MOST - String(n).length - 1)} ${n}`;
    taken.add(given.toLowerCase());
    found.set(name, given);
  }
  return found;
}
