import { unusable } from "../../measures/cannot-answer";
import { poundsText } from "../../measures/pounds-text";
import {
  as,
  type DaySerial,
  type Kilograms,
  type Share,
} from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";
import { refuseLoopsOfADay, refuseReturn } from "./loops";
import { containerNamed } from "./container-named";
import type { Gap, Move, Register } from "./movements";

export type TraceDirection = "forward" | "back";

/** One movement that carries traced syrup. */
export interface TracedMove {
  /** Movements away from what is traced: 1 out of it or into it, 2 the next, the shortest way counted. */
  readonly step: number;
  readonly day: DaySerial;
  readonly from: string;
  readonly to: string;
  /** The traced part of what was moved. */
  readonly weight: Kilograms;
  /** Forward: the part of what was moved that is from the lot. Back: the part of all that came into it. */
  readonly share: Share;
}

export interface Trace {
  readonly moves: readonly TracedMove[];
  /** All that left the lot, or all that came into the container. */
  readonly total: Kilograms;
  /** Forward: where it is now. Back: the lots it was first in. They add up to the total. */
  readonly ends: readonly {
    readonly name: string;
    readonly weight: Kilograms;
  }[];
}

/** A share smaller than this is dilution without end, not syrup anybody can call back. */
const NEGLIGIBLE = 1e-9;

/**
 * Where the syrup of a lot went, or where that of a container came from. Every container is a well-mixed pool: a draw
 * carries a share of everything that went in before it and was not drawn yet. Common practice, no source.
 * A name that no movement holds has no answer (#N/A); a loop, and a draw of more than came in, are refused (#VALUE!)
 * where they bear on the trace.
 */
export const trace = (
  register: Register,
  name: string,
  direction: TraceDirection,
): Trace =>
  direction === "forward" ? forward(register, name) : back(register, name);

function forward(register: Register, name: string): Trace {
  const lot = containerNamed(register, name, "from");
  const holds = amounts(register);
  const step = amounts(register);
  const cameBy = new Map<number, number>();
  const traced: Traced[] = [];
  for (const move of register.moves) {
    const { from, to, weight, drawn, gap, movement } = move;
    const carried = from === lot ? weight : at(holds, from) * drawn;
    if (carried === 0) continue;
    const share = carried / weight;
    holds[from] = from === lot ? 0 : at(holds, from) - carried;
    holds[to] = at(holds, to) + carried;
    if (share <= NEGLIGIBLE) continue;
    if (gap && from !== lot) throw notKnown(movement.from, gap);
    if (to === lot)
      refuseReturn(
        register,
        [lot, ...way(cameBy, from, lot).reverse(), lot],
        move,
      );
    const away = at(step, from) + 1;
    if (at(step, to) === 0 || away < at(step, to)) step[to] = away;
    if (!cameBy.has(to)) cameBy.set(to, from);
    traced.push({ move, step: away, carried, share });
  }
  return traceOf(register, traced, {
    total: sumOf(traced.filter(({ step }) => step === 1)),
    ends: [...holds],
  });
}

function back(register: Register, name: string): Trace {
  const target = containerNamed(register, name, "to");
  const total = register.moves
    .filter(({ to }) => to === target)
    .reduce((sum, { weight }) => sum + weight, 0);
  /** The part of what each container holds at that time that comes into the target later. */
  const arrives = amounts(register);
  const step = amounts(register);
  const goesBy = new Map<number, number>();
  const ends = amounts(register);
  const traced: Traced[] = [];
  for (const move of [...register.moves].reverse()) {
    const { from, to, weight, drawn, gap, movement } = move;
    const part = to === target ? 1 : at(arrives, to);
    if (from !== target)
      arrives[from] = at(arrives, from) * (1 - drawn) + part * drawn;
    if (part <= NEGLIGIBLE) continue;
    if (from === target)
      refuseReturn(
        register,
        [target, ...way(goesBy, to, target), target],
        move,
      );
    if (gap) throw notKnown(movement.from, gap);
    const away = at(step, to) + 1;
    if (at(step, from) === 0 || away < at(step, from)) step[from] = away;
    if (!goesBy.has(from)) goesBy.set(from, to);
    const carried = weight * part;
    if (drawn === 0) ends[from] = at(ends, from) + carried;
    traced.push({ move, step: away, carried, share: carried / total });
  }
  return traceOf(register, traced.reverse(), { total, ends: [...ends] });
}

interface Traced {
  readonly move: Move;
  readonly step: number;
  readonly carried: number;
  readonly share: number;
}

function traceOf(
  register: Register,
  traced: readonly Traced[],
  { total, ends }: { readonly total: number; readonly ends: readonly number[] },
): Trace {
  refuseLoopsOfADay(
    register,
    traced.map(({ move }) => move),
  );
  return {
    // The sort keeps the movements of one step in order of time.
    moves: [...traced]
      .sort((a, b) => a.step - b.step)
      .map(({ move: { movement, from, to }, step, carried, share }) => ({
        step,
        day: movement.day,
        from: register.containers[from] ?? "",
        to: register.containers[to] ?? "",
        weight: as<Kilograms>(carried),
        share: as<Share>(share),
      })),
    total: as<Kilograms>(total),
    ends: ends
      .map((weight, number) => ({
        name: register.containers[number] ?? "",
        weight: as<Kilograms>(weight),
      }))
      .filter(({ weight }) => weight > total * NEGLIGIBLE)
      .sort((a, b) => b.weight - a.weight),
  };
}

/** The containers from one to another along the links, the last left out. */
function way(
  links: ReadonlyMap<number, number>,
  from: number,
  to: number,
): number[] {
  const found: number[] = [];
  for (let here = from; here !== to; here = links.get(here) ?? to)
    found.push(here);
  return found;
}

function notKnown(container: string, { kind, at, short }: Gap): Error {
  const draw = `${poundsText(at.weight)} lb into ${at.to} on ${isoDate(at.day)}`;
  return unusable(
    kind === "overdrawn"
      ? `movements: ${container} is overdrawn by ${poundsText(as<Kilograms>(short))} lb: ${draw} is more than it held; add what is missing, or correct the pounds`
      : `movements: ${container} is drawn, ${draw}, before anything comes into it, and filled after that, so what it held is not known; put the movements in the order they happened, or add what filled it`,
  );
}

const amounts = (register: Register): number[] =>
  new Array<number>(register.containers.length).fill(0);
const at = (amounts: readonly number[], number: number): number =>
  amounts[number] ?? 0;
const sumOf = (traced: readonly Traced[]): number =>
  traced.reduce((sum, { carried }) => sum + carried, 0);
