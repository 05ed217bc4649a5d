import ExcelJS from "exceljs";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import type { Workbook } from "../../../src/sheets/workbook";
import { sheetOf } from "./fernkettle-book";
import { before, withParts } from "./packages";

const book: Workbook = {
  title: "Sales",
  names: [],
  sheets: [
    sheetOf({ name: "Sales", cells: [{ row: 0, column: 0, value: 1 }] }),
    sheetOf({
      name: "Stock",
      cells: [{ row: 0, column: 0, value: "Part" }],
      tables: [
        {
          name: "Stock",
          area: { row: 0, column: 0, rows: 3, columns: 1 },
          columns: [{ heading: "Part" }],
        },
      ],
    }),
  ],
};

const relations = (
  ...entries: readonly (readonly [string, string, string])[]
): string =>
  `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${entries
    .map(
      ([id, kind, target]) =>
        `<Relationship Id="${id}" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/${kind}" Target="${target}"/>`,
    )
    .join("")}</Relationships>`;

const lossesIn = async (
  changes: Parameters<typeof withParts>[1],
): Promise<readonly string[]> =>
  (await readXlsx(withParts(await writeXlsx(book), changes), "sales.xlsx"))
    .losses;

/** A worksheet part changed before the element that follows in the schema's order. */
const first = "xl/worksheets/sheet1.xml";
const second = "xl/worksheets/sheet2.xml";

test("a chart is told with its sheet, and not the parts that only dress it", async () => {
  const chart = "xl/charts/chart1.xml";
  expect(
    await lossesIn({
      [first]: (xml) =>
        xml.replace("</worksheet>", '<drawing r:id="rId1"/></worksheet>'),
      "xl/worksheets/_rels/sheet1.xml.rels": relations([
        "rId1",
        "drawing",
        "../drawings/drawing1.xml",
      ]),
      "xl/drawings/drawing1.xml": "<wsDr/>",
      "xl/drawings/_rels/drawing1.xml.rels": relations([
        "rId1",
        "chart",
        "../charts/chart1.xml",
      ]),
      [chart]: "<chartSpace/>",
      "xl/charts/_rels/chart1.xml.rels": relations([
        "rId1",
        "chartStyle",
        "style1.xml",
      ]),
      "xl/charts/style1.xml": "<chartStyle/>",
    }),
  ).toEqual(["a chart on sheet Sales"]);
});

test("two pictures and a shape are told once each, by sheet", async () => {
  expect(
    await lossesIn({
      "xl/worksheets/_rels/sheet2.xml.rels": (xml) =>
        xml.replace(
          "</Relationships>",
          relations(["rId9", "drawing", "../drawings/drawing1.xml"]).replace(
            /<\/?Relationships[^>]*>/g,
            "",
          ) + "</Relationships>",
        ),
      "xl/drawings/drawing1.xml":
        '<xdr:wsDr xmlns:xdr="x"><xdr:twoCellAnchor><xdr:sp/></xdr:twoCellAnchor></xdr:wsDr>',
      "xl/drawings/_rels/drawing1.xml.rels": relations(
        ["rId1", "image", "../media/image1.png"],
        ["rId2", "image", "../media/image2.png"],
      ),
      "xl/media/image1.png": "x",
      "xl/media/image2.png": "x",
    }),
  ).toEqual(["drawn shapes on sheet Stock", "2 pictures on sheet Stock"]);
});

test("macros and what belongs to the whole workbook are told without a sheet", async () => {
  expect(
    await lossesIn({
      "xl/vbaProject.bin": "x",
      "customXml/item1.xml": "<farm/>",
      "customXml/itemProps1.xml": "<x/>",
      "docProps/custom.xml": "<Properties/>",
      "xl/externalLinks/externalLink1.xml": "<externalLink/>",
      "xl/webextensions/taskpanes.xml": "<taskpanes/>",
      "xl/calcChain.xml": "<calcChain/>",
      "xl/brewing/kettle1.xml": "<kettle/>",
      "xl/workbook.xml": (xml) =>
        xml
          .replace(
            "<bookViews>",
            '<workbookProtection lockStructure="1"/><bookViews>',
          )
          .replace(
            "<calcPr ",
            '<definedNames><definedName name="Local" localSheetId="1">1</definedName><definedName name="_xlnm.Print_Area" localSheetId="0">Sales!$A$1</definedName></definedNames><calcPr calcMode="manual" iterate="1" ',
          ),
    }),
  ).toEqual([
    "the name Local, which counts only on sheet Stock",
    "print settings on sheet Sales",
    "the protection of the workbook",
    "calculation by hand only",
    "repeated calculation of circular references",
    "macros",
    "custom XML data",
    "custom document properties",
    "a link to another workbook",
    "the record of which add-ins the file uses",
    "a part that is not understood (xl/brewing/kettle1.xml)",
  ]);
});

test.each([
  [
    "conditional formats",
    "<pageMargins",
    '<conditionalFormatting sqref="A1"><cfRule type="expression" priority="1"><formula>1</formula></cfRule></conditionalFormatting>',
  ],
  ["protection", "<pageMargins", '<sheetProtection sheet="1"/>'],
  [
    "hyperlinks",
    "<pageMargins",
    '<hyperlinks><hyperlink ref="A1" location="Stock!A1"/></hyperlinks>',
  ],
  ["a filter", "<pageMargins", '<autoFilter ref="A1:A2"/>'],
  [
    "print settings",
    "</worksheet>",
    '<pageSetup orientation="landscape"/><headerFooter><oddFooter>x</oddFooter></headerFooter>',
  ],
  ["a background picture", "</worksheet>", "<picture/>"],
  [
    "form controls",
    "</worksheet>",
    '<mc:AlternateContent xmlns:mc="x"><mc:Choice><controls/></mc:Choice></mc:AlternateContent>',
  ],
  [
    "sparklines",
    "</worksheet>",
    '<extLst><ext uri="x"><x14:sparklineGroups xmlns:x14="x"/></ext></extLst>',
  ],
  [
    "an extension (kettles)",
    "</worksheet>",
    '<extLst><ext uri="x"><kettles/></ext></extLst>',
  ],
  ["something that is not understood (kettles)", "</worksheet>", "<kettles/>"],
  [
    "hidden rows or columns",
    "<sheetData>",
    '<cols><col min="4" max="4" hidden="1"/></cols>',
  ],
  [
    "grouped rows or columns",
    "<sheetData>",
    '<cols><col min="4" max="4" outlineLevel="1"/></cols>',
  ],
  [
    "the rule for what may be typed in A1:A3",
    "<pageMargins",
    '<dataValidations><dataValidation type="custom" sqref="A1:A3"><formula1>A1&gt;B1</formula1></dataValidation></dataValidations>',
  ],
])("%s", async (said, mark, element) => {
  expect(await lossesIn({ [first]: before(mark, element) })).toEqual([
    `${said} on sheet Sales`,
  ]);
});

test("what a table has beyond headings and rows is told, and its rows do not take in the totals", async () => {
  const bytes = withParts(await writeXlsx(book), {
    "xl/tables/table1.xml": (xml) =>
      xml
        .replace('totalsRowShown="0"', 'totalsRowCount="1"')
        .replace(
          '<autoFilter ref="A1:A3"/>',
          '<autoFilter ref="A1:A2"><filterColumn colId="0"/></autoFilter>',
        ),
  });
  const { workbook, losses } = await readXlsx(bytes, "stock.xlsx");
  expect(losses).toEqual([
    "the totals row of table Stock on sheet Stock",
    "the filter set on table Stock on sheet Stock",
  ]);
  expect(workbook.sheets[1]?.tables[0]?.area).toEqual({
    row: 0,
    column: 0,
    rows: 2,
    columns: 1,
  });
});

test("a rule kept in the newer extension form is read like any other", async () => {
  const bytes = withParts(await writeXlsx(book), {
    [second]: (xml) =>
      xml.replace(
        "</worksheet>",
        '<extLst><ext uri="{CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF}"><x14:dataValidations xmlns:x14="a" xmlns:xm="b"><x14:dataValidation type="list" allowBlank="1" errorStyle="warning"><x14:formula1><xm:f>Sales!A1:$A$4</xm:f></x14:formula1><xm:sqref>B2:B4 D5</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst></worksheet>',
      ),
  });
  const { workbook, losses } = await readXlsx(bytes, "stock.xlsx");
  expect(losses).toEqual([]);
  expect(workbook.sheets[1]?.validations).toEqual([
    {
      area: { row: 1, column: 1, rows: 3, columns: 1 },
      rule: { kind: "list from", source: "Sales!A1:$A$4" },
    },
    {
      area: { row: 4, column: 3, rows: 1, columns: 1 },
      rule: { kind: "list from", source: "Sales!C4:$A$4" },
    },
  ]);
});

test("dates counted from 1904 are carried over and told", async () => {
  const dated: Workbook = {
    ...book,
    sheets: [
      sheetOf({
        name: "Sales",
        cells: [
          { row: 0, column: 0, value: 44_255, style: { format: "yyyy-mm-dd" } },
          { row: 0, column: 1, value: 44_255 },
        ],
      }),
    ],
  };
  const bytes = withParts(await writeXlsx(dated), {
    "xl/workbook.xml": before("<bookViews>", '<workbookPr date1904="1"/>'),
  });
  const { workbook, losses } = await readXlsx(bytes, "old.xlsx");
  expect(losses).toEqual([expect.stringContaining("days counted from 1904")]);
  expect(workbook.sheets[0]?.cells.map(({ value }) => value)).toEqual([
    45_717, 44_255,
  ]);
});

test("looks the model has no word for are told; chart sheets do not stop the reading", async () => {
  const other = new ExcelJS.Workbook();
  const sheet = other.addWorksheet("Labels");
  sheet.getCell("A1").value = "struck";
  sheet.getCell("A1").font = {
    strike: true,
    underline: true,
    name: "Calibri",
    size: 11,
  };
  sheet.getCell("A2").value = "mid";
  sheet.getCell("A2").alignment = { vertical: "middle", textRotation: 90 };
  sheet.getCell("A3").border = { top: { style: "dotted" } };
  sheet.getCell("A4").value = {
    richText: [{ text: "two " }, { text: "looks", font: { bold: true } }],
  };
  sheet.getCell("A5").value = {
    text: "a link",
    hyperlink: "https://example.org",
  };
  sheet.addConditionalFormatting({
    ref: "A1:A3",
    rules: [
      {
        type: "expression",
        priority: 1,
        formulae: ["TRUE"],
        style: { font: { bold: true } },
      },
    ],
  });
  await sheet.protect("syrup", { spinCount: 1 });
  const bytes = withParts(new Uint8Array(await other.xlsx.writeBuffer()), {
    "xl/workbook.xml": (xml) =>
      xml.replace(
        "</sheets>",
        '<sheet name="Prices by month" sheetId="9" r:id="rId99"/></sheets>',
      ),
    "xl/_rels/workbook.xml.rels": (xml) =>
      xml.replace(
        "</Relationships>",
        relations(["rId99", "chartsheet", "chartsheets/sheet1.xml"]).replace(
          /<\/?Relationships[^>]*>/g,
          "",
        ) + "</Relationships>",
      ),
    "xl/chartsheets/sheet1.xml": "<chartsheet/>",
  });
  const { workbook, losses } = await readXlsx(bytes, "labels.xlsx");
  expect(workbook.sheets.map(({ name }) => name)).toEqual(["Labels"]);
  expect(workbook.sheets[0]?.cells[3]?.value).toBe("two looks");
  expect([...losses].sort()).toEqual(
    [
      "underlining",
      "struck-out text",
      "vertical alignment",
      "turned text",
      "other kinds of edges",
      "text with several looks in one cell",
      "conditional formats",
      "hyperlinks",
      "protection",
      // This library writes print settings whether asked or not.
      "print settings",
    ]
      .map((thing) => `${thing} on sheet Labels`)
      .concat("the chart sheet Prices by month")
      .sort(),
  );
});
