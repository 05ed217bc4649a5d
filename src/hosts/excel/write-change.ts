import { unusable } from "../../measures/cannot-answer";
import { digestOf, type Kept, type WriteRecord } from "../../sheets/kept";
import type { Cell } from "../../sheets/workbook";
import { changedWorkbook } from "../changed-workbook";
import type { Change } from "../host";
import type { Growth } from "../table-growth";
import { inputs } from "../taken-back";
import { fillRecord, fillSteps } from "./fills";
import { keep } from "./kept-part";
import type { Before } from "./load-change";
import { renderSheet } from "./render-sheet";
import type { Step } from "./step";
import { toEnter } from "./stored-value";

/** A change ready to be written: every refusal of ours has been made, and what it takes to take it back is known. */
export interface Plan {
  readonly record: WriteRecord;
  readonly before: Before;
  readonly steps: readonly Step[];
  readonly after: Kept;
}

/** Asks with the next request whether every row went into its table; refuses a write where one did not. */
export function loadAllRowsIn(
  { workbook }: Excel.RequestContext,
  { growths }: WriteRecord,
): () => void {
  const bodies = growths.map(({ table, offset, rows, rowsBefore }) => {
    const body = workbook.tables.getItem(table).getDataBodyRange();
    body.load("rowCount");
    const expected = Math.max(offset - 1 + rows, rowsBefore - 1);
    return { table, body, expected };
  });
  return () => {
    for (const { table, body, expected } of bodies)
      if (body.rowCount < expected)
        throw unusable(
          `Excel left ${expected - body.rowCount} of the rows out of the table ${table}`,
        );
  };
}

/** So many writes back can be taken back; older ones stay. */
const mostDone = 10;

export function planChange(before: Before, change: Change): Plan {
  const { growths } = changedWorkbook(before.workbook, change);
  const fills = (change.fill ?? []).flatMap((fill, i) => {
    const held = before.fills[i];
    return held ? [{ fill, record: fillRecord(fill, held) }] : [];
  });
  const record: WriteRecord = {
    says: change.says,
    sheets: change.addSheets.map(({ name, cells }) => ({
      name,
      digest: digestOf(inputs(cells)),
    })),
    names: change.names.map(({ name }) => name),
    growths: growths.map((growth) => growthRecord(growth, before)),
    ...(fills.length === 0 ? {} : { fills: fills.map(({ record }) => record) }),
  };
  const { kept, isThere, isNotOurs } = before.kept;
  const after = {
    ...kept,
    begun: undefined,
    done: [...kept.done, record].slice(-mostDone),
  };
  const rendered = change.addSheets.map(renderSheet);
  return {
    record,
    before,
    after,
    steps: [
      keepStep({ ...kept, begun: record }, { isThere, isNotOurs }),
      ...rendered.map(({ add }) => add),
      ...rendered.flatMap(({ values }) => values),
      ...rendered.flatMap(({ tables }) => tables),
      ...change.names.map((name) => ({
        bytes: 500,
        run: ({ workbook }: Excel.RequestContext) => {
          workbook.names.add(name.name, `=${name.refersTo}`);
        },
      })),
      ...rendered.flatMap(({ formulas }) => formulas),
      ...growths.map((growth) => growthStep(growth)),
      ...fills.flatMap(({ fill, record: of }) => fillSteps(fill, of)),
      ...rendered.flatMap(({ looks }) => looks),
      keepStep(after, { isThere: true, isNotOurs }),
    ],
  };
}

const keepStep = (
  kept: Kept,
  part: { readonly isThere: boolean; readonly isNotOurs: boolean },
): Step => ({
  bytes: 500 + JSON.stringify(kept).length,
  run: (context) => keep(context, kept, part),
});

function growthRecord(
  growth: Growth,
  { lastRows }: Before,
): WriteRecord["growths"][number] {
  const { table, offset, rows, rowsBefore, cellsAfter } = growth;
  const isInBlankRow = offset < rowsBefore;
  return {
    table,
    offset,
    rows,
    rowsBefore,
    digest: rowsDigest(cellsAfter),
    ...(isInBlankRow
      ? { firstRow: (lastRows.get(table) ?? []).map(String) }
      : {}),
  };
}

/** Of what a person could have typed in these rows, wherever the table stands. */
export function rowsDigest(cells: readonly Cell[]): string {
  const row = Math.min(...cells.map((cell) => cell.row));
  const column = Math.min(...cells.map((cell) => cell.column));
  return digestOf(
    inputs(
      cells.map((cell) => ({
        ...cell,
        row: cell.row - row,
        column: cell.column - column,
      })),
    ),
  );
}

/** Excel has lost rows from a table when more than 1500 were added at once (office-js issue 3191). */
const rowsAtOnce = 1000;
const atTheEnd = -1;

/** The blank row of an empty table is filled in place; all others are new rows, which Excel gives the looks of the last. */
function growthStep(growth: Growth): Step {
  const { table, offset, rows, rowsBefore, cellsAfter } = growth;
  const columns = cellsAfter.length / rows;
  const entered = Array.from({ length: rows }, (_, r) =>
    cellsAfter
      .slice(r * columns, (r + 1) * columns)
      .map((cell) => cell.formula ?? toEnter(cell.value)),
  );
  const inPlace = Math.max(0, Math.min(rows, rowsBefore - offset));
  return {
    bytes: 1000 + JSON.stringify(entered).length,
    run: ({ workbook }) => {
      const grown = workbook.tables.getItem(table);
      if (inPlace > 0)
        grown.getDataBodyRange().getRow(0).formulas = entered.slice(0, inPlace);
      for (let from = inPlace; from < rows; from += rowsAtOnce)
        grown.rows.add(atTheEnd, entered.slice(from, from + rowsAtOnce));
    },
  };
}
