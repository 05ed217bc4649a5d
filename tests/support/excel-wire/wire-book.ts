import { areasOf } from "./addresses";
import type { Area } from "../../../src/sheets/workbook";
import type { BookState, SheetState } from "./book-state";
import { newSheet } from "./book-state";
import { formatObject } from "./format-objects";
import { customXmlObjects } from "./custom-xml-objects";
import { nameObjects } from "./name-objects";
import { enterCell, rangeObject } from "./range-objects";
import { sheetObject } from "./sheet-object";
import { tableCollection } from "./table-objects";
import { validationObject } from "./validation-object";
import { Wire } from "./wire";
import {
  badArgument,
  notFound,
  WireError,
  type WireObject,
} from "./wire-object";

/** The library's own numbers for the events of a workbook. */
const events = {
  changed: 10,
  activated: 11,
  added: 12,
  deleted: 13,
  selectionChanged: 14,
  calculated: 16,
} as const;

/** A workbook in memory that the client library talks to, and the person who sits before it. */
export class WireBook {
  readonly wire: Wire;
  readonly state: BookState;
  readonly #listened = new Set<keyof typeof events>();

  constructor(state: BookState) {
    this.state = state;
    this.wire = new Wire(
      () => this.#workbook(),
      () => this.#afterRequest(),
    );
  }

  sheet(name: string): SheetState {
    const found = this.sheetOrNone(name);
    if (!found) throw notFound(name);
    return found;
  }

  sheetOrNone(name: string): SheetState | undefined {
    return this.state.sheets.find(
      (sheet) => sheet.name.toLowerCase() === name.toLowerCase(),
    );
  }

  sheetObject(sheet: SheetState): WireObject {
    return sheetObject(this, sheet);
  }

  areasObject(sheet: SheetState, areas: readonly Area[]): WireObject {
    return {
      kind: "RangeAreas",
      get: { AreaCount: () => areas.length },
      open: {
        Format: () => formatObject(sheet, areas),
        DataValidation: () => validationObject(sheet, areas),
        Areas: () => ({
          kind: "RangeCollection",
          items: () => areas.map((area) => rangeObject(this, sheet, area)),
        }),
      },
    };
  }

  /** As a person selects cells, on the sheet in front or by going to another. */
  select(name: string, area: Area): void {
    const sheet = this.sheet(name);
    const isOther = this.state.active !== sheet.name;
    this.state.active = sheet.name;
    this.state.selected = { sheet: sheet.name, area };
    if (isOther) this.raise("activated", { worksheetId: sheet.id });
    else this.raise("selectionChanged", { worksheetId: sheet.id });
  }

  /** As a person types into a cell. */
  type(name: string, row: number, column: number, value: unknown): void {
    const sheet = this.sheet(name);
    enterCell(this.state, sheet, row, column, value);
    this.#afterRequest();
  }

  raise(event: keyof typeof events, argument: object): void {
    if (this.#listened.has(event)) this.wire.raise(events[event], argument);
  }

  addSheet(name: string): SheetState {
    if (this.state.isProtected)
      throw new WireError("AccessDenied", "The workbook is protected");
    if (this.sheetOrNone(name))
      throw new WireError("ItemAlreadyExists", "A sheet has this name");
    if (name.length > 31 || /[\\/?*[\]:]/.test(name))
      throw badArgument("the name of a sheet");
    const sheet = newSheet(`sheet-${this.state.nextId}`, name);
    this.state.nextId += 1;
    this.state.sheets.push(sheet);
    return sheet;
  }

  deleteSheet(sheet: SheetState): void {
    const { sheets } = this.state;
    if (sheets.length === 1)
      throw new WireError("InvalidOperation", "The last sheet has to stay");
    sheets.splice(sheets.indexOf(sheet), 1);
    if (this.state.active === sheet.name) {
      this.state.active = sheets[0]?.name ?? "";
      this.state.selected = {
        sheet: this.state.active,
        area: { row: 0, column: 0, rows: 1, columns: 1 },
      };
    }
  }

  #afterRequest(): void {
    this.#recalculate();
    const { touched } = this.state;
    // Excel tells of what an add-in changed as of what a person changed.
    for (const worksheetId of touched)
      queueMicrotask(() => this.raise("changed", { worksheetId }));
    touched.clear();
  }

