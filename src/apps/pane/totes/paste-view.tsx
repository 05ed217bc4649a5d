import {
  useMemo,
  useState,
  type Dispatch,
  type ReactNode,
  type SetStateAction,
} from "react";
import { Button, Field, Spinner, Textarea } from "@fluentui/react-components";
import type { Book } from "../../../book/book";
import {
  checkTickets,
  type CheckedLine,
} from "../../../book/tickets/check-tickets";
import { withCells } from "../../../book/tickets/pasted-lines";
import type { Host } from "../../../hosts/host";
import { useAnnounce } from "../last-write";
import { sentenceOf, type OpenBook } from "../open-book";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";
import { CheckedLines } from "./checked-lines";
import { countWords, leftOver, postable } from "./paste";
import { PlateQuestion, platesAnswered } from "./plate-question";
import { postTickets } from "./post";
import { TicketChoicesFields, type Choices, factsFor } from "./ticket-choices";

/** "Paste many": every row is looked at first; what is not posted stays in the box with its reason. */
export function PasteView(props: {
  readonly host: Host;
  readonly open: OpenBook;
  readonly book: Book;
  readonly text: string;
  readonly change: Dispatch<SetStateAction<string>>;
  readonly choices: Choices;
  readonly choose: (choices: Choices) => void;
}): ReactNode {
  const { host, open, book, text, change, choices, choose } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const [accepted, setAccepted] = useState<ReadonlySet<string>>(new Set());
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  const checked = useMemo(
    () =>
      text.trim() === ""
        ? undefined
        : checkTickets(text, factsFor(book, open.tables, choices)),
    [text, book, open, choices],
  );
  const ready = checked ? postable(checked, accepted) : [];
  const unasked = checked?.lines.filter(
    (line) =>
      line.verdict === "asked" && line.ready && !accepted.has(line.text),
  );
  const accept = (lines: readonly CheckedLine[], isRight: boolean): void => {
    const next = new Set(accepted);
    for (const line of lines)
      if (isRight) next.add(line.text);
      else next.delete(line.text);
    setAccepted(next);
  };
  const post = async (): Promise<void> => {
    if (!checked || ready.length === 0) return;
    setBusy(true);
    setTrouble(undefined);
    try {
      await postTickets(
        host,
        ready.map((line) => line.ready),
      );
      const left = leftOver(text, checked, ready);
      change(left);
      choose({ ...choices, platesSeen: false });
      const stay = checked.lines.length - ready.length;
      announce({
        says: `Posted ${ready.length === 1 ? `ticket ${ready[0]?.name ?? ""}` : `${ready.length} tickets`}.${stay > 0 ? ` ${stay} ${stay === 1 ? "stays" : "stay"} in the box.` : ""}`,
        takeBack: async () => {
          const says = await host.undo();
          // What is taken back out of the book must not be lost from the box.
          if (says !== undefined)
            change((now) =>
              now === left
                ? text
                : [now, ...ready.map((line) => line.text)].join("\n"),
            );
          return says;
        },
      });
    } catch (problem) {
      setTrouble(sentence(sentenceOf(problem)));
    } finally {
      setBusy(false);
    }
  };
  return (
    <>
      <TicketChoicesFields book={book} choices={choices} choose={choose} />
      <Field
        label="Tickets, one a line"
        hint="From a sheet, a CSV file or an e-mail, best with its headings. Nothing is written before you post."
      >
        <Textarea
          value={text}
          rows={7}
          resize="vertical"
          textarea={{
            style: {
              fontFamily: "monospace",
              whiteSpace: "pre",
              overflowX: "auto",
            },
          }}
          onChange={(_, { value }) => change(value)}
        />
      </Field>
      {checked && (
        <>
          <p className={pane.plain} role="status">
            {checked.lines.length === 0
              ? "No ticket is seen in this yet."
              : `${countWords(checked)}. Weights are read as ${checked.understood.weight.is}, from ${checked.understood.weight.from}.`}
          </p>
          <CheckedLines
            lines={checked.lines}
            accepted={accepted}
            accept={(line, isRight) => accept([line], isRight)}
            take={(line, offer) =>
              change(withCells(text, line.line, offer.cells))
            }
          />
          {ready.length > 0 && (
            <PlateQuestion choices={choices} choose={choose} />
          )}
          {trouble !== undefined && <p role="alert">{trouble}</p>}
          <div className={pane.buttons}>
            <Button
              appearance="primary"
              disabled={busy || ready.length === 0 || !platesAnswered(choices)}
              icon={busy ? <Spinner size="tiny" /> : null}
              onClick={() => void post()}
            >
              {busy
                ? "Posting …"
                : ready.length === 0
                  ? "Nothing to post yet"
                  : `Post ${ready.length} of ${checked.lines.length}`}
            </Button>
            {unasked && unasked.length > 1 && (
              <Button onClick={() => accept(unasked, true)}>
                All {unasked.length} readings are right
              </Button>
            )}
          </div>
        </>
      )}
    </>
  );
}
