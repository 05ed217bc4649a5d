import type { ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import { findingText } from "../../../book/finding";
import type { RunPlan } from "../../../book/run-plan";
import { runFindings } from "../../../book/run-plan-findings";
import { scalds } from "../../../functions/caution";
import { amount, count } from "../money";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { serif } from "../theme";
import { FactsList } from "./facts-list";
import { LinesPicture } from "./lines-picture";
import {
  kettleFacts,
  lineFacts,
  lotFacts,
  materialFacts,
  packedFacts,
} from "./plan-facts";

/** The whole plan, the line first. */
export function PlanAnswers(props: {
  readonly plan: RunPlan;
  readonly dark: boolean;
}): ReactNode {
  const { plan, dark } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  const chosen = plan.choice.chosen;
  const kettle = kettleFacts(plan);
  const lots = lotFacts(plan);
  const findings = runFindings(plan);
  return (
    <>
      <div role="status">
        <p className={styles.headline}>
          <span className={styles.figure}>
            {chosen ? chosen.line.name : "No line yet"}
          </span>
          <span>for {count(plan.bottles)} bottles</span>
        </p>
        <p className={pane.plain}>{savedWords(plan)}</p>
      </div>
      {chosen && (
        <Section title="Line and hours">
          <FactsList facts={lineFacts(plan)} />
        </Section>
      )}
      <LinesPicture plan={plan} dark={dark} />
      {findings.length > 0 && (
        <Section title="What to see to">
          <ul className={pane.list}>
            {findings.map((finding) => (
              <li key={findingText(finding)}>
                <strong>{capital(finding.found)}.</strong>{" "}
                {capital(finding.meaning)}. {capital(finding.todo)}.
              </li>
            ))}
          </ul>
        </Section>
      )}
      {kettle.length > 0 && (
        <Section title="Kettle">
          <FactsList facts={kettle} />
          <p className={pane.quiet}>{scalds}</p>
        </Section>
      )}
      {lots.length > 0 && (
        <Section title="Lots to draw, oldest first">
          <FactsList facts={lots} />
        </Section>
      )}
      <Section title="Materials to pull">
        <FactsList facts={materialFacts(plan)} />
      </Section>
      <Section title="Pallets and codes">
        <FactsList facts={packedFacts(plan)} />
      </Section>
    </>
  );
}

function savedWords({ choice, other }: RunPlan): string {
  if (!choice.chosen)
    return "Something is missing that the choice of the line needs; it is named below.";
  if (!other) return "There is no other usual line to compare it with.";
  return other.saved >= 0
    ? `Saves ${amount(other.saved)} against ${other.option.line.name}.`
    : `Costs ${amount(-other.saved)} more than ${other.option.line.name}.`;
}

const capital = (text: string): string =>
  text.charAt(0).toUpperCase() + text.slice(1);

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
    fontSize: "30px",
    lineHeight: "38px",
    color: tokens.colorNeutralForeground1,
  },
});
