import { unanswerable } from "../../measures/cannot-answer";
import type { Register } from "./movements";

/**
 * The number of a container that something was drawn from, or came into. A name that no movement holds there has no
 * answer (#N/A); the sentence names the nearest one.
 */
export function containerNamed(
  { containers, moves, numberOf }: Register,
  name: string,
  side: "from" | "to",
): number {
  const number = numberOf(name);
  if (number === undefined) {
    const nearest = nearestTo(name, containers);
    throw unanswerable(
      `lot: "${name}" is in none of the movements${nearest === undefined ? "" : `; the nearest name is "${nearest}"`}`,
    );
  }
  if (!moves.some((move) => move[side] === number))
    throw unanswerable(
      side === "from"
        ? `lot: nothing has left ${name} in these movements; for what came into it, ask for the direction "back"`
        : `lot: nothing has come into ${name} in these movements; for where it went, ask for the direction "forward"`,
    );
  return number;
}

function nearestTo(name: string, names: readonly string[]): string | undefined {
  let [found, least] = [undefined as string | undefined, Infinity];
  for (const other of names) {
    const changes = changesBetween(name.toLowerCase(), other.toLowerCase());
    if (changes < least) [found, least] = [other, changes];
  }
  return found;
}

/** Longer names are compared by their beginnings; nobody mistypes that much. */
const COMPARED = 40;

/** How many letters must be put in, taken out or changed to make one text of the other. */
function changesBetween(a: string, b: string): number {
  let row = Array.from(
    { length: Math.min(b.length, COMPARED) + 1 },
    (_, j) => j,
  );
  for (let i = 1; i <= Math.min(a.length, COMPARED); i += 1) {
    const next = [i];
    for (let j = 1; j < row.length; j += 1)
      next.push(
        Math.min(
          (row[j] ?? 0) + 1,
          (next[j - 1] ?? 0) + 1,
          (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1),
        ),
      );
    row = next;
  }
  return row.at(-1) ?? 0;
}
