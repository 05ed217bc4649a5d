import {
  createContext,
  useCallback,
  useContext,
  useMemo,
  useState,
  type ReactNode,
} from "react";
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { focusView } from "./focus-view";
import { sentenceOf } from "./open-book";

/** One write of the pane and the way to take it back. */
export interface Write {
  readonly says: string;
  readonly takeBack?: () => Promise<string | undefined>;
}

interface Writes {
  readonly last: Write | undefined;
  readonly announce: (write: Write | undefined) => void;
}

const Context = createContext<Writes>({
  last: undefined,
  announce: () => undefined,
});

export function LastWriteProvider(props: {
  readonly children: ReactNode;
}): ReactNode {
  const [last, announce] = useState<Write>();
  const writes = useMemo(() => ({ last, announce }), [last]);
  return <Context.Provider value={writes}>{props.children}</Context.Provider>;
}

/** Says what was just written; the bar at the foot of the pane shows it. */
export const useAnnounce = (): Writes["announce"] =>
  useContext(Context).announce;

/** What was last written, with Undo. It is a live region: screen readers hear it without moving. */
export function LastWriteBar(): ReactNode {
  const { last, announce } = useContext(Context);
  const [busy, setBusy] = useState(false);
  const styles = useStyles();
  const undo = useCallback(async () => {
    if (!last?.takeBack) return;
    setBusy(true);
    try {
      const says = await last.takeBack();
      announce({
        says: says ? `Taken back: ${says}` : "There was nothing to take back.",
      });
    } catch (problem) {
      announce({ says: sentenceOf(problem) });
    } finally {
      setBusy(false);
      focusView();
    }
  }, [announce, last]);
  return (
    <div role="status" aria-live="polite">
      {last && (
        <div className={styles.bar}>
          <span className={styles.says}>{last.says}</span>
          {last.takeBack && (
            <Button size="small" disabled={busy} onClick={() => void undo()}>
              Undo
            </Button>
          )}
          <Button
            size="small"
            appearance="transparent"
            onClick={() => announce(undefined)}
          >
            Close
          </Button>
        </div>
      )}
    </div>
  );
}

const useStyles = makeStyles({
  bar: {
    display: "flex",
    alignItems: "center",
    flexWrap: "wrap",
    gap: "6px",
    padding: "10px 14px",
    backgroundColor: tokens.colorBrandBackground2,
    borderTop: `1px solid ${tokens.colorBrandStroke2}`,
    color: tokens.colorNeutralForeground1,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  says: { flexGrow: 1, flexBasis: "150px" },
});
