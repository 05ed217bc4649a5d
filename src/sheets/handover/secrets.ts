import { tableList } from "../../book/book";
import { columnAt, type Contents, contentsOf } from "../../book/contents";
import { as, type DaySerial } from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";
import type { Stored, Workbook } from "../workbook";
import type { Ticks } from "./audiences";
import type { CopiedSheet } from "./copy-sheet";
import { type FigureFate, isBlank } from "./fates";
import { FIGURES_SHEET } from "./cut-tables";
import type { SheetToCopy } from "./sheet-to-copy";

/** What must not be found in the file of a copy, each with the words for where it comes from. */
export interface Secrets {
  readonly figures: ReadonlyMap<number, string>;
  readonly names: ReadonlyMap<string, string>;
  /** The same copy without a figure or a word of the book: whatever its file holds is layout, not a leak. */
  readonly bare: Workbook;
}

/** Columns whose words are the trade's own and tell nothing of anybody. */
const plainWords: Readonly<Record<string, readonly string[]>> = {
  Settings: ["Setting", "Unit"],
  Energy: ["Item", "Unit"],
  Products: ["Family", "Declared text", "Syrup kind", "Usual line"],
  Parts: ["Kind", "Bought"],
  Channels: ["Channel", "Fee applies to"],
  Lines: ["Line", "What it is", "Slowest other station"],
  Crew: ["Line", "Role"],
  Wages: ["Role"],
  Runs: ["Line"],
  BulkPrices: ["Syrup kind"],
  Prices: ["Channel"],
  ProductMaterials: ["Per"],
  Overheads: ["Shared by"],
  ToteShipments: ["Currency", "Tote kind"],
  ToteContracts: ["Price basis", "Grades allowed"],
  Invoices: ["Currency"],
  Payments: ["Currency"],
};

/** The farm's own name goes on every copy. */
const ownWords = ["own"];

/** Everything the book and its sheets hold that the copy does not show. */
export function secretsOf(given: {
  readonly contents: readonly Contents[];
  readonly otherFigures: readonly number[];
  readonly ticks: Ticks;
  readonly farm: string;
  readonly day: string;
  readonly workbook: Workbook;
  readonly copied: readonly (CopiedSheet & {
    readonly from: SheetToCopy;
    readonly fates: readonly FigureFate[];
  })[];
}): Secrets {
  const figures = new Map<number, string>();
  const names = new Map<string, string>();
  const add = (value: Stored, where: string, isName: boolean): void => {
    if (typeof value === "number") {
      if (!figures.has(value)) figures.set(value, where);
    } else if (typeof value === "string" && isName) {
      for (const piece of pieces(value))
        if (!names.has(piece)) names.set(piece, where);
    }
  };
  for (const [, table] of tableList) {
    const found = contentsOf(given.contents, table);
    if (!found) continue;
    const plain = plainWords[table.name] ?? [];
    const ours = new Set<number>();
    for (const column of Object.values(table.columns)) {
      const at = columnAt(found.headings, column);
      if (at < 0) continue;
      ours.add(at);
      const isName =
        (column.term.kind === "text" || column.byName !== undefined) &&
        !plain.includes(column.heading);
      const isNote = column.heading === "Note";
      const where = `${table.name}, ${column.heading}`;
      for (const row of found.rows) {
        const value = row[at] ?? null;
        add(value, where, isName && (!isNote || isRemark(value)));
        if (column.term.kind === "date" && typeof value === "number")
          add(isoDate(as<DaySerial>(value)), where, true);
      }
    }
    // Columns the farm keeps for itself beside ours.
    for (const [at, heading] of found.headings.entries())
      if (!ours.has(at))
        for (const row of found.rows)
          add(
            row[at] ?? null,
            `${table.name}, ${heading}`,
            isRemark(row[at] ?? null),
          );
  }
  for (const value of given.otherFigures)
    add(value, "a sheet that was not chosen", false);
  for (const { from, fates } of given.copied)
    for (const { figure, fate } of fates)
      if (fate === "removed")
        add(
          from.valueAt(figure.row, figure.column),
          `${from.placed.description.name}, ${figure.label}`,
          false,
        );
  const shown = shownValues(given.copied, given.workbook);
  for (const value of shown)
    if (typeof value === "number") {
      figures.delete(value);
      if (isDay(value)) names.delete(isoDate(as<DaySerial>(value)));
    } else if (typeof value === "string") {
      names.delete(value.trim());
      for (const [day] of value.matchAll(ISO_DAY)) names.delete(day);
    }
  names.delete(given.day);
  const about = given.copied.flatMap(({ from }) => from.about).map(apart);
  for (const name of [...names.keys()])
    if (about.some((words) => words.includes(apart(name)))) names.delete(name);
  for (const word of [...ownWords, given.farm]) names.delete(word);
  for (const word of given.ticks.mayStand) {
    names.delete(word);
    if (Number.isFinite(Number(word))) figures.delete(Number(word));
  }
  return { figures, names, bare: bareOf(given.copied, given.workbook) };
}

/** A remark of a word or two is anybody's. */
const isRemark = (value: Stored): boolean =>
  typeof value === "string" && /\S+\s+\S+\s+\S/.test(value);

const ISO_DAY = /\d{4}-\d{2}-\d{2}/g;

/** Whole numbers that may stand for a day of this century. */
const isDay = (value: number): boolean =>
  Number.isInteger(value) && value > 36_525 && value < 73_050;

/** Words by themselves, so that one name is found in another only as words. */
const apart = (text: string): string =>
  ` ${text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim()} `;

/** A cell may list lots with their pounds: "25-01:6272; 25-02:310". */
const pieces = (text: string): readonly string[] => [
  ...new Set([
    text.trim(),
    ...(/\d[:;|]/.test(text)
      ? text.split(/[;|,]/).map((piece) => (piece.split(":")[0] ?? "").trim())
      : []),
  ]),
];

function shownValues(
  copied: readonly (CopiedSheet & { readonly from: SheetToCopy })[],
  workbook: Workbook,
): readonly Stored[] {
  return [
    ...copied.flatMap(({ figures, from }) =>
      figures.map(({ of }) => from.valueAt(of.figure.row, of.figure.column)),
    ),
    ...workbook.sheets
      .filter(({ name }) => name === FIGURES_SHEET)
      .flatMap(({ cells }) => cells.map(({ value }) => value ?? null)),
  ];
}

function bareOf(copied: readonly CopiedSheet[], workbook: Workbook): Workbook {
  const held = new Map(
    copied.map(({ sheet, figures }) => [
      sheet.name,
      new Set(figures.map(({ row, column }) => `${row},${column}`)),
    ]),
  );
  return {
    ...workbook,
    title: "",
    sheets: workbook.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) => {
        const isHeld =
          held.get(sheet.name)?.has(`${cell.row},${cell.column}`) ??
          cell.row > 2;
        if (!isHeld || isBlank(cell.value)) return cell;
        const { value: _, ...rest } = cell;
        return rest;
      }),
      validations: sheet.validations.map((validation) =>
        validation.rule.kind === "list"
          ? { ...validation, rule: { kind: "list" as const, choices: [] } }
          : validation,
      ),
    })),
  };
}
