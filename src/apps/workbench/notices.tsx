import type { ReactNode } from "react";
import {
  Button,
  FluentProvider,
  MessageBar,
  MessageBarActions,
  MessageBarBody,
  ProgressBar,
  makeStyles,
  tokens,
} from "@fluentui/react-components";
import { darkTheme, lightTheme } from "../pane/theme";
import type { Session } from "./session";

/** What is being done just now, and what came of it. */
export function Notices(props: {
  readonly session: Session;
  readonly dark: boolean;
}): ReactNode {
  const { work, notice, closeNotice } = props.session;
  const styles = useStyles();
  return (
    <FluentProvider theme={props.dark ? darkTheme : lightTheme}>
      <div role="status" aria-live="polite">
        {work && (
          <div className={styles.work}>
            <span>{work} …</span>
            <ProgressBar aria-label={work} />
          </div>
        )}
        {notice && (
          <MessageBar intent={notice.intent} shape="square">
            <MessageBarBody>{notice.says}</MessageBarBody>
            <MessageBarActions>
              <Button size="small" onClick={closeNotice}>
                Close
              </Button>
            </MessageBarActions>
          </MessageBar>
        )}
      </div>
    </FluentProvider>
  );
}

const useStyles = makeStyles({
  work: {
    display: "flex",
    flexDirection: "column",
    gap: "6px",
    padding: "8px 16px",
    backgroundColor: tokens.colorNeutralBackground2,
  },
});
