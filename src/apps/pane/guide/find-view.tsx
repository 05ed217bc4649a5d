import { useEffect, type ReactNode } from "react";
import {
  Button,
  Field,
  Input,
  makeStyles,
  tokens,
} from "@fluentui/react-components";
import { functions } from "../../../functions";
import type { Definition } from "../../../functions/define";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { functionsFor } from "./search";

/** A box for the question; under it what answers it, or every question there is, by family. */
export function FindView(props: {
  readonly words: string;
  readonly setWords: (words: string) => void;
  /** The page just left, where the keyboard then goes on. */
  readonly comingFrom: string | undefined;
  readonly open: (name: string) => void;
}): ReactNode {
  const { words, setWords, comingFrom, open } = props;
  const pane = usePaneStyles();
  const found = functionsFor(functions, words);
  useEffect(() => {
    if (comingFrom) document.getElementById(questionId(comingFrom))?.focus();
  }, [comingFrom]);
  return (
    <>
      <Field label="What do you want to know?">
        <Input
          type="search"
          value={words}
          placeholder="Your own words, such as hot fill"
          input={{ style: { minWidth: 0, width: "100%" } }}
          onChange={(_, { value }) => setWords(value)}
        />
      </Field>
      <p role="status" className={pane.quiet}>
        {said(found, words)}
      </p>
      {found && <Questions definitions={found} open={open} />}
      {found?.length === 0 && (
        <div className={pane.buttons}>
          <Button onClick={() => setWords("")}>Show every question</Button>
        </div>
      )}
      {!found &&
        families.map(([family, definitions]) => (
          <Section key={family} title={family}>
            <Questions definitions={definitions} open={open} />
          </Section>
        ))}
    </>
  );
}

function said(found: readonly Definition[] | undefined, words: string): string {
  if (!found)
    return words.trim() === ""
      ? `${functions.length} questions a cell can answer. Type a word or two, or pick one below.`
      : "These words are in every question. Add what it is about: a bottle, a drum, a price.";
  if (found.length === 0)
    return "Nothing has these words. Try fewer, or others: what you hold in your hand (bottle, drum, label) or what you want to get (weight, margin, pallets).";
  return found.length === 1
    ? "1 answer"
    : `${found.length} answers, best first`;
}

const families: readonly (readonly [string, readonly Definition[]])[] = [
  ...new Set(functions.map(({ family }) => family)),
].map((family) => [family, functions.filter((f) => f.family === family)]);

function Questions(props: {
  readonly definitions: readonly Definition[];
  readonly open: (name: string) => void;
}): ReactNode {
  const pane = usePaneStyles();
  const styles = useStyles();
  return (
    <ul className={pane.list} style={{ gap: 0 }}>
      {props.definitions.map(({ name, question }) => (
        <li key={name}>
          <button
            type="button"
            id={questionId(name)}
            className={styles.question}
            onClick={() => props.open(name)}
          >
            <span>{question}</span>
            <span className={styles.name}>SYRUP.{name}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

const questionId = (name: string): string => `guide-${name}`;

const useStyles = makeStyles({
  question: {
    display: "flex",
    flexDirection: "column",
    gap: "1px",
    width: "100%",
    padding: "8px 6px",
    border: "none",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    backgroundColor: "transparent",
    color: tokens.colorNeutralForeground1,
    font: "inherit",
    lineHeight: tokens.lineHeightBase300,
    textAlign: "left",
    overflowWrap: "anywhere",
    cursor: "pointer",
    ":hover": { backgroundColor: tokens.colorSubtleBackgroundHover },
    ":focus-visible": {
      outline: `2px solid ${tokens.colorStrokeFocus2}`,
      outlineOffset: "-2px",
      borderRadius: "4px",
    },
  },
  name: {
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase100,
    color: tokens.colorNeutralForeground3,
  },
});
