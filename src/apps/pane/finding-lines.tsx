import type { ReactNode } from "react";
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import type { Finding } from "../../book/finding";
import type { TableContents } from "../../hosts/host";
import { placeOfFinding } from "./findings/place-of-finding";
import { useGoTo } from "./go-to";
import { sentence } from "./sentence";
import { usePaneStyles } from "./styles";

/** Findings inside a view, each with the way to its cell where it has one. */
export function FindingLines(props: {
  readonly findings: readonly Finding[];
  readonly tables: readonly TableContents[];
}): ReactNode {
  const pane = usePaneStyles();
  const styles = useStyles();
  const goTo = useGoTo();
  return (
    <ul className={pane.list}>
      {props.findings.map((finding) => {
        const place = placeOfFinding(finding, props.tables);
        return (
          <li key={`${finding.where}|${finding.found}`}>
            <p className={pane.plain}>
              {place ? (
                <Button
                  appearance="transparent"
                  className={styles.where}
                  onClick={() => goTo(place)}
                >
                  {finding.where}
                </Button>
              ) : (
                <strong>{finding.where}</strong>
              )}
              : {finding.found}.
            </p>
            <p className={pane.quiet}>
              {sentence(finding.meaning)} {sentence(finding.todo)}
            </p>
          </li>
        );
      })}
    </ul>
  );
}

const useStyles = makeStyles({
  where: {
    padding: 0,
    minWidth: 0,
    minHeight: "24px",
    textAlign: "left",
    textDecorationLine: "underline",
    textUnderlineOffset: "3px",
    color: tokens.colorBrandForegroundLink,
    fontWeight: tokens.fontWeightSemibold,
  },
});
