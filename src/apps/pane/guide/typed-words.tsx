import { Fragment, type ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";

/** A text in which backticks mark what is typed or shown in a cell. */
export function TypedWords(props: { readonly text: string }): ReactNode {
  const styles = useStyles();
  return props.text.split("`").map((part, i) =>
    i % 2 === 0 ? (
      <Fragment key={i}>{part}</Fragment>
    ) : (
      <code key={i} className={styles.code}>
        {part.replaceAll("\\|", "|")}
      </code>
    ),
  );
}

const useStyles = makeStyles({
  code: {
    padding: "0 3px",
    borderRadius: "4px",
    backgroundColor: tokens.colorNeutralBackground3,
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: "0.92em",
    overflowWrap: "anywhere",
  },
});
