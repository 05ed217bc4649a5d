import type { ReactNode } from "react";
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useGoTo } from "../go-to";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import type { CallShown } from "./call";
import { sentence } from "../sentence";

/** One of our functions: its line of arithmetic, or its refusal and what to type instead. */
export function CallView(props: {
  readonly call: CallShown;
  /** A refusal of the only call is already said above. */
  readonly isOnly: boolean;
}): ReactNode {
  const { call, isOnly } = props;
  const goTo = useGoTo();
  const pane = usePaneStyles();
  const styles = useStyles();
  const { definition, line, refusal, instead, args } = call;
  return (
    <Section
      title={sentence(definition.name.toLowerCase().replaceAll("_", " ")).slice(
        0,
        -1,
      )}
    >
      <p className={pane.quiet}>{definition.summary}</p>
      {line && <p className={styles.line}>{sentence(line)}</p>}
      {refusal && !isOnly && <p className={pane.plain}>{sentence(refusal)}</p>}
      {instead.map((says) => (
        <p key={says} className={pane.plain}>
          What to type: {says}
        </p>
      ))}
      <ul className={pane.list}>
        {args.map((arg) => (
          <li key={arg.label} className={styles.argument}>
            <span className={styles.name}>
              {arg.label}
              {arg.place ? (
                <Button
                  appearance="transparent"
                  size="small"
                  className={styles.go}
                  onClick={() => arg.place && goTo(arg.place)}
                >
                  {arg.text}
                </Button>
              ) : (
                <span className={pane.quiet}>{arg.text}</span>
              )}
            </span>
            <span className={styles.value}>
              {arg.value}
              {arg.unit && ` ${arg.unit}`}
            </span>
          </li>
        ))}
      </ul>
      {definition.uncertainty && (
        <p className={pane.quiet}>How sure: {definition.uncertainty}</p>
      )}
      {definition.caution && (
        <p className={styles.caution}>{definition.caution}</p>
      )}
    </Section>
  );
}

const useStyles = makeStyles({
  line: {
    margin: 0,
    padding: "10px 12px",
    borderRadius: "8px",
    backgroundColor: tokens.colorBrandBackground2,
    lineHeight: tokens.lineHeightBase300,
  },
  argument: {
    display: "flex",
    justifyContent: "space-between",
    alignItems: "baseline",
    gap: "10px",
  },
  name: {
    display: "flex",
    flexDirection: "column",
    alignItems: "flex-start",
    minWidth: 0,
    overflowWrap: "anywhere",
  },
  value: { textAlign: "right", fontVariantNumeric: "tabular-nums" },
  go: {
    padding: 0,
    minWidth: 0,
    minHeight: "24px",
    justifyContent: "flex-start",
    textAlign: "left",
    overflowWrap: "anywhere",
    color: tokens.colorBrandForegroundLink,
    textDecorationLine: "underline",
    textUnderlineOffset: "2px",
    fontWeight: tokens.fontWeightRegular,
  },
  caution: {
    margin: 0,
    paddingLeft: "10px",
    borderLeft: `3px solid ${tokens.colorPaletteDarkOrangeBorder2}`,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
  },
});
