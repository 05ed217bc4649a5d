import { useState, type ReactNode } from "react";
import { createRoot } from "react-dom/client";
import { openExcelHost, type ExcelHost } from "../../hosts/excel/excel-host";
import { Pane } from "../pane/pane";
import { ErrorBoundary } from "./error-boundary";
import { ExcelTools, Unfinished } from "./excel-tools";
import { showNotice } from "./notice";
import { troubleNotice } from "./trouble";
import { useDark } from "./use-dark";

/** Opens the workbook behind the port and draws the pane. */
export async function openPane(place: HTMLElement): Promise<void> {
  const host = await openExcelHost();
  const root = createRoot(place);
  const broke = (problem: unknown): void => {
    void troubleNotice(problem).then((notice) => {
      root.unmount();
      showNotice(place, notice);
    });
  };
  root.render(
    <ErrorBoundary broke={broke}>
      <ExcelPane host={host} />
    </ErrorBoundary>,
  );
}

function ExcelPane({ host }: { readonly host: ExcelHost }): ReactNode {
  const dark = useDark();
  // One and the same for as long as the pane is open: another one would make it listen anew.
  const [watchEdits] = useState(
    () => (listener: () => void) => host.onEdit(listener),
  );
  return (
    <main className="excel-page">
      <Unfinished says={host.inExcel.unfinished} />
      <div className="excel-pane">
        <Pane host={host} dark={dark} watchEdits={watchEdits} />
      </div>
      <ExcelTools inExcel={host.inExcel} />
    </main>
  );
}
