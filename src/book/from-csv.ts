import { isBlank } from "../functions/read-cell";
import { unusable } from "../measures/cannot-answer";
import type { Gallon } from "../measures/gallon";
import { bookTables, tableList } from "./book";
import {
  bulkPricesFromSettings,
  replacementKind,
} from "./bulk-prices-from-settings";
import {
  type CellContent,
  columnAt,
  type Contents,
  contentsOf,
} from "./contents";
import { csvCell, type Understood } from "./csv-cell";
import { type Finding, listed } from "./finding";
import { gallonIn, withWhereToSay } from "./gallon";
import type { Column, Table } from "./table";

/** A CSV file as read: its heading row and its other rows, each with the line it starts on. */
export interface CsvFile {
  readonly headings: readonly string[];
  readonly rows: readonly {
    readonly line: number;
    readonly cells: readonly string[];
  }[];
}

/**
 * Makes the farm book's tables of a folder of CSV files: numbers, serial dates and text, ready for a worksheet.
 * Throws (#VALUE!) one sentence with file, line and column at a value, column or needed file that is missing or
 * cannot be read; what was read but should be looked at is a finding. Files that are not ours are ignored.
 */
export function bookTablesFromCsv(files: ReadonlyMap<string, CsvFile>): {
  readonly tables: readonly Contents[];
  readonly findings: readonly Finding[];
} {
  const findings: Finding[] = [];
  const read: Contents[] = [];
  for (const [, table] of tableList) {
    const file = fileNamed(files, table.csv);
    if (file === undefined) {
      if (table.optional || table === bookTables.bulkPrices) continue;
      throw unusable(
        `the folder has no ${table.csv}, which holds the table ${table.sheet}`,
      );
    }
    // Settings are read first, so every later file knows which gallon the book means.
    const made = tableFromCsv(table, file, gallonIn(read));
    read.push(made.contents);
    findings.push(...made.findings);
  }
  const { tables, finding } = settlePrices(read);
  return { tables, findings: [...findings, ...finding] };
}

/** Moves the replacement prices among the settings to Bulk prices, unless those have a file of their own. */
function settlePrices(read: readonly Contents[]): {
  readonly tables: readonly Contents[];
  readonly finding: readonly Finding[];
} {
  const own = contentsOf(read, bookTables.bulkPrices);
  const made = bulkPricesFromSettings(read);
  if (own === undefined && made === undefined)
    throw unusable(
      `the folder has neither ${bookTables.bulkPrices.csv} nor a setting such as "Replacement price, Amber" in ${bookTables.settings.csv}`,
    );
  const kept = read.map((contents) =>
    contents.name === bookTables.settings.name
      ? withoutReplacementPrices(contents)
      : contents,
  );
  if (own !== undefined || made === undefined) {
    const clash = made?.from;
    return {
      tables: kept,
      finding:
        clash === undefined
          ? []
          : [
              {
                where: `${clash.file} line ${clash.lines[0] ?? ""}`,
                found: `a replacement price, besides the prices in ${bookTables.bulkPrices.csv}`,
                meaning: `only ${bookTables.bulkPrices.csv} is used`,
                todo: `take the replacement prices out of ${clash.file}`,
              },
            ],
    };
  }
  const order = tableList.map(([, table]) => table.name);
  return {
    tables: [...kept, made].sort(
      (a, b) => order.indexOf(a.name) - order.indexOf(b.name),
    ),
    finding: [],
  };
}

function withoutReplacementPrices(contents: Contents): Contents {
  const keep = contents.rows.map(
    (row) => replacementKind(row[0]) === undefined,
  );
  const { from } = contents;
  return {
    ...contents,
    rows: contents.rows.filter((_, i) => keep[i]),
    ...(from && {
      from: { ...from, lines: from.lines.filter((_, i) => keep[i]) },
    }),
  };
}

function fileNamed(
  files: ReadonlyMap<string, CsvFile>,
  name: string,
): CsvFile | undefined {
  const found = [...files.keys()].find((file) => file.toLowerCase() === name);
  return found === undefined ? undefined : files.get(found);
}

function tableFromCsv(
  table: Table,
  file: CsvFile,
  gallon: Gallon,
): { readonly contents: Contents; readonly findings: readonly Finding[] } {
  const columns = Object.entries(table.columns);
  const places = columns.map(([, column]) => csvColumnAt(table, file, column));
  const findings = new Map<string, Finding>();
  const rows: CellContent[][] = [];
  const lines: number[] = [];
  for (const { line, cells } of file.rows) {
    if (cells.every(isBlank)) continue;
    const row = columns.map(([, column], c): CellContent => {
      const at = places[c] ?? -1;
      if (column.formula !== undefined) return null;
      const words = file.headings[at]?.trim() ?? column.heading;
      const written = at < 0 ? "" : (cells[at] ?? "");
      const made = csvCell(
        column,
        written,
        words,
        cells[places[0] ?? 0],
        gallon,
      );
      if ("refused" in made)
        throw unusable(
          `${table.csv} line ${line}, ${withWhereToSay(made.refused)}`,
        );
      note(findings, table, line, words, written, made);
      return made.content;
    });
    rows.push(fillInferred(columns, row));
    lines.push(line);
  }
  return {
    contents: {
      name: table.name,
      sheet: table.sheet,
      row: 0,
      column: 0,
      headings: columns.map(([, column]) => column.heading),
      rows,
      from: {
        file: table.csv,
        counts: "line",
        lines,
        columns: columns.map(
          ([, c], i) => file.headings[places[i] ?? -1]?.trim() ?? c.heading,
        ),
      },
    },
    findings: [...findings.values(), ...strangers(table, file)],
  };
}

function csvColumnAt(table: Table, file: CsvFile, column: Column): number {
  const at = columnAt(file.headings, column);
  const needed =
    column.formula === undefined &&
    !column.mayBeBlank &&
    column.blankIs === undefined &&
    column.inferred === undefined;
  if (at < 0 && needed)
    throw unusable(
      `${table.csv} has no column ${column.csv ?? column.heading}, ${column.term.about}`,
    );
  return at;
}

function fillInferred(
  columns: readonly (readonly [string, Column])[],
  row: CellContent[],
): CellContent[] {
  const cell = (key: string): CellContent | undefined =>
    row[columns.findIndex(([own]) => own === key)];
  for (const [c, [, column]] of columns.entries()) {
    if (column.inferred && isBlank(row[c])) row[c] = column.inferred(cell);
  }
  return row;
}

function note(
  findings: Map<string, Finding>,
  table: Table,
  line: number,
  words: string,
  written: string,
  made: Understood,
): void {
  if (made.as === undefined || findings.has(words)) return;
  findings.set(words, {
    where: `${table.csv} line ${line}, ${words}`,
    found: `"${written.trim()}"`,
    meaning: `it was understood as ${made.as}, as are others in this column written so`,
    todo: `write ${made.as} as a plain number to be sure`,
  });
}

function strangers(table: Table, file: CsvFile): readonly Finding[] {
  const known = Object.values(table.columns).map((column) =>
    columnAt(file.headings, column),
  );
  const names = file.headings.filter(
    (heading, i) => heading.trim() !== "" && !known.includes(i),
  );
  return names.length === 0
    ? []
    : [
        {
          where: table.csv,
          found: `${names.length === 1 ? "a column" : "columns"} of your own: ${listed(names)}`,
          meaning: "the farm book does not use it and does not take it over",
          todo: "nothing, if you do not need it in the workbook; else add it there by hand",
        },
      ];
}
