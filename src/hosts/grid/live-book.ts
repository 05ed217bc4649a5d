import { FormulaDataModel } from "@univerjs/engine-formula";
import type { FWorkbook, FWorksheet } from "@univerjs/sheets/facade";
import { unusable } from "../../measures/cannot-answer";
import { withSpilled } from "../../sheets/spilled-cells";
import type { Area, Sheet, Stored, Workbook } from "../../sheets/workbook";
import type { Engine } from "./engine";
import type { EnginePlace } from "./refusals";
import { snapshotOf } from "./snapshot";
import { spillsOn } from "./spills";
import { valueFromGrid } from "./stored-value";
import { workbookOf } from "./workbook-of";

let opened = 0;

/** One workbook open in an engine, read with full precision. */
export class LiveBook {
  readonly #facade: FWorkbook;
  readonly #formulas: FormulaDataModel;

  constructor(engine: Engine, workbook: Workbook) {
    opened += 1;
    this.#facade = engine.api.createWorkbook(
      snapshotOf(workbook, `book-${opened}`),
    );
    this.#formulas = engine.univer.__getInjector().get(FormulaDataModel);
  }

  get facade(): FWorkbook {
    return this.#facade;
  }

  get id(): string {
    return this.#facade.getId();
  }

  sheetNames(): readonly string[] {
    return this.#facade.getSheets().map((sheet) => sheet.getSheetName());
  }

  sheet(name: string): FWorksheet {
    const found = this.#facade.getSheetByName(name);
    if (!found) throw unusable(`there is no sheet "${name}"`);
    return found;
  }

  place(sheet: FWorksheet, row: number, column: number): EnginePlace {
    return { book: this.id, sheet: sheet.getSheetId(), row, column };
  }

  /** A spilled answer is kept by its anchor, not by the cells it fills. */
  value(sheet: FWorksheet, row: number, column: number): Stored {
    const own = valueFromGrid(sheet.getSheet().getCellRaw(row, column));
    if (own !== null) return own;
    const spilled = this.#formulas.getArrayFormulaCellData();
    return valueFromGrid(
      spilled[this.id]?.[sheet.getSheetId()]?.[row]?.[column] ?? null,
    );
  }

  formula(sheetId: string, row: number, column: number): string | undefined {
    return (
      this.#formulas.getFormulaStringByCell(row, column, sheetId, this.id) ??
      undefined
    );
  }

  /** Where answers on a sheet fill more than their formula's cell; one that finds no room fills nothing. */
  spills(sheet: FWorksheet): readonly Area[] {
    return spillsOn(this.#formulas, this.id, sheet.getSheetId()).filter(
      ({ row, column }) => {
        const value = this.value(sheet, row, column);
        return !(typeof value === "object" && value?.error === "#SPILL!");
      },
    );
  }

  workbook(): Workbook {
    const typed = workbookOf(this.#facade.save(), (sheetId, row, column) =>
      this.formula(sheetId, row, column),
    );
    return {
      ...typed,
      sheets: typed.sheets.map((sheet) => this.withSpilled(sheet)),
    };
  }

  withSpilled(sheet: Sheet): Sheet {
    const live = this.sheet(sheet.name);
    return {
      ...sheet,
      cells: withSpilled(sheet.cells, this.spills(live), (row, column) =>
        this.value(live, row, column),
      ),
    };
  }
}
