import { useMemo, useState, type ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import { focusView } from "../focus-view";
import { useAnnounce } from "../last-write";
import { sentenceOf, type OpenBook } from "../open-book";
import { usePaneStyles } from "../styles";
import { type Part, plannedSheets, type PlannedSheets } from "./build";

const tells: Readonly<Record<Part, (product: string) => string>> = {
  channels: (product) =>
    `There is no sheet of the channels of ${product} yet. It shows what an order leaves in each, from which order on it pays, and the way from the shelf back to us.`,
  overheads: () =>
    "There is no sheet of overheads by driver yet. It shows who carries the season's bills, the same bill shared six ways, and what an hour and a change of each line cost.",
  years: (product) =>
    `There is no sheet of the seasons of ${product} yet. It shows what a bottle cost last season and this, and what the change is made of.`,
};

/** Offers to build one part's sheet, saying first what it will write and where. */
export function BuildCard(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly part: Part;
  readonly product: string;
}): ReactNode {
  const { host, book, part, product } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  const plan = useMemo(
    () => planOrTrouble(part, book, product),
    [part, book, product],
  );
  const build = async ({ change, sheet }: PlannedSheets): Promise<void> => {
    setBusy(true);
    setTrouble(undefined);
    try {
      await host.apply(change);
      await host.select({ sheet, row: 0, column: 0 });
      announce({
        says: `Added the sheet “${sheet}”.`,
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
      <p className={pane.plain}>{tells[part](product)}</p>
      {wrong !== undefined && <p role="alert">{wrong}</p>}
      {"change" in plan && (
        <p className={pane.quiet}>
          This will add {plan.writes.join(", and ")}. No other cell changes.
        </p>
      )}
      <Button
        appearance="primary"
        disabled={busy || "trouble" in plan}
        icon={busy ? <Spinner size="tiny" /> : null}
        onClick={() => "change" in plan && void build(plan)}
      >
        {busy ? "Building the sheet …" : "Build the sheet"}
      </Button>
    </div>
  );
}

function planOrTrouble(
  part: Part,
  book: OpenBook,
  product: string,
): PlannedSheets | { readonly trouble: string } {
  try {
    return plannedSheets(part, book, product);
  } catch (problem) {
    return { trouble: sentenceOf(problem) };
  }
}
