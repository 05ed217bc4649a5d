import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import ExcelJS from "exceljs";
import { writeXlsx } from "hucre/xlsx";
import { convertWithLibreOffice } from "../../support/libre-office";

/** Workbooks as other people's programs make them: nothing in them is ours. */
export interface Stranger {
  readonly title: string;
  readonly fileName: string;
  readonly bytes: Uint8Array;
}

/** Made by three programs; those of LibreOffice are converted in one start of it. */
export async function strangers(): Promise<readonly Stranger[]> {
  const folder = mkdtempSync(join(tmpdir(), "strangers-"));
  try {
    const toConvert: Readonly<Record<string, Uint8Array | string>> = {
      "ledger.xlsx": await ledgerWithPictures(),
      "charts.xlsx": await chartsAndMore(),
      "pivot.fods": pivotTable(),
    };
    const files = Object.entries(toConvert).map(([name, content]) => {
      const file = join(folder, name);
      writeFileSync(file, content);
      return file;
    });
    const converted = convertWithLibreOffice(files, { to: "xlsx" });
    const made = converted.map((file, i) => ({
      title: [
        "LibreOffice's with an image, conditional formats, notes, a filter and protection",
        "LibreOffice's with charts, validation and print settings",
        "LibreOffice's with a pivot table",
      ][i] as string,
      fileName: "ledger.xlsx",
      bytes: new Uint8Array(readFileSync(file)),
    }));
    rmSync(dirname(converted[0] ?? folder), { recursive: true, force: true });
    return [
      ...made,
      {
        title: "a package library's with tables and an image",
        fileName: "ledger.xlsx",
        bytes: await ledgerWithPictures(),
      },
      {
        title: "another library's with macros and charts",
        fileName: "ledger.xlsm",
        bytes: await chartsAndMore(true),
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** One dark pixel. */
const PIXEL = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
  "base64",
);

async function ledgerWithPictures(): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  const sheet = book.addWorksheet("Ledger 2026", {
    properties: { tabColor: { argb: "FF335577" } },
  });
  sheet.columns = [
    { header: "Ticket", key: "ticket", width: 12 },
    { header: "Gross lb", key: "gross", width: 12 },
    { header: "Net", key: "net", width: 12 },
  ];
  for (let i = 1; i <= 30; i += 1)
    sheet.addRow([
      `W-${i}`,
      3000 + i,
      { formula: `B${i + 1}-132`, result: 2868 + i },
    ]);
  sheet.getCell("A1").note = "As on the scale's slip";
  sheet.getColumn(2).numFmt = '#,##0" lb"';
  sheet.autoFilter = "A1:C31";
  sheet.addConditionalFormatting({
    ref: "C2:C31",
    rules: [
      {
        type: "cellIs",
        operator: "greaterThan",
        priority: 1,
        formulae: [2890],
        style: { font: { bold: true, color: { argb: "FF880000" } } },
      },
    ],
  });
  const image = book.addImage({ buffer: PIXEL as never, extension: "png" });
  sheet.addImage(image, "E2:F6");
  const terms = book.addWorksheet("Terms", { state: "hidden" });
  terms.getCell("A1").value = {
    formula: "SUM('Ledger 2026'!C2:C31)",
    result: 86505,
  };
  await terms.protect("no guess", {});
  book.definedNames.add("'Ledger 2026'!$C$2:$C$31", "net_all");
  return new Uint8Array(await book.xlsx.writeBuffer());
}

async function chartsAndMore(macros = false): Promise<Uint8Array> {
  return writeXlsx({
    sheets: [
      {
        name: "Sales & more",
        rows: [
          ["Month", "lb"],
          ["May", 4100],
          ["June", 5230],
          ["July", 3900],
        ],
        charts: [
          {
            type: "column",
            title: "Pounds by month",
            series: [
              {
                name: "lb",
                categories: "'Sales & more'!$A$2:$A$4",
                values: "'Sales & more'!$B$2:$B$4",
                color: "336699",
              },
            ],
            anchor: { from: { row: 1, col: 3 }, to: { row: 14, col: 9 } },
          },
        ],
        dataValidations: [
          {
            type: "list",
            range: "A2:A4",
            values: ["May", "June", "July"],
          },
        ],
        pageSetup: { orientation: "landscape", paperSize: "a4" },
        headerFooter: { oddFooter: "&CPage &P" },
      },
    ],
    ...(macros ? { vbaProject: new Uint8Array([0xd0, 0xcf, 1, 2, 3, 4]) } : {}),
  });
}

const pivotTable = (): string =>
  `<?xml version="1.0" encoding="UTF-8"?><office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="Rows">${[
    ["Buyer", "lb"],
    ["North", 100],
    ["South", 220],
    ["North", 75],
  ]
    .map(
      ([a, b]) =>
        `<table:table-row>${textCell(a)}${typeof b === "number" ? `<table:table-cell office:value-type="float" office:value="${b}"><text:p>${b}</text:p></table:table-cell>` : textCell(b)}</table:table-row>`,
    )
    .join(
      "",
    )}</table:table><table:table table:name="By buyer"><table:table-row><table:table-cell/></table:table-row></table:table><table:data-pilot-tables><table:data-pilot-table table:name="P1" table:target-range-address="'By buyer'.A1:'By buyer'.B6" table:show-filter-button="false"><table:source-cell-range table:cell-range-address="Rows.A1:Rows.B4"/><table:data-pilot-field table:source-field-name="Buyer" table:orientation="row"/><table:data-pilot-field table:source-field-name="lb" table:orientation="data" table:function="sum"/></table:data-pilot-table></table:data-pilot-tables></office:spreadsheet></office:body></office:document>`;

const textCell = (text: unknown): string =>
  `<table:table-cell office:value-type="string"><text:p>${String(text)}</text:p></table:table-cell>`;
