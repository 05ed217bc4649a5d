import { LocaleType, mergeLocales } from "@univerjs/core";
import { UniverSheetsNodeCorePreset } from "@univerjs/preset-sheets-node-core";
import words from "@univerjs/preset-sheets-node-core/locales/en-US";
import { UniverSheetsNotePlugin } from "@univerjs/sheets-note";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import tableWords from "@univerjs/sheets-table/locale/en-US";
import { startEngine, type Engine } from "./engine";
import { formulaConfig } from "./executor";
import type { Refusals } from "./refusals";
import type { WorksheetFunction } from "./worksheet-function";

/** The grid's engine without a screen. It wants its words even so. */
export const startHeadless = (
  functions: readonly WorksheetFunction[],
  refusals: Refusals,
): Engine =>
  startEngine(
    [
      UniverSheetsNodeCorePreset({
        formula: formulaConfig(functions, refusals),
      }),
      { plugins: [UniverSheetsTablePlugin, UniverSheetsNotePlugin] },
    ],
    { locales: { [LocaleType.EN_US]: mergeLocales(words, tableWords) } },
  );
