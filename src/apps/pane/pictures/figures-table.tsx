import type { ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import { usePaneStyles } from "../styles";

/** The figures behind a picture, folded away, for whoever would rather read or hear them. */
export function FiguresTable(props: {
  /** What is pressed to see it. */
  readonly title?: string;
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}): ReactNode {
  const pane = usePaneStyles();
  const styles = useStyles();
  return (
    <details>
      <summary className={styles.summary}>
        {props.title ?? "The same in figures"}
      </summary>
      <div
        className={styles.scroll}
        role="region"
        aria-label={props.caption}
        tabIndex={0}
      >
        <table className={styles.table}>
          <caption className={styles.caption}>{props.caption}</caption>
          <thead>
            <tr>
              {props.columns.map((column, i) => (
                <th
                  key={column}
                  scope="col"
                  className={i === 0 ? styles.first : pane.numeric}
                >
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {props.rows.map(([head, ...cells]) => (
              <tr key={head}>
                <th scope="row" className={styles.first}>
                  {head}
                </th>
                {cells.map((cell, i) => (
                  <td key={props.columns[i + 1]} className={pane.numeric}>
                    {cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}

const useStyles = makeStyles({
  summary: {
    cursor: "pointer",
    fontSize: tokens.fontSizeBase200,
    color: tokens.colorNeutralForeground3,
    padding: "4px 0",
  },
  scroll: { overflowX: "auto" },
  table: {
    borderCollapse: "collapse",
    width: "100%",
    fontSize: tokens.fontSizeBase200,
    "& th, & td": {
      padding: "3px 8px 3px 0",
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    },
  },
  caption: {
    position: "absolute",
    width: "1px",
    height: "1px",
    overflow: "hidden",
    clipPath: "inset(50%)",
  },
  first: { textAlign: "left", fontWeight: tokens.fontWeightRegular },
});
