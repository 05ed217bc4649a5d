import type { ReactNode } from "react";
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { Definition } from "../../../functions/define";
import {
  argumentFacts,
  type ArgumentFacts,
} from "../../../functions/page-arguments";
import { refusedCalls } from "../../../functions/page-errors";
import { nativeFormula } from "../../../functions/page-native";
import { sources, type SourceId } from "../../../standards/sources";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { sentence } from "../sentence";
import { ExampleView } from "./example-view";
import { Fold } from "./fold";
import { TypedWords } from "./typed-words";

/** What there is to read about a function, the parts few people need folded away. */
export function PageParts(props: {
  readonly definition: Definition;
  /** Fills the form with the plain values of an example. */
  readonly useExample: (typed: Readonly<Record<string, string>>) => void;
}): ReactNode {
  const { definition, useExample } = props;
  const { examples, notes, uncertainty, basis } = definition;
  const pane = usePaneStyles();
  const styles = useStyles();
  return (
    <>
      <Section title={examples.length === 1 ? "An example" : "Examples"}>
        {examples.map((example, i) => (
          <ExampleView
            key={i}
            definition={definition}
            example={example}
            useExample={useExample}
          />
        ))}
      </Section>
      {uncertainty && (
        <Section title="How sure it is">
          <p className={pane.plain}>{uncertainty}</p>
        </Section>
      )}
      {notes && (
        <Section title="Good to know">
          <ul className={styles.bullets}>
            {notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </Section>
      )}
      <div>
        <Fold title="Every argument">
          <ArgumentList facts={argumentFacts(definition)} />
        </Fold>
        <Fold title="When it refuses">
          <ul className={pane.list}>
            {refusedCalls(definition).map(({ when, cell, sentence: says }) => (
              <li key={when}>
                <TypedWords text={sentence(`\`${cell}\` when ${when}`)} />
                <p className={pane.quiet}>{sentence(says)}</p>
              </li>
            ))}
          </ul>
        </Fold>
        <Fold title="Where it comes from">
          <ul className={pane.list}>
            {basis.map((id) => {
              const { title, detail, kind } = sources[id as SourceId];
              return (
                <li key={id}>
                  <span className={styles.source}>{title}</span>
                  <p className={pane.quiet}>
                    {kind === "memory" ? (
                      <strong>From memory. </strong>
                    ) : (
                      sentence(kind)
                    )}{" "}
                    {detail}
                  </p>
                </li>
              );
            })}
          </ul>
        </Fold>
        <Fold title="Without the add-in">
          {definition.native ? (
            <>
              <p className={pane.plain}>
                The same answer in plain worksheet functions. Put a cell, a
                range or a number where a name stands, in the unit asked for.
                Nothing checks the limits there. {definition.nativeRefuses}
              </p>
              <p
                className={mergeClasses(pane.formula, styles.long)}
                tabIndex={0}
                role="group"
                aria-label="The plain form"
              >
                {nativeFormula(definition, Object.keys(definition.args))}
              </p>
            </>
          ) : (
            <p className={pane.plain}>
              There is no plain form: {definition.noNative}.
            </p>
          )}
        </Fold>
      </div>
    </>
  );
}

function ArgumentList(props: {
  readonly facts: readonly ArgumentFacts[];
}): ReactNode {
  const pane = usePaneStyles();
  const styles = useStyles();
  return (
    <ul className={pane.list}>
      {props.facts.map(
        ({ name, about, unit, allowed, otherwise, example, columns }) => (
          <li key={name}>
            <TypedWords text={`\`${name}\` ${about}`} />
            <p className={pane.quiet}>
              <TypedWords
                text={sentence(
                  [unit && `in ${unit}`, allowed, ifLeftOut(otherwise)]
                    .filter(Boolean)
                    .join("; "),
                )}
              />{" "}
              <TypedWords text={`Like ${example}`} />
            </p>
            {columns.length > 0 && (
              <div className={styles.columns}>
                <p className={pane.quiet}>
                  Columns, in this order, with or without a heading row:
                </p>
                <ArgumentList facts={columns} />
              </div>
            )}
          </li>
        ),
      )}
    </ul>
  );
}

const ifLeftOut = (otherwise: string): string =>
  /^(required|may be left out|the row is refused|counts as left out)$/.test(
    otherwise,
  )
    ? ({
        required: "must be given",
        "the row is refused": "a blank refuses the row",
        "counts as left out": "may be blank",
      }[otherwise] ?? otherwise)
    : `left out, it counts as ${otherwise}`;

const useStyles = makeStyles({
  bullets: {
    margin: 0,
    paddingLeft: "18px",
    lineHeight: tokens.lineHeightBase300,
  },
  long: { maxHeight: "220px", overflowY: "auto" },
  source: { fontWeight: tokens.fontWeightSemibold },
  columns: {
    marginTop: "6px",
    paddingLeft: "10px",
    borderLeft: `2px solid ${tokens.colorNeutralStroke2}`,
    display: "flex",
    flexDirection: "column",
    gap: "6px",
  },
});
