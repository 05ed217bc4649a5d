import type { ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import type { Totes } from "../../../book/totes";
import { inPounds } from "../../../functions/by-weight";
import { isoDate } from "../../../measures/read-date";
import type { Kilograms } from "../../../measures/quantity";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { DisputesSection } from "./disputes-section";
import { moneyIn } from "./money-in";

/** What went out, what is left on contracts, who owes and which totes are out: read in a minute. */
export function RegisterView(props: { readonly totes: Totes }): ReactNode {
  const { tickets, contracts, receivables, totals, deposits, asOf, toInvoice } =
    props.totes;
  const pane = usePaneStyles();
  const styles = useStyles();
  const sent = tickets.reduce((sum, { net }) => sum + (net ?? 0), 0);
  const running = contracts.filter(({ row }) => row.end >= asOf);
  const owing = receivables.accounts.filter(
    ({ balance, credits, unapplied }) => balance + credits + unapplied > 0,
  );
  return (
    <>
      <Section title={`On ${isoDate(asOf)}`}>
        <p className={pane.plain}>
          <strong>{tickets.length} totes</strong> went out, {lb(sent)} net.
        </p>
        {totals.map(({ currency, sold, balance, late }) => (
          <p key={currency} className={pane.plain}>
            {currency}: sold {moneyIn(sold, currency)},{" "}
            <strong>still owed {moneyIn(balance, currency)}</strong>
            {late > 0 ? `, of it late ${moneyIn(late, currency)}` : ""}.
          </p>
        ))}
        <p className={pane.plain}>
          {deposits.totesOut === 0
            ? "No tote is out on deposit."
            : `${deposits.totesOut} totes are out on deposit, ${moneyIn(deposits.amount, deposits.currency)}, the longest ${deposits.longestOut} days.`}
        </p>
      </Section>
      <Section title="Contracts that run">
        {running.length === 0 && <p className={pane.quiet}>None.</p>}
        <ul className={pane.list}>
          {running.map(({ row, progress }) => (
            <li key={row.contract}>
              <div className={pane.row}>
                <strong>{row.contract}</strong>
                <span className={pane.numeric}>
                  {progress.left < 0
                    ? `${lb(-progress.left)} over`
                    : `${lb(progress.left)} left`}
                </span>
              </div>
              <div className={pane.quiet}>
                {row.customer};{" "}
                {progress.totesLeft === undefined
                  ? ""
                  : `${progress.totesLeft} more ${progress.totesLeft === 1 ? "tote" : "totes"}, `}
                ends {isoDate(row.end)}
              </div>
              <div
                className={styles.track}
                role="img"
                aria-label={`${percent(progress.shareShipped)} shipped, ${percent(progress.shareOfTime)} of its time gone`}
              >
                <div
                  className={styles.done}
                  style={{
                    width: `${Math.min(100, progress.shareShipped * 100)}%`,
                  }}
                />
                <div
                  className={styles.time}
                  style={{ left: `${progress.shareOfTime * 100}%` }}
                />
              </div>
              <div className={pane.quiet}>
                {percent(progress.shareShipped)} shipped,{" "}
                {percent(progress.shareOfTime)} of its time gone
              </div>
            </li>
          ))}
        </ul>
      </Section>
      <Section title="Who owes">
        {owing.length === 0 && <p className={pane.quiet}>Nobody.</p>}
        <ul className={pane.list}>
          {owing.map((account) => (
            <li key={`${account.buyer} ${account.currency}`}>
              <div className={pane.row}>
                <strong>{account.buyer}</strong>
                <span className={pane.numeric}>
                  {moneyIn(account.balance, account.currency)}
                </span>
              </div>
              {account.late.map(({ bill, balance, daysLate }) => (
                <div key={bill} className={styles.late}>
                  {bill}: {moneyIn(balance, account.currency)}, {daysLate} days
                  late
                </div>
              ))}
              {account.credits > 0 && (
                <div className={pane.quiet}>
                  We owe them {moneyIn(account.credits, account.currency)}, paid
                  too much; kept apart
                </div>
              )}
              {account.unapplied > 0 && (
                <div className={pane.quiet}>
                  {moneyIn(account.unapplied, account.currency)} received and
                  set against no invoice
                </div>
              )}
            </li>
          ))}
        </ul>
      </Section>
      <DisputesSection disputes={props.totes.disputes} />
      {toInvoice.length > 0 && (
        <Section title="Left without an invoice">
          <ul className={pane.list}>
            {toInvoice.map(({ bill, buyer, amount, currency, totes }) => (
              <li key={`${bill} ${currency}`} className={pane.row}>
                <span>
                  {bill}, {buyer} ({totes} {totes === 1 ? "tote" : "totes"})
                </span>
                <span className={pane.numeric}>
                  {moneyIn(amount, currency)}
                </span>
              </li>
            ))}
          </ul>
        </Section>
      )}
    </>
  );
}

const lb = (weight: number): string =>
  `${Math.round(inPounds(weight as Kilograms)).toLocaleString("en-US")} lb`;
const percent = (share: number): string => `${Math.round(share * 100)} %`;

const useStyles = makeStyles({
  track: {
    position: "relative",
    height: "8px",
    margin: "4px 0",
    borderRadius: "4px",
    backgroundColor: tokens.colorNeutralBackground5,
  },
  done: {
    height: "100%",
    borderRadius: "4px",
    backgroundColor: tokens.colorBrandBackground,
  },
  time: {
    position: "absolute",
    top: "-3px",
    width: "2px",
    height: "14px",
    backgroundColor: tokens.colorNeutralForeground1,
  },
  late: {
    color: tokens.colorPaletteRedForeground1,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
  },
});
