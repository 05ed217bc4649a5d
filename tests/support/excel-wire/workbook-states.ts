import { columnPoints } from "../../../src/hosts/excel/render-layout";
import type {
  Cell,
  CellStyle,
  Sheet,
  Stored,
  Validation,
  Workbook,
} from "../../../src/sheets/workbook";
import {
  emptyBook,
  newSheet,
  placeKey,
  type BookState,
  type CellState,
  type SheetState,
  type ValidationState,
} from "./book-state";

/** The workbook as somebody had it open in Excel, with the results it was calculated to. */
export function stateOf(workbook: Workbook): BookState {
  const state = emptyBook(resultsOf(workbook));
  state.sheets.splice(
    0,
    1,
    ...workbook.sheets.map((sheet, i) => sheetState(sheet, `sheet-${i + 1}`)),
  );
  state.nextId = workbook.sheets.length + 1;
  state.names.push(
    ...workbook.names.map(({ name, refersTo }) => ({
      name,
      formula: `=${refersTo}`,
    })),
  );
  state.active = workbook.sheets[0]?.name ?? "";
  state.selected = { ...state.selected, sheet: state.active };
  return state;
}

/** Results by place, from a workbook that was calculated elsewhere; the formula has to be the same. */
export function resultsOf(
  ...workbooks: readonly Workbook[]
): BookState["result"] {
  const known = new Map<string, Stored>();
  for (const { sheets } of workbooks)
    for (const { name, cells } of sheets)
      for (const { row, column, formula, value } of cells)
        if (formula !== undefined)
          known.set(`${name}!${row},${column}:${formula}`, value ?? null);
  return (sheet, row, column, formula) =>
    known.get(`${sheet}!${row},${column}:${formula}`);
}

function sheetState(sheet: Sheet, id: string): SheetState {
  const state = newSheet(id, sheet.name);
  for (const { row, column, style, value, formula, note } of sheet.cells) {
    const cell: CellState = {
      value: value ?? null,
      ...(formula === undefined ? {} : { formula }),
      ...(note === undefined ? {} : { note }),
      ...(style ? stateOfStyle(style) : {}),
    };
    if (cell.value !== null || Object.keys(cell).length > 1)
      state.cells.set(placeKey(row, column), cell);
  }
  state.tables.push(
    ...sheet.tables.map(({ name, area }) => ({
      name,
      area,
      style: "TableStyleLight1",
      isFiltered: false,
      showHeaders: true,
      showTotals: false,
    })),
  );
  state.merges = [...sheet.merges];
  for (const [column, width] of Object.entries(sheet.widths))
    state.widths.set(Number(column), columnPoints(width));
  for (const [row, height] of Object.entries(sheet.heights))
    state.heights.set(Number(row), height);
  state.frozen = { ...sheet.frozen };
  state.visibility = sheet.hidden ? "Hidden" : "Visible";
  state.tabColor = sheet.tabColor ?? "";
  state.validations = sheet.validations.map((validation) => ({
    area: validation.area,
    rule: { asModelled: validation.rule },
    ...(validation.message === undefined
      ? {}
      : { prompt: { message: validation.message } }),
    errorAlert: { style: validation.strict ? "Stop" : "Warning" },
  }));
  return state;
}

/** The workbook behind the wire as the model has it, cells row by row. What the model cannot hold is left out. */
export const workbookOf = (state: BookState): Workbook => ({
  title: "",
  names: state.names.map(({ name, formula }) => ({
    name,
    refersTo: formula.slice(1),
  })),
  sheets: state.sheets.map(sheetOf),
});

function sheetOf(state: SheetState): Sheet {
  const cells = [...state.cells]
    .map(([key, cell]) => {
      const [row = 0, column = 0] = key.split(",").map(Number);
      return cellOf(row, column, cell);
    })
    .sort((a, b) => a.row - b.row || a.column - b.column);
  return {
    name: state.name,
    cells,
    tables: state.tables.map(({ name, area }) => ({
      name,
      area,
      columns: Array.from({ length: area.columns }, (_, c) => ({
        heading: String(
          state.cells.get(placeKey(area.row, area.column + c))?.value,
        ),
      })),
    })),
    validations: state.validations.map(validationOf),
    merges: state.merges,
    widths: Object.fromEntries(
      [...state.widths].map(([column, points]) => [
        column,
        Math.round(((points / 0.75 - 5) / 7) * 1e4) / 1e4,
      ]),
    ),
    heights: Object.fromEntries(state.heights),
    frozen: state.frozen,
    ...(state.visibility === "Visible" ? {} : { hidden: true }),
    ...(state.tabColor === "" ? {} : { tabColor: state.tabColor }),
  };
}

