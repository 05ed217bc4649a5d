import type { ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import { usePaneStyles } from "../styles";
import { pictureColors } from "./picture-colors";

/** Amounts side by side as bars from a common start; every bar carries its name and figure as text. */
export function BarsPicture(props: {
  readonly label: string;
  readonly bars: readonly {
    readonly name: string;
    readonly value: number;
    readonly shown: string;
    /** A word after the figure, such as "dearer than two pints". */
    readonly remark?: string;
  }[];
  readonly dark: boolean;
}): ReactNode {
  const pane = usePaneStyles();
  const styles = useStyles();
  const most = Math.max(0, ...props.bars.map(({ value }) => value));
  const [color = "", remarked = ""] = pictureColors(props.dark);
  return (
    <ul className={pane.list} aria-label={props.label}>
      {props.bars.map(({ name, value, shown, remark }) => (
        <li key={name}>
          <div className={pane.row}>
            <span>{name}</span>
            <span className={pane.numeric}>{shown}</span>
          </div>
          <div className={styles.ground} aria-hidden="true">
            <div
              className={styles.bar}
              style={{
                width: `${most > 0 ? (Math.max(0, value) / most) * 100 : 0}%`,
                backgroundColor: remark === undefined ? color : remarked,
              }}
            />
          </div>
          {remark !== undefined && <p className={pane.quiet}>{remark}</p>}
        </li>
      ))}
    </ul>
  );
}

const useStyles = makeStyles({
  ground: {
    height: "10px",
    borderRadius: "5px",
    overflow: "hidden",
    backgroundColor: tokens.colorNeutralBackground3,
  },
  bar: { height: "100%", borderRadius: "5px", minWidth: "2px" },
});
