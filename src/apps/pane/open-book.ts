import { useCallback, useEffect, useRef, useState } from "react";
import type { Host, TableContents } from "../../hosts/host";
import type { DefinedName } from "../../sheets/workbook";

/** What the pane knows of the open workbook. It is read again after every edit, so the pane cannot disagree with the sheet. */
export interface OpenBook {
  readonly tables: readonly TableContents[];
  readonly names: readonly DefinedName[];
  readonly sheets: readonly string[];
  /** Goes up with every reading; views that read cells of their own follow it. */
  readonly reading: number;
}

export interface BookReading {
  readonly book: OpenBook | undefined;
  /** Why the workbook could not be read, as a sentence. */
  readonly trouble: string | undefined;
  readonly readAgain: () => Promise<void>;
}

/** Edits come in bursts (a paste, a recalculation); one reading after the last is enough. */
const QUIET_MS = 120;

export function useOpenBook(
  host: Host,
  watchEdits: (listener: () => void) => () => void,
): BookReading {
  const [book, setBook] = useState<OpenBook>();
  const [trouble, setTrouble] = useState<string>();
  const latest = useRef(0);
  const readAgain = useCallback(async () => {
    latest.current += 1;
    const reading = latest.current;
    try {
      const [tables, names, sheets] = await Promise.all([
        host.readTables(),
        host.readNames(),
        host.sheetNames(),
      ]);
      if (reading !== latest.current) return;
      setBook({ tables, names, sheets, reading });
      setTrouble(undefined);
    } catch (problem) {
      setTrouble(sentenceOf(problem));
    }
  }, [host]);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const stop = watchEdits(() => {
      clearTimeout(timer);
      timer = setTimeout(() => void readAgain(), QUIET_MS);
    });
    void readAgain();
    return () => {
      clearTimeout(timer);
      stop();
    };
  }, [readAgain, watchEdits]);
  return { book, trouble, readAgain };
}

/** The sentence to show for anything that was thrown. */
export const sentenceOf = (problem: unknown): string =>
  problem instanceof Error && problem.message !== ""
    ? problem.message
    : "Something went wrong, and it gave no reason.";
