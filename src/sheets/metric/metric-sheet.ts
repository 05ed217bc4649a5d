import type { Cell, Sheet, Stored, Validation } from "../workbook";
import { inMetric, type UsUnit } from "./figure-units";
import { readsElsewhere } from "./formula-nodes";
import { atTwenty, labelInMetric } from "./metric-words";
import { CannotRead, inMetricFormula, rewritten } from "./rewritten";

/** A figure of a copied sheet that has a metric unit. */
export interface UnitFigure {
  readonly row: number;
  readonly column: number;
  readonly name: string;
  readonly label: string;
  readonly unit: UsUnit;
  /** Its words stand above it, not beside it. */
  readonly isInTable: boolean;
}

/** A worksheet cell holds no longer formula. */
const LONGEST = 8000;

/** A figure that has to stay in its unit, as one formula could not follow it. */
export class MustStay extends Error {
  constructor(
    readonly figures: readonly UnitFigure[],
    readonly why: string,
  ) {
    super(why);
  }
}

export const placeKey = (row: number, column: number): string =>
  `${row},${column}`;

/**
 * A sheet of a copy with these figures in metric: their values, formulas, rules and words; every formula that reads them
 * gives what it gave. `filled` has the values where `sheet` holds none. Throws MustStay where that cannot be.
 */
export function metricSheet(
  sheet: Sheet,
  figures: readonly UnitFigure[],
  isText: (row: number, column: number) => boolean,
  filled: Sheet = sheet,
): Sheet {
  const byPlace = new Map(figures.map((f) => [placeKey(f.row, f.column), f]));
  const values = new Map(
    filled.cells.map((c) => [placeKey(c.row, c.column), c.value]),
  );
  const turned = {
    unitAt: (row: number, column: number) =>
      byPlace.get(placeKey(row, column))?.unit,
    isNumberAt: (row: number, column: number) =>
      typeof values.get(placeKey(row, column)) === "number",
  };
  const followed = (cell: Cell): string | undefined => {
    const own = byPlace.get(placeKey(cell.row, cell.column));
    if (cell.formula === undefined) return undefined;
    if (figures.length > 0 && readsElsewhere(cell.formula))
      throw new MustStay(figures, "a formula reads another sheet");
    try {
      const read = rewritten(cell.formula, turned);
      const text = own ? inMetricFormula(read, own.unit) : read;
      if (text.length > LONGEST && text !== cell.formula)
        throw new MustStay(
          own ? [own] : figures,
          "its formula would be too long for a cell",
        );
      return text;
    } catch (problem) {
      if (!(problem instanceof CannotRead)) throw problem;
      const { row, column, rows, columns } = problem.area;
      throw new MustStay(
        figures.filter(
          (f) =>
            f.row >= row &&
            f.row < row + rows &&
            f.column >= column &&
            f.column < column + columns,
        ),
        "a formula reads it in a way that cannot follow",
      );
    }
  };
  const wordsFor = unitsOfWords(sheet, figures);
  return {
    ...sheet,
    cells: sheet.cells.map((cell) => {
      const own = byPlace.get(placeKey(cell.row, cell.column));
      const formula = followed(cell);
      const unit = wordsFor.get(placeKey(cell.row, cell.column));
      return {
        ...cell,
        ...(formula === undefined ? {} : { formula }),
        ...(cell.value === undefined
          ? {}
          : {
              value: own
                ? turnedValue(cell.value, own.unit)
                : typeof cell.value === "string" &&
                    isText(cell.row, cell.column)
                  ? unit
                    ? labelInMetric(cell.value, unit)
                    : atTwenty(cell.value)
                  : cell.value,
            }),
      };
    }),
    validations: sheet.validations.map((validation) =>
      turnedRule(validation, byPlace),
    ),
  };
}

const turnedValue = (value: Stored, unit: UsUnit): Stored =>
  typeof value === "number" ? inMetric(unit, value) : value;

/** Which unit the words of a place speak of: those beside a figure, or those above its column. */
function unitsOfWords(
  { cells }: Sheet,
  figures: readonly UnitFigure[],
): ReadonlyMap<string, UsUnit> {
  const headings = new Map<number, number[]>();
  for (const { row, column, style } of cells)
    if (style?.bold && style.wrap)
      headings.set(column, [...(headings.get(column) ?? []), row]);
  const found = new Map<string, UsUnit>();
  for (const { row, column, unit, isInTable } of figures)
    if (isInTable) {
      const above = (headings.get(column) ?? []).filter((r) => r < row);
      if (above.length > 0)
        found.set(placeKey(Math.max(...above), column), unit);
    } else
      for (const cell of cells)
        if (cell.row === row) found.set(placeKey(row, cell.column), unit);
  return found;
}

function turnedRule(
  validation: Validation,
  byPlace: ReadonlyMap<string, UnitFigure>,
): Validation {
  const { area, rule, message } = validation;
  const unit = byPlace.get(placeKey(area.row, area.column))?.unit;
  const said = message === undefined ? {} : { message: atTwenty(message) };
  if (unit === undefined || rule.kind !== "number")
    return { ...validation, ...said };
  const turned = (limit: number | undefined) =>
    limit === undefined ? undefined : inMetric(unit, limit);
  const [min, max] = [turned(rule.min), turned(rule.max)];
  return {
    ...validation,
    rule: {
      kind: "number",
      ...(min === undefined ? {} : { min }),
      ...(max === undefined ? {} : { max }),
    },
    ...(message === undefined ? {} : { message: labelInMetric(message, unit) }),
  };
}
