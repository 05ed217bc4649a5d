import type { ReactNode } from "react";
import { Checkbox } from "@fluentui/react-components";
import { usePaneStyles } from "../styles";
import { hasPlateLimit, type Choices } from "./ticket-choices";

/** Whether somebody has spoken for the plates of the totes about to be posted: with a limit, or by looking at them. */
export const platesAnswered = (choices: Choices): boolean =>
  hasPlateLimit(choices) || choices.platesSeen;

/** Asks once a post about plates whose limit nobody has typed: it is never assumed. */
export function PlateQuestion(props: {
  readonly choices: Choices;
  readonly choose: (choices: Choices) => void;
}): ReactNode {
  const { choices, choose } = props;
  const pane = usePaneStyles();
  if (hasPlateLimit(choices)) return null;
  return (
    <div className={pane.card}>
      <p className={pane.plain}>
        No plate limit is typed, so gross weights are not held against it. Type
        it under “Tote size and plate”, or look at the plates.
      </p>
      <Checkbox
        checked={choices.platesSeen}
        onChange={(_, { checked }) =>
          choose({ ...choices, platesSeen: checked === true })
        }
        label="I looked: every tote is within what its plate allows"
      />
    </div>
  );
}