function cellOf(row: number, column: number, cell: CellState): Cell {
  const style = styleOf(cell);
  return {
    row,
    column,
    ...(cell.value === null ? {} : { value: cell.value }),
    ...(cell.formula === undefined ? {} : { formula: cell.formula }),
    ...(Object.keys(style).length === 0 ? {} : { style }),
    ...(cell.note === undefined ? {} : { note: cell.note }),
  };
}

const plainLooks = {
  bold: "font.bold",
  italic: "font.italic",
  color: "font.color",
  size: "font.size",
  font: "font.name",
  fill: "fill.color",
  wrap: "wrapText",
  indent: "indentLevel",
} as const;
const alignments = { left: "Left", center: "Center", right: "Right" } as const;
const edges = {
  top: "EdgeTop",
  bottom: "EdgeBottom",
  left: "EdgeLeft",
  right: "EdgeRight",
} as const;
const sides = ["top", "bottom", "left", "right"] as const;

function stateOfStyle(style: CellStyle): Pick<CellState, "format" | "looks"> {
  const looks: Record<string, unknown> = {};
  for (const [name, look] of Object.entries(plainLooks)) {
    const value = style[name as keyof typeof plainLooks];
    if (value !== undefined) looks[look] = value;
  }
  if (style.align) looks["horizontalAlignment"] = alignments[style.align];
  for (const side of sides) {
    const edge = style.edges?.[side];
    if (edge === undefined) continue;
    looks[`${edges[side]}.style`] = edge === "double" ? "Double" : "Continuous";
    if (edge !== "double")
      looks[`${edges[side]}.weight`] = edge === "thin" ? "Thin" : "Medium";
    if (style.edges?.color !== undefined)
      looks[`${edges[side]}.color`] = style.edges.color;
  }
  return {
    ...(style.format === undefined ? {} : { format: style.format }),
    ...(Object.keys(looks).length === 0 ? {} : { looks }),
  };
}

function styleOf({ format, looks = {} }: CellState): CellStyle {
  const style: Record<string, unknown> = {};
  for (const [name, look] of Object.entries(plainLooks))
    if (looks[look] !== undefined) style[name] = looks[look];
  if (format !== undefined && format !== "General") style["format"] = format;
  const align = (["left", "center", "right"] as const).find(
    (name) => alignments[name] === looks["horizontalAlignment"],
  );
  if (align) style["align"] = align;
  const lines: Record<string, unknown> = {};
  for (const side of sides) {
    const drawn = looks[`${edges[side]}.style`];
    if (drawn === undefined) continue;
    lines[side] =
      drawn === "Double"
        ? "double"
        : looks[`${edges[side]}.weight`] === "Medium"
          ? "medium"
          : "thin";
    const color = looks[`${edges[side]}.color`];
    if (color !== undefined) lines["color"] = color;
  }
  if (Object.keys(lines).length > 0) style["edges"] = lines;
  return style;
}

function validationOf(state: ValidationState): Validation {
  const alert = state.errorAlert as { style?: string } | undefined;
  const prompt = state.prompt as { message?: string } | undefined;
  return {
    area: state.area,
    rule: ruleOf(state.rule),
    strict: alert?.style === "Stop",
    ...(prompt?.message === undefined ? {} : { message: prompt.message }),
  };
}

interface Limits {
  readonly operator: string;
  readonly formula1: number | string;
  readonly formula2?: number | string;
}

function ruleOf(rule: {
  asModelled?: Validation["rule"];
  list?: { source: string };
  wholeNumber?: Limits;
  decimal?: Limits;
  date?: Limits;
}): Validation["rule"] {
  if (rule.asModelled) return rule.asModelled;
  if (rule.list)
    return rule.list.source.startsWith("=")
      ? { kind: "list from", source: rule.list.source.slice(1) }
      : { kind: "list", choices: rule.list.source.split(",") };
  if (rule.wholeNumber)
    return { kind: "whole number", ...limitsOf(rule.wholeNumber) };
  if (rule.date) return { kind: "date", ...limitsOf(rule.date) };
  return { kind: "number", ...limitsOf(rule.decimal) };
}

function limitsOf(limits: Limits | undefined): { min?: number; max?: number } {
  if (!limits) return {};
  const first = Number(String(limits.formula1).replace(/^=/, ""));
  const second = Number(String(limits.formula2).replace(/^=/, ""));
  if (limits.operator === "Between") return { min: first, max: second };
  if (limits.operator === "LessThanOrEqualTo") return { max: first };
  return first === -1e300 || first === 0 ? {} : { min: first };
}
