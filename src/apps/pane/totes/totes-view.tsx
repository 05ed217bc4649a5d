import { useMemo, useState, type ReactNode } from "react";
import { readBook } from "../../../book/read";
import { totesOf, type Totes } from "../../../book/totes";
import type { Book } from "../../../book/book";
import type { Host } from "../../../hosts/host";
import { sentenceOf, type OpenBook } from "../open-book";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";
import { hasTable } from "../table-rows";
import { ChoiceField } from "../new-product/form-parts";
import { PapersView } from "../papers/papers-view";
import { AdoptView } from "./adopt-view";
import { PasteView } from "./paste-view";
import { PaymentView } from "./payment-view";
import { PostOneView } from "./post-one-view";
import { RegisterView } from "./register-view";
import { StatementView } from "./statement-view";
import { SheetsCard } from "./sheets-card";
import { startChoices, type Choices } from "./ticket-choices";
import { TraceView } from "./trace-view";
import { TruckView } from "./truck-view";

const parts = [
  { value: "register", text: "See where totes stand" },
  { value: "one", text: "Post one ticket" },
  { value: "many", text: "Paste many tickets" },
  { value: "truck", text: "Load a truck" },
  { value: "payment", text: "Take a payment" },
  { value: "statement", text: "See a statement" },
  { value: "trace", text: "Trace a lot" },
  { value: "papers", text: "Print papers" },
  { value: "adopt", text: "Adopt a ledger you keep" },
] as const;
type Part = (typeof parts)[number]["value"];

/** "Totes": what went out, who owes, posting tickets and receipts, tracing lots. */
export function TotesView(props: {
  readonly host: Host;
  readonly book: OpenBook;
}): ReactNode {
  const { host, book: open } = props;
  const pane = usePaneStyles();
  const [part, setPart] = useState<Part>("register");
  const [text, setText] = useState("");
  const { book } = useMemo(() => readBook(open.tables), [open]);
  const [chosen, setChosen] = useState<Choices>();
  const choices = chosen ?? startChoices(book);
  const read = useMemo(() => totesOrTrouble(book), [book]);
  const own = { host, open, book };
  const canPost = hasTable(open.tables, "ToteShipments");
  return (
    <>
      <ChoiceField
        label="What to do"
        value={part}
        choices={parts}
        change={(value) =>
          setPart(parts.find((one) => one.value === value)?.value ?? "register")
        }
      />
      {part === "adopt" ? (
        <AdoptView host={host} open={open} />
      ) : !canPost ? (
        <>
          <p className={pane.plain}>
            This workbook has no table ToteShipments yet, so there is nothing to
            show or post to. Build a register in it, or point at a ledger you
            keep under “Adopt a ledger you keep”.
          </p>
          <SheetsCard host={host} open={open} />
        </>
      ) : "trouble" in read && part !== "one" && part !== "many" ? (
        <p role="alert">{read.trouble}</p>
      ) : (
        <>
          {part === "one" && (
            <PostOneView {...own} choices={choices} choose={setChosen} />
          )}
          {part === "many" && (
            <PasteView
              {...own}
              text={text}
              change={setText}
              choices={choices}
              choose={setChosen}
            />
          )}
          {part === "truck" && <TruckView book={book} />}
          {part === "trace" && <TraceView {...own} />}
          {part === "papers" && <PapersView book={book} />}
          {"totes" in read && part === "register" && (
            <>
              <RegisterView totes={read.totes} />
              <SheetsCard host={host} open={open} />
            </>
          )}
          {"totes" in read && part === "payment" && (
            <PaymentView {...own} totes={read.totes} />
          )}
          {"totes" in read && part === "statement" && (
            <StatementView {...own} totes={read.totes} />
          )}
        </>
      )}
    </>
  );
}

function totesOrTrouble(
  book: Book,
): { readonly totes: Totes } | { readonly trouble: string } {
  try {
    return { totes: totesOf(book) };
  } catch (problem) {
    return { trouble: sentence(sentenceOf(problem)) };
  }
}
