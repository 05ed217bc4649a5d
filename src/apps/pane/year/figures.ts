import { useEffect, useState } from "react";
import type { CellPlace, Host } from "../../../hosts/host";
import type { NamedPlace } from "../../../sheets/costing/names";
import type { Stored } from "../../../sheets/workbook";
import { sentenceOf, type OpenBook } from "../open-book";

type Places<K extends string> = Partial<Readonly<Record<K, NamedPlace>>>;

/** The named figures of a sheet as its cells now stand. */
export interface Figures<K extends string> {
  readonly sheet: string;
  readonly rows: (key: K) => readonly (readonly Stored[])[];
  readonly value: (key: K) => Stored;
  readonly place: (key: K) => CellPlace | undefined;
}

/** Reads a sheet's figures with one look at its cells; undefined where the workbook has no such sheet. */
export async function readFigures<K extends string>(
  host: Pick<Host, "readArea">,
  places: Places<K>,
): Promise<Figures<K> | undefined> {
  const known = Object.values<NamedPlace | undefined>(places).filter(
    (place): place is NamedPlace => place !== undefined,
  );
  const sheet = known[0]?.sheet;
  if (sheet === undefined) return undefined;
  const top = Math.min(...known.map(({ row }) => row));
  const left = Math.min(...known.map(({ column }) => column));
  const bottom = Math.max(...known.map(({ row, rows }) => row + rows));
  const right = Math.max(...known.map((p) => p.column + p.columns));
  const cells = await host.readArea(
    sheet,
    top,
    left,
    bottom - top,
    right - left,
  );
  const rows = (key: K): readonly (readonly Stored[])[] => {
    const place = places[key];
    return place
      ? cells
          .slice(place.row - top, place.row - top + place.rows)
          .map((line) =>
            line.slice(
              place.column - left,
              place.column - left + place.columns,
            ),
          )
      : [];
  };
  return {
    sheet,
    rows,
    value: (key) => rows(key)[0]?.[0] ?? null,
    place: (key) => {
      const place = places[key];
      return place && { sheet, row: place.row, column: place.column };
    },
  };
}

export interface FiguresReading<K extends string> {
  readonly figures: Figures<K> | undefined;
  readonly trouble: string | undefined;
  readonly isReading: boolean;
}

/** The same, read again after every edit; `of` says whose figures they are. */
export function useFigures<K extends string>(
  host: Host,
  book: OpenBook,
  of: string,
  placesIn: (book: OpenBook) => Places<K>,
): FiguresReading<K> {
  const [held, setHeld] = useState<{
    readonly of: string;
    readonly figures?: Figures<K> | undefined;
    readonly trouble?: string;
  }>();
  useEffect(() => {
    let isLate = false;
    readFigures(host, placesIn(book)).then(
      (figures) => !isLate && setHeld({ of, figures }),
      (problem: unknown) =>
        !isLate && setHeld({ of, trouble: sentenceOf(problem) }),
    );
    return () => {
      isLate = true;
    };
    // The places follow from the book and from whose figures they are.
  }, [host, book, of]);
  const current = held?.of === of ? held : undefined;
  return {
    figures: current?.figures,
    trouble: current?.trouble,
    isReading: current === undefined,
  };
}

/** A cell as words; a blank one is "". */
export const words = (value: Stored | undefined): string => {
  if (value === null || value === undefined) return "";
  return typeof value === "object" ? value.error : String(value).trim();
};

export const isNumber = (value: Stored | undefined): value is number =>
  typeof value === "number";

/** Checks that do not hold, as what and what is said of it. */
export const openChecks = (
  rows: readonly (readonly Stored[])[],
): readonly { readonly what: string; readonly says: string }[] =>
  rows
    .map(([what, says]) => ({ what: words(what), says: words(says) }))
    .filter(({ says }) => says !== "" && says !== "ok");
