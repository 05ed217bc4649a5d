import { handoverCopy, workedOut } from "../../src/apps/cli/handover-copy";
import type { Contents } from "../../src/book/contents";
import { readAsked } from "../../src/sheets/handover/read-asked";
import {
  type Audience,
  noTicks,
  type Ticks,
} from "../../src/sheets/handover/audiences";
import type { Copy } from "../../src/sheets/handover/copy";
import type { Cell, Stored, Workbook } from "../../src/sheets/workbook";
import { demoTables } from "../book/csv-folder";

/** A copy of sheets of the demo book, with the workbook it was made from. */
export async function demoCopy(
  audience: Audience,
  sheets: string,
  ticks: Partial<Ticks> = {},
  contents = demoTables(),
): Promise<DemoCopy> {
  const worked = await workedOut(contents, { asked: readAsked(sheets) });
  return {
    ...handoverCopy(worked, audience, { ...noTicks, ...ticks }),
    live: worked.live,
  };
}

export interface DemoCopy extends Copy {
  readonly live: Workbook;
}

/** One figure of a copy beside the same figure of the live sheet. */
export interface Pair {
  readonly sheet: string;
  readonly name: string;
  readonly label: string;
  readonly fate: string;
  readonly inCopy: { readonly row: number; readonly column: number };
  readonly live: { readonly row: number; readonly column: number };
}

export const pairsOf = ({ sheets }: Pick<Copy, "sheets">): readonly Pair[] =>
  sheets.flatMap(({ sheet, figures }) =>
    figures.map(({ row, column, of: { figure, fate } }) => ({
      sheet: sheet.name,
      name: figure.name,
      label: figure.label,
      fate,
      inCopy: { row, column },
      live: { row: figure.row, column: figure.column },
    })),
  );

export const valueAt = (
  workbook: Workbook,
  sheet: string,
  at: { readonly row: number; readonly column: number },
): Stored =>
  workbook.sheets
    .find(({ name }) => name === sheet)
    ?.cells.find(({ row, column }) => row === at.row && column === at.column)
    ?.value ?? null;

/** A workbook with one cell typed over. */
export const typed = (
  workbook: Workbook,
  sheet: string,
  at: { readonly row: number; readonly column: number },
  value: number | string,
): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((one) =>
    one.name === sheet
      ? {
          ...one,
          cells: one.cells.map(({ formula, ...cell }): Cell => {
            const isIt = cell.row === at.row && cell.column === at.column;
            if (isIt) return { ...cell, value };
            return { ...cell, ...(formula === undefined ? {} : { formula }) };
          }),
        }
      : one,
  ),
});

/** The same farm with every third product of its own beside its customers': as varied, and worked out in a third of the time. */
export function fewProducts(
  contents: readonly Contents[],
): readonly Contents[] {
  const products = contents.find(({ name }) => name === "Products");
  const codes = new Set(
    (products?.rows ?? [])
      .filter(
        (row, i) =>
          i % 3 === 0 ||
          row[products?.headings.indexOf("Label owner") ?? -1] !== "own",
      )
      .map(([code]) => code),
  );
  return contents.map((table) => {
    const at = table.headings.indexOf("Product");
    return at < 0
      ? table
      : {
          ...table,
          rows: table.rows.filter((row) => codes.has(row[at] ?? null)),
        };
  });
}
