import { useRef, type ReactNode } from "react";
import { Button, Label, makeStyles, useId } from "@fluentui/react-components";
import { usePaneStyles } from "../styles";

/** One workbook file to choose, with the name of the one chosen. */
export function ChooseFile(props: {
  readonly label: string;
  readonly chosen: string | undefined;
  readonly choose: (file: File) => void;
  readonly disabled: boolean;
}): ReactNode {
  const { label, chosen, choose, disabled } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  const picker = useRef<HTMLInputElement>(null);
  const id = useId("file");
  return (
    <div className={styles.field}>
      <Label id={id}>{label}</Label>
      <div className={styles.line}>
        <Button
          id={`${id}-button`}
          aria-labelledby={`${id} ${id}-button`}
          disabled={disabled}
          onClick={() => picker.current?.click()}
        >
          {chosen === undefined ? "Choose a file …" : "Another file …"}
        </Button>
        <span className={chosen === undefined ? pane.quiet : styles.name}>
          {chosen ?? "none yet"}
        </span>
      </div>
      <input
        ref={picker}
        type="file"
        accept=".xlsx"
        hidden
        aria-label={label}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = "";
          if (file) choose(file);
        }}
      />
    </div>
  );
}

const useStyles = makeStyles({
  field: { display: "flex", flexDirection: "column", gap: "4px" },
  line: {
    display: "flex",
    flexWrap: "wrap",
    alignItems: "center",
    gap: "4px 10px",
  },
  name: { overflowWrap: "anywhere" },
});
