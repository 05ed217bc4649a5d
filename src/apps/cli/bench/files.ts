import { writeXlsx as writeBare } from "hucre/xlsx";
import type { Contents } from "../../../book/contents";
import { writeXlsx } from "../../../hosts/file/write-xlsx";
import { calculate } from "../../../hosts/grid/calculate";
import type { Cell, Workbook } from "../../../sheets/workbook";
import { gridFunctions } from "../../grid-functions";
import { costingBook, type Run } from "../costing-workbook";
import { compared } from "./clock";
import { type Figure, kilobytes, milliseconds } from "./figure";

/** Working out and writing the costing workbook, against the library alone writing the same cells without looks or tables. */
export async function fileFigures(
  contents: readonly Contents[],
  run: Run,
  rounds: number,
): Promise<readonly Figure[]> {
  const book = costingBook(contents, [run]);
  const { workbook } = await calculate(book, gridFunctions);
  const bare = (): Promise<Uint8Array> => writeBare(bareFile(workbook));
  const worked = await compared(
    rounds,
    async () => writeXlsx((await calculate(book, gridFunctions)).workbook),
    bare,
  );
  const written = await compared(rounds, () => writeXlsx(workbook), bare);
  const bytes = (await writeXlsx(workbook)).length;
  const bareBytes = (await bare()).length;
  return [
    {
      work: "Work out every formula, then write",
      takes: milliseconds(worked.milliseconds),
      yardstick: milliseconds(worked.yardstick),
      ratio: worked.ratio,
      aim: "under 5 s",
      isMet: worked.milliseconds < 5000,
    },
    {
      work: "Write only, with looks, tables, notes, limits and results",
      takes: milliseconds(written.milliseconds),
      yardstick: milliseconds(written.yardstick),
      ratio: written.ratio,
      aim: "under 1 s",
      isMet: written.milliseconds < 1000,
    },
    {
      work: "Size of the file",
      takes: kilobytes(bytes),
      yardstick: kilobytes(bareBytes),
      ratio: bytes / bareBytes,
      aim: "under 3 times",
      isMet: bytes / bareBytes < 3,
    },
  ];
}

export const bareFile = (
  workbook: Workbook,
): Parameters<typeof writeBare>[0] => ({
  sheets: workbook.sheets.map(({ name, cells }) => ({
    name,
    cells: new Map(
      cells.map((cell) => [`${cell.row},${cell.column}`, bareCell(cell)]),
    ),
  })),
});

function bareCell({ value = null, formula }: Cell) {
  const stored =
    typeof value === "object" && value !== null ? value.error : value;
  return formula === undefined
    ? { value: stored }
    : { formula: formula.slice(1), formulaResult: stored };
}
