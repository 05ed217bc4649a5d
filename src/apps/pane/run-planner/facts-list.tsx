import type { ReactNode } from "react";
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { usePaneStyles } from "../styles";

/** What something is and how much: name at the left, figure at the right, a remark under both. */
export interface Fact {
  readonly name: string;
  readonly figure: string;
  readonly remark?: string;
  /** A remark that asks for something to be done. */
  readonly isPressing?: boolean;
}

export function FactsList(props: {
  readonly facts: readonly Fact[];
}): ReactNode {
  const pane = usePaneStyles();
  const styles = useStyles();
  return (
    <dl className={styles.list}>
      {props.facts.map(({ name, figure, remark, isPressing }, i) => (
        <div key={`${name} ${i}`} className={styles.fact}>
          <dt className={styles.name}>{name}</dt>
          <dd className={mergeClasses(pane.numeric, styles.figure)}>
            {figure}
          </dd>
          {remark !== undefined && (
            <dd
              className={mergeClasses(
                styles.remark,
                isPressing === true && styles.pressing,
              )}
            >
              {remark}
            </dd>
          )}
        </div>
      ))}
    </dl>
  );
}

const useStyles = makeStyles({
  list: { margin: 0, display: "flex", flexDirection: "column", gap: "6px" },
  fact: {
    display: "grid",
    gridTemplateColumns: "minmax(0, 1fr) auto",
    columnGap: "12px",
    paddingBottom: "5px",
    borderBottom: `1px solid ${tokens.colorNeutralStroke3}`,
  },
  name: { overflowWrap: "anywhere" },
  figure: { margin: 0 },
  remark: {
    margin: 0,
    gridColumn: "1 / -1",
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
  },
  pressing: {
    color: tokens.colorNeutralForeground1,
    fontWeight: tokens.fontWeightSemibold,
  },
});
