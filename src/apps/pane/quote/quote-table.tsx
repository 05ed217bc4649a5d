import type { ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import type { Stored } from "../../../sheets/workbook";
import { amount, count, perBottle } from "../money";
import type { QuotedTier, ReadQuote } from "./read-quote";

/** Every quantity side by side: what the customer sees above the line, what only we see below it. */
export function QuoteTable(props: { readonly quote: ReadQuote }): ReactNode {
  const styles = useStyles();
  const { tiers } = props.quote;
  const any = (of: (tier: QuotedTier) => Stored): boolean =>
    tiers.some((tier) => of(tier) !== "" && of(tier) !== null);
  const row = (
    name: string,
    say: (tier: QuotedTier) => string,
    look: "number" | "price" = "number",
  ): ReactNode => (
    <tr>
      <th scope="row" className={styles.rowName}>
        {name}
      </th>
      {tiers.map((tier, i) => (
        <td key={i} className={styles[look]}>
          {say(tier)}
        </td>
      ))}
    </tr>
  );
  return (
    <div
      className={styles.scroll}
      role="region"
      aria-label="Prices by quantity"
      tabIndex={0}
    >
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col" className={styles.rowName}>
              Bottles
            </th>
            {tiers.map(({ bottles }, i) => (
              <th key={i} scope="col" className={styles.number}>
                {count(bottles.value)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {row("A bottle", ({ price }) => amount(price), "price")}
          {row("In all", ({ price, bottles }) =>
            typeof price === "number" && typeof bottles.value === "number"
              ? amount(price * bottles.value)
              : "–",
          )}
        </tbody>
        <tbody>
          <tr>
            <th
              scope="colgroup"
              colSpan={tiers.length + 1}
              className={styles.ours}
            >
              Only for us
            </th>
          </tr>
          {row("Line", ({ line }) =>
            typeof line === "string" ? line : "withheld",
          )}
          {row("Full cost", ({ full }) => perBottle(full))}
          {row("Direct cost", ({ direct }) => perBottle(direct))}
          {row("Price on direct", ({ onDirect }) => amount(onDirect))}
          {row("Earned in all", ({ earned }) => amount(earned))}
          {row("Left over", ({ leftValue }) => amount(leftValue))}
          {any(({ artworkEach }) => artworkEach) &&
            row("Artwork each", ({ artworkEach }) => perBottle(artworkEach))}
          {any(({ backAt }) => backAt) &&
            row("Money back at", ({ backAt }) => count(backAt))}
          {any(({ months }) => months) &&
            row("in months", ({ months }) =>
              typeof months === "number" ? months.toFixed(1) : "–",
            )}
        </tbody>
      </table>
    </div>
  );
}

const useStyles = makeStyles({
  // Six quantities are wider than a narrow pane; they then move under the finger, not the whole view.
  scroll: {
    overflowX: "auto",
    ":focus-visible": {
      outline: `2px solid ${tokens.colorStrokeFocus2}`,
      outlineOffset: "2px",
    },
  },
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  rowName: {
    textAlign: "left",
    fontWeight: tokens.fontWeightRegular,
    padding: "5px 4px 5px 0",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  number: {
    textAlign: "right",
    fontWeight: tokens.fontWeightRegular,
    fontVariantNumeric: "tabular-nums",
    padding: "5px 0 5px 8px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    verticalAlign: "bottom",
  },
  price: {
    textAlign: "right",
    fontWeight: tokens.fontWeightSemibold,
    fontSize: tokens.fontSizeBase400,
    fontVariantNumeric: "tabular-nums",
    padding: "5px 0 5px 8px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  ours: {
    textAlign: "left",
    fontWeight: tokens.fontWeightSemibold,
    padding: "12px 0 4px",
  },
});
