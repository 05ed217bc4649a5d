import { useDeferredValue, useEffect, useMemo, useState } from "react";
import type { Finding } from "../../../book/finding";
import { readBook } from "../../../book/read";
import type { OpenBook } from "../open-book";

/** With more products than these, costing all of them waits until somebody looks. */
const COSTED_AT_ONCE = 60;

/**
 * What the book says of itself and what shows once every product is costed, the most money at stake first.
 * Reading the whole book takes a moment, so the view in front goes first; the old list stays until the new one is there.
 */
export function useFindings(
  book: OpenBook | undefined,
  isInFront: boolean,
): readonly Finding[] {
  const quiet = useDeferredValue(book);
  const reading = useMemo(
    () => (quiet ? readBook(quiet.tables) : undefined),
    [quiet],
  );
  const [told, setTold] = useState<readonly Finding[]>();
  const isWanted =
    reading !== undefined &&
    (isInFront || reading.book.products.length <= COSTED_AT_ONCE);
  useEffect(() => {
    if (!isWanted || !reading) return;
    let isLate = false;
    void import("../../../book/manager-findings").then(
      ({ managerFindings }) =>
        !isLate && setTold(managerFindings(reading.book, reading.findings)),
    );
    return () => {
      isLate = true;
    };
  }, [reading, isWanted]);
  return isWanted ? (told ?? reading.findings) : (reading?.findings ?? []);
}
