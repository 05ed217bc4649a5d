import { requestImmediateMacroTask } from "@univerjs/core";
import {
  CalculateFormulaService,
  FormulaExecuteStageType as Stage,
  type IAllRuntimeData,
} from "@univerjs/engine-formula";
import type { Due, DueFormulas } from "./due-formulas";
import { offsetOf, standAt, type EngineKnowledge } from "./engine-knowledge";
import type { KeptFormula } from "./kept-formulas";
import { runningOrder } from "./running-order";

type Services = ConstructorParameters<typeof CalculateFormulaService>;

/** So many formulas are worked out before others on the page have their turn. */
const atOnce = 500;

/**
 * The engine's calculation with a memory. The engine (0.25.1) parses every formula and searches what it reads anew at
 * each edit; here both are kept, and where a result is what it was before, what reads it is left alone.
 */
export class KeptCalculation extends CalculateFormulaService {
  readonly #knows: EngineKnowledge;
  readonly #due: DueFormulas;

  constructor(knows: EngineKnowledge, due: DueFormulas, services: Services) {
    super(...services);
    this.#knows = knows;
    this.#due = due;
  }

  /** Goes up whenever formulas have changed, or may have. */
  get edition(): number {
    return this.#due.edition;
  }

  protected override async _apply(
    isForSpilled = false,
  ): Promise<IAllRuntimeData | undefined> {
    const due = this._isCalculateTreeModel
      ? undefined
      : this.#due.find(isForSpilled);
    if (!due) return super._apply(isForSpilled);
    const runtime = this._runtimeService;
    const { formulas, isCircular } = runningOrder(due.touched, due.areas);
    if (isCircular) runtime.enableCycleDependency();
    runtime.clearArrayObjectCache();
    this.#start(isForSpilled, formulas.length);
    const needed = new Needed(due, isCircular || isForSpilled);
    let done = 0;
    for (const formula of formulas) {
      if (!needed.has(formula)) continue;
      if (done % atOnce === 0 && !(await this.#goesOn(isForSpilled, done)))
        return undefined;
      done += 1;
      await this.#workOut(due.book, formula);
      if (formula.beside || this.#due.isAsBefore(due.book, formula)) continue;
      needed.addReadersOf(formula);
    }
    if (done > 0) runtime.markedAsSuccessfullyExecuted();
    else if (!isForSpilled) runtime.markedAsNoFunctionsExecuted();
    return runtime.getAllRuntimeData();
  }

  #start(isForSpilled: boolean, count: number): void {
    const runtime = this._runtimeService;
    if (isForSpilled) {
      runtime.setFormulaExecuteStage(Stage.START_CALCULATION_ARRAY_FORMULA);
      runtime.setTotalArrayFormulasToCalculate(count);
    } else {
      runtime.setFormulaExecuteStage(Stage.START_CALCULATION);
      runtime.setTotalFormulasToCalculate(count);
    }
    this._executionInProgressListener$.next(runtime.getRuntimeState());
  }

  async #goesOn(isForSpilled: boolean, done: number): Promise<boolean> {
    const runtime = this._runtimeService;
    let letGo: (() => void) | undefined;
    await new Promise<void>((resolve) => {
      letGo = requestImmediateMacroTask(() => resolve());
    });
    // What is waited with keeps a process alive until it is told that the wait is over.
    letGo?.();
    if (isForSpilled) {
      runtime.setFormulaExecuteStage(Stage.CURRENTLY_CALCULATING_ARRAY_FORMULA);
      runtime.setCompletedArrayFormulasCount(done + 1);
    } else {
      runtime.setFormulaExecuteStage(Stage.CURRENTLY_CALCULATING);
      runtime.setCompletedFormulasCount(done + 1);
    }
    this._executionInProgressListener$.next(runtime.getRuntimeState());
    if (!runtime.isStopExecution()) return true;
    runtime.setFormulaExecuteStage(Stage.IDLE);
    runtime.markedAsStopFunctionsExecuted();
    this._executionCompleteListener$.next(runtime.getAllRuntimeData());
    return false;
  }

  async #workOut(book: string, formula: KeptFormula): Promise<void> {
    const { pattern, parts, beside } = formula;
    standAt(this.#knows, book, formula);
    const node = pattern.turnedTo(parts);
    const work = { ...offsetOf(formula), node };
    const value = pattern.isAsync
      ? await this._interpreter.executeAsync(work)
      : this._interpreter.execute(work);
    const runtime = this._runtimeService;
    if (beside)
      runtime.setRuntimeOtherData(beside.id, beside.x, beside.y, value);
    else runtime.setRuntimeData(value);
    node.resetCalculationState();
  }
}

/** What is touched, and then what reads a cell that has come to something else. */
class Needed {
  readonly #due: Due;
  readonly #isAll: boolean;
  readonly #formulas: Set<KeptFormula>;
  readonly #areas = new Set<unknown>();

  constructor(due: Due, isAll: boolean) {
    this.#due = due;
    this.#isAll = isAll || due.isForced;
    this.#formulas = new Set(due.touched);
  }

  has(formula: KeptFormula): boolean {
    return this.#isAll || this.#formulas.has(formula);
  }

  addReadersOf({ sheet, row, column }: KeptFormula): void {
    if (this.#isAll) return;
    for (const area of this.#due.areas.at(sheet, row, column)) {
      if (this.#areas.has(area)) continue;
      this.#areas.add(area);
      for (const reader of area.readers) this.#formulas.add(reader);
    }
  }
}
