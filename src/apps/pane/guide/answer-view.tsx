import type { ReactNode } from "react";
import {
  MessageBar,
  MessageBarBody,
  makeStyles,
  tokens,
} from "@fluentui/react-components";
import type { Definition } from "../../../functions/define";
import { usePaneStyles } from "../styles";
import { serif } from "../theme";
import { sentence } from "../sentence";
import { CellGrid } from "./cell-grid";
import type { Preview } from "./preview";

/** The formula as it would be written, and under it the answer or what keeps it from one. */
export function AnswerView(props: {
  readonly definition: Definition;
  readonly preview: Preview | undefined;
}): ReactNode {
  const { definition, preview } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  if (!preview) return null;
  return (
    <div className={styles.answer}>
      <p className={pane.formula} aria-label="The formula">
        {preview.formula}
      </p>
      <div aria-live="polite" className={styles.answer}>
        <Outcome definition={definition} preview={preview} />
      </div>
    </div>
  );
}

function Outcome(props: {
  readonly definition: Definition;
  readonly preview: Preview;
}): ReactNode {
  const { definition, preview } = props;
  const { missing, troubles, call, gives } = preview;
  const pane = usePaneStyles();
  const styles = useStyles();
  if (Object.keys(troubles).length > 0) return null;
  if (missing.length > 0)
    return (
      <p className={pane.quiet}>
        Still needed:{" "}
        {missing.map((name) => definition.args[name]?.label ?? name).join(", ")}
        .
      </p>
    );
  if (call?.refusal !== undefined)
    return (
      <>
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>{sentence(call.refusal)}</MessageBarBody>
        </MessageBar>
        {call.instead.map((says) => (
          <p key={says} className={pane.quiet}>
            What to type: {says}
          </p>
        ))}
      </>
    );
  if (gives === undefined)
    return (
      <p className={pane.quiet}>
        The answer shows once the formula is in its cell.
      </p>
    );
  return (
    <>
      {typeof gives === "string" ? (
        <p className={styles.figure}>{gives}</p>
      ) : (
        <CellGrid label="The answer" grid={gives} />
      )}
      {call?.line && <p className={pane.quiet}>{sentence(call.line)}</p>}
    </>
  );
}

const useStyles = makeStyles({
  answer: { display: "flex", flexDirection: "column", gap: "8px", minWidth: 0 },
  figure: {
    margin: 0,
    fontFamily: serif,
    fontSize: "24px",
    lineHeight: "30px",
    fontVariantNumeric: "lining-nums",
    color: tokens.colorNeutralForeground1,
    overflowWrap: "anywhere",
  },
});
