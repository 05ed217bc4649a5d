import {
  areasReadBy,
  formulasBeside,
  meanings,
  textOf,
  type EngineKnowledge,
} from "./engine-knowledge";
import { KeptFormulas, type KeptFormula } from "./kept-formulas";
import type { ReadAreas } from "./read-areas";
import { touchedFormulas } from "./touched-formulas";

export interface Due {
  readonly book: string;
  readonly isForced: boolean;
  /** What is to be worked out whatever else comes to light. */
  readonly touched: ReadonlySet<KeptFormula>;
  readonly areas: ReadAreas<KeptFormula>;
}

/** Says which formulas of the open workbook are due, and keeps in mind what it found out about them. */
export class DueFormulas {
  readonly #knows: EngineKnowledge;
  #kept: KeptFormulas | undefined;
  #meanings = "";
  #edition = 0;

  constructor(knows: EngineKnowledge) {
    this.#knows = knows;
  }

  get edition(): number {
    return this.#edition;
  }

  /**
   * Undefined where the engine must find out by itself: where a formula says only when worked out what it reads, and
   * where something besides cells takes part.
   */
  find(isForSpilled: boolean): Due | undefined {
    const { config, features, engineMemory } = this.#knows;
    const book = config.getExecuteUnitId();
    const kept = book ? this.#upToDate(book) : undefined;
    if (
      !book ||
      !kept ||
      kept.unforeseeable > 0 ||
      features.getReferenceExecutorMap().size > 0
    ) {
      // The engine adds to its memory at each calculation what is there already; emptied, it stays as small as it is.
      engineMemory.reset();
      this.#edition += 1;
      return undefined;
    }
    const isForced = config.isForceCalculate() && !isForSpilled;
    return {
      book,
      isForced,
      touched: isForced
        ? new Set(kept.all())
        : touchedFormulas(config, book, kept),
      areas: kept.areas,
    };
  }

  /** Whether a formula just worked out has come to what its cell holds already. */
  isAsBefore(book: string, { sheet, row, column }: KeptFormula): boolean {
    const { config, runtime } = this.#knows;
    const fills = [
      config.getArrayFormulaRange(),
      runtime.getUnitArrayFormula(),
    ];
    if (fills.some((ranges) => ranges[book]?.[sheet]?.[row]?.[column]))
      return false;
    const cells = config.getUnitData()[book]?.[sheet]?.cellData;
    const before = cells?.getValue(row, column);
    const now = runtime.getUnitData()[book]?.[sheet]?.getValue(row, column);
    if (!before || !now || before.p || now.p) return false;
    return before.v === now.v && before.t === now.t;
  }

  #upToDate(book: string): KeptFormulas {
    const knows = this.#knows;
    const now = meanings(knows, book);
    if (!this.#kept || now !== this.#meanings) {
      const patterns = knows.freshPatterns();
      this.#meanings = now;
      this.#edition += 1;
      this.#kept = new KeptFormulas({
        parse: (given, beside) =>
          beside ? patterns.alone(given.f) : patterns.of(textOf(knows, given)),
        areas: (formula) => areasReadBy(knows, book, formula),
      });
    }
    const { changes } = this.#kept;
    this.#kept.takeIn(knows.config.getFormulaData()[book] ?? {});
    this.#kept.takeInBeside(formulasBeside(knows, book));
    if (this.#kept.changes !== changes) this.#edition += 1;
    return this.#kept;
  }
}
