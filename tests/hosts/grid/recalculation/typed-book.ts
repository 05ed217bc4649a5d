import {
  openHeadless,
  type HeadlessHost,
} from "../../../../src/hosts/grid/open-headless";
import type {
  Cell,
  CellValue,
  Workbook,
} from "../../../../src/sheets/workbook";
import { bookOf, standIn } from "../invented-workbook";

/** Which weights a function was asked for, in order. */
export const asked: unknown[] = [];
export const functions = [
  standIn("WEIGHED", ["tare"], ([tare]) => {
    asked.push(tare);
    return Number(tare);
  }),
];

export const column = (
  at: number,
  contents: readonly (CellValue | `=${string}`)[],
): readonly Cell[] =>
  contents.map((content, row) =>
    typeof content === "string" && content.startsWith("=")
      ? { row, column: at, formula: content }
      : { row, column: at, ...(content === null ? {} : { value: content }) },
  );

export const host = async (
  cells: readonly Cell[],
  beside: Parameters<typeof bookOf>[1] = {},
): Promise<HeadlessHost> => openHeadless(bookOf(cells, beside), functions);

export const results = ({
  sheets,
}: Workbook): readonly (readonly unknown[])[] =>
  sheets.flatMap(({ name, cells }) =>
    cells
      .filter(({ formula }) => formula !== undefined)
      .map(({ row, column: at, value }) => [name, row, at, value ?? null]),
  );

export const type = (
  grid: HeadlessHost,
  row: number,
  at: number,
  value: CellValue,
): Promise<void> =>
  grid.setCell(
    { sheet: grid.currentWorkbook().sheets[0]?.name ?? "", row, column: at },
    value,
  );
