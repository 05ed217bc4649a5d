import type { IFormulaCurrentConfigService } from "@univerjs/engine-formula";
import { areaOf } from "./engine-knowledge";
import type { KeptFormula, KeptFormulas } from "./kept-formulas";
import { holds, isOneCell, type ReadArea } from "./read-areas";

/** The formulas an edit touches without a calculation between: its own cells, what reads them, what always changes. */
export function touchedFormulas(
  config: IFormulaCurrentConfigService,
  book: string,
  kept: KeptFormulas,
): ReadonlySet<KeptFormula> {
  const found = new Set<KeptFormula>();
  const left = new LeftOut(config, book);
  for (const { unitId, sheetId, range } of config.getDirtyRanges()) {
    if (unitId !== book) continue;
    const area = areaOf(sheetId, range);
    for (const formula of kept.in(area))
      if (!left.holds(formula)) found.add(formula);
    const read = isOneCell(area)
      ? kept.areas.at(area.sheet, area.fromRow, area.fromColumn)
      : kept.areas.touching(area);
    for (const { readers } of read)
      for (const formula of readers)
        if (!left.isReadBy(formula)) found.add(formula);
  }
  const changedAnyway = changes(config, book);
  for (const formula of kept.all())
    if (formula.pattern.isVolatile || changedAnyway?.(formula))
      found.add(formula);
  return found;
}

/** Cells that fill others and were worked out in the first part of the same calculation. */
class LeftOut {
  readonly #cells: ReturnType<IFormulaCurrentConfigService["getExcludedRange"]>;
  readonly #book: string;

  constructor(config: IFormulaCurrentConfigService, book: string) {
    this.#cells = config.isForceCalculate() ? null : config.getExcludedRange();
    this.#book = book;
  }

  holds({ sheet, row, column }: KeptFormula): boolean {
    return Boolean(this.#on(sheet)?.getValue(row, column));
  }

  isReadBy(formula: KeptFormula): boolean {
    return Boolean(this.#cells) && formula.reads.some((read) => this.#in(read));
  }

  #in({ area }: ReadArea<KeptFormula>): boolean {
    let found = false;
    this.#on(area.sheet)?.forValue((row, column) => {
      found ||= holds(area, row, column);
    });
    return found;
  }

  #on(sheet: string) {
    return this.#cells?.[this.#book]?.[sheet];
  }
}

/** Undefined where nothing but cells has changed, which is nearly always. */
function changes(
  config: IFormulaCurrentConfigService,
  book: string,
): ((formula: KeptFormula) => boolean) | undefined {
  const sheets = Object.keys(config.getDirtyNameMap()[book] ?? {});
  const names = Object.keys(config.getDirtyDefinedNameMap()[book] ?? {});
  const beside = config.getDirtyUnitOtherFormulaMap()[book];
  if (sheets.length === 0 && names.length === 0 && !beside) return undefined;
  return (formula) =>
    sheets.includes(formula.sheet) ||
    formula.reads.some(({ area }) => sheets.includes(area.sheet)) ||
    formula.pattern.names.some((name) => names.includes(name)) ||
    (formula.beside !== undefined &&
      beside?.[formula.sheet]?.[formula.beside.id] !== undefined);
}
