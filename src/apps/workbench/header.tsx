import { useRef, useState, type ReactNode } from "react";
import {
  Button,
  FluentProvider,
  Switch,
  makeStyles,
  tokens,
} from "@fluentui/react-components";
import { darkTheme, lightTheme, serif } from "../pane/theme";
import { AskDialog } from "./ask-dialog";
import type { Session } from "./session";

/** Our name, the open book, and what can be done with it as a file. */
export function Header(props: {
  readonly session: Session;
  readonly dark: boolean;
  readonly setDark: (dark: boolean) => void;
  readonly isPaneShown: boolean;
  readonly showPane: (shown: boolean) => void;
}): ReactNode {
  const { session, dark, setDark, isPaneShown, showPane } = props;
  const styles = useStyles();
  const picker = useRef<HTMLInputElement>(null);
  const [asks, setAsks] = useState<"replace" | "losses">();
  const [next, setNext] = useState<() => void>();
  const isBusy = session.work !== undefined;

  const replacing = (how: () => void): void => {
    if (!session.isChanged) return how();
    setNext(() => how);
    setAsks("replace");
  };
  const save = (): void => {
    if (session.losses.length > 0) setAsks("losses");
    else void session.save();
  };
  return (
    <FluentProvider theme={dark ? darkTheme : lightTheme}>
      <header className={styles.header}>
        <h1 className={styles.name}>Tare &amp; Tally</h1>
        <p className={styles.title} title={session.title}>
          {session.title || "no book open"}
          {session.isChanged && (
            <span className={styles.changed}> · not saved</span>
          )}
        </p>
        <Switch
          className={styles.switch}
          label="Dark"
          checked={dark}
          onChange={(_, { checked }) => setDark(checked)}
        />
        <div className={styles.actions}>
          <Button
            size="small"
            disabled={isBusy}
            onClick={() => replacing(() => picker.current?.click())}
          >
            Open …
          </Button>
          <Button
            size="small"
            appearance="primary"
            disabled={isBusy || !session.host}
            onClick={save}
          >
            Save
          </Button>
          <Button
            size="small"
            appearance="subtle"
            disabled={isBusy}
            onClick={() => replacing(() => void session.startDemo())}
          >
            Demo book anew
          </Button>
        </div>
        <Button
          className={styles.wideOnly}
          size="small"
          appearance="subtle"
          aria-pressed={isPaneShown}
          onClick={() => showPane(!isPaneShown)}
        >
          {isPaneShown ? "Hide pane" : "Show pane"}
        </Button>
        <input
          ref={picker}
          type="file"
          accept=".xlsx"
          hidden
          aria-label="Workbook to open"
          onChange={(event) => {
            const file = event.target.files?.[0];
            event.target.value = "";
            if (file) void session.open(file);
          }}
        />
      </header>
      <AskDialog
        isOpen={asks === "replace"}
        title="The open book has changes that are not saved"
        leave={() => setAsks(undefined)}
        answers={[
          {
            says: "Save it first",
            isMain: true,
            then: () => void session.save().then((saved) => saved && next?.()),
          },
          { says: "Go on without saving", then: () => next?.() },
        ]}
      >
        Opening another book takes this one off the page.
      </AskDialog>
      <AskDialog
        isOpen={asks === "losses"}
        title="The file you opened holds more than the workbench can keep"
        leave={() => setAsks(undefined)}
        answers={[
          {
            says: "Save under a new name",
            isMain: true,
            then: () => void session.save(),
          },
        ]}
      >
        <p>The saved copy will be without:</p>
        <ul>
          {session.losses.map((loss) => (
            <li key={loss}>{loss}</li>
          ))}
        </ul>
        <p>Keep your own file as it is; the copy gets another name.</p>
      </AskDialog>
    </FluentProvider>
  );
}

const useStyles = makeStyles({
  header: {
    display: "flex",
    alignItems: "center",
    flexWrap: "wrap",
    columnGap: "14px",
    rowGap: "6px",
    padding: "8px 16px",
    "@media (max-width: 400px)": { columnGap: "8px", padding: "8px 10px" },
    backgroundColor: tokens.colorNeutralBackground3,
    borderBottom: `2px solid ${tokens.colorBrandStroke1}`,
    color: tokens.colorNeutralForeground1,
  },
  name: {
    margin: 0,
    fontFamily: serif,
    fontSize: "21px",
    lineHeight: "28px",
    fontWeight: tokens.fontWeightSemibold,
    color: tokens.colorBrandForeground1,
    whiteSpace: "nowrap",
  },
  title: {
    margin: 0,
    flexGrow: 1,
    flexBasis: "120px",
    "@media (max-width: 760px)": { flexBasis: "60px" },
    minWidth: 0,
    overflow: "hidden",
    textOverflow: "ellipsis",
    whiteSpace: "nowrap",
  },
  changed: { color: tokens.colorNeutralForeground3 },
  actions: {
    display: "flex",
    alignItems: "center",
    flexWrap: "wrap",
    gap: "8px",
  },
  switch: {
    order: 1,
    minHeight: "24px",
    "@media (max-width: 760px)": { order: 0, marginRight: "-8px" },
  },
  wideOnly: { order: 2, "@media (max-width: 760px)": { display: "none" } },
});
