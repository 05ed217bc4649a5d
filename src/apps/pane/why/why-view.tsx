import { useEffect, useState, type ReactNode } from "react";
import {
  Button,
  MessageBar,
  MessageBarBody,
  makeStyles,
  tokens,
} from "@fluentui/react-components";
import type { CellFacts, Host } from "../../../hosts/host";
import { cellAddress } from "../../../sheets/address";
import { useGoTo } from "../go-to";
import { sentenceOf, type OpenBook } from "../open-book";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { serif } from "../theme";
import { CallView } from "./call-view";
import { explain, type Explanation, type Used } from "./explain";

/** "Why this cell": follows the selection and says where its figure comes from. */
export function WhyView(props: {
  readonly host: Host;
  readonly book: OpenBook;
}): ReactNode {
  const { host, book } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  const facts = useSelection(host);
  const shown = useExplanation(host, book, facts);
  if (!facts || !shown)
    return <p className={pane.quiet}>Select a cell in the sheet.</p>;
  const { explanation } = shown;
  return (
    <div className={styles.view} aria-live="polite">
      <div>
        <p className={pane.quiet}>
          {facts.sheet}, {cellAddress(facts.row, facts.column)}
        </p>
        <h2 className={styles.label}>{explanation.label ?? "This cell"}</h2>
      </div>
      {"value" in explanation && (
        <p className={styles.value}>{explanation.value}</p>
      )}
      {explanation.kind === "empty" && (
        <p className={pane.plain}>{explanation.hint}</p>
      )}
      {explanation.kind === "typed" && (
        <>
          <p className={pane.plain}>Typed in, not worked out.</p>
          {explanation.means && (
            <p className={pane.plain}>{explanation.means}</p>
          )}
        </>
      )}
      {explanation.kind === "formula" && (
        <FormulaShown explanation={explanation} />
      )}
    </div>
  );
}

function FormulaShown(props: {
  readonly explanation: Extract<Explanation, { kind: "formula" }>;
}): ReactNode {
  const { explanation } = props;
  const pane = usePaneStyles();
  const { problem, calls, uses, words, formula } = explanation;
  return (
    <>
      {problem && (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>{problem}</MessageBarBody>
        </MessageBar>
      )}
      {calls.map((call, i) => (
        <CallView key={i} call={call} isOnly={calls.length === 1} />
      ))}
      {calls.length === 0 && words !== undefined && (
        <Section title="In words">
          <p className={pane.plain}>{words}</p>
        </Section>
      )}
      {uses.length > 0 && (
        <Section title="It uses">
          <UsedList uses={uses} />
        </Section>
      )}
      <Section title="The formula">
        <p className={pane.formula}>{formula}</p>
      </Section>
    </>
  );
}

function UsedList(props: { readonly uses: readonly Used[] }): ReactNode {
  const pane = usePaneStyles();
  const goTo = useGoTo();
  const styles = useStyles();
  return (
    <ul className={pane.list}>
      {props.uses.map((use) => (
        <li key={use.address} className={styles.use}>
          <span className={styles.useName}>
            {use.label ?? "Unnamed cell"}
            <Button
              appearance="transparent"
              size="small"
              className={styles.go}
              onClick={() => goTo(use.place)}
            >
              {use.address}
            </Button>
          </span>
          <span className={pane.numeric}>{use.value}</span>
        </li>
      ))}
    </ul>
  );
}

function useSelection(host: Host): CellFacts | undefined {
  const [facts, setFacts] = useState<CellFacts>();
  useEffect(() => host.watchSelection(setFacts), [host]);
  return facts;
}

function useExplanation(
  host: Host,
  book: OpenBook,
  facts: CellFacts | undefined,
): { readonly explanation: Explanation } | undefined {
  const [explanation, setExplanation] = useState<Explanation>();
  useEffect(() => {
    if (!facts) return;
    let isLate = false;
    explain(facts, { host, tables: book.tables, names: book.names }).then(
      (read) => !isLate && setExplanation(read),
      (problem: unknown) =>
        !isLate && setExplanation({ kind: "empty", hint: sentenceOf(problem) }),
    );
    return () => {
      isLate = true;
    };
  }, [host, book, facts]);
  return explanation && { explanation };
}

const useStyles = makeStyles({
  view: { display: "flex", flexDirection: "column", gap: "16px" },
  label: {
    margin: 0,
    fontFamily: serif,
    fontSize: "20px",
    lineHeight: "26px",
    fontWeight: tokens.fontWeightSemibold,
    overflowWrap: "anywhere",
  },
  value: {
    margin: 0,
    fontFamily: serif,
    fontSize: "26px",
    lineHeight: "32px",
    fontVariantNumeric: "lining-nums",
    overflowWrap: "anywhere",
  },
  use: {
    display: "flex",
    justifyContent: "space-between",
    alignItems: "baseline",
    gap: "10px",
  },
  useName: {
    display: "flex",
    flexDirection: "column",
    alignItems: "flex-start",
  },
  go: {
    padding: 0,
    minWidth: 0,
    minHeight: "24px",
    color: tokens.colorBrandForegroundLink,
    textDecorationLine: "underline",
    textUnderlineOffset: "2px",
    fontWeight: tokens.fontWeightRegular,
  },
});
