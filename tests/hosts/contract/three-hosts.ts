import { gridFunctions } from "../../../src/apps/grid-functions";
import { openExcelHost } from "../../../src/hosts/excel/excel-host";
import { FileHost } from "../../../src/hosts/file/file-host";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import { openHeadless } from "../../../src/hosts/grid/open-headless";
import type { Host } from "../../../src/hosts/host";
import type {
  Cell,
  CellStyle,
  Sheet,
  Workbook,
} from "../../../src/sheets/workbook";
import { openWire } from "../../support/excel-wire/open-wire";
import {
  resultsOf,
  stateOf,
  workbookOf,
} from "../../support/excel-wire/workbook-states";

/** A host with a workbook open in it, and the way to see the whole of it as plain data. */
export interface Opened {
  readonly host: Host;
  readonly workbook: () => Promise<Workbook>;
  readonly close: () => void;
}

export interface HostKind {
  readonly name: "grid" | "file" | "excel";
  /** A file holds results and works none out. */
  readonly calculates: boolean;
  /** `calculated`: workbooks to take results from, for Excel behind the wire calculates nothing itself. */
  readonly open: (
    workbook: Workbook,
    calculated: readonly Workbook[],
  ) => Promise<Opened>;
}

export const hostKinds: readonly HostKind[] = [
  {
    name: "grid",
    calculates: true,
    open: async (workbook) => {
      const host = await openHeadless(workbook, gridFunctions);
      return {
        host,
        workbook: async () => {
          await host.settled();
          return host.currentWorkbook();
        },
        close: () => host.dispose(),
      };
    },
  },
  {
    name: "file",
    calculates: false,
    open: async (workbook) => {
      const { workbook: read } = await readXlsx(
        await writeXlsx(workbook),
        "book.xlsx",
      );
      const host = new FileHost(read);
      return {
        host,
        // Through the file once more: what is compared is what the file holds.
        workbook: async () =>
          (await readXlsx(await writeXlsx(host.currentWorkbook()), "book.xlsx"))
            .workbook,
        close: () => undefined,
      };
    },
  },
  {
    name: "excel",
    calculates: true,
    open: async (workbook, calculated) => {
      const book = openWire({
        ...stateOf(workbook),
        result: resultsOf(workbook, ...calculated),
      });
      const host = await openExcelHost();
      return {
        host,
        workbook: async () => {
          expect(book.wire.holes).toEqual([]);
          return workbookOf(book.state);
        },
        close: () => undefined,
      };
    },
  },
];

/** A workbook as the hosts have to agree on it. Results are compared where a host calculates. */
export const comparable = (
  workbook: Workbook,
  { results }: { readonly results: boolean },
): unknown => ({
  names: [...workbook.names].sort((a, b) => (a.name < b.name ? -1 : 1)),
  sheets: workbook.sheets.map((sheet) => ({
    name: sheet.name,
    cells: cellsOf(sheet, results),
    tables: sheet.tables.map(({ name, area, columns }) => ({
      name,
      area,
      headings: columns.map(({ heading }) => heading),
    })),
    validations: [...sheet.validations]
      .map((validation) => ({
        ...validation,
        strict: validation.strict === true,
      }))
      .sort((a, b) => a.area.row - b.area.row || a.area.column - b.area.column),
    merges: sheet.merges,
    widths: rounded(sheet.widths),
    heights: rounded(sheet.heights),
    frozen: sheet.frozen,
    hidden: sheet.hidden === true,
    tabColor: sheet.tabColor,
  })),
});

const cellsOf = (sheet: Sheet, results: boolean): readonly Cell[] =>
  sheet.cells
    .map(({ value, formula, spilled, spills: _, style, ...cell }) => ({
      ...cell,
      ...styled(style),
      ...(formula === undefined ? {} : { formula }),
      ...(value === undefined ||
      value === null ||
      value === "" ||
      spilled ||
      (formula !== undefined && !results)
        ? {}
        : { value }),
    }))
    .filter((cell) => Object.keys(cell).length > 2)
    .sort((a, b) => a.row - b.row || a.column - b.column);

/** "General" is no format of its own. */
function styled(style: CellStyle | undefined): Pick<Cell, "style"> {
  const { format, ...look } = style ?? {};
  const own =
    format === undefined || format === "General" ? look : { ...look, format };
  return Object.keys(own).length === 0 ? {} : { style: own };
}

const rounded = (
  sizes: Readonly<Record<number, number>>,
): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.entries(sizes).map(([i, size]) => [i, Math.round(size * 100) / 100]),
  );
