import { LocaleType, mergeLocales } from "@univerjs/core";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import validationWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsNotePreset } from "@univerjs/preset-sheets-note";
import noteWords from "@univerjs/preset-sheets-note/locales/en-US";
import {
  UniverSheetsTablePlugin,
  UniverSheetsTablePreset,
} from "@univerjs/preset-sheets-table";
import { UniverSheetsTableUIPlugin } from "@univerjs/sheets-table-ui";
import tableWords from "@univerjs/preset-sheets-table/locales/en-US";
import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "@univerjs/preset-sheets-note/lib/index.css";
import "@univerjs/preset-sheets-table/lib/index.css";
import { startEngine, type Engine } from "./engine";
import { formulaConfig } from "./executor";
import { gridTheme } from "./grid-theme";
import type { Refusals } from "./refusals";
import type { WorksheetFunction } from "./worksheet-function";

/** The grid's own bands would hide the looks the cells carry. */
const plainTable = {
  name: "plain",
  style: { headerRowStyle: { bg: { rgb: "#eadfd0" } } },
};

/** The grid on a page, with its formula bar, sheet tabs and context menu, and without its toolbar. */
export const startOnScreen = (
  container: HTMLElement,
  functions: readonly WorksheetFunction[],
  refusals: Refusals,
  dark: boolean,
): Engine =>
  startEngine(
    [
      UniverSheetsCorePreset({
        container,
        header: true,
        toolbar: false,
        formulaBar: true,
        contextMenu: true,
        disableAutoFocus: true,
        disableTextFormatAlert: true,
        disableTextFormatMark: true,
        sheets: { disableForceStringAlert: true, disableForceStringMark: true },
        formula: formulaConfig(functions, refusals),
      }),
      UniverSheetsTablePreset(),
      {
        plugins: [
          // A tab above every table would stand where the headings are read.
          [UniverSheetsTableUIPlugin, { hideAnchor: true }],
          [
            UniverSheetsTablePlugin,
            { userThemes: [plainTable], defaultThemeIndex: 0 },
          ],
        ],
      },
      UniverSheetsDataValidationPreset(),
      UniverSheetsNotePreset(),
    ],
    {
      theme: gridTheme,
      darkMode: dark,
      locales: {
        [LocaleType.EN_US]: mergeLocales(
          coreWords,
          tableWords,
          validationWords,
          noteWords,
        ),
      },
    },
  );
