import { useMemo, useState, type ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import { listed } from "../../../book/finding";
import type { Host } from "../../../hosts/host";
import { runPlanNames } from "../../../sheets/run-plan/names";
import { focusView } from "../focus-view";
import { useGoTo } from "../go-to";
import { useAnnounce } from "../last-write";
import { sentenceOf, type OpenBook } from "../open-book";
import { usePaneStyles } from "../styles";
import { plannedPlan, type PlannedPlan } from "./build";
import type { ReadRun } from "./run-draft";

/** Offers the plan as a sheet of live cells, saying first what it will write; or leads to the one that is there. */
export function BuildPlan(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly product: string;
  readonly run: ReadRun;
}): ReactNode {
  const { host, book, product, run } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const goTo = useGoTo();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  const there = runPlanNames(book.names, product).bottles;
  const plan = useMemo(
    () => (there ? undefined : planOrTrouble(book, product, run)),
    [there, book, product, run.bottles, run.start, run.line],
  );
  const build = async ({ change, sheet }: PlannedPlan): Promise<void> => {
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
  if (there)
    return (
      <div className={pane.card}>
        <p className={pane.plain}>
          This workbook has a run plan for {product}. It goes by its own yellow
          cells, not by what is typed here.
        </p>
        <Button onClick={() => goTo(there)}>
          Go to the sheet “{there.sheet}”
        </Button>
      </div>
    );
  const problem = trouble ?? (plan && "trouble" in plan ? plan.trouble : null);
  return (
    <div className={pane.card}>
      {problem && <p role="alert">{problem}</p>}
      {plan && "change" in plan && (
        <p className={pane.quiet}>
          This will add {listed(plan.writes)}. No other cell changes.
        </p>
      )}
      <Button
        appearance="primary"
        disabled={busy || !plan || "trouble" in plan}
        icon={busy ? <Spinner size="tiny" /> : null}
        onClick={() => plan && "change" in plan && void build(plan)}
      >
        {busy ? "Building the sheet …" : "Build the sheet"}
      </Button>
    </div>
  );
}

function planOrTrouble(
  book: OpenBook,
  product: string,
  { bottles, start, line }: ReadRun,
): PlannedPlan | { readonly trouble: string } | undefined {
  if (bottles === undefined) return undefined;
  try {
    return plannedPlan({
      tables: book.tables,
      sheets: book.sheets,
      product,
      bottles,
      start,
      line,
    });
  } catch (problem) {
    return { trouble: sentenceOf(problem) };
  }
}
