import type { ICellData } from "@univerjs/core";
import {
  DataValidationModel,
  UpdateDataValidationMutation,
  UpdateRuleType,
} from "@univerjs/data-validation";
import {
  FormulaDataModel,
  IDefinedNamesService,
  SetDefinedNameMutation,
} from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { SetSheetTableMutation, TableManager } from "@univerjs/sheets-table";
import type { Engine } from "./engine";
import { movedDown, renamedColumn } from "../formula-references";

/** Marks our own writes, so that what watches edits can tell them from a person's. */
export const ownTrigger = "live-tables";

export type LiveTable = NonNullable<ReturnType<TableManager["getTable"]>>;
type Cells = Record<number, Record<number, ICellData | null>>;

/** Changes the tables of one open workbook in place, beside the undo history of the person at the grid. */
export class LiveTables {
  readonly #engine: Engine;
  readonly #book: string;

  constructor(engine: Engine, book: string) {
    this.#engine = engine;
    this.#book = book;
  }

  on(sheet: string): readonly LiveTable[] {
    return this.#get(TableManager).getTablesBySubunitId(this.#book, sheet);
  }

  raw(sheet: string, row: number, column: number): ICellData | undefined {
    return (
      this.#engine.api
        .getUniverSheet(this.#book)
        ?.getSheetBySheetId(sheet)
        ?.getSheet()
        .getCellRaw(row, column) ?? undefined
    );
  }

  /** One more row at the end: the row above gives formulas and looks, and validations go on. */
  grow(table: LiveTable): void {
    const { startColumn, endColumn, endRow } = table.getRange();
    const sheet = table.getSubunitId();
    const cells: Record<number, ICellData> = {};
    for (let column = startColumn; column <= endColumn; column += 1) {
      const own = this.raw(sheet, endRow + 1, column);
      const above = this.raw(sheet, endRow, column);
      const formula = this.#formula(sheet, endRow, column);
      const blank =
        isNothing(own?.f) && isNothing(own?.si) && (own?.v ?? "") === "";
      const fresh: ICellData = {
        ...(blank && formula !== undefined
          ? { f: movedDown(formula, 1), v: null, t: null }
          : {}),
        ...(isNothing(own?.s) && above?.s !== null && above?.s !== undefined
          ? { s: above.s }
          : {}),
      };
      if (Object.keys(fresh).length > 0) cells[column] = fresh;
    }
    this.#resize(table, 1);
    this.#write(sheet, { [endRow + 1]: cells });
    this.#growValidations(table, endRow);
  }

  /** Gives up the last row, of which only formulas are left. */
  shrink(table: LiveTable): void {
    const { startColumn, endColumn, endRow } = table.getRange();
    const sheet = table.getSubunitId();
    const cells: Record<number, null> = {};
    for (let column = startColumn; column <= endColumn; column += 1)
      cells[column] = null;
    this.#resize(table, -1);
    this.#write(sheet, { [endRow]: cells });
  }

  /** A heading typed over takes its references in formulas and names along. */
  rename(table: LiveTable, index: number, heading: string): void {
    const column = table.getTableColumnByIndex(index);
    if (!column) return;
    const before = column.getDisplayName();
    const renamed = (formula: string): string =>
      renamedColumn(formula, table.getDisplayName(), before, heading);
    column.displayName = heading;
    this.#resize(table, 0);
    this.#renameInColumns(renamed);
    this.#renameInFormulas(renamed);
    this.#renameInNames(renamed);
  }

  restoreHeading(table: LiveTable, index: number): void {
    const { startRow, startColumn } = table.getRange();
    this.#write(table.getSubunitId(), {
      [startRow]: {
        [startColumn + index]: {
          v: table.getColumnNameByIndex(index),
          f: null,
          si: null,
          p: null,
        },
      },
    });
  }

  #renameInColumns(renamed: (formula: string) => string): void {
    const manager = this.#get(TableManager);
    for (const { id } of manager.getTableList(this.#book)) {
      const table = manager.getTable(this.#book, id);
      for (let i = 0; table && i < table.getColumnsCount(); i += 1) {
        const column = table.getTableColumnByIndex(i);
        if (column) column.formula = renamed(column.formula);
      }
    }
  }

  #renameInFormulas(renamed: (formula: string) => string): void {
    const sheets = this.#get(FormulaDataModel).getFormulaData()[this.#book];
    for (const [sheet, rows] of Object.entries(sheets ?? {})) {
      const cells: Cells = {};
      for (const [row, columns] of Object.entries(rows ?? {}))
        for (const column of Object.keys(columns ?? {})) {
          const before = this.#formula(sheet, Number(row), Number(column));
          const after = before === undefined ? before : renamed(before);
          if (after !== undefined && after !== before)
            (cells[Number(row)] ??= {})[Number(column)] = {
              f: after,
              si: null,
            };
        }
      if (Object.keys(cells).length > 0) this.#write(sheet, cells);
    }
  }

  #renameInNames(renamed: (formula: string) => string): void {
    const names = this.#get(IDefinedNamesService).getDefinedNameMap(this.#book);
    for (const name of Object.values(names ?? {})) {
      const after = renamed(name.formulaOrRefString);
      if (after !== name.formulaOrRefString)
        this.#run(SetDefinedNameMutation.id, {
          ...name,
          unitId: this.#book,
          formulaOrRefString: after,
        });
    }
  }

  #growValidations(table: LiveTable, endRow: number): void {
    const { startRow, startColumn, endColumn } = table.getRange();
    const sheet = table.getSubunitId();
    const rules = this.#get(DataValidationModel).getRules(this.#book, sheet);
    for (const rule of rules) {
      const ranges = rule.ranges as readonly {
        readonly startRow: number;
        readonly endRow: number;
        readonly startColumn: number;
        readonly endColumn: number;
      }[];
      const grown = ranges.map((range) =>
        range.endRow === endRow &&
        range.startRow > startRow &&
        range.startColumn >= startColumn &&
        range.endColumn <= endColumn
          ? { ...range, endRow: endRow + 1 }
          : range,
      );
      if (grown.some((range, i) => range !== ranges[i]))
        this.#run(UpdateDataValidationMutation.id, {
          unitId: this.#book,
          subUnitId: sheet,
          ruleId: rule.uid,
          payload: { type: UpdateRuleType.RANGE, payload: grown },
        });
    }
  }

  /** With no rows at all this only makes the engine read the headings anew. */
  #resize(table: LiveTable, rows: number): void {
    const range = table.getRange();
    this.#run(SetSheetTableMutation.id, {
      unitId: this.#book,
      subUnitId: table.getSubunitId(),
      tableId: table.getId(),
      config: {
        updateRange: { newRange: { ...range, endRow: range.endRow + rows } },
      },
    });
  }

  #write(sheet: string, cellValue: Cells): void {
    this.#run(SetRangeValuesMutation.id, {
      unitId: this.#book,
      subUnitId: sheet,
      cellValue,
      trigger: ownTrigger,
    });
  }

  #formula(sheet: string, row: number, column: number): string | undefined {
    return (
      this.#get(FormulaDataModel).getFormulaStringByCell(
        row,
        column,
        sheet,
        this.#book,
      ) ?? undefined
    );
  }

  #run(id: string, params: object): void {
    this.#engine.api.syncExecuteCommand(id, params);
  }

  get #get() {
    const injector = this.#engine.univer.__getInjector();
    return injector.get.bind(injector);
  }
}

const isNothing = (value: unknown): boolean =>
  value === null || value === undefined;
