import { asSentence } from "./excel-errors";

/**
 * One piece of work on the open workbook. Every `context.sync()` inside is one request. Whatever Excel refuses comes
 * out as a sentence.
 */
export async function inExcel<T>(
  work: (context: Excel.RequestContext) => Promise<T>,
  how: { readonly waitsForTyping?: boolean } = {},
): Promise<T> {
  try {
    return await Excel.run(
      // A reading may wait until the person has left the cell they are in; a write is refused with a sentence instead.
      { delayForCellEdit: how.waitsForTyping === true },
      work,
    );
  } catch (problem) {
    throw asSentence(problem);
  }
}

/** Readings asked for in the same moment travel in one request. */
export class Reads {
  #waiting: Waiting[] = [];

  read<T>(load: Load<T>): Promise<T> {
    return new Promise<T>((resolve, reject) => {
      if (this.#waiting.length === 0) queueMicrotask(() => void this.#send());
      this.#waiting.push({
        load: (context) => {
          const take = load(context);
          return () => settle(take, resolve, reject);
        },
        reject,
      });
    });
  }

  async #send(): Promise<void> {
    const waiting = this.#waiting;
    this.#waiting = [];
    try {
      await together(waiting);
    } catch (problem) {
      // One wrong question must not take the others with it.
      if (waiting.length === 1) waiting[0]?.reject(problem);
      else
        for (const one of waiting)
          await together([one]).catch((own: unknown) => one.reject(own));
    }
  }
}

/** Asks for what is needed and gives the way to take it once the answer is there. */
export type Load<T> = (context: Excel.RequestContext) => () => T;

interface Waiting {
  readonly load: Load<void>;
  readonly reject: (problem: unknown) => void;
}

const together = (waiting: readonly Waiting[]): Promise<void> =>
  inExcel(
    async (context) => {
      const takes = waiting.map(({ load }) => load(context));
      await context.sync();
      for (const take of takes) take();
    },
    { waitsForTyping: true },
  );

function settle<T>(
  take: () => T,
  resolve: (answer: T) => void,
  reject: (problem: unknown) => void,
): void {
  try {
    resolve(take());
  } catch (problem) {
    reject(asSentence(problem));
  }
}
