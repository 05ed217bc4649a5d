import { useState, type ReactNode } from "react";
import { Button, Link } from "@fluentui/react-components";
import { amount, share } from "../money";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import type { Moved } from "./what-if";

const PAGE = 25;

/** Products with a price in the channel looked at: those that fall under their goal first, then the rest by what is left. */
export function FallingList(props: {
  readonly products: readonly Moved[];
  readonly choose: (product: string) => Promise<void>;
}): ReactNode {
  const { products, choose } = props;
  const pane = usePaneStyles();
  const [most, setMost] = useState(PAGE);
  const ranked = inOrder(products);
  const rows = ranked.slice(0, most);
  return (
    <Section title="Every product then">
      <ul className={pane.list}>
        {rows.map((row) => (
          <li key={row.product}>
            <div className={pane.row}>
              <Link
                as="button"
                title={`Draw ${row.product}`}
                onClick={() => void choose(row.product)}
              >
                {row.product}
              </Link>
              <span className={pane.numeric}>
                {share(row.left)} → {share(row.newLeft)}
              </span>
            </div>
            <p className={pane.quiet}>
              {row.channel} {amount(row.price)}, goal {share(row.goal)}:{" "}
              {row.verdict}
              {row.isOver && `; cost moves ${share(row.share)}`}
            </p>
          </li>
        ))}
      </ul>
      {rows.length === 0 && (
        <p className={pane.plain}>No product has a price in this channel.</p>
      )}
      {rows.length < ranked.length && (
        <Button onClick={() => setMost(most + PAGE)}>
          Show {Math.min(PAGE, ranked.length - rows.length)} more
        </Button>
      )}
    </Section>
  );
}

/** Falling first, then the least left against the goal. */
export function inOrder(products: readonly Moved[]): readonly Moved[] {
  const gap = ({ newLeft, goal }: Moved): number =>
    typeof newLeft === "number" && typeof goal === "number"
      ? newLeft - goal
      : Infinity;
  const falls = ({ verdict }: Moved): number =>
    verdict.startsWith("falls") ? 0 : 1;
  return products
    .filter(({ newLeft }) => typeof newLeft === "number")
    .sort((a, b) => falls(a) - falls(b) || gap(a) - gap(b));
}
