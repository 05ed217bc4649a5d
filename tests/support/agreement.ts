import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../src/hosts/file/write-xlsx";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { convertWithLibreOffice } from "./libre-office";

/** Numbers agree to 1e-9 relative; everything else to the letter, where a blank and an empty text are one. */
export function agree(a: Stored | undefined, b: Stored | undefined): boolean {
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1e-3);
  return plain(a) === plain(b);
}

const plain = (value: Stored | undefined): string => {
  if (value === undefined || value === null) return "";
  return typeof value === "object" ? value.error : String(value);
};

/** Every worked-out cell of a workbook that another has otherwise, by default of all its sheets. */
export const differences = (
  live: Workbook | undefined,
  other: Workbook | undefined,
  sheets: (name: string) => boolean = () => true,
): readonly string[] =>
  (live?.sheets ?? [])
    .filter(({ name }) => sheets(name))
    .flatMap((sheet) => {
      const theirs = new Map(
        other?.sheets
          .find(({ name }) => name === sheet.name)
          ?.cells.map((cell) => [`${cell.row},${cell.column}`, cell.value]),
      );
      return sheet.cells
        .filter(({ formula }) => formula !== undefined)
        .map((cell) => ({
          ...cell,
          theirs: theirs.get(`${cell.row},${cell.column}`),
        }))
        .filter((cell) => !agree(cell.value, cell.theirs))
        .map(
          (cell) =>
            `${sheet.name} r${cell.row + 1} c${cell.column + 1}: ${JSON.stringify(cell.value)} against ${JSON.stringify(cell.theirs)} for ${cell.formula?.slice(0, 400)}`,
        );
    });

/** The same workbooks as LibreOffice works them out anew, which it is opened for once. */
export async function recalculated<K extends string>(
  workbooks: Readonly<Record<K, Workbook>>,
): Promise<ReadonlyMap<K, Workbook>> {
  const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-agreement-"));
  const names = Object.keys(workbooks) as K[];
  const files: string[] = [];
  for (const name of names) {
    const file = join(folder, `${name}.xlsx`);
    writeFileSync(file, await writeXlsx(workbooks[name]));
    files.push(file);
  }
  const converted = convertWithLibreOffice(files, {
    to: "xlsx",
    recalculate: true,
  });
  const back = new Map<K, Workbook>();
  for (const [i, name] of names.entries())
    back.set(
      name,
      (await readXlsx(readFileSync(converted[i] ?? ""), "book.xlsx")).workbook,
    );
  return back;
}
