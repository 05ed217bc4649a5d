import { useState, type ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import { listed } from "../../../book/finding";
import type { Host } from "../../../hosts/host";
import { focusView } from "../focus-view";
import { useAnnounce } from "../last-write";
import { sentenceOf } from "../open-book";
import { usePaneStyles } from "../styles";
import type { PlannedSheets } from "./build";

/** Says what will be written, and writes it. */
export function BuildButton(props: {
  readonly host: Host;
  readonly text: string;
  readonly plan: PlannedSheets | { readonly trouble: string };
}): ReactNode {
  const { host, text, plan } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  const build = async ({ change, sheet }: PlannedSheets): Promise<void> => {
    setBusy(true);
    setTrouble(undefined);
    try {
      await host.apply(change);
      await host.select({ sheet, row: 0, column: 0 });
      announce({
        says: `Added ${change.says}: the sheet “${sheet}”.`,
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
    <>
      {wrong !== undefined && <p role="alert">{wrong}</p>}
      {"change" in plan && (
        <p className={pane.quiet}>
          This will add {listed(plan.writes)}. No other cell changes.
        </p>
      )}
      <Button
        appearance="primary"
        disabled={busy || "trouble" in plan}
        icon={busy ? <Spinner size="tiny" /> : null}
        onClick={() => "change" in plan && void build(plan)}
      >
        {busy ? "Building …" : text}
      </Button>
    </>
  );
}

/** A plan, or the sentence that says why there is none. */
export function planOrTrouble(
  plan: () => PlannedSheets,
): PlannedSheets | { readonly trouble: string } {
  try {
    return plan();
  } catch (problem) {
    return { trouble: sentenceOf(problem) };
  }
}
