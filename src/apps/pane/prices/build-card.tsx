import { useMemo, useState, type ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import { focusView } from "../focus-view";
import { useAnnounce } from "../last-write";
import { sentenceOf, type OpenBook } from "../open-book";
import { usePaneStyles } from "../styles";
import { plannedPrices, type PlannedPrices } from "./build";

/** Offers to build the price list of every product, saying first what it will write and where. */
export function BuildCard(props: {
  readonly host: Host;
  readonly book: OpenBook;
}): ReactNode {
  const { host, book } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const [busy, setBusy] = useState(false);
  const [share, setShare] = useState<number>();
  const [trouble, setTrouble] = useState<string>();
  const plan = useMemo(() => planOrTrouble(book), [book]);
  const build = async ({ change, sheet }: PlannedPrices): Promise<void> => {
    setBusy(true);
    setTrouble(undefined);
    try {
      await host.apply(change, { tell: setShare });
      await host.select({ sheet, row: 0, column: 0 });
      announce({
        says: "Added the price list and its what-if sheet.",
        takeBack: () => host.undo(),
      });
      focusView();
    } catch (problem) {
      setTrouble(sentenceOf(problem));
    } finally {
      setBusy(false);
    }
  };
  const wrong = trouble ?? ("trouble" in plan ? plan.trouble : undefined);
  return (
    <div className={pane.card}>
      <p className={pane.plain}>
        There is no price list in this workbook yet. It costs every product at
        its usual run, three ways, and holds each channel's price against its
        goal; change a bulk price once and all of it moves.
      </p>
      {wrong !== undefined && <p role="alert">{wrong}</p>}
      {"change" in plan && (
        <div>
          <p className={pane.quiet}>This will add:</p>
          <ul className={pane.quiet}>
            {plan.writes.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
          <p className={pane.quiet}>No other cell changes.</p>
        </div>
      )}
      <Button
        appearance="primary"
        disabled={busy || "trouble" in plan}
        icon={busy ? <Spinner size="tiny" /> : null}
        onClick={() => "change" in plan && void build(plan)}
      >
        {busy
          ? `Building the sheets …${share === undefined ? "" : ` ${Math.round(share * 100)} %`}`
          : "Build price list"}
      </Button>
    </div>
  );
}

function planOrTrouble(
  book: OpenBook,
): PlannedPrices | { readonly trouble: string } {
  try {
    return plannedPrices({ tables: book.tables, sheets: book.sheets });
  } catch (problem) {
    return { trouble: sentenceOf(problem) };
  }
}
