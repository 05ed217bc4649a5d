import type { Repaired } from "../host";
import { rectangles } from "./areas";
import { inExcel } from "./in-excel";
import { runSteps, type Step } from "./step";
import { cellProperties, formulaIn } from "./stored-value";

/** Calls of ours, also as Excel shows them while it does not know them. */
const ours = /(?:^|[^\w.])(?:_xldudf_SYRUP_|SYRUP\.)/i;

/** Enters every formula with our functions anew, just as it is; nothing else is touched. */
export const repair = (): Promise<Repaired> =>
  inExcel(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name,items/protection/protected");
    await context.sync();
    const sheets = worksheets.items.map((sheet) => {
      // By name, for somebody may move sheets meanwhile.
      const used = worksheets.getItem(sheet.name).getUsedRangeOrNullObject();
      used.load(`rowIndex,columnIndex,${cellProperties}`);
      return {
        name: sheet.name,
        isProtected: sheet.protection.protected,
        used,
      };
    });
    await context.sync();
    const found = sheets.map((sheet) => ({
      ...sheet,
      cells: oursIn(sheet.used),
    }));
    const open = found.filter(({ isProtected }) => !isProtected);
    const steps = open.flatMap(({ name, cells }) => stepsFor(name, cells));
    if (steps.length > 0) await runSteps(context, steps);
    return {
      formulas: open.reduce((sum, { cells }) => sum + cells.length, 0),
      leftAlone: found
        .filter(({ isProtected, cells }) => isProtected && cells.length > 0)
        .map(({ name }) => name),
    };
  });

interface OurCell {
  readonly row: number;
  readonly column: number;
  readonly formula: string;
}

function oursIn(used: Excel.Range): readonly OurCell[] {
  if (used.isNullObject) return [];
  return used.formulas.flatMap((row: readonly unknown[], r) =>
    row.flatMap((entered, c) => {
      const formula = formulaIn(entered, used.values[r]?.[c]);
      return formula !== undefined && ours.test(formula)
        ? [{ row: used.rowIndex + r, column: used.columnIndex + c, formula }]
        : [];
    }),
  );
}

function stepsFor(name: string, cells: readonly OurCell[]): readonly Step[] {
  const formulas = new Map(
    cells.map(({ row, column, formula }) => [`${row},${column}`, formula]),
  );
  return rectangles(cells, { sideways: true, stacks: true }).map((area) => {
    const entered = Array.from({ length: area.rows }, (_, r) =>
      Array.from(
        { length: area.columns },
        (_unused, c) =>
          formulas.get(`${area.row + r},${area.column + c}`) ?? null,
      ),
    );
    return {
      bytes: 500 + JSON.stringify(entered).length,
      run: ({ workbook }) => {
        workbook.worksheets
          .getItem(name)
          .getRangeByIndexes(
            area.row,
            area.column,
            area.rows,
            area.columns,
          ).formulas = entered;
      },
    };
  });
}
