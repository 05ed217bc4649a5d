import { useRef, useState, type ReactNode } from "react";
import {
  Button,
  Input,
  Link,
  makeStyles,
  tokens,
} from "@fluentui/react-components";
import { centsApart, perBottle, share } from "../money";
import { usePaneStyles } from "../styles";
import { type ListedProduct, listedMatching } from "./price-list";

/** As many as a person looks through before asking for more. */
const PAGE = 25;

/** Every product in a few lines, those under their goal first; long lists come a page at a time and can be searched. */
export function ProductList(props: {
  readonly products: readonly ListedProduct[];
  readonly open: (product: string) => void;
}): ReactNode {
  const { products, open } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  const [typed, setTyped] = useState("");
  const [most, setMost] = useState(PAGE);
  const list = useRef<HTMLUListElement>(null);
  const found = listedMatching(products, typed);
  const rows = found.slice(0, most);
  const more = (): void => {
    setMost(most + PAGE);
    // The keyboard goes on where the new rows begin.
    requestAnimationFrame(() =>
      list.current?.children[most]?.querySelector("button")?.focus(),
    );
  };
  return (
    <>
      {products.length > PAGE && (
        <Input
          aria-label="Find products"
          placeholder="Find: a code, words, “below cost” …"
          value={typed}
          input={{ style: { minWidth: 0, width: "100%" } }}
          onChange={(_, { value }) => {
            setTyped(value);
            setMost(PAGE);
          }}
        />
      )}
      <ul ref={list} className={styles.list} aria-label="Products">
        {rows.map((row) => (
          <li key={row.product} className={styles.item}>
            <div className={pane.row}>
              <Link
                as="button"
                onClick={() => open(row.product)}
                title={`Price ${row.product} by itself`}
              >
                {row.product}
              </Link>
              <strong className={pane.numeric}>{perBottle(row.full)}</strong>
            </div>
            <p className={pane.quiet}>{row.description}</p>
            <p className={pane.quiet}>{costLine(row)}</p>
            <p className={row.isUnder ? styles.under : pane.quiet}>
              {goalLine(row)}
            </p>
          </li>
        ))}
      </ul>
      <p className={pane.quiet} role="status">
        {rows.length === found.length
          ? `${found.length} of ${products.length} products`
          : `The first ${rows.length} of ${found.length} products`}
      </p>
      {rows.length < found.length && (
        <Button onClick={more}>
          Show {Math.min(PAGE, found.length - rows.length)} more
        </Button>
      )}
    </>
  );
}

/** "Direct $3.5407 · average 3.3 ¢ more · oldest first 3.1 ¢ more" */
export const costLine = (row: ListedProduct): string =>
  typeof row.full !== "number"
    ? row.flags
    : [
        `Direct ${perBottle(row.direct)}`,
        `average ${apart(row.average, row.full)}`,
        `oldest first ${apart(row.oldest, row.full)}`,
      ].join(" · ");

const apart = (
  value: ListedProduct["full"],
  against: ListedProduct["full"],
): string =>
  typeof value === "number" ? centsApart(value, against) : "withheld";

/** Where it stands worst, and what else is wrong. */
export function goalLine(row: ListedProduct): string {
  if (row.worst === "")
    return typeof row.full === "number" ? "No price in any channel yet." : "";
  const stands = `${row.worst}: ${share(row.left)} left, goal ${share(row.goal)}`;
  if (!row.isUnder) return `Meets every goal. Closest in ${stands}.`;
  const others = row.under.filter((channel) => channel !== row.worst).length;
  return [
    stands,
    ...(row.belowCost.length > 0
      ? [`below cost in ${row.belowCost.join(", ")}`]
      : []),
    ...(others > 0
      ? [`under in ${others} more ${others === 1 ? "channel" : "channels"}`]
      : []),
  ].join("; ");
}

const useStyles = makeStyles({
  list: { margin: 0, padding: 0, listStyleType: "none" },
  item: {
    padding: "9px 0",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    overflowWrap: "anywhere",
  },
  under: {
    margin: 0,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
  },
});
