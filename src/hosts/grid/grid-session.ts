import { IUniverInstanceService } from "@univerjs/core";
import type { Stored, Workbook } from "../../sheets/workbook";
import type { CellFacts, CellPlace } from "../host";
import { circles, type Circle } from "./circular-cells";
import type { Engine } from "./engine";
import { cureLateChecks } from "./late-checks-cure";
import { LiveBook } from "./live-book";
import { Refusals } from "./refusals";
import { Settling } from "./settling";
import { guardSpills } from "./spill-guard";
import { keepTables } from "./table-keeper";

/** An engine with the workbook that is open in it, and what there is to know about its cells. */
export class GridSession {
  readonly engine: Engine;
  readonly settling: Settling;
  readonly #refusals = new Refusals();
  #book: LiveBook;
  #circles: { readonly of: string; readonly found: readonly Circle[] } = {
    of: "",
    found: [],
  };

  constructor(start: (refusals: Refusals) => Engine, workbook: Workbook) {
    this.engine = start(this.#refusals);
    this.#book = new LiveBook(this.engine, workbook);
    this.settling = new Settling(this.engine);
    this.settling.onStart(() => this.#refusals.startRun());
    guardSpills(this.engine, this.settling, () => this.#book.id);
    cureLateChecks(this.engine);
    keepTables(this.engine, () => this.#book.id);
  }

  get book(): LiveBook {
    return this.#book;
  }

  settled(): Promise<void> {
    return this.settling.settled();
  }

  /** Calls back each time new results have settled; returns the way to stop. */
  onSettled(listener: () => void): () => void {
    let waiting = false;
    return this.settling.onApplied(() => {
      if (waiting) return;
      waiting = true;
      void this.settled().then(() => {
        waiting = false;
        listener();
      });
    });
  }

  valueAt({ sheet, row, column }: CellPlace): Stored {
    return this.#book.value(this.#book.sheet(sheet), row, column);
  }

  /** A formula that needs its own result holds whatever the engine had, so an error stands in for it. */
  facts(at: CellPlace): CellFacts {
    const sheet = this.#book.sheet(at.sheet);
    const { row, column } = at;
    const formula = this.#book.formula(sheet.getSheetId(), row, column);
    const place = { sheet: sheet.getSheetName(), row, column };
    const circle = formula === undefined ? undefined : this.#circleAt(place);
    if (formula !== undefined && circle)
      return {
        ...place,
        formula,
        value: { error: "#VALUE!" },
        refusal: circle.sentence,
      };
    const value = this.#book.value(sheet, row, column);
    const refusal = this.#refusalAt(place, formula, value);
    return {
      ...place,
      value,
      ...(formula === undefined ? {} : { formula }),
      ...(refusal === undefined ? {} : { refusal }),
    };
  }

  /** Every cell that has a sentence to say why it has no answer. */
  refusals(): readonly (CellFacts & { readonly sentence: string })[] {
    return this.#book.workbook().sheets.flatMap((sheet) =>
      sheet.cells.flatMap(({ row, column, formula }) => {
        if (formula === undefined) return [];
        const facts = this.facts({ sheet: sheet.name, row, column });
        return facts.refusal === undefined
          ? []
          : [{ ...facts, sentence: facts.refusal }];
      }),
    );
  }

  currentWorkbook(): Workbook {
    return this.#book.workbook();
  }

  async replace(workbook: Workbook): Promise<void> {
    const old = this.#book;
    this.#book = new LiveBook(this.engine, workbook);
    this.engine.univer
      .__getInjector()
      .get(IUniverInstanceService)
      .setCurrentUnitForType(this.#book.id);
    // The screen still draws the old workbook for a moment; disposing it at once breaks the drawing.
    await new Promise((resolve) => setTimeout(resolve, 250));
    // A calculation under way still asks for the old workbook when its results arrive.
    await this.settled();
    this.engine.api.disposeUnit(old.id);
    this.#refusals.forgetBook(old.id);
    await this.settled();
  }

  dispose(): void {
    this.settling.dispose();
    this.engine.univer.dispose();
  }

  /** Looking for circles takes a while in a large book, and only another formula can make one. */
  #circleAt({ sheet, row, column }: CellPlace): Circle | undefined {
    const of = `${this.#book.id} ${this.engine.formulasEdition()}`;
    if (this.#circles.of !== of)
      this.#circles = { of, found: circles(this.#book.workbook()) };
    return this.#circles.found.find(
      (circle) =>
        circle.sheet === sheet &&
        circle.row === row &&
        circle.column === column,
    );
  }

  #refusalAt(
    at: CellPlace,
    formula: string | undefined,
    value: Stored,
  ): string | undefined {
    if (typeof value !== "object" || value === null) return undefined;
    const sheet = this.#book.sheet(at.sheet);
    return this.#refusals.at(
      this.#book.place(sheet, at.row, at.column),
      formula,
      value.error,
    );
  }
}
