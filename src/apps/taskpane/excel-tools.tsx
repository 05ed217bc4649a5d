import { useState, type ReactNode } from "react";
import type { InExcel, Repaired } from "../../hosts/host";

/** What was cut off before, until it is put aside. */
export function Unfinished({
  says,
}: {
  readonly says: string | undefined;
}): ReactNode {
  const [isShown, show] = useState(says !== undefined);
  return isShown ? (
    <section className="excel-alert" role="alert">
      <p>{says}</p>
      <button type="button" onClick={() => show(false)}>
        I have looked at it
      </button>
    </section>
  ) : null;
}

/** At the foot of the pane, folded: the cure for cells stuck at #NAME?, and what this Excel is too old for. */
export function ExcelTools({
  inExcel,
}: {
  readonly inExcel: InExcel;
}): ReactNode {
  const [says, say] = useState("");
  const [isBusy, setBusy] = useState(false);
  const repair = async (): Promise<void> => {
    setBusy(true);
    say("Entering them again …");
    try {
      say(repairedText(await inExcel.repair()));
    } catch (problem) {
      say(problem instanceof Error ? problem.message : String(problem));
    } finally {
      setBusy(false);
    }
  };
  return (
    <details className="excel-tools">
      <summary>This Excel</summary>
      <p>
        Cells that stay at #NAME? or #BUSY! although the functions are loaded
        are cured by entering their formulas again. Only cells with a SYRUP
        function are touched, and each keeps its formula.
      </p>
      <button type="button" disabled={isBusy} onClick={() => void repair()}>
        Enter SYRUP formulas again
      </button>
      <p role="status">{says}</p>
      {inExcel.missing.length > 0 && (
        <ul>
          {inExcel.missing.map((sentence) => (
            <li key={sentence}>{sentence}.</li>
          ))}
        </ul>
      )}
    </details>
  );
}

function repairedText({ formulas, leftAlone }: Repaired): string {
  const done =
    formulas === 0
      ? "No cell with a SYRUP function was found."
      : `${formulas} ${formulas === 1 ? "formula was" : "formulas were"} entered again.`;
  return leftAlone.length === 0
    ? done
    : `${done} Left alone because they are protected: ${leftAlone.join(", ")}.`;
}
