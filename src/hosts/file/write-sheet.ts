import type { Cell as FileCell, WriteSheet } from "hucre/xlsx";
import { unusable } from "../../measures/cannot-answer";
import { cellAddress } from "../../sheets/address";
import type { Area, Cell, Sheet, Stored, Table } from "../../sheets/workbook";
import { styleToFile } from "./cell-style";
import { chartsToFile } from "./chart-to-file";
import { errorInFile } from "./error-values";
import { formulaInFile } from "./formula-text";
import { printToFile } from "./print-setup";
import { areaReference } from "./ranges";
import { tableArea } from "./table-part";
import { validationToFile } from "./validation-rules";
import { textInAttribute, textInFile } from "./worksheet-text";

const longestText = 32_767;
const longestFormula = 8_192;

/** A sheet as the writing library takes it; what it gets wrong is put right when the package is finished. */
export function sheetToFile(sheet: Sheet): WriteSheet {
  const columns = Object.keys(sheet.widths).map(Number);
  return {
    name: textInAttribute(sheet.name),
    cells: cellsToFile(sheet),
    columns: Array.from(
      { length: Math.max(-1, ...columns) + 1 },
      (_, column) => {
        const width = sheet.widths[column];
        return width === undefined ? {} : { width };
      },
    ),
    rowDefs: new Map(
      Object.entries(sheet.heights).map(([row, height]) => [
        Number(row),
        { height },
      ]),
    ),
    merges: sheet.merges.map(({ row, column, rows, columns: across }) => ({
      startRow: row,
      startCol: column,
      endRow: row + rows - 1,
      endCol: column + across - 1,
    })),
    tables: sheet.tables.map((table) => ({
      name: table.name,
      range: areaReference(tableArea(table)),
      columns: table.columns.map(({ heading }) => ({ name: heading })),
    })),
    dataValidations: sheet.validations.map((validation) =>
      validationToFile(validation, sheet.name),
    ),
    ...(sheet.charts ? { charts: chartsToFile(sheet) } : {}),
    ...printToFile(sheet),
    ...(sheet.frozen.rows > 0 || sheet.frozen.columns > 0
      ? { freezePane: { ...sheet.frozen } }
      : {}),
    ...(sheet.hidden ? { hidden: true } : {}),
    ...(sheet.tabColor
      ? {
          view: {
            tabColor: { rgb: `FF${sheet.tabColor.slice(1).toUpperCase()}` },
          },
        }
      : {}),
  };
}

function cellsToFile(sheet: Sheet): Map<string, Partial<FileCell>> {
  const cells = new Map(
    sheet.cells.map((cell) => [
      `${cell.row},${cell.column}`,
      cellToFile(
        cell,
        `Sheet ${sheet.name}, cell ${cellAddress(cell.row, cell.column)}`,
      ),
    ]),
  );
  for (const table of sheet.tables)
    for (const { key, heading } of headings(table))
      cells.set(key, headingCell(cells.get(key), heading, table, sheet.name));
  // The library writes rows only as far down as there are cells, and heights with them.
  for (const row of Object.keys(sheet.heights))
    if (!cells.has(`${row},0`)) cells.set(`${row},0`, {});
  return cells;
}

function cellToFile(cell: Cell, where: string): Partial<FileCell> {
  const value = valueToFile(cell.value ?? null, where);
  const formula =
    cell.formula === undefined ? undefined : formulaInFile(cell.formula);
  if ((formula?.length ?? 0) > longestFormula)
    throw unusable(
      `${where}: the formula has ${formula?.length} characters and a worksheet file holds ${longestFormula}.`,
    );
  return {
    ...(formula === undefined
      ? { value }
      : { formula: textInFile(formula), formulaResult: value }),
    ...(cell.spills
      ? {
          formulaType: "array",
          formulaRef: areaReference({ ...cell, ...cell.spills }),
          // Without it Excel takes the formula for an old one of fixed size, in braces.
          formulaDynamic: true,
        }
      : {}),
    ...(cell.style ? { style: styleToFile(cell.style) } : {}),
    ...(cell.note === undefined
      ? {}
      : { comment: { author: "", text: textInFile(cell.note) } }),
  };
}

function valueToFile(
  value: Stored,
  where: string,
): string | number | boolean | null {
  if (typeof value === "object" && value !== null)
    return errorInFile(value.error);
  if (typeof value === "number" && !Number.isFinite(value))
    throw new Error(`${where} holds ${value}, which is no number`);
  if (typeof value !== "string") return value;
  if (value.length > longestText)
    throw unusable(
      `${where}: the text has ${value.length} characters and a worksheet cell holds ${longestText}.`,
    );
  return textInFile(value);
}

function headings({
  area,
  columns,
}: Table): readonly { key: string; heading: string }[] {
  return columns.map(({ heading }, i) => ({
    key: `${area.row},${area.column + i}`,
    heading,
  }));
}

/** A table whose heading cells differ from its column names is a damaged file to Excel. */
function headingCell(
  cell: Partial<FileCell> | undefined,
  heading: string,
  { name, area }: { readonly name: string; readonly area: Area },
  sheet: string,
): Partial<FileCell> {
  const written = textInFile(heading);
  const shown = cell?.value ?? null;
  if (
    cell?.formula !== undefined ||
    (shown !== null && String(shown) !== written)
  )
    throw unusable(
      `Sheet ${sheet}, row ${area.row + 1}: a heading of table ${name} shows "${cell?.formula === undefined ? String(shown) : `=${cell.formula}`}" where the table calls the column "${heading}".`,
    );
  return { ...cell, value: written };
}
