import { inPounds } from "../functions/by-weight";
import { as, type DaySerial, type Kilograms } from "../measures/quantity";
import { isoDate } from "../measures/read-date";
import {
  type Draw,
  lotBalance,
  type LotBalance,
} from "../trade/totes/lot-balance";
import type { Book } from "./book";
import { pounds } from "./checks/gathered";
import type { Finding } from "./finding";
import { sameName } from "./keys";
import { newestDay } from "./newest-day";
import { setting } from "./setting";

/** A draw with its place in the book, and where it went. */
export interface BookDraw extends Draw {
  readonly place: string;
  readonly to: string | undefined;
}

/** The mass balance of one lot or barrel. */
export interface BookLotBalance extends LotBalance<BookDraw> {
  readonly name: string;
  readonly kind: "lot" | "barrel";
  readonly place: string;
}

/** What oak took, as a use of a barrel's syrup. */
export const TAKEN_BY_OAK = "taken by oak";

/** Mass balances of every lot received, and every barrel filled, by a day, or of one of them; the count is the one of Stock count. */
export function lotBalances(
  book: Book,
  day: DaySerial | undefined = newestDay(book),
  only?: string,
): readonly BookLotBalance[] {
  const one = only === undefined ? undefined : sameName(only);
  const wanted = (name: string): boolean =>
    one === undefined || sameName(name) === one;
  const until = (on: DaySerial): boolean => day === undefined || on <= day;
  const draws = new Map<string, BookDraw[]>();
  for (const { date, from, to, what, pounds: weight, place } of book.lotUse) {
    if (!until(date) || !wanted(from)) continue;
    const own = draws.get(sameName(from)) ?? [];
    own.push({ day: date, what, weight, place, to });
    draws.set(sameName(from), own);
  }
  const countDay = setting(book, "Count date") ?? newestDay(book);
  const counts = new Map(
    book.stockCount.flatMap(({ lot, counted }) =>
      counted === undefined || countDay === undefined || !until(countDay)
        ? []
        : [[sameName(lot), { day: countDay, weight: counted }] as const],
    ),
  );
  const balanceOf = (
    name: string,
    received: Kilograms,
    own: readonly BookDraw[],
  ): LotBalance<BookDraw> =>
    lotBalance(received, own, counts.get(sameName(name)));
  return [
    ...book.lots
      .filter(({ lot, received }) => wanted(lot) && until(received))
      .map(({ lot, net, place }) => ({
        ...balanceOf(lot, net, draws.get(sameName(lot)) ?? []),
        name: lot,
        kind: "lot" as const,
        place,
      })),
    ...book.oakBarrels
      .filter(({ barrel, filledOn }) => wanted(barrel) && until(filledOn))
      .map((row) => ({
        ...balanceOf(row.barrel, row.poundsIn, [
          ...oakDraws(row).filter((draw) => until(draw.day)),
          ...(draws.get(sameName(row.barrel)) ?? []),
        ]),
        name: row.barrel,
        kind: "barrel" as const,
        place: row.place,
      })),
  ];
}

const oakDraws = ({
  emptiedOn,
  poundsIn,
  poundsOut,
  place,
}: Book["oakBarrels"][number]): readonly BookDraw[] =>
  emptiedOn === undefined || poundsOut === undefined || poundsIn <= poundsOut
    ? []
    : [
        {
          day: emptiedOn,
          what: TAKEN_BY_OAK,
          weight: as<Kilograms>(poundsIn - poundsOut),
          place,
          to: undefined,
        },
      ];

/** Names the first row that overdraws each lot, and lots whose count the draws do not explain. */
export const lotFindings = (
  balances: readonly BookLotBalance[],
): readonly Finding[] =>
  balances.flatMap(({ name, kind, overdraw }): readonly Finding[] =>
    overdraw === undefined
      ? []
      : [
          {
            where: `${overdraw.draw.place}, Pounds`,
            found: `${pounds(overdraw.draw.weight)} for ${overdraw.draw.to ?? overdraw.draw.what} on ${isoDate(overdraw.draw.day)} is the first draw that ${kind} ${name} does not cover, by ${pounds(overdraw.short)}`,
            meaning:
              "more was drawn than came in, so a weight or a lot is wrong",
            todo: "check this draw and those before it",
          },
        ],
  );

/** Pounds without a sum's last bits: -43, not -43.00000000000182. */
export const balancePounds = (weight: Kilograms): number =>
  Math.round(inPounds(weight) * 1e6) / 1e6;
