import type { ReactNode } from "react";
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import type { Definition, Example, Raw } from "../../../functions/define";
import { exampleFacts } from "../../../functions/page-examples";
import { usePaneStyles } from "../styles";
import { sentence } from "../sentence";
import { CellGrid } from "./cell-grid";

/** An example as it stands in a cell, its answer and the arithmetic. */
export function ExampleView(props: {
  readonly definition: Definition;
  readonly example: Example;
  readonly useExample: (typed: Readonly<Record<string, string>>) => void;
}): ReactNode {
  const { definition, example, useExample } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  const { formula, cells, gives, remark, why, source } = exampleFacts(
    definition,
    example,
  );
  const typed = plainValues(definition, example);
  return (
    <div className={styles.example}>
      {cells && <CellGrid label="Cells of the example" grid={cells} />}
      <p className={pane.formula}>{formula}</p>
      {typeof gives === "string" ? (
        <p className={pane.plain}>
          gives <strong>{gives}</strong>
          {remark}.
        </p>
      ) : (
        <>
          <p className={pane.plain}>fills these cells{remark}:</p>
          <CellGrid label="Answer of the example" grid={gives} />
        </>
      )}
      <p className={styles.why}>{why}</p>
      <p className={pane.quiet}>Checked against: {sentence(source)}</p>
      {typed && (
        <Button
          size="small"
          className={styles.use}
          onClick={() => useExample(typed)}
        >
          Start from these values
        </Button>
      )}
    </div>
  );
}

/** What to type for the example; undefined where it needs ranges, which a person has on a sheet of their own. */
function plainValues(
  { args }: Definition,
  example: Example,
): Readonly<Record<string, string>> | undefined {
  const isTyped = (raw: Raw): boolean =>
    raw === null || raw === undefined || typeof raw !== "object";
  if (!example.args.every(isTyped)) return undefined;
  return Object.fromEntries(
    Object.keys(args).map((name, i) => [name, typedLike(example.args[i])]),
  );
}

const typedLike = (raw: Raw): string =>
  raw === null || raw === undefined
    ? ""
    : typeof raw === "boolean"
      ? String(raw).toUpperCase()
      : String(raw);

const useStyles = makeStyles({
  example: {
    display: "flex",
    flexDirection: "column",
    gap: "6px",
    minWidth: 0,
    ":not(:last-child)": {
      paddingBottom: "14px",
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    },
  },
  why: {
    margin: 0,
    paddingLeft: "10px",
    borderLeft: `3px solid ${tokens.colorBrandStroke2}`,
    lineHeight: tokens.lineHeightBase300,
  },
  use: { alignSelf: "flex-start" },
});
