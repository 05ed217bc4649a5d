import { useEffect, useState } from "react";
import type { Definition } from "../../../functions/define";
import type { CellPlace, Host } from "../../../hosts/host";
import { CannotAnswer } from "../../../measures/cannot-answer";
import { sentenceOf, type OpenBook } from "../open-book";
import type { FillIn } from "./fill-in";
import { landingOf, type Landing } from "./landing";
import { previewOf, type Preview } from "./preview";
import { fullReference, placeIn, type Cells } from "./reference";
import type { Selected } from "./selected";

/** Where the answer is to go, as text: what was typed or taken, else the selected cell. */
export const targetOf = (
  fillIn: FillIn,
  selected: Selected | undefined,
): string =>
  fillIn.target ?? (selected === undefined ? "" : fullReference(selected.cell));

export interface Shown {
  readonly preview: Preview | undefined;
  /** Where it would go, or the sentence that says why that is no place. */
  readonly landing: Landing | string | undefined;
}

/** A person types several letters a second; what they lead to is worked out when they pause. */
const PAUSE_MS = 150;

/** The call as it stands and where it would go, worked out again after each change of the form or the book. */
export function usePreview(
  host: Host,
  book: OpenBook,
  definition: Definition,
  fillIn: FillIn,
  target: string,
): Shown {
  const [shown, setShown] = useState<Shown>({
    preview: undefined,
    landing: undefined,
  });
  useEffect(() => {
    let isLate = false;
    const timer = setTimeout(() => {
      look(host, book, definition, fillIn, target).then(
        (found) => !isLate && setShown(found),
        (problem: unknown) =>
          !isLate &&
          setShown({ preview: undefined, landing: sentenceOf(problem) }),
      );
    }, PAUSE_MS);
    return () => {
      isLate = true;
      clearTimeout(timer);
    };
  }, [host, book, definition, fillIn, target]);
  return shown;
}

/** The same, once. */
export async function look(
  host: Host,
  book: Pick<OpenBook, "tables" | "names" | "sheets">,
  definition: Definition,
  fillIn: FillIn,
  target: string,
): Promise<Shown> {
  const cells: Cells = { ...book, host, home: book.sheets[0] ?? "" };
  const place = placeOf(target, cells);
  const home = typeof place === "object" ? place.sheet : cells.home;
  const preview = await previewOf(definition, fillIn, { ...cells, home });
  return {
    preview,
    landing:
      typeof place === "object"
        ? await landingOf(place, preview, { host, tables: book.tables })
        : place,
  };
}

function placeOf(target: string, cells: Cells): CellPlace | string {
  if (target.trim() === "")
    return "Select the cell for the answer in the sheet, or type its address.";
  try {
    return placeIn(target, cells);
  } catch (refusal) {
    if (!(refusal instanceof CannotAnswer)) throw refusal;
    return refusal.message;
  }
}
