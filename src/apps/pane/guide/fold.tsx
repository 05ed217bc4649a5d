import type { ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import { serif } from "../theme";

/** A part of a page that most people do not need, one press away. */
export function Fold(props: {
  readonly title: string;
  readonly children: ReactNode;
}): ReactNode {
  const styles = useStyles();
  return (
    <details className={styles.fold}>
      <summary className={styles.title}>
        <h2 className={styles.heading}>{props.title}</h2>
      </summary>
      <div className={styles.inside}>{props.children}</div>
    </details>
  );
}

const useStyles = makeStyles({
  fold: { borderTop: `1px solid ${tokens.colorNeutralStroke2}` },
  title: {
    padding: "10px 0",
    cursor: "pointer",
    ":focus-visible": {
      outline: `2px solid ${tokens.colorStrokeFocus2}`,
      borderRadius: "4px",
    },
  },
  heading: {
    display: "inline",
    margin: 0,
    fontFamily: serif,
    fontSize: "17px",
    lineHeight: "22px",
    fontWeight: tokens.fontWeightSemibold,
  },
  inside: {
    display: "flex",
    flexDirection: "column",
    gap: "10px",
    paddingBottom: "12px",
  },
});
