import type { ReactNode } from "react";
import { useId } from "@fluentui/react-components";
import { usePaneStyles } from "./styles";

/** A titled part of a view, with its title as the region's name. */
export function Section(props: {
  readonly title: string;
  readonly children: ReactNode;
}): ReactNode {
  const styles = usePaneStyles();
  const id = useId("section");
  return (
    <section className={styles.section} aria-labelledby={id}>
      <h2 id={id} className={styles.heading}>
        {props.title}
      </h2>
      {props.children}
    </section>
  );
}
