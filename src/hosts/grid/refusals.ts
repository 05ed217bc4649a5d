/** Where a formula stands inside the engine, by the engine's own ids. */
export interface EnginePlace {
  readonly book: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

interface Refusal {
  readonly sentence: string;
  readonly code: string;
  readonly formula: string;
  readonly run: number;
}

/**
 * The sentences our functions gave, by cell. The engine keeps only an error's code, and tells nobody when a refused
 * formula is later replaced; so a sentence counts only while the cell still holds that formula and that error.
 */
export class Refusals {
  readonly #kept = new Map<string, Refusal>();
  #run = 0;

  startRun(): void {
    this.#run += 1;
  }

  /** A function gave its own sentence. */
  remember(
    at: EnginePlace,
    code: string,
    sentence: string,
    formula: string,
  ): void {
    this.#kept.set(key(at), { sentence, code, formula, run: this.#run });
  }

  /** A function only handed on an error; a sentence of the same calculation is nearer to the cause. */
  rememberEcho(
    at: EnginePlace,
    code: string,
    sentence: string,
    formula: string,
  ): void {
    if (this.#kept.get(key(at))?.run !== this.#run)
      this.remember(at, code, sentence, formula);
  }

  /** A function calculated well there, so what an earlier calculation said no longer holds. */
  forget(at: EnginePlace): void {
    const earlier = this.#kept.get(key(at));
    if (earlier && earlier.run !== this.#run) this.#kept.delete(key(at));
  }

  at(
    at: EnginePlace,
    formula: string | undefined,
    code: string,
  ): string | undefined {
    const refusal = this.#kept.get(key(at));
    return refusal?.formula === formula && refusal?.code === code
      ? refusal.sentence
      : undefined;
  }

  forgetBook(book: string): void {
    for (const kept of [...this.#kept.keys()])
      if (kept.startsWith(`${book}!`)) this.#kept.delete(kept);
  }
}

const key = (at: EnginePlace): string =>
  `${at.book}!${at.sheet}!${at.row},${at.column}`;
