import { useEffect, useMemo, useState, type ReactNode } from "react";
import { Spinner } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import {
  type Comparison,
  compareWorkbooks,
  type CopyChange,
} from "../../../sheets/compare/compare-workbooks";
import type { Workbook } from "../../../sheets/workbook";
import { useAnnounce } from "../last-write";
import { sentenceOf, type OpenBook } from "../open-book";
import { Section } from "../section";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";
import { ChangeItem } from "./change-item";
import { ChooseFile } from "./choose-file";
import { readCopy, type RoundTrip } from "./copy-file";
import { type Offer, offersFor } from "./offers";
import { takeOver } from "./take-over";

/** "A copy came back": what somebody changed in a copy we sent, and each change into the book only if asked. */
export function ReturnedView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly trip: RoundTrip;
  readonly change: (trip: RoundTrip) => void;
}): ReactNode {
  const { host, book, trip, change } = props;
  const pane = usePaneStyles();
  const [reading, setReading] = useState<string>();
  const [trouble, setTrouble] = useState<string>();
  const { sent, back } = trip;
  const comparison = useMemo(
    () => sent && back && compareWorkbooks(sent.workbook, back.workbook),
    [sent, back],
  );
  const choose = async (which: "sent" | "back", file: File): Promise<void> => {
    setReading(file.name);
    setTrouble(undefined);
    try {
      change({ ...trip, [which]: await readCopy(file) });
    } catch (problem) {
      // It begins with the file's own name, which keeps its letters.
      setTrouble(sentenceOf(problem));
    } finally {
      setReading(undefined);
    }
  };
  const isReading = reading !== undefined;
  return (
    <>
      <p className={pane.quiet}>
        Choose the file you sent and the one that came back. Both stay as they
        are, and nothing goes into this workbook until you take it over.
      </p>
      <ChooseFile
        label="The copy as you sent it"
        chosen={sent?.name}
        disabled={isReading}
        choose={(file) => void choose("sent", file)}
      />
      <ChooseFile
        label="The copy that came back"
        chosen={back?.name}
        disabled={isReading}
        choose={(file) => void choose("back", file)}
      />
      {isReading && <Spinner label={`Reading ${reading} …`} />}
      {trouble !== undefined && <p role="alert">{trouble}</p>}
      {sent && comparison && (
        <Compared
          host={host}
          book={book}
          sent={sent.workbook}
          comparison={comparison}
        />
      )}
    </>
  );
}

function Compared(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly sent: Workbook;
  readonly comparison: Comparison;
}): ReactNode {
  const { host, book, sent, comparison } = props;
  const { changes, unmatched } = comparison;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const { offers, trouble } = useOffers(host, book, changes, sent);
  const formats = useMemo(() => formatsIn(sent), [sent]);
  const sheets = [...new Set(changes.map(({ sheet }) => sheet))];
  return (
    <>
      <p className={pane.plain} role="status">
        {summary(changes, unmatched, offers)}
      </p>
      {trouble !== undefined && <p role="alert">{trouble}</p>}
      {unmatched.length > 0 && (
        <Section title="Cannot be matched">
          <ul className={pane.list}>
            {unmatched.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </Section>
      )}
      {sheets.map((sheet) => (
        <Section key={sheet} title={sheet}>
          <ul className={pane.list}>
            {changes.map((own, i) =>
              own.sheet === sheet ? (
                <ChangeItem
                  key={`${own.row},${own.column}`}
                  change={own}
                  offer={offers?.[i]}
                  format={formats(own)}
                  take={async (offer) => {
                    if (offer.can === "take over")
                      announce(await takeOver(host, offer, formats(own)));
                  }}
                />
              ) : null,
            )}
          </ul>
        </Section>
      ))}
    </>
  );
}

function summary(
  changes: readonly CopyChange[],
  unmatched: readonly string[],
  offers: readonly Offer[] | undefined,
): string {
  if (changes.length + unmatched.length === 0) return "Nothing was changed.";
  const counted = `${changes.length} ${changes.length === 1 ? "change" : "changes"}`;
  if (!offers) return `${counted}.`;
  const open = offers.filter(
    (offer) => offer.can === "take over" && !offer.isDone,
  ).length;
  const done = offers.filter(
    (offer) => offer.can === "take over" && offer.isDone,
  ).length;
  return `${counted}: ${open} can be taken over, ${done} ${done === 1 ? "is" : "are"} in the book, ${changes.length - open - done} cannot be taken over.`;
}

/** The number formats of the copy's cells. */
function formatsIn({ sheets }: Workbook) {
  const known = new Map(
    sheets.flatMap(({ name, cells }) =>
      cells.map(
        ({ row, column, style }) =>
          [`${row},${column},${name}`, style?.format] as const,
      ),
    ),
  );
  return ({ row, column, sheet }: CopyChange): string | undefined =>
    known.get(`${row},${column},${sheet}`);
}

/** The offers as the book now stands, looked for again after every edit; the old ones stay until then. */
function useOffers(
  host: Host,
  book: OpenBook,
  changes: readonly CopyChange[],
  sent: Workbook,
): {
  readonly offers?: readonly Offer[];
  readonly trouble?: string;
} {
  const [held, setHeld] = useState<{
    readonly of?: readonly CopyChange[];
    readonly offers?: readonly Offer[];
    readonly trouble?: string;
  }>({});
  useEffect(() => {
    let isLate = false;
    offersFor(host, book, changes, sent).then(
      (offers) => !isLate && setHeld({ of: changes, offers }),
      (problem: unknown) =>
        !isLate &&
        setHeld({ of: changes, trouble: sentence(sentenceOf(problem)) }),
    );
    return () => {
      isLate = true;
    };
  }, [host, book, changes, sent]);
  // Offers of other files must not stand beside these changes.
  return held.of === changes ? held : {};
}
