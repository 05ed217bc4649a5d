import { useMemo, useState, type ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import type { Change, Host } from "../../../hosts/host";
import { toteNames } from "../../../sheets/totes/names";
import { useGoTo } from "../go-to";
import { useAnnounce } from "../last-write";
import { sentenceOf, type OpenBook } from "../open-book";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";
import { toteSheetsChange } from "./tote-sheets";

/** Goes to the tote register, or offers to build it, saying first what it will add. */
export function SheetsCard(props: {
  readonly host: Host;
  readonly open: OpenBook;
}): ReactNode {
  const { host, open } = props;
  const pane = usePaneStyles();
  const goTo = useGoTo();
  const announce = useAnnounce();
  const [busy, setBusy] = useState(false);
  const [share, setShare] = useState<number>();
  const [trouble, setTrouble] = useState<string>();
  const register = toteNames(open.names).as_of;
  const plan = useMemo(
    () => (register ? undefined : planOrTrouble(open)),
    [open, register],
  );
  if (register)
    return (
      <div>
        <Button
          onClick={() => goTo({ sheet: register.sheet, row: 0, column: 0 })}
        >
          Go to the sheet “{register.sheet}”
        </Button>
      </div>
    );
  const build = async (change: Change): Promise<void> => {
    setBusy(true);
    setTrouble(undefined);
    try {
      await host.apply(change, { tell: setShare });
      await host.select({
        sheet: change.addSheets[0]?.name ?? "",
        row: 0,
        column: 0,
      });
      announce({
        says: "Added the tote register and its sheets.",
        takeBack: () => host.undo(),
      });
    } catch (problem) {
      setTrouble(sentence(sentenceOf(problem)));
    } finally {
      setBusy(false);
      setShare(undefined);
    }
  };
  const wrong =
    trouble ?? (plan && "trouble" in plan ? plan.trouble : undefined);
  return (
    <div className={pane.card}>
      <p className={pane.plain}>
        {plan && "change" in plan
          ? `The register can stand in this workbook, live: ${plan.change.addSheets.map(({ name }) => `“${name}”`).join(", ")}. No other cell changes.`
          : "The register cannot be built here."}
      </p>
      {wrong !== undefined && <p role="alert">{wrong}</p>}
      <div>
        <Button
          disabled={busy || !plan || !("change" in plan)}
          icon={busy ? <Spinner size="tiny" /> : null}
          onClick={() => plan && "change" in plan && void build(plan.change)}
        >
          {busy
            ? `Building …${share === undefined ? "" : ` ${Math.round(share * 100)} %`}`
            : "Build the tote sheets"}
        </Button>
      </div>
    </div>
  );
}

function planOrTrouble(
  open: OpenBook,
): { readonly change: Change } | { readonly trouble: string } {
  try {
    return { change: toteSheetsChange(open) };
  } catch (problem) {
    return { trouble: sentence(sentenceOf(problem)) };
  }
}
