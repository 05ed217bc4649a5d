import { useMemo, useState, type ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import type { Book } from "../../../book/book";
import { checkTickets } from "../../../book/tickets/check-tickets";
import type { Host } from "../../../hosts/host";
import { useAnnounce } from "../last-write";
import { TextField } from "../new-product/form-parts";
import { sentenceOf, type OpenBook } from "../open-book";
import { Pair } from "../pair";
import { sentence } from "../sentence";
import { CheckedLines } from "./checked-lines";
import {
  emptyTicket,
  pastedTicket,
  withOffer,
  type TypedTicket,
} from "./one-ticket";
import { PlateQuestion, platesAnswered } from "./plate-question";
import { postTickets } from "./post";
import { factsFor, TicketChoicesFields, type Choices } from "./ticket-choices";

/** "Post one": one tote's ticket, held to the same checks as a paste. */
export function PostOneView(props: {
  readonly host: Host;
  readonly open: OpenBook;
  readonly book: Book;
  readonly choices: Choices;
  readonly choose: (choices: Choices) => void;
}): ReactNode {
  const { host, open, book, choices, choose } = props;
  const announce = useAnnounce();
  const [typed, setTyped] = useState<TypedTicket>(emptyTicket);
  const [isRight, setRight] = useState(false);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  const isBlank = isEmpty(typed);
  const line = useMemo(
    () =>
      checkTickets(pastedTicket(typed), factsFor(book, open.tables, choices))
        .lines[0],
    [typed, book, open, choices],
  );
  const set =
    (field: keyof TypedTicket) =>
    (value: string): void => {
      setTyped({ ...typed, [field]: value });
      setRight(false);
    };
  const ready = line?.verdict === "fine" || isRight ? line?.ready : undefined;
  const post = async (): Promise<void> => {
    if (!ready) return;
    setBusy(true);
    setTrouble(undefined);
    try {
      await postTickets(host, [ready]);
      announce({
        says: `Posted ticket ${ready.ticket}.`,
        takeBack: async () => {
          const says = await host.undo();
          // Another ticket may have been begun since.
          if (says !== undefined)
            setTyped((now) => (isEmpty(now) ? typed : now));
          return says;
        },
      });
      setTyped(emptyTicket);
      setRight(false);
      choose({ ...choices, platesSeen: false });
    } catch (problem) {
      setTrouble(sentence(sentenceOf(problem)));
    } finally {
      setBusy(false);
    }
  };
  const field = (
    name: keyof TypedTicket,
    label: string,
    unit?: string,
  ): ReactNode => (
    <TextField
      label={label}
      value={typed[name]}
      change={set(name)}
      {...(unit === undefined ? {} : { unit })}
    />
  );
  return (
    <>
      <TicketChoicesFields
        book={book}
        choices={choices}
        choose={choose}
        needed
      />
      <Pair>
        {field("ticket", "Ticket")}
        {field("date", "Shipped")}
        {field("gross", "Gross", "lb")}
        {field("tare", "Tare", "lb")}
        {field("brix", "°Brix at 68 °F")}
        {field("invoice", "Bill of lading")}
      </Pair>
      <TextField
        label="Lots it was filled from"
        hint="One lot, or lots with pounds: 26-04:1913; 26-05:999"
        value={typed.lot}
        change={set("lot")}
      />
      {!isBlank && line && (
        <CheckedLines
          lines={[line]}
          accepted={new Set(isRight ? [line.text] : [])}
          accept={(_, right) => setRight(right)}
          take={(_, offer) => {
            setTyped(withOffer(typed, offer));
            setRight(false);
          }}
        />
      )}
      {ready && <PlateQuestion choices={choices} choose={choose} />}
      {trouble !== undefined && <p role="alert">{trouble}</p>}
      <div>
        <Button
          appearance="primary"
          disabled={busy || !ready || !platesAnswered(choices)}
          icon={busy ? <Spinner size="tiny" /> : null}
          onClick={() => void post()}
        >
          {busy ? "Posting …" : "Post the ticket"}
        </Button>
      </div>
    </>
  );
}

const isEmpty = (typed: TypedTicket): boolean =>
  Object.values(typed).every((value) => value.trim() === "");
