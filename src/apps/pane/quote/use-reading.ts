import { useEffect, useState } from "react";
import type { Host } from "../../../hosts/host";
import type { DefinedName } from "../../../sheets/workbook";
import { sentenceOf, type OpenBook } from "../open-book";

export interface Reading<T> {
  readonly read: T | undefined;
  readonly trouble: string | undefined;
  readonly isReading: boolean;
}

/** What the workbook holds for a product, read again after every edit; the old figures stay until the new ones are there. */
export function useReading<T>(
  host: Host,
  book: OpenBook,
  product: string | undefined,
  /** The same function every time. */
  read: (
    host: Host,
    names: readonly DefinedName[],
    product: string,
  ) => Promise<T | undefined>,
): Reading<T> {
  const [held, setHeld] = useState<{
    readonly product: string;
    readonly read?: T | undefined;
    readonly trouble?: string;
  }>();
  useEffect(() => {
    if (product === undefined) return;
    let isLate = false;
    read(host, book.names, product).then(
      (found) => !isLate && setHeld({ product, read: found }),
      (problem: unknown) =>
        !isLate && setHeld({ product, trouble: sentenceOf(problem) }),
    );
    return () => {
      isLate = true;
    };
  }, [host, book, product, read]);
  const current = held?.product === product ? held : undefined;
  return {
    read: current?.read,
    trouble: current?.trouble,
    isReading: current === undefined,
  };
}
