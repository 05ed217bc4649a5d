import { useMemo, useState, type ReactNode } from "react";
import { Button, Field, Input, Spinner } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import { focusView } from "../focus-view";
import { useAnnounce } from "../last-write";
import { sentenceOf, type OpenBook } from "../open-book";
import { usePaneStyles } from "../styles";
import { readBottles } from "./bottles";
import { plannedSheet, type PlannedSheet } from "./build";
import { usualRun } from "./products";

/** Offers to build the costing sheet of a product, saying first what it will write and where. */
export function BuildCard(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly product: string;
}): ReactNode {
  const { host, book, product } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const [typed, setTyped] = useState(() =>
    usualRun(book.tables, product).toLocaleString("en-US"),
  );
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  const plan = useMemo(
    () => planOrTrouble(book, product, typed),
    [book, product, typed],
  );
  const build = async ({ change, sheet }: PlannedSheet): Promise<void> => {
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
  return (
    <div className={pane.card}>
      <p className={pane.plain}>
        There is no costing sheet for {product} in this workbook yet.
      </p>
      <Field
        label="Bottles in this run"
        validationState={"trouble" in plan || trouble ? "error" : "none"}
        validationMessage={trouble ?? ("trouble" in plan ? plan.trouble : null)}
      >
        <Input
          value={typed}
          inputMode="numeric"
          onChange={(_, { value }) => setTyped(value)}
        />
      </Field>
      {"change" in plan && (
        <p className={pane.quiet}>
          This will add {plan.writes.join(" and ")}. No other cell changes.
        </p>
      )}
      <Button
        appearance="primary"
        disabled={busy || "trouble" in plan}
        icon={busy ? <Spinner size="tiny" /> : null}
        onClick={() => "change" in plan && void build(plan)}
      >
        {busy ? "Building the sheet …" : "Build costing sheet"}
      </Button>
    </div>
  );
}

function planOrTrouble(
  book: OpenBook,
  product: string,
  typed: string,
): PlannedSheet | { readonly trouble: string } {
  try {
    return plannedSheet({
      tables: book.tables,
      sheets: book.sheets,
      product,
      bottles: readBottles(typed),
    });
  } catch (problem) {
    return { trouble: sentenceOf(problem) };
  }
}
