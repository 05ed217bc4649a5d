import { makeStyles, tokens } from "@fluentui/react-components";
import { serif } from "./theme";

/** Looks that several views use. Everything is a class: nothing outside the pane may be touched. */
export const usePaneStyles = makeStyles({
  view: {
    display: "flex",
    flexDirection: "column",
    gap: "20px",
    padding: "16px 16px 32px",
    "@media (max-width: 340px)": { padding: "14px 12px 28px" },
  },
  section: { display: "flex", flexDirection: "column", gap: "8px" },
  heading: {
    margin: 0,
    fontFamily: serif,
    fontSize: "17px",
    lineHeight: "22px",
    fontWeight: tokens.fontWeightSemibold,
    color: tokens.colorNeutralForeground1,
  },
  quiet: {
    margin: 0,
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
  },
  plain: { margin: 0, lineHeight: tokens.lineHeightBase300 },
  card: {
    display: "flex",
    flexDirection: "column",
    gap: "12px",
    padding: "14px",
    borderRadius: "10px",
    backgroundColor: tokens.colorNeutralBackground2,
    border: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  list: {
    margin: 0,
    padding: 0,
    listStyleType: "none",
    display: "flex",
    flexDirection: "column",
    gap: "8px",
  },
  row: {
    display: "flex",
    alignItems: "baseline",
    justifyContent: "space-between",
    gap: "12px",
  },
  buttons: { display: "flex", flexWrap: "wrap", gap: "8px" },
  numeric: {
    fontVariantNumeric: "tabular-nums",
    textAlign: "right",
    whiteSpace: "nowrap",
  },
  formula: {
    margin: 0,
    padding: "8px 10px",
    borderRadius: "6px",
    backgroundColor: tokens.colorNeutralBackground3,
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
    overflowWrap: "anywhere",
  },
});
