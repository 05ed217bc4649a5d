import type { Workbook } from "../../sheets/workbook";
import { cellAddress, sheetReference } from "../../sheets/address";
import type { CellPlace } from "../host";
import { formulaNeeds, type FormulaCell } from "./formula-needs";

/** A cell whose formula needs its own result, and the sentence that names the circle. */
export interface Circle extends CellPlace {
  readonly sentence: string;
}

/** The cells whose formulas need their own result; a cell that only reads one of them is not among them. */
export const circularCells = (workbook: Workbook): readonly CellPlace[] =>
  circles(workbook).map(({ sheet, row, column }) => ({ sheet, row, column }));

export function circles(workbook: Workbook): readonly Circle[] {
  const needs = formulaNeeds(workbook);
  const rings = ringOfEach(needs);
  return [...needs.keys()].flatMap((cell) => {
    const ring = rings.get(cell);
    if (!ring) return [];
    const { sheet, row, column } = cell;
    return [{ sheet, row, column, sentence: sentenceFor(cell, ring, needs) }];
  });
}

type Needs = ReadonlyMap<FormulaCell, readonly FormulaCell[]>;
type Ring = ReadonlySet<FormulaCell>;

/** The strongly connected groups of cells that hold a circle (Tarjan's method, without recursion). */
function ringOfEach(needs: Needs): ReadonlyMap<FormulaCell, Ring> {
  const rings = new Map<FormulaCell, Ring>();
  const order = new Map<FormulaCell, number>();
  const lowest = new Map<FormulaCell, number>();
  const waiting: FormulaCell[] = [];
  const onWait = new Set<FormulaCell>();
  for (const start of needs.keys()) {
    if (order.has(start)) continue;
    const path: { readonly cell: FormulaCell; next: number }[] = [];
    const enter = (cell: FormulaCell): void => {
      order.set(cell, order.size);
      lowest.set(cell, order.size - 1);
      waiting.push(cell);
      onWait.add(cell);
      path.push({ cell, next: 0 });
    };
    enter(start);
    for (let step = path.at(-1); step; step = path.at(-1)) {
      const needed = needs.get(step.cell)?.[step.next];
      step.next += 1;
      if (needed !== undefined) {
        if (!order.has(needed)) enter(needed);
        else if (onWait.has(needed))
          lower(lowest, step.cell, order.get(needed));
        continue;
      }
      path.pop();
      const above = path.at(-1);
      if (above) lower(lowest, above.cell, lowest.get(step.cell));
      if (lowest.get(step.cell) !== order.get(step.cell)) continue;
      const group = new Set<FormulaCell>();
      for (let last = waiting.pop(); last; last = waiting.pop()) {
        group.add(last);
        onWait.delete(last);
        if (last === step.cell) break;
      }
      const circular =
        group.size > 1 || needs.get(step.cell)?.includes(step.cell) === true;
      if (circular) for (const cell of group) rings.set(cell, group);
    }
  }
  return rings;
}

function lower(
  lowest: Map<FormulaCell, number>,
  cell: FormulaCell,
  to: number | undefined,
): void {
  const now = lowest.get(cell);
  if (to !== undefined && (now === undefined || to < now)) lowest.set(cell, to);
}

const mostShown = 6;

function sentenceFor(cell: FormulaCell, ring: Ring, needs: Needs): string {
  const way = shortestWay(cell, ring, needs).map((at) =>
    at.sheet === cell.sheet
      ? cellAddress(at.row, at.column)
      : `${sheetReference(at.sheet)}!${cellAddress(at.row, at.column)}`,
  );
  const shown =
    way.length > mostShown
      ? [...way.slice(0, mostShown - 1), "…", way.at(-1)]
      : way;
  return way.length === 2
    ? `${way[0]} needs its own result, so it has no answer`
    : `${way[0]} needs its own result, so it has no answer: ${shown.join(" needs ")}`;
}

/** From a cell back to itself through the fewest cells of its ring. */
function shortestWay(
  cell: FormulaCell,
  ring: Ring,
  needs: Needs,
): readonly FormulaCell[] {
  const cameFrom = new Map<FormulaCell, FormulaCell>();
  const queue = [cell];
  for (const at of queue) {
    for (const needed of needs.get(at) ?? []) {
      if (needed === cell) {
        const way = [cell];
        for (let back = at; back !== cell; back = cameFrom.get(back) ?? cell)
          way.splice(0, 0, back);
        return [cell, ...way];
      }
      if (ring.has(needed) && !cameFrom.has(needed)) {
        cameFrom.set(needed, at);
        queue.push(needed);
      }
    }
  }
  return [cell, cell];
}
