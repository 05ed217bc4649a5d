import type { ReactNode } from "react";
import type { WeightDisputes } from "../../../book/weight-disputes";
import { balancePounds } from "../../../book/totes-lots";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { moneyIn } from "./money-in";

/** Weights the buyers report otherwise than we do, beyond the tolerance; nothing while none has reported any. */
export function DisputesSection(props: {
  readonly disputes: WeightDisputes;
}): ReactNode {
  const { tolerance, reported, beyond } = props.disputes;
  const pane = usePaneStyles();
  if (reported === 0) return null;
  return (
    <Section title="Weights in dispute">
      <p className={pane.quiet}>
        {beyond.length} of {reported} reported{" "}
        {beyond.length === 1 ? "lies" : "lie"} farther from ours than{" "}
        {percent(tolerance, 2)}.
      </p>
      <ul className={pane.list}>
        {beyond.map(({ ticket, theirs, difference }) => (
          <li key={ticket.row.ticket}>
            <div className={pane.row}>
              <strong>{ticket.row.ticket}</strong>
              <span className={pane.numeric}>
                {moneyIn(difference.money, ticket.currency ?? "")}
              </span>
            </div>
            <div className={pane.quiet}>
              {ticket.buyer} has {lb(balancePounds(theirs))},{" "}
              {lb(Math.abs(balancePounds(difference.weight)))}{" "}
              {difference.weight < 0 ? "less" : "more"} than we,{" "}
              {percent(Math.abs(difference.share), 2)}
            </div>
          </li>
        ))}
      </ul>
    </Section>
  );
}

const lb = (pounds: number): string =>
  `${pounds.toLocaleString("en-US", { maximumFractionDigits: 1 })} lb`;
const percent = (share: number, decimals: number): string =>
  `${(share * 100).toFixed(decimals)} %`;
