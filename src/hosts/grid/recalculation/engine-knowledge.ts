import type { IRange } from "@univerjs/core";
import type {
  IDefinedNamesService,
  IDependencyManagerService,
  IFeatureCalculationManagerService,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  Interpreter,
  IOtherFormulaManagerService,
  ISuperTableService,
  LexerTreeBuilder,
} from "@univerjs/engine-formula";
import type { FormulaPatterns } from "./formula-patterns";
import type { Beside, GivenFormula, Unread } from "./kept-formulas";
import { around, type SheetArea } from "./read-areas";

/** The parts of the engine that know what a calculation is about. */
export interface EngineKnowledge {
  readonly config: IFormulaCurrentConfigService;
  readonly runtime: IFormulaRuntimeService;
  readonly interpreter: Interpreter;
  readonly tables: ISuperTableService;
  readonly names: IDefinedNamesService;
  readonly beside: IOtherFormulaManagerService;
  readonly features: IFeatureCalculationManagerService;
  readonly engineMemory: IDependencyManagerService;
  readonly texts: LexerTreeBuilder;
  readonly freshPatterns: () => FormulaPatterns;
}

/** Everything by which the same text may come to mean something else: names of sheets, tables, names, sizes. */
export function meanings(
  { config, tables, names }: EngineKnowledge,
  book: string,
): string {
  return JSON.stringify([
    book,
    config.getSheetNameMap()[book],
    Object.entries(config.getUnitData()[book] ?? {}).map(
      ([sheet, { rowCount, columnCount }]) => [sheet, rowCount, columnCount],
    ),
    [...(tables.getTableMap(book) ?? [])].map(([name, table]) => [
      name,
      table.sheetId,
      table.range,
      [...table.titleMap],
    ]),
    names.getDefinedNameMap(book),
  ]);
}

export const textOf = (
  { texts }: EngineKnowledge,
  { f, x = 0, y = 0 }: GivenFormula,
): string => (x === 0 && y === 0 ? f : texts.moveFormulaRefOffset(f, x, y));

export const offsetOf = ({ beside }: Pick<Unread, "beside">) => ({
  refOffsetX: beside?.x ?? 0,
  refOffsetY: beside?.y ?? 0,
});

/** The engine works out a formula from where it is told to stand. */
export function standAt(
  { config, runtime }: EngineKnowledge,
  book: string,
  { sheet, row, column, beside }: Unread,
): void {
  const size = beside ? undefined : config.getUnitData()[book]?.[sheet];
  const { rowCount = -Infinity, columnCount = -Infinity } = size ?? {};
  runtime.setCurrent(row, column, rowCount, columnCount, sheet, book);
}

/** What a formula reads, wherever it leads somewhere. */
export function areasReadBy(
  knows: EngineKnowledge,
  book: string,
  formula: Unread,
): readonly SheetArea[] {
  const { pattern, parts } = formula;
  standAt(knows, book, formula);
  pattern.turnedTo(parts);
  const found = new Map<string, SheetArea>();
  for (const nodes of pattern.reads) {
    const area = around(
      nodes.map((node) => {
        const work = { ...offsetOf(formula), node };
        const { range, sheetId } = knows.interpreter
          .execute(work)
          .toUnitRange();
        node.setValue(null);
        return areaOf(sheetId, range);
      }),
    );
    if (area) found.set(JSON.stringify(area), area);
  }
  return [...found.values()];
}

/** Formulas that stand in no cell, one for each cell they are asked for. */
export function* formulasBeside(
  { config, beside }: EngineKnowledge,
  book: string,
): Generator<{
  readonly sheet: string;
  readonly given: GivenFormula;
  readonly beside: Beside;
}> {
  const sheets = beside.getOtherFormulaData()[book] ?? {};
  for (const [sheet, formulas] of Object.entries(sheets)) {
    const size = config.getSheetRowColumnCount(book, sheet);
    for (const [id, { f, ranges }] of Object.entries(formulas ?? {})) {
      const [first] = ranges;
      if (!first) continue;
      for (const range of ranges) {
        const endRow = Math.min(range.endRow, size.rowCount - 1);
        const endColumn = Math.min(range.endColumn, size.columnCount - 1);
        for (let row = range.startRow; row <= endRow; row += 1)
          for (let c = range.startColumn; c <= endColumn; c += 1) {
            const x = c - first.startColumn;
            const y = row - first.startRow;
            yield { sheet, given: { f }, beside: { id, x, y } };
          }
      }
    }
  }
}

const lastRow = 1_048_575;
const lastColumn = 16_383;

/** The engine leaves the ends of whole rows and columns open. */
export const areaOf = (sheet: string, range: IRange): SheetArea => ({
  sheet,
  fromRow: range.startRow || 0,
  toRow: Number.isNaN(range.endRow) ? lastRow : range.endRow,
  fromColumn: range.startColumn || 0,
  toColumn: Number.isNaN(range.endColumn) ? lastColumn : range.endColumn,
});
