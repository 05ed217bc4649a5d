import type { ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import type { Grid } from "../../../functions/page-examples";

/** A few cells as they stand on a sheet. Wide ones scroll inside their own box, never the pane. */
export function CellGrid(props: {
  readonly label: string;
  readonly grid: Grid;
}): ReactNode {
  const { label, grid } = props;
  const styles = useStyles();
  return (
    <div
      role="region"
      aria-label={label}
      tabIndex={0}
      className={styles.scroller}
    >
      <table className={styles.table}>
        <thead>
          <tr>
            {grid.heading.map((heading, c) =>
              heading === "" ? (
                <td key={c} className={styles.corner} />
              ) : (
                <th key={c} scope="col" className={styles.heading}>
                  {heading}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {grid.rows.map((row, r) => (
            <tr key={r}>
              {row.map((cell, c) =>
                c === 0 && grid.heading[0] === "" ? (
                  <th key={c} scope="row" className={styles.heading}>
                    {cell}
                  </th>
                ) : (
                  <td key={c} className={styles.cell}>
                    {cell}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const line = `1px solid ${tokens.colorNeutralStroke2}`;

const useStyles = makeStyles({
  scroller: {
    overflowX: "auto",
    maxWidth: "100%",
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}` },
  },
  table: {
    borderCollapse: "collapse",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
    fontVariantNumeric: "tabular-nums",
  },
  corner: { border: line },
  heading: {
    padding: "1px 8px",
    border: line,
    backgroundColor: tokens.colorNeutralBackground3,
    color: tokens.colorNeutralForeground2,
    fontWeight: tokens.fontWeightRegular,
    textAlign: "left",
    whiteSpace: "nowrap",
  },
  cell: { padding: "1px 8px", border: line, whiteSpace: "nowrap" },
});
