import { inOrderOfDays } from "../../measures/in-order-of-days";
import type { DaySerial, Kilograms } from "../../measures/quantity";

/** Syrup that went from one lot, barrel, blend or tote into another. */
export interface Movement {
  readonly day: DaySerial;
  readonly from: string;
  readonly to: string;
  readonly weight: Kilograms;
}

/** Why the content of a container is not known when it is drawn from. */
export interface Gap {
  readonly kind: "drawn before it was filled" | "overdrawn";
  /** The draw that could not be. */
  readonly at: Movement;
  /** How much more was drawn than had come in. */
  readonly short: number;
}

/** A movement among numbered containers. */
export interface Move {
  readonly movement: Movement;
  readonly from: number;
  readonly to: number;
  readonly weight: number;
  /** The part of what it held that was drawn; 0 of a lot nothing came into, whose content is not in the register. */
  readonly drawn: number;
  readonly gap: Gap | undefined;
}

/** All movements in order of time. Made once, for any number of traces. */
export interface Register {
  /** Names as first written, by number. */
  readonly containers: readonly string[];
  readonly moves: readonly Move[];
  readonly numberOf: (name: string) => number | undefined;
}

/** Sums of pounds carry binary noise; a draw over by less than this share of all that came in takes the rest. */
const NOISE = 1e-9;

interface Container {
  readonly name: string;
  cameIn: number;
  holds: number;
  firstDraw: Movement | undefined;
  gap: Gap | undefined;
}

/** By day, and within a day as listed. A container's content is what came in less what was drawn. */
export function registerOf(movements: readonly Movement[]): Register {
  const numbers = new Map<string, number>();
  // Names come back in the same writing again and again; only a new writing is compared.
  const writings = new Map<string, number>();
  const containers: Container[] = [];
  const numbered = (name: string): number => {
    const known = writings.get(name);
    if (known !== undefined) return known;
    const number = numbers.get(nameKey(name)) ?? containers.length;
    if (number === containers.length) containers.push(empty(name));
    numbers.set(nameKey(name), number);
    writings.set(name, number);
    return number;
  };
  const moves: Move[] = [];
  for (const movement of inOrderOfDays(movements, ({ day }) => day)) {
    const { weight } = movement;
    const [from, to] = [numbered(movement.from), numbered(movement.to)];
    const [source, target] = [containers[from], containers[to]];
    if (!source || !target || weight === 0) continue;
    const drawn = draw(source, movement);
    fill(target, weight);
    moves.push({ movement, from, to, weight, drawn, gap: source.gap });
  }
  return {
    containers: containers.map(({ name }) => name),
    moves,
    numberOf: (name) => numbers.get(nameKey(name)),
  };
}

const empty = (name: string): Container => ({
  name,
  cameIn: 0,
  holds: 0,
  firstDraw: undefined,
  gap: undefined,
});

/** Takes a movement out and gives the part of the content that it was. */
function draw(container: Container, at: Movement): number {
  container.firstDraw ??= at;
  if (container.cameIn === 0) return 0;
  const held = container.holds;
  const left = held - at.weight;
  const noise = container.cameIn * NOISE;
  if (left < -noise) container.gap ??= { kind: "overdrawn", at, short: -left };
  container.holds = left < noise ? 0 : left;
  return left < noise ? 1 : at.weight / held;
}

function fill(container: Container, weight: number): void {
  const at = container.firstDraw;
  if (container.cameIn === 0 && at)
    container.gap = {
      kind: "drawn before it was filled",
      at,
      short: at.weight,
    };
  container.cameIn += weight;
  container.holds += weight;
}

/** Names are matched as a worksheet matches them: without regard to case or outer spaces. */
const nameKey = (name: string): string => name.trim().toLowerCase();
