import type { ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import { centsApart, perBottle } from "../money";
import type { Costing } from "./costing";

/** The cost of a bottle three ways side by side: full and direct apart, with the gap in cents. */
export function CostTable(props: { readonly costing: Costing }): ReactNode {
  const styles = useStyles();
  const { figure } = props.costing;
  const today = figure.full_replacement?.value;
  const ways = [
    {
      name: "At today's price",
      full: today,
      direct: figure.direct_replacement?.value,
    },
    {
      name: "On average",
      full: figure.full_average?.value,
      direct: figure.direct_average?.value,
    },
    {
      name: "Oldest first",
      full: figure.full_oldest?.value,
      direct: figure.direct_oldest?.value,
    },
  ];
  return (
    <table className={styles.table}>
      <caption className={styles.caption}>
        Cost of a bottle by what the syrup is taken to cost
      </caption>
      <thead>
        <tr>
          <td />
          {ways.map(({ name }) => (
            <th key={name} scope="col" className={styles.number}>
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        <Row
          name="Full cost"
          cells={ways.map(({ full }) => perBottle(full))}
          strong
        />
        <Row
          name="Gap to today"
          cells={ways.map(({ full }, i) =>
            i === 0 ? "–" : centsApart(full, today),
          )}
        />
        <Row
          name="Direct cost"
          cells={ways.map(({ direct }) => perBottle(direct))}
        />
        <Row
          name="Overhead"
          cells={ways.map(() => perBottle(figure.overhead?.value))}
        />
      </tbody>
    </table>
  );
}

function Row(props: {
  readonly name: string;
  readonly cells: readonly string[];
  readonly strong?: boolean;
}): ReactNode {
  const styles = useStyles();
  return (
    <tr>
      <th scope="row" className={styles.rowName}>
        {props.name}
      </th>
      {props.cells.map((cell, i) => (
        <td key={i} className={props.strong ? styles.strong : styles.number}>
          {cell}
        </td>
      ))}
    </tr>
  );
}

const useStyles = makeStyles({
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  caption: {
    captionSide: "top",
    textAlign: "left",
    color: tokens.colorNeutralForeground3,
    paddingBottom: "4px",
  },
  rowName: {
    textAlign: "left",
    fontWeight: tokens.fontWeightRegular,
    padding: "5px 4px 5px 0",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  number: {
    textAlign: "right",
    fontWeight: tokens.fontWeightRegular,
    fontVariantNumeric: "tabular-nums",
    padding: "5px 0 5px 6px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    verticalAlign: "bottom",
  },
  strong: {
    textAlign: "right",
    fontWeight: tokens.fontWeightSemibold,
    fontVariantNumeric: "tabular-nums",
    padding: "5px 0 5px 6px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
});
