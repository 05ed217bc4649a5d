import { useState, type ReactNode } from "react";
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import type { Book } from "../../../book/book";
import { accountsOf } from "../../../book/tote-receivables";
import type { Totes } from "../../../book/totes";
import { isoDate } from "../../../measures/read-date";
import { statement } from "../../../trade/totes/statement";
import type { Host } from "../../../hosts/host";
import { toteNames } from "../../../sheets/totes/names";
import { useAnnounce } from "../last-write";
import { sentenceOf, type OpenBook } from "../open-book";
import { ChoiceField } from "../new-product/form-parts";
import { usePaneStyles } from "../styles";
import { moneyIn } from "./money-in";
import { accountKey } from "./payment";

/** One buyer's account in one money, line by line. */
export function StatementView(props: {
  readonly host: Host;
  readonly open: OpenBook;
  readonly book: Book;
  readonly totes: Totes;
}): ReactNode {
  const { host, open, book, totes } = props;
  const announce = useAnnounce();
  const place = toteNames(open.names).statement_buyer;
  const pane = usePaneStyles();
  const styles = useStyles();
  const { accounts } = totes.receivables;
  const [chosen, setChosen] = useState("");
  const account =
    accounts.find((one) => accountKey(one) === chosen) ?? accounts[0];
  if (!account)
    return (
      <p className={pane.quiet}>There is no invoice and no receipt yet.</p>
    );
  const { invoices, receipts } = accountsOf(book);
  const lines = statement(account, invoices, receipts, totes.asOf);
  const toSheet = async (): Promise<void> => {
    if (!place) return;
    try {
      await host.setCell(place, account.buyer);
      await host.select(place);
      announce({
        says: `The sheet “${place.sheet}” shows ${account.buyer}, ready to print.`,
      });
    } catch (problem) {
      announce({ says: sentenceOf(problem) });
    }
  };
  return (
    <>
      <ChoiceField
        label="Buyer and money"
        value={accountKey(account)}
        choices={accounts.map((one) => ({
          value: accountKey(one),
          text: accountKey(one),
        }))}
        change={setChosen}
      />
      <p className={pane.plain} role="status">
        On {isoDate(totes.asOf)} {account.buyer} owes{" "}
        <strong>{moneyIn(account.balance, account.currency)}</strong>
        {account.credits > 0
          ? `; we owe them ${moneyIn(account.credits, account.currency)}`
          : ""}
        .
      </p>
      {place ? (
        <div>
          <Button onClick={() => void toSheet()}>
            Show it on the sheet, ready to print
          </Button>
        </div>
      ) : (
        <p className={pane.quiet}>
          To print it, build the tote sheets first: “See where totes stand”.
        </p>
      )}
      <div
        className={styles.scroll}
        role="region"
        aria-label="Statement"
        tabIndex={0}
      >
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Day</th>
              <th scope="col">What</th>
              <th scope="col" className={pane.numeric}>
                Amount
              </th>
              <th scope="col" className={pane.numeric}>
                Balance
              </th>
            </tr>
          </thead>
          <tbody>
            {lines.map(({ day, kind, number, pays, amount, balance }) => (
              <tr key={`${kind} ${number}`}>
                <td>{isoDate(day)}</td>
                <th scope="row">
                  {number}
                  {pays === undefined
                    ? kind === "receipt"
                      ? ", for no invoice"
                      : ""
                    : `, for ${pays}`}
                </th>
                <td className={pane.numeric}>
                  {moneyIn(amount, account.currency)}
                </td>
                <td className={pane.numeric}>
                  {moneyIn(balance, account.currency)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

const useStyles = makeStyles({
  scroll: { overflowX: "auto" },
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontSize: tokens.fontSizeBase200,
    "& th, & td": {
      padding: "4px 8px 4px 0",
      textAlign: "left",
      fontWeight: tokens.fontWeightRegular,
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    },
    "& th:nth-child(n+3), & td:nth-child(n+3)": { textAlign: "right" },
  },
});
