import { useState, type ReactNode } from "react";
import { Button, Input, makeStyles, tokens } from "@fluentui/react-components";
import type { Finding } from "../../../book/finding";
import { useGoTo } from "../go-to";
import { amount } from "../money";
import type { OpenBook } from "../open-book";
import { usePaneStyles } from "../styles";
import { sentence } from "../sentence";
import { placeOfFinding } from "./place-of-finding";

/** More than this at once is no list any more; the rest is one press away. */
const AT_ONCE = 40;

/** "Findings": what the book holds that a person should look at, each with the way to its cell. */
export function FindingsView(props: {
  readonly book: OpenBook;
  readonly findings: readonly Finding[];
}): ReactNode {
  const { book, findings } = props;
  const goTo = useGoTo();
  const pane = usePaneStyles();
  const styles = useStyles();
  const [words, setWords] = useState("");
  const [most, setMost] = useState(AT_ONCE);
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  const matching = findings.filter((finding) => {
    const all = Object.values(finding).join(" ").toLowerCase();
    return wanted.every((word) => all.includes(word));
  });
  if (findings.length === 0)
    return (
      <p className={pane.plain}>
        Nothing to point out: every row of the book could be read, and nothing
        in it contradicts anything else.
      </p>
    );
  return (
    <>
      <p className={pane.quiet}>
        The book is read again after every edit. Nothing here has been changed
        or left out; these are the places to look at.
      </p>
      {findings.length > 10 && (
        <Input
          aria-label="Show only findings with these words"
          placeholder="Show only findings with these words"
          value={words}
          onChange={(_, { value }) => setWords(value)}
        />
      )}
      <p className={pane.quiet} role="status">
        {matching.length === findings.length
          ? `${findings.length} findings`
          : `${matching.length} of ${findings.length} findings`}
      </p>
      <ul className={pane.list}>
        {matching.slice(0, most).map((finding) => {
          const place = placeOfFinding(finding, book.tables);
          return (
            <li
              key={`${finding.where}|${finding.found}`}
              className={styles.finding}
            >
              {place ? (
                <Button
                  appearance="transparent"
                  className={styles.where}
                  onClick={() => goTo(place)}
                >
                  {finding.where}
                </Button>
              ) : (
                <span className={styles.whereText}>{finding.where}</span>
              )}
              <p className={pane.plain}>{sentence(finding.found)}</p>
              <p className={pane.quiet}>
                {sentence(finding.meaning)}
                {finding.atStake !== undefined &&
                  ` At stake: about ${amount(Math.round(finding.atStake)).replace(/\.00$/, "")}.`}
              </p>
              <p className={styles.todo}>{sentence(finding.todo)}</p>
            </li>
          );
        })}
      </ul>
      {matching.length > most && (
        <Button onClick={() => setMost(most + AT_ONCE)}>
          Show {Math.min(AT_ONCE, matching.length - most)} more
        </Button>
      )}
    </>
  );
}

const useStyles = makeStyles({
  finding: {
    display: "flex",
    flexDirection: "column",
    alignItems: "flex-start",
    gap: "2px",
    paddingTop: "10px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  where: {
    padding: 0,
    minWidth: 0,
    minHeight: "24px",
    justifyContent: "flex-start",
    textAlign: "left",
    textDecorationLine: "underline",
    textUnderlineOffset: "3px",
    color: tokens.colorBrandForegroundLink,
    fontWeight: tokens.fontWeightSemibold,
  },
  whereText: { fontWeight: tokens.fontWeightSemibold },
  todo: {
    margin: 0,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
    fontStyle: "italic",
  },
});
