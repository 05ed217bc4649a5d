import type { ReactNode } from "react";
import { Button, makeStyles, tokens } from "@fluentui/react-components";

/** A field with the button beside it that fills in the selected cells. */
export function TakeRow(props: {
  /** What the cells are taken for. */
  readonly label: string;
  /** "B2:B9"; undefined while nothing is selected. */
  readonly cells: string | undefined;
  readonly take: () => void;
  readonly children: ReactNode;
}): ReactNode {
  const { label, cells, take, children } = props;
  const styles = useStyles();
  return (
    <div className={styles.row}>
      <div className={styles.field}>{children}</div>
      <Button
        className={styles.take}
        disabled={cells === undefined}
        title="Take the selected cells"
        aria-label={`Take ${cells ?? "the selected cells"} for ${label}`}
        onClick={take}
      >
        Take {cells}
      </Button>
    </div>
  );
}

const useStyles = makeStyles({
  row: { display: "flex", alignItems: "stretch", gap: "6px", minWidth: 0 },
  field: {
    flexGrow: 1,
    flexBasis: 0,
    minWidth: 0,
    "& > *": { width: "100%", minWidth: 0 },
  },
  take: {
    flexShrink: 0,
    minWidth: 0,
    maxWidth: "50%",
    padding: "0 8px",
    fontSize: tokens.fontSizeBase200,
    fontWeight: tokens.fontWeightRegular,
    fontVariantNumeric: "tabular-nums",
  },
});
