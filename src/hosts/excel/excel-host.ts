import { bookTables } from "../../book/book";
import { unusable } from "../../measures/cannot-answer";
import { cellAddress } from "../../sheets/address";
import type { WriteRecord } from "../../sheets/kept";
import type {
  Area,
  CellValue,
  DefinedName,
  Stored,
} from "../../sheets/workbook";
import type {
  CellFacts,
  CellPlace,
  Change,
  FormulaForCell,
  Host,
  InExcel,
  TableContents,
  Work,
} from "../host";
import { refuseOldExcel } from "./abilities";
import { applyChange, leftOver, takeBack } from "./apply-change";
import { inExcel, Reads } from "./in-excel";
import { loadKept } from "./kept-part";
import { moreInExcel } from "./more-in-excel";
import {
  loadArea,
  loadFacts,
  loadNames,
  loadSheetNames,
  loadTable,
  loadTableNames,
  refuseNoSheet,
  sheetOrNone,
} from "./read-workbook";
import { Watching, watchSelected } from "./watching";
import { typeValue, writeFormula } from "./write-cell";

/** The workbook this add-in runs in. Refuses, with a sentence, an Excel that is too old. */
export async function openExcelHost(): Promise<ExcelHost> {
  refuseOldExcel();
  const begun = await inExcel(
    async (context) => {
      const part = loadKept(context);
      await context.sync();
      return part().kept.begun;
    },
    { waitsForTyping: true },
  );
  return new ExcelHost(
    begun &&
      `${begun.says} may be half written from before: ${leftOver(begun)}`,
  );
}

/** The port over the open workbook in Excel. One reading and one write for each thing the user does. */
export class ExcelHost implements Host {
  readonly place = "Excel";
  readonly inExcel: InExcel;
  readonly #reads = new Reads();
  readonly #watching = new Watching();
  readonly #done: WriteRecord[] = [];
  #lastWrite: Promise<unknown> = Promise.resolve();

  constructor(unfinished: string | undefined) {
    this.inExcel = moreInExcel(unfinished, (work) => this.#alone(work));
  }

  /** The farm's own tables are asked for by name with the rest; only other tables take a second request. */
  async readTables(): Promise<readonly TableContents[]> {
    const [all, ...farm] = await Promise.all([
      this.#reads.read(loadTableNames),
      ...farmTables.map((name) => this.#reads.read(loadTable(name))),
    ]);
    const known = new Map(
      farm.flatMap((table) =>
        table ? [[table.name.toLowerCase(), table] as const] : [],
      ),
    );
    const others = await Promise.all(
      all
        .filter((name) => !known.has(name.toLowerCase()))
        .map((name) => this.#reads.read(loadTable(name))),
    );
    for (const table of others)
      if (table) known.set(table.name.toLowerCase(), table);
    return all.flatMap((name) => known.get(name.toLowerCase()) ?? []);
  }

  sheetNames(): Promise<readonly string[]> {
    return this.#reads.read(loadSheetNames);
  }

  readNames(): Promise<readonly DefinedName[]> {
    return this.#reads.read(loadNames);
  }

  readCell(at: CellPlace): Promise<CellFacts> {
    return this.#reads.read(loadFacts(at));
  }

  readArea(
    sheet: string,
    row: number,
    column: number,
    rows: number,
    columns: number,
  ): Promise<readonly (readonly Stored[])[]> {
    return this.#reads.read(loadArea(sheet, { row, column, rows, columns }));
  }

  setCell(at: CellPlace, value: CellValue): Promise<void> {
    return this.#alone(() => typeValue(at, value));
  }

  putFormula(at: CellPlace, put: FormulaForCell): Promise<() => Promise<void>> {
    return this.#alone(async () => {
      const putBack = await writeFormula(at, put);
      return () => this.#alone(putBack);
    });
  }

  apply(change: Change, work?: Work): Promise<void> {
    return this.#alone(async () => {
      this.#done.push(await applyChange(change, work));
    });
  }

  undo(): Promise<string | undefined> {
    return this.#alone(async () => {
      const says = await takeBack(this.#done);
      this.#done.pop();
      return says;
    });
  }

  select(at: CellPlace): Promise<void> {
    return inExcel(async (context) => {
      const sheet = sheetOrNone(context, at.sheet);
      sheet.load("name,visibility");
      await context.sync();
      refuseNoSheet(sheet, at.sheet);
      if (sheet.visibility !== "Visible")
        throw unusable(
          `the sheet "${sheet.name}" is hidden; unhide it to go to ${cellAddress(at.row, at.column)}`,
        );
      sheet.getCell(at.row, at.column).select();
      await context.sync();
    });
  }

  watchSelection(
    listener: (facts: CellFacts, selected: Area) => void,
  ): () => void {
    return watchSelected(this.#watching, listener);
  }

  /** Calls back after something was typed, or a sheet came or went; results of formulas do not count. */
  onEdit(listener: () => void): () => void {
    return this.#watching.on(["edited"], listener);
  }

  /** Ready to hear of what the user does. */
  listening(): Promise<void> {
    return this.#watching.started();
  }

  /** One write ends before the next begins, whether it went well or not. */
  #alone<T>(work: () => Promise<T>): Promise<T> {
    const next = this.#lastWrite.then(work, work);
    this.#lastWrite = next.catch(() => undefined);
    return next;
  }
}

const farmTables = Object.values(bookTables).map(({ name }) => name);
