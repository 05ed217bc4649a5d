import type { ReactNode } from "react";
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { perBottle, share } from "../money";
import { usePaneStyles } from "../styles";
import type { PartOfCost } from "./costing";
import { drawnStrips, strips } from "./money-shares";

/** Where the money in a bottle goes: a bar for the eye, and the same figures as a list for everyone. */
export function MoneyBar(props: {
  readonly parts: readonly PartOfCost[];
  readonly dark: boolean;
}): ReactNode {
  const pane = usePaneStyles();
  const styles = useStyles();
  const all = strips(props.parts);
  const colors = props.dark ? darkColors : lightColors;
  if (all.length === 0)
    return (
      <p className={pane.quiet}>The sheet has no parts with a figure yet.</p>
    );
  return (
    <>
      <div className={styles.bar} aria-hidden="true">
        {drawnStrips(all).map((strip) => (
          <span
            key={strip.name}
            title={`${strip.name}: ${perBottle(strip.perBottle)}, ${share(strip.share)}`}
            className={styles.strip}
            style={{
              flexGrow: strip.share,
              backgroundColor: colors[strip.color],
            }}
          />
        ))}
      </div>
      <ul className={mergeClasses(pane.list, styles.list)}>
        {all.map((strip) => (
          <li key={strip.name} className={styles.item}>
            <span
              aria-hidden="true"
              className={styles.swatch}
              style={{ backgroundColor: colors[strip.color] }}
            />
            <span className={styles.name}>{strip.name}</span>
            <span className={pane.numeric}>{perBottle(strip.perBottle)}</span>
            <span className={mergeClasses(pane.numeric, styles.share)}>
              {share(strip.share)}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

/** Neighbours differ in lightness as well as hue, so the bar also reads in grey. */
const lightColors = [
  "#5a2e15",
  "#c98a3c",
  "#3f5f4a",
  "#8fae8b",
  "#274a66",
  "#7fa3bd",
  "#8c8377",
] as const;
const darkColors = [
  "#e8bd95",
  "#b0662a",
  "#a9cdb0",
  "#5b8a68",
  "#a7c7dd",
  "#517d9c",
  "#8f867b",
] as const;

const useStyles = makeStyles({
  bar: {
    display: "flex",
    gap: "2px",
    height: "28px",
    borderRadius: "6px",
    overflow: "hidden",
  },
  strip: { flexBasis: "0", minWidth: "2px" },
  list: { gap: "2px", fontSize: tokens.fontSizeBase200 },
  item: {
    display: "flex",
    alignItems: "center",
    gap: "8px",
    minHeight: "22px",
  },
  swatch: {
    width: "10px",
    height: "10px",
    borderRadius: "3px",
    flexShrink: "0",
  },
  name: { flexGrow: 1, minWidth: 0, overflowWrap: "anywhere" },
  share: { width: "46px", color: tokens.colorNeutralForeground3 },
});
