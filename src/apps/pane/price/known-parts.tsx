import type { ReactNode } from "react";
import { perBottle } from "../money";
import { usePaneStyles } from "../styles";
import type { PartOfCost } from "./costing";

/** The parts of a cost that is not whole: what is known and what is missing, and no shares of a total there is not. */
export function KnownParts(props: {
  readonly parts: readonly PartOfCost[];
}): ReactNode {
  const pane = usePaneStyles();
  return (
    <>
      <p className={pane.quiet}>
        Shares are drawn once nothing is missing. Known so far, a bottle:
      </p>
      <ul className={pane.list}>
        {props.parts.map(({ name, perBottle: value }) => (
          <li key={name} className={pane.row}>
            <span>{name}</span>
            <span className={pane.numeric}>
              {typeof value === "number" ? perBottle(value) : "missing"}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}
