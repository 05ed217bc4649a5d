import { ICommandService, type IDisposable } from "@univerjs/core";
import {
  IActiveDirtyManagerService,
  SetFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import type { Engine } from "./engine";

/** The engine waits 100 ms after an edit before it starts; after this long without a start, none will come. */
const startsWithin = 250;
const quietFor = 60;
/** A large book takes its time, but shows signs of it. */
const longestWithoutSign = 120_000;

/**
 * Made once the first workbook is open, for only then do the engine's services run.
 * Knows when every cell holds its final value. The engine's own promise may resolve before a long calculation has
 * begun, so this watches edits, starts and applied results itself.
 */
export class Settling {
  readonly #engine: Engine;
  readonly #watches: IDisposable[] = [];
  readonly #applied = new Set<() => void>();
  readonly #starting = new Set<() => void>();
  #awaitsStart: ReturnType<typeof setTimeout> | undefined;
  #busy = false;
  #lastSign = 0;

  constructor(engine: Engine) {
    this.#engine = engine;
    const injector = engine.univer.__getInjector();
    const commands = injector.get(ICommandService);
    const dirtying = injector.get(IActiveDirtyManagerService);
    const session = injector.get(FormulaCalculationSessionService);
    const states = session.state$.subscribe((state) => {
      this.#lastSign = performance.now();
      this.#busy =
        state.started &&
        !state.stopped &&
        !(state.completed && state.resultApplied);
    });
    const results = session.resultApplied$.subscribe(() => {
      for (const listener of [...this.#applied]) listener();
    });
    this.#watches.push(
      { dispose: () => states.unsubscribe() },
      { dispose: () => results.unsubscribe() },
      commands.beforeCommandExecuted((command) => {
        if (command.id === SetFormulaCalculationStartMutation.id)
          for (const listener of this.#starting) listener();
      }),
      commands.onCommandExecuted((command, options) => {
        if (command.id === SetFormulaCalculationStartMutation.id)
          this.#started();
        else if (
          options?.onlyLocal !== true &&
          dirtying.get(command.id) !== undefined
        )
          this.#expectStart();
      }),
    );
    // Opening a workbook calculates it, and may have asked for that before we watched.
    this.#expectStart();
  }

  /** Runs before a calculation works out anything. */
  onStart(listener: () => void): void {
    this.#starting.add(listener);
  }

  /** Runs after results have reached the cells, before `settled` resolves; returns the way to stop. */
  onApplied(listener: () => void): () => void {
    this.#applied.add(listener);
    return () => this.#applied.delete(listener);
  }

  calculateAll(): void {
    this.#expectStart();
    this.#engine.api.getFormula().executeCalculation();
  }

  settled(): Promise<void> {
    const since = performance.now();
    return new Promise((resolve, reject) => {
      const look = (): void => {
        const now = performance.now();
        if (now - Math.max(since, this.#lastSign) > longestWithoutSign)
          reject(new Error("the calculation did not come to an end"));
        else if (
          !this.#busy &&
          this.#awaitsStart === undefined &&
          now - this.#lastSign >= quietFor
        )
          resolve();
        else setTimeout(look, 10);
      };
      look();
    });
  }

  dispose(): void {
    clearTimeout(this.#awaitsStart);
    for (const watch of this.#watches) watch.dispose();
  }

  #expectStart(): void {
    this.#lastSign = performance.now();
    clearTimeout(this.#awaitsStart);
    // Timers fire in order of their time, so a blocked thread delays the engine's own start and this alike.
    this.#awaitsStart = setTimeout(() => {
      this.#awaitsStart = undefined;
    }, startsWithin);
  }

  #started(): void {
    this.#lastSign = performance.now();
    clearTimeout(this.#awaitsStart);
    this.#awaitsStart = undefined;
  }
}
