import type { Area, Cell, Sheet } from "../../sheets/workbook";
import { isAble } from "./abilities";
import { arrayOf, bands, bytesOf, type Band } from "./bands";
import { areaOn, onSheet } from "./on-sheet";
import { withCopies } from "./copies";
import { chartStep } from "./render-chart";
import { layoutStep } from "./render-layout";
import { lookSteps } from "./render-looks";
import { validationStep } from "./render-validations";
import type { Step } from "./step";
import { toEnter } from "./stored-value";

/**
 * A placed sheet as steps, in the order they have to come over all sheets: a formula cannot be entered before the
 * tables it names, a table not before its headings, and looks come when the values are there.
 */
export interface RenderedSheet {
  readonly add: Step;
  readonly values: readonly Step[];
  readonly tables: readonly Step[];
  readonly formulas: readonly Step[];
  readonly looks: readonly Step[];
}

export function renderSheet(sheet: Sheet): RenderedSheet {
  const typed = sheet.cells.filter((cell) => !cell.spilled && holds(cell));
  const hasTables = sheet.tables.length > 0;
  return {
    add: {
      bytes: 300,
      run: ({ workbook }) => {
        workbook.worksheets.add(sheet.name);
      },
    },
    values: hasTables
      ? bandSteps(
          sheet,
          typed.filter((cell) => cell.formula === undefined),
        )
      : [],
    tables: sheet.tables.map((table) => ({
      bytes: 1500,
      run: (context) => {
        const rows = Math.max(2, table.area.rows);
        const made = onSheet(context, sheet).tables.add(
          areaOn(context, sheet, { ...table.area, rows }),
          true,
        );
        made.name = table.name;
        // The cells carry their looks themselves.
        made.style = "TableStyleLight1";
      },
    })),
    formulas: contentSteps(
      sheet,
      hasTables ? typed.filter((cell) => cell.formula !== undefined) : typed,
    ),
    looks: [
      ...lookSteps(sheet),
      ...sheet.validations.map((validation) =>
        validationStep(sheet, validation),
      ),
      ...noteSteps(sheet),
      layoutStep(sheet),
      ...(sheet.charts ?? []).map((chart) => chartStep(sheet.name, chart)),
    ],
  };
}

const holds = (cell: Cell): boolean =>
  cell.formula !== undefined ||
  (cell.value !== undefined && cell.value !== null && cell.value !== "");

/** What cells hold, as few arrays and copies. */
export function contentSteps(
  sheet: Pick<Sheet, "name">,
  cells: readonly Cell[],
): readonly Step[] {
  const { written, areas } = withCopies(cells);
  return [...bandSteps(sheet, written), ...copySteps(sheet, areas)];
}

const bandSteps = (
  sheet: Pick<Sheet, "name">,
  cells: readonly Cell[],
): readonly Step[] =>
  bands(cells).map((band) => ({
    bytes: 600 + bytesIn(band),
    run: (context) => {
      areaOn(context, sheet, band.area).formulas = arrayOf(
        band,
        (cell) => cell.formula ?? toEnter(cell.value),
      );
    },
  }));

const copySteps = (
  sheet: Pick<Sheet, "name">,
  areas: readonly Area[],
): readonly Step[] =>
  areas.map((area) => ({
    bytes: 1000,
    run: (context) => {
      const above = { ...area, row: area.row - 1, rows: 1 };
      areaOn(context, sheet, area).copyFrom(
        areaOn(context, sheet, above),
        "Formulas",
      );
    },
  }));

const bytesIn = ({ cells }: Band): number =>
  [...cells.values()].reduce(
    (sum, row) =>
      sum + [...row.values()].reduce((own, cell) => own + bytesOf(cell), 0),
    0,
  );

const noteSteps = (sheet: Sheet): readonly Step[] =>
  isAble("notes")
    ? sheet.cells.flatMap(({ row, column, note }) =>
        note === undefined
          ? []
          : [
              {
                bytes: 300 + note.length,
                run: (context: Excel.RequestContext) => {
                  onSheet(context, sheet).notes.add(
                    onSheet(context, sheet).getCell(row, column),
                    note,
                  );
                },
              },
            ],
      )
    : [];
