import { useState, type ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import type { Book } from "../../../book/book";
import type { Totes } from "../../../book/totes";
import { readBook } from "../../../book/read";
import { totesOf } from "../../../book/totes";
import type { Host } from "../../../hosts/host";
import { isoDate } from "../../../measures/read-date";
import { useAnnounce } from "../last-write";
import { ChoiceField, TextField } from "../new-product/form-parts";
import { sentenceOf, type OpenBook } from "../open-book";
import { Pair } from "../pair";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";
import { moneyIn } from "./money-in";
import { accountKey, plannedPayment, type TypedPayment } from "./payment";

/** "Take a payment": one receipt, against an invoice or against none. */
export function PaymentView(props: {
  readonly host: Host;
  readonly open: OpenBook;
  readonly book: Book;
  readonly totes: Totes;
}): ReactNode {
  const { host, open, book, totes } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const [typed, setTyped] = useState<TypedPayment>(() => blank(totes));
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  const { accounts, invoices } = totes.receivables;
  const account = accounts.find((one) => accountKey(one) === typed.account);
  const owed = invoices.filter(
    ({ buyer, currency, balance }) =>
      buyer === account?.buyer && currency === account.currency && balance > 0,
  );
  const plan = planOrTrouble(typed, book, totes, open);
  const set =
    (field: keyof TypedPayment) =>
    (value: string): void => {
      setTrouble(undefined);
      setTyped({
        ...typed,
        [field]: value,
        ...(field === "account" ? { bill: "", amount: "" } : {}),
        ...(field === "bill" ? { amount: balanceText(invoices, value) } : {}),
      });
    };
  const write = async (): Promise<void> => {
    setBusy(true);
    setTrouble(undefined);
    try {
      // The book is read anew, so that a number given out meanwhile is not given twice.
      const tables = await host.readTables();
      const now = readBook(tables).book;
      const { change, receipt } = plannedPayment(
        typed,
        now,
        totesOf(now),
        tables,
      );
      await host.apply(change);
      announce({
        says: `Wrote receipt ${receipt}.`,
        takeBack: () => host.undo(),
      });
      setTyped(blank(totes));
    } catch (problem) {
      setTrouble(sentence(sentenceOf(problem)));
    } finally {
      setBusy(false);
    }
  };
  return (
    <>
      <ChoiceField
        label="Who paid"
        value={typed.account}
        none="Choose a buyer and money"
        choices={accounts.map((one) => ({
          value: accountKey(one),
          text: `${one.buyer}, owes ${moneyIn(one.balance, one.currency)}`,
        }))}
        change={set("account")}
      />
      <ChoiceField
        label="For invoice"
        value={typed.bill}
        none="None: leave it unapplied"
        choices={owed.map(({ bill, balance, currency, due }) => ({
          value: bill,
          text: `${bill}, ${moneyIn(balance, currency)} due ${isoDate(due)}`,
        }))}
        change={set("bill")}
      />
      <Pair>
        <TextField
          label="Amount"
          unit={account?.currency ?? ""}
          value={typed.amount}
          change={set("amount")}
        />
        <TextField
          label="Paid on"
          value={typed.paidOn}
          change={set("paidOn")}
        />
      </Pair>
      <TextField label="Note" value={typed.note} change={set("note")} />
      {"change" in plan ? (
        plan.notes.map((note) => (
          <p key={note} className={pane.plain}>
            {note}
          </p>
        ))
      ) : (
        <p className={pane.quiet}>{plan.trouble}</p>
      )}
      {trouble !== undefined && <p role="alert">{trouble}</p>}
      <div>
        <Button
          appearance="primary"
          disabled={busy || !("change" in plan)}
          icon={busy ? <Spinner size="tiny" /> : null}
          onClick={() => void write()}
        >
          {busy ? "Writing …" : "Write the receipt"}
        </Button>
      </div>
    </>
  );
}

const blank = ({ asOf }: Totes): TypedPayment => ({
  account: "",
  bill: "",
  amount: "",
  paidOn: isoDate(asOf),
  note: "",
});

const balanceText = (
  invoices: Totes["receivables"]["invoices"],
  bill: string,
): string =>
  invoices.find((one) => one.bill === bill)?.balance.toFixed(2) ?? "";

function planOrTrouble(
  typed: TypedPayment,
  book: Book,
  totes: Totes,
  { tables }: OpenBook,
): ReturnType<typeof plannedPayment> | { readonly trouble: string } {
  try {
    return plannedPayment(typed, book, totes, tables);
  } catch (problem) {
    return { trouble: sentence(sentenceOf(problem)) };
  }
}
