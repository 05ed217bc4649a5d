import { inPounds } from "../functions/by-weight";
import { as, type DaySerial, type Kilograms } from "../measures/quantity";
import { registerOf } from "../trade/totes/movements";
import {
  trace,
  type TracedMove,
  type TraceDirection,
} from "../trade/totes/trace";
import type { Book, BookRow } from "./book";
import { sameName } from "./keys";
import { newestDay } from "./newest-day";
import { type BookLotBalance, lotBalances } from "./totes-lots";
import { bookMovements, takenByOak } from "./totes-movements";

export type ContainerKind =
  | "lot"
  | "barrel"
  | "run"
  | "tote"
  | "buyer"
  | "loss"
  /** Used before a season's roll: the book of the season before says where. */
  | "season before"
  | "other";

/** Something traced syrup went through or lies in. */
export interface TracedContainer {
  readonly name: string;
  readonly kind: ContainerKind;
  /** Traced syrup that came into it; back, what it gave towards what is traced. */
  readonly weight: Kilograms;
  /** Of it, what is there now (forward), or started there (back). */
  readonly rests: Kilograms;
  readonly run?: BookRow<"runs">;
  /** Cases the whole run made: a case cannot be called back in part. */
  readonly cases?: number;
}

export interface TracedBuyer {
  readonly buyer: string;
  readonly weight: Kilograms;
  readonly totes: readonly string[];
}

/** Where a lot went, or where a run or tote came from. */
export interface BookTrace {
  readonly name: string;
  readonly direction: TraceDirection;
  readonly steps: readonly TracedMove[];
  readonly total: Kilograms;
  readonly containers: readonly TracedContainer[];
  readonly buyers: readonly TracedBuyer[];
  /** Pounds in that neither the movements nor the stock account for; below 0 more went out than came in. */
  readonly unexplained: Kilograms;
}

/** Follows syrup through the book until a day. A name the book does not know has no answer (#N/A); the nearest is named. */
export function traceOf(
  book: Book,
  name: string,
  direction: TraceDirection,
  day: DaySerial | undefined = newestDay(book),
): BookTrace {
  const found = trace(registerOf(bookMovements(book, day)), name, direction);
  const kinds = kindsOf(book);
  const first = found.moves[0];
  const own = (direction === "forward" ? first?.from : first?.to) ?? name;
  return {
    name: own,
    direction,
    steps: found.moves,
    total: found.total,
    containers: containers(book, found, direction, kinds),
    buyers: buyersOf(found.moves, kinds),
    unexplained: unexplained(book, own, direction, found.total, day),
  };
}

type Kinds = ReadonlyMap<string, ContainerKind>;

/** A name that two tables hold is taken for what comes first here. */
const kindsOf = (book: Book): Kinds =>
  new Map<string, ContainerKind>([
    ...book.toteShipments.flatMap(({ customer }) =>
      customer === undefined ? [] : [[sameName(customer), "buyer"] as const],
    ),
    ...book.lotUse.flatMap(({ what, to }) =>
      what === "used before the season"
        ? [[sameName(to ?? what), "season before"] as const]
        : [],
    ),
    ...book.toteShipments.map(
      ({ ticket }) => [sameName(ticket), "tote"] as const,
    ),
    ...book.runs.map(({ run }) => [sameName(run), "run"] as const),
    ...book.oakBarrels.flatMap(
      ({ barrel }): readonly (readonly [string, ContainerKind])[] => [
        [sameName(barrel), "barrel"],
        [sameName(takenByOak(barrel)), "loss"],
      ],
    ),
    ...book.lots.map(({ lot }) => [sameName(lot), "lot"] as const),
  ]);

const kindOf = (kinds: Kinds, name: string): ContainerKind =>
  kinds.get(sameName(name)) ?? "other";

function containers(
  book: Book,
  found: ReturnType<typeof trace>,
  direction: TraceDirection,
  kinds: Kinds,
): readonly TracedContainer[] {
  const weights = new Map<string, number>();
  for (const { from, to, weight } of found.moves) {
    const name = direction === "forward" ? to : from;
    weights.set(name, (weights.get(name) ?? 0) + weight);
  }
  const rests = new Map(found.ends.map(({ name, weight }) => [name, weight]));
  const runs = new Map(book.runs.map((row) => [sameName(row.run), row]));
  const products = new Map(
    book.products.map((row) => [sameName(row.product), row]),
  );
  return [...weights].map(([name, weight]) => {
    const run = runs.get(sameName(name));
    const perCase = run && products.get(sameName(run.product))?.bottlesPerCase;
    return {
      name,
      kind: kindOf(kinds, name),
      weight: as<Kilograms>(weight),
      rests: rests.get(name) ?? as<Kilograms>(0),
      ...(run ? { run } : {}),
      ...(run && perCase !== undefined
        ? { cases: Math.ceil(run.goodBottles / perCase) }
        : {}),
    };
  });
}

function buyersOf(
  moves: readonly TracedMove[],
  kinds: Kinds,
): readonly TracedBuyer[] {
  const buyers = new Map<string, { weight: number; totes: Set<string> }>();
  for (const { from, to, weight } of moves) {
    if (kindOf(kinds, to) !== "buyer") continue;
    const known = buyers.get(to) ?? { weight: 0, totes: new Set<string>() };
    known.weight += weight;
    known.totes.add(from);
    buyers.set(to, known);
  }
  return [...buyers].map(([buyer, { weight, totes }]) => ({
    buyer,
    weight: as<Kilograms>(weight),
    totes: [...totes],
  }));
}

/** Forward: what came in, less all that left, less stock. Back: what was drawn by its own record, less what came in. */
function unexplained(
  book: Book,
  name: string,
  direction: TraceDirection,
  total: Kilograms,
  day: DaySerial | undefined,
): Kilograms {
  if (direction === "forward") {
    const [balance] = lotBalances(book, day, name);
    return as<Kilograms>(
      balance ? noNoise(balance.received - total - stockOf(balance), total) : 0,
    );
  }
  const written =
    book.runs.find(({ run }) => sameName(run) === sameName(name))?.drawn ??
    book.toteShipments.find(({ ticket }) => sameName(ticket) === sameName(name))
      ?.net ??
    book.oakBarrels.find(({ barrel }) => sameName(barrel) === sameName(name))
      ?.poundsIn;
  return as<Kilograms>(
    written === undefined ? 0 : noNoise(written - total, total),
  );
}

const stockOf = ({ counted, left }: BookLotBalance): number =>
  counted ?? Math.max(0, left);

/** Less than a billionth of what moved is the noise of sums. */
const noNoise = (left: number, total: number): number =>
  Math.abs(left) < total * 1e-9 ? 0 : left;

/** Pounds of a traced weight. */
export const tracedPounds = (weight: Kilograms): number =>
  Math.round(inPounds(weight) * 1e6) / 1e6;
