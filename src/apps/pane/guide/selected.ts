import { useEffect, useState } from "react";
import type { Host } from "../../../hosts/host";
import type { Range } from "../why/surroundings";

/** What is selected in the sheet, and what was selected just before that. */
export interface Selected {
  readonly now: Range;
  /** The one cell of the selection that typing would go to. */
  readonly cell: Range;
  readonly before: Range | undefined;
}

export function useSelected(host: Host): Selected | undefined {
  const [selected, setSelected] = useState<Selected>();
  useEffect(
    () =>
      host.watchSelection(({ sheet, row, column }, area) => {
        const cell = { sheet, row, column, rows: 1, columns: 1 };
        setSelected((earlier) => ({
          now: { sheet, ...area },
          cell,
          before:
            earlier && !isSame(earlier.cell, cell)
              ? earlier.cell
              : earlier?.before,
        }));
      }),
    [host],
  );
  return selected;
}

const isSame = (a: Range, b: Range): boolean =>
  a.sheet === b.sheet && a.row === b.row && a.column === b.column;