  /** After each request the formulas have the results the test gave for them. */
  #recalculate(): void {
    for (const sheet of this.state.sheets)
      for (const [key, cell] of sheet.cells) {
        if (cell.formula === undefined) continue;
        const [row = 0, column = 0] = key.split(",").map(Number);
        const value = this.state.result(sheet.name, row, column, cell.formula);
        if (value !== undefined && value !== cell.value)
          sheet.cells.set(key, { ...cell, value });
      }
  }

  #workbook(): WireObject {
    const { state } = this;
    return {
      kind: "Workbook",
      open: {
        Application: () => this.#application(),
        Worksheets: () => this.#worksheets(),
        Tables: () => tableCollection(this, state.sheets),
        Names: () => nameObjects(this),
        CustomXmlParts: () => customXmlObjects(state),
        Protection: () => ({
          kind: "WorkbookProtection",
          get: { Protected: () => state.isProtected },
        }),
        GetSelectedRanges: () =>
          this.areasObject(this.sheet(state.selected.sheet), [
            state.selected.area,
          ]),
        GetActiveCell: () =>
          rangeObject(this, this.sheet(state.selected.sheet), {
            ...state.selected.area,
            rows: 1,
            columns: 1,
          }),
      },
      call: {
        InsertWorksheetsFromBase64: (file: string) =>
          Buffer.from(file, "base64")
            .toString("utf8")
            .split("\n")
            .map((name) => {
              const free = this.sheetOrNone(name) ? `${name} (2)` : name;
              return this.addSheet(free).id;
            }),
      },
    };
  }

  #application(): WireObject {
    const { state } = this;
    return {
      kind: "Application",
      get: {
        CalculationState: () => state.calculationState,
        CalculationMode: () => state.calculationMode,
      },
      call: {
        SuspendApiCalculationUntilNextSync: () => {
          state.held.calculation += 1;
        },
        SuspendScreenUpdatingUntilNextSync: () => {
          state.held.screen += 1;
        },
      },
      open: {
        CreateWorkbook: (file: string) => ({
          kind: "WorkbookCreated",
          get: { Id: () => "created" },
          call: { Open: () => void state.opened.push(file) },
        }),
      },
    };
  }

  #worksheets(): WireObject {
    const { sheets } = this.state;
    const listen = (event: keyof typeof events) => () =>
      void this.#listened.add(event);
    const forget = (event: keyof typeof events) => () =>
      void this.#listened.delete(event);
    const byId = (key: string): SheetState | undefined =>
      sheets.find(({ id }) => id === key) ?? this.sheetOrNone(key);
    return {
      kind: "WorksheetCollection",
      items: () => sheets.map((sheet) => this.sheetObject(sheet)),
      open: {
        Add: (name: string) => this.sheetObject(this.addSheet(name)),
        "[]": (key: string) => {
          const found = byId(key);
          if (!found) throw notFound(key);
          return this.sheetObject(found);
        },
        GetItemOrNullObject: (key: string) => {
          const found = byId(key);
          return found ? this.sheetObject(found) : null;
        },
        GetActiveWorksheet: () =>
          this.sheetObject(this.sheet(this.state.active)),
      },
      call: {
        _RegisterDataChangedEvent: listen("changed"),
        _UnregisterDataChangedEvent: forget("changed"),
        _RegisterActivatedEvent: listen("activated"),
        _UnregisterActivatedEvent: forget("activated"),
        _RegisterAddedEvent: listen("added"),
        _UnregisterAddedEvent: forget("added"),
        _RegisterDeletedEvent: listen("deleted"),
        _UnregisterDeletedEvent: forget("deleted"),
        _RegisterSelectionChangedEvent: listen("selectionChanged"),
        _UnregisterSelectionChangedEvent: forget("selectionChanged"),
        _RegisterCalculatedEvent: listen("calculated"),
        _UnregisterCalculatedEvent: forget("calculated"),
      },
    };
  }
}

export const wholeSheet = areasOf("A:XFD")[0] ?? {
  row: 0,
  column: 0,
  rows: 1,
  columns: 1,
};
