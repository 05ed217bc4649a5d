import type { ReactNode } from "react";
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { amount, share } from "../money";
import { usePaneStyles } from "../styles";
import { sentence } from "../sentence";
import { channelFacts } from "./channel-facts";
import { isShort, isShortByFees, type ChannelPrice } from "./costing";

/** Prices by channel: what is charged, what stays, what was wanted. Under goal is said in words, never by colour alone. */
export function ChannelList(props: {
  readonly channels: readonly ChannelPrice[];
}): ReactNode {
  const pane = usePaneStyles();
  const styles = useStyles();
  if (props.channels.length === 0)
    return (
      <p className={pane.quiet}>
        No channel has a price for this product. Add a row to the table Prices.
      </p>
    );
  const priced = props.channels.filter(({ price }) => isNumber(price));
  const open = props.channels.filter(({ price }) => !isNumber(price));
  return (
    <>
      <ul className={pane.list}>
        {priced.map((channel) => (
          <PricedChannel key={channel.channel} channel={channel} />
        ))}
      </ul>
      {open.length > 0 && (
        <>
          <h3 className={styles.subheading}>
            No price yet; what the goal would need
          </h3>
          <ul className={mergeClasses(pane.list, styles.open)}>
            {open.map(({ channel, goal, goalPrice, verdict }) => (
              <li key={channel} className={pane.row}>
                <span>
                  {channel}
                  {isNumber(goal) && (
                    <span className={styles.term}>, goal {share(goal)}</span>
                  )}
                </span>
                <span className={pane.numeric}>
                  {isNumber(goalPrice) ? amount(goalPrice) : verdict}
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

function PricedChannel({
  channel,
}: {
  readonly channel: ChannelPrice;
}): ReactNode {
  const pane = usePaneStyles();
  const styles = useStyles();
  return (
    <li className={styles.channel}>
      <div className={pane.row}>
        <span className={styles.name}>{channel.channel}</span>
        <span className={mergeClasses(pane.numeric, styles.price)}>
          {amount(channel.price)}
        </span>
      </div>
      <dl className={styles.facts}>
        {channelFacts(channel).map(([name, value]) => (
          <Fact key={name} name={name} value={value} />
        ))}
      </dl>
      {channel.verdict !== "" && (
        <p
          className={mergeClasses(
            styles.verdict,
            isShort(channel) && styles.under,
          )}
        >
          {sentence(channel.verdict)}
          {isShortByFees(channel) &&
            " The margin is above the goal, but the channel's own fees, marketing and returns come off it."}
        </p>
      )}
    </li>
  );
}

function Fact(props: {
  readonly name: string;
  readonly value: string;
}): ReactNode {
  const styles = useStyles();
  return (
    <div className={styles.fact}>
      <dt className={styles.term}>{props.name}</dt>
      <dd className={styles.value}>{props.value}</dd>
    </div>
  );
}

const isNumber = (value: unknown): value is number => typeof value === "number";

const useStyles = makeStyles({
  channel: {
    display: "flex",
    flexDirection: "column",
    gap: "4px",
    paddingTop: "8px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  name: { fontWeight: tokens.fontWeightSemibold },
  price: { fontSize: tokens.fontSizeBase400 },
  facts: {
    margin: 0,
    display: "flex",
    flexWrap: "wrap",
    columnGap: "14px",
    rowGap: "2px",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  fact: { display: "flex", gap: "4px" },
  term: { color: tokens.colorNeutralForeground3 },
  value: { margin: 0, fontVariantNumeric: "tabular-nums" },
  subheading: {
    margin: "4px 0 0",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    fontWeight: tokens.fontWeightSemibold,
  },
  open: { gap: "4px", fontSize: tokens.fontSizeBase200 },
  verdict: {
    margin: 0,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  under: {
    paddingLeft: "8px",
    borderLeft: `3px solid ${tokens.colorPaletteRedBorder2}`,
    fontWeight: tokens.fontWeightSemibold,
  },
});
