import type { InExcel } from "../../../src/hosts/host";
import { unusable } from "../../../src/measures/cannot-answer";
import type { Workbook } from "../../../src/sheets/workbook";
import { fakeHost, type FakeHost } from "../fake-host";

export interface ExcelHost extends FakeHost {
  readonly inExcel: InExcel;
}

/**
 * Stands in the built page where src/hosts/excel/excel-host.ts does: the demo book, held in memory. The page's query
 * says what is special about the workbook: `?protected` cannot be opened, `?unfinished` was left by a write cut off.
 */
export async function openExcelHost(): Promise<ExcelHost> {
  const { search } = location;
  if (search === "?protected")
    throw unusable("The workbook is protected and cannot be read");
  const answer = await fetch("workbook.json");
  const host: ExcelHost = {
    ...fakeHost((await answer.json()) as Workbook),
    inExcel: inExcel(search === "?unfinished"),
  };
  Object.assign(globalThis, { hostInUse: host });
  return host;
}

const inExcel = (isUnfinished: boolean): InExcel => ({
  missing: [
    "This Excel cannot be given notes on cells, so a new sheet has none",
  ],
  unfinished: isUnfinished
    ? "A new product may be half written from before: look at the table Products"
    : undefined,
  repair: async () => ({ formulas: 12, leftAlone: ["Locked"] }),
  readSettings: notHere,
  saveSettings: notHere,
  addChart: notHere,
  openAsNewWorkbook: notHere,
  insertSheets: notHere,
});

const notHere = (): never => {
  throw new Error("the workbook in memory has none of this");
};
