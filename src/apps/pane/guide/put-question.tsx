import { useEffect, type ReactNode } from "react";
import {
  Button,
  MessageBar,
  MessageBarBody,
  useId,
} from "@fluentui/react-components";
import { usePaneStyles } from "../styles";

/** Asks before a cell that is not empty is written over. Escape leaves it. */
export function PutQuestion(props: {
  readonly says: string;
  readonly answer: (isYes: boolean) => void;
}): ReactNode {
  const { says, answer } = props;
  const pane = usePaneStyles();
  const question = useId("question");
  const keep = useId("keep");
  useEffect(() => document.getElementById(keep)?.focus(), [keep]);
  return (
    <div
      role="group"
      aria-labelledby={question}
      className={pane.section}
      onKeyDown={(event) => {
        if (event.key === "Escape") answer(false);
      }}
    >
      <MessageBar intent="warning" layout="multiline">
        <MessageBarBody id={question}>{says}</MessageBarBody>
      </MessageBar>
      <div className={pane.buttons}>
        <Button id={keep} onClick={() => answer(false)}>
          Leave the cell as it is
        </Button>
        <Button onClick={() => answer(true)}>Put the formula there</Button>
      </div>
    </div>
  );
}
