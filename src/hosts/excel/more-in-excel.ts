import { unusable } from "../../measures/cannot-answer";
import type { Chart } from "../../sheets/workbook";
import type { InExcel, Settings } from "../host";
import { isAble, missing } from "./abilities";
import { asSentence } from "./excel-errors";
import { inExcel } from "./in-excel";
import { keep, loadKept, refuseNotOurs } from "./kept-part";
import { onSheet } from "./on-sheet";
import { sheetOrNone } from "./read-workbook";
import { chartStep } from "./render-chart";
import { repair } from "./repair";
import { runSteps } from "./step";

/** What a workbook in Excel can do beside the port. `alone` lets one write end before the next begins. */
export const moreInExcel = (
  unfinished: string | undefined,
  alone: <T>(work: () => Promise<T>) => Promise<T>,
): InExcel => ({
  missing: missing(),
  unfinished,
  readSettings: () =>
    inExcel(
      async (context) => {
        const part = loadKept(context);
        await context.sync();
        return part().kept.settings;
      },
      { waitsForTyping: true },
    ),
  saveSettings: (settings) => alone(() => saveSettings(settings)),
  addChart: (sheet, chart) => alone(() => addChart(sheet, chart)),
  openAsNewWorkbook: async (file) => {
    try {
      await Excel.createWorkbook(base64(file));
    } catch (problem) {
      throw asSentence(problem);
    }
  },
  insertSheets: (file) => alone(() => insertSheets(file)),
  repair: () => alone(repair),
});

const saveSettings = (settings: Settings): Promise<void> =>
  inExcel(async (context) => {
    const take = loadKept(context);
    await context.sync();
    const part = take();
    refuseNotOurs(part);
    keep(context, { ...part.kept, settings }, part);
    await context.sync();
  });

async function addChart(sheet: string, chart: Chart): Promise<void> {
  await inExcel(async (context) => {
    const on = sheetOrNone(context, sheet);
    on.protection.load("protected");
    const { charts } = onSheet(context, { name: sheet });
    const count = charts.getCount();
    await context.sync();
    if (on.protection.protected)
      throw unusable(
        `the sheet "${sheet}" is protected, so no chart can be put on it`,
      );
    try {
      await runSteps(context, [chartStep(sheet, chart)]);
    } catch (problem) {
      await takeOutChart(sheet, count.value);
      throw problem;
    }
  });
}

/** A chart that was drawn half way goes again; ours is the last, if it came to be at all. */
const takeOutChart = (sheet: string, before: number): Promise<void> =>
  inExcel(async (context) => {
    const { charts } = onSheet(context, { name: sheet });
    const count = charts.getCount();
    await context.sync();
    if (count.value > before) charts.getItemAt(count.value - 1).delete();
    await context.sync();
  }).catch(() => undefined);

const insertSheets = (file: Uint8Array): Promise<readonly string[]> =>
  inExcel(async (context) => {
    if (!isAble("insertSheets"))
      throw unusable(
        "This Excel cannot take in sheets from a file; open the file and move its sheets over",
      );
    const ids = context.workbook.insertWorksheetsFromBase64(base64(file), {
      positionType: "End",
    });
    await context.sync();
    const { worksheets } = context.workbook;
    worksheets.load("items/id,items/name");
    await context.sync();
    const added = new Set(ids.value);
    return worksheets.items
      .filter(({ id }) => added.has(id))
      .map(({ name }) => name);
  });

/** In pieces, because a call takes only so many arguments. */
function base64(file: Uint8Array): string {
  let text = "";
  for (let i = 0; i < file.length; i += 0x8000)
    text += String.fromCharCode(...file.subarray(i, i + 0x8000));
  return btoa(text);
}
