import type { ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import { amount, centsApart, perBottle, share } from "../money";
import { usePaneStyles } from "../styles";
import type { Moved } from "./what-if";

/** The figures of a letter about a new price: old and new cost, the old price, and the new one both ways. */
export function NoticeFigures(props: { readonly drawn: Moved }): ReactNode {
  const { drawn } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  const rows: readonly (readonly [string, string])[] = [
    ["Full cost now", perBottle(drawn.cost)],
    [
      "Full cost then",
      `${perBottle(drawn.newCost)} (${centsApart(drawn.newCost, drawn.cost)})`,
    ],
    [`Price now in ${drawn.channel || "no channel"}`, amount(drawn.price)],
    ["Left of it now", share(drawn.left)],
    ["Left of it then", share(drawn.newLeft)],
    ["Holds the money", held(drawn.holdMoney, drawn.askMoney)],
    ["Holds the percent", held(drawn.holdPercent, drawn.askPercent)],
  ];
  return (
    <table className={styles.table}>
      <caption className={styles.caption}>For the letter to buyers</caption>
      <tbody>
        {rows.map(([name, value]) => (
          <tr key={name}>
            <th scope="row" className={styles.name}>
              {name}
            </th>
            <td className={pane.numeric}>{value}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const held = (exact: Moved["holdMoney"], asked: Moved["askMoney"]): string =>
  typeof exact === "number"
    ? `${amount(exact)}, asked ${amount(asked)}`
    : amount(exact);

const useStyles = makeStyles({
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
    "& th, & td": {
      padding: "4px 0",
      borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    },
  },
  caption: {
    captionSide: "top",
    textAlign: "left",
    color: tokens.colorNeutralForeground3,
    paddingBottom: "4px",
  },
  name: { textAlign: "left", fontWeight: tokens.fontWeightRegular },
});
