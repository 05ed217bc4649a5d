import type { ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import { amount, perBottle } from "../money";
import { usePaneStyles } from "../styles";
import { serif } from "../theme";
import { isShort, type Costing } from "./costing";

/** What a bottle costs today, and which prices no longer keep their goal: the two things looked for first. */
export function Headline(props: {
  readonly costing: Costing;
  readonly perCase: number | undefined;
}): ReactNode {
  const { figure, channels } = props.costing;
  const pane = usePaneStyles();
  const styles = useStyles();
  const short = channels.filter(isShort);
  return (
    <div>
      <p className={styles.headline}>
        <span className={styles.figure}>
          {perBottle(figure.full_replacement?.value)}
        </span>
        <span>
          a bottle at today's price
          {props.perCase !== undefined &&
            `, ${amount(figure.case_replacement?.value)} a case of ${props.perCase}`}
          {isEstimate(figure.full_basis?.value) &&
            ` (${figure.full_basis.value})`}
        </span>
      </p>
      {short.map(({ channel, price, verdict }) => (
        <p key={channel} className={pane.plain}>
          <strong>
            {channel} at {amount(price)}: {verdict}.
          </strong>
        </p>
      ))}
    </div>
  );
}

/** A rolled book's sheet says which season its overheads are estimated from, until they are the season's own. */
const isEstimate = (basis: unknown): basis is string =>
  typeof basis === "string" && basis.startsWith("estimate");

const useStyles = makeStyles({
  headline: {
    margin: 0,
    display: "flex",
    flexWrap: "wrap",
    alignItems: "baseline",
    columnGap: "8px",
    color: tokens.colorNeutralForeground2,
  },
  figure: {
    fontFamily: serif,
    fontSize: "34px",
    lineHeight: "42px",
    fontVariantNumeric: "lining-nums tabular-nums",
    color: tokens.colorNeutralForeground1,
  },
});
