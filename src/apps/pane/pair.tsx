import type { ReactNode } from "react";
import { makeStyles } from "@fluentui/react-components";

/** Fields side by side where they fit. */
export function Pair(props: { readonly children: ReactNode }): ReactNode {
  return <div className={useStyles().pair}>{props.children}</div>;
}

const useStyles = makeStyles({
  pair: {
    display: "grid",
    gridTemplateColumns: "repeat(auto-fit, minmax(120px, 1fr))",
    alignItems: "start",
    gap: "10px",
  },
});
