import { unusable } from "../../measures/cannot-answer";
import type { DaySerial } from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";
import type { Move, Register } from "./movements";

/**
 * Refuses (#VALUE!) traced syrup that goes round within one day: a day has no order of its own, so what was in the
 * container first cannot be known. `traced` is in order of time.
 */
export function refuseLoopsOfADay(
  register: Register,
  traced: readonly Move[],
): void {
  const doubtful = daysThatPassOn(register.moves);
  const starts = new Map<DaySerial, Set<number>>();
  for (const { movement, from } of traced) {
    const { day } = movement;
    if (!doubtful.has(day)) continue;
    starts.set(day, (starts.get(day) ?? new Set()).add(from));
  }
  for (const [day, ofDay] of starts) {
    const loop = loopAmong(doubtful.get(day) ?? [], ofDay);
    if (loop)
      throw unusable(
        `movements: a loop on ${isoDate(day)}: ${named(register, loop)}; one day has no order of its own, so give what went back its own day, or correct the names`,
      );
  }
}

/** The days on which something is drawn from a container that is filled on that day; others hold no loop. */
function daysThatPassOn(
  moves: readonly Move[],
): ReadonlyMap<DaySerial, readonly Move[]> {
  const days = new Map<DaySerial, readonly Move[]>();
  const filled = new Set<number>();
  for (let start = 0; start < moves.length;) {
    const day = moves[start]?.movement.day;
    let end = start;
    filled.clear();
    for (; moves[end]?.movement.day === day && end < moves.length; end += 1)
      filled.add(moves[end]?.to ?? -1);
    const ofDay = moves.slice(start, end);
    if (day !== undefined && ofDay.some(({ from }) => filled.has(from)))
      days.set(day, ofDay);
    start = end;
  }
  return days;
}

/** Refuses (#VALUE!) syrup that comes back into the very container that is traced. */
export function refuseReturn(
  register: Register,
  loop: readonly number[],
  back: Move,
): never {
  const traced = register.containers[loop[0] ?? 0] ?? "";
  throw unusable(
    `movements: a loop: ${named(register, loop)} on ${isoDate(back.movement.day)}; syrup cannot come back into ${traced} while it is traced, so give what went back a name of its own`,
  );
}

const named = (register: Register, loop: readonly number[]): string =>
  loop.map((number) => register.containers[number] ?? "").join(" → ");

/** The containers of a loop that can be reached from these, the first once more at the end. */
function loopAmong(
  moves: readonly Move[],
  starts: ReadonlySet<number>,
): readonly number[] | undefined {
  const next = new Map<number, number[]>();
  for (const { from, to } of moves) {
    const known = next.get(from);
    if (known) known.push(to);
    else next.set(from, [to]);
  }
  const done = new Set<number>();
  for (const start of starts) {
    // A path as long as the day; a chain of a hundred thousand movements must not run out of stack.
    const path: { readonly at: number; open: number }[] = [];
    const onPath = new Set<number>();
    const enter = (at: number): void => {
      path.push({ at, open: 0 });
      onPath.add(at);
    };
    if (!done.has(start)) enter(start);
    for (let top = path.at(-1); top; top = path.at(-1)) {
      const to = next.get(top.at)?.[top.open];
      top.open += 1;
      if (to === undefined) {
        done.add(top.at);
        onPath.delete(top.at);
        path.pop();
      } else if (onPath.has(to)) {
        const from = path.findIndex(({ at }) => at === to);
        return [...path.slice(from).map(({ at }) => at), to];
      } else if (!done.has(to)) enter(to);
    }
  }
  return undefined;
}
