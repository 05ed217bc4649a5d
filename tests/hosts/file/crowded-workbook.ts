import { writeXlsx } from "hucre/xlsx";
import { partsOf, withParts } from "./packages";

const RELATIONS =
  "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** Bytes no program of ours reads: macros and printers have their own. */
const PRINTER = "\u0001\u0000Tray 2\u0000";
const MACROS = new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 7, 7, 7, 0, 255, 254]);

/**
 * A workbook with macros and with every kind of part that a program leaves alone: a calculation chain, custom XML,
 * printer settings, slicers of a table, and extensions nobody here knows.
 */
export async function crowdedWorkbook(): Promise<Uint8Array> {
  const plain = await writeXlsx({
    sheets: [
      {
        name: "Scale 'n yard",
        rows: [
          ["Ticket", "Gross lb", "Net lb"],
          ["W-1", 3044, null],
          ["W-2", 3051, null],
        ],
        cells: new Map([
          ["1,2", { formulaResult: 2912, formula: "B2-132" }],
          ["2,2", { formulaResult: 2919, formula: "B3-132" }],
        ]),
        tables: [
          {
            name: "Weighed",
            range: "A1:C3",
            columns: [
              { name: "Ticket" },
              { name: "Gross lb" },
              { name: "Net lb" },
            ],
          },
        ],
        charts: [
          {
            type: "column",
            title: "Gross by ticket",
            series: [
              {
                name: "Gross",
                categories: "'Scale ''n yard'!$A$2:$A$3",
                values: "'Scale ''n yard'!$B$2:$B$3",
              },
            ],
            anchor: { from: { row: 5, col: 0 }, to: { row: 18, col: 6 } },
          },
        ],
        pageSetup: { orientation: "landscape", paperSize: "letter" },
      },
    ],
    vbaProject: MACROS,
  });
  const relation = (id: string, kind: string, target: string): string =>
    `<Relationship Id="${id}" Type="${kind}" Target="${target}"/>`;
  const into = (closing: string, more: string) => (xml: string) =>
    xml.replace(closing, () => more + closing);
  const types = [
    ["/xl/calcChain.xml", "spreadsheetml.calcChain+xml"],
    ["/customXml/itemProps1.xml", "customXmlProperties+xml"],
  ].map(
    ([part, kind]) =>
      `<Override PartName="${part}" ContentType="application/vnd.openxmlformats-officedocument.${kind}"/>`,
  );
  const slicers = [
    ["/xl/slicers/slicer1.xml", "slicer+xml"],
    ["/xl/slicerCaches/slicerCache1.xml", "slicerCache+xml"],
  ].map(
    ([part, kind]) =>
      `<Override PartName="${part}" ContentType="application/vnd.ms-excel.${kind}"/>`,
  );
  const sheet = "xl/worksheets/sheet1.xml";
  const sheetRelations = "xl/worksheets/_rels/sheet1.xml.rels";
  const hasPageSetup = partsOf(plain)[sheet]?.includes("<pageSetup") === true;
  return withParts(plain, {
    "[Content_Types].xml": into(
      "</Types>",
      `<Default Extension="bin" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.printerSettings"/>`
        .repeat(
          partsOf(plain)["[Content_Types].xml"]?.includes('"bin"') ? 0 : 1,
        )
        .concat(
          `<Override PartName="/xl/printerSettings/printerSettings1.bin" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.printerSettings"/>`,
          ...types,
          ...slicers,
        ),
    ),
    "xl/_rels/workbook.xml.rels": into(
      "</Relationships>",
      relation("rId901", `${RELATIONS}/calcChain`, "calcChain.xml") +
        relation("rId902", `${RELATIONS}/customXml`, "../customXml/item1.xml") +
        relation(
          "rId903",
          "http://schemas.microsoft.com/office/2007/relationships/slicerCache",
          "slicerCaches/slicerCache1.xml",
        ),
    ),
    "xl/workbook.xml": into(
      "</workbook>",
      `<extLst><ext uri="{46BE6895-7355-4a93-B00E-2C351335B9C9}" xmlns:x15="http://schemas.microsoft.com/office/spreadsheetml/2010/11/main"><x15:slicerCaches xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main"><x14:slicerCache r:id="rId903"/></x15:slicerCaches></ext><ext uri="{0BADCAFE-0000-4000-8000-00000000F00D}"><un:known xmlns:un="urn:example:nobody">kept</un:known></ext></extLst>`,
    ),
    "xl/calcChain.xml": `<?xml version="1.0" encoding="UTF-8"?><calcChain xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><c r="C3" i="1"/><c r="C2" i="1"/></calcChain>`,
    "customXml/item1.xml": `<notes xmlns="urn:example:notes"><n>Keep — as it is</n></notes>`,
    "customXml/itemProps1.xml": `<ds:datastoreItem ds:itemID="{11111111-2222-4333-8444-555555555555}" xmlns:ds="http://schemas.openxmlformats.org/officeDocument/2006/customXml"/>`,
    "customXml/_rels/item1.xml.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${relation("rId1", `${RELATIONS}/customXmlProps`, "itemProps1.xml")}</Relationships>`,
    "xl/printerSettings/printerSettings1.bin": PRINTER,
    "xl/slicers/slicer1.xml": `<slicers xmlns="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main"><slicer name="Ticket" cache="Slicer_Ticket" caption="Ticket" rowHeight="241300"/></slicers>`,
    "xl/slicerCaches/slicerCache1.xml": `<slicerCacheDefinition xmlns="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main" name="Slicer_Ticket" sourceName="Ticket"/>`,
    [sheetRelations]: into(
      "</Relationships>",
      relation(
        "rId904",
        `${RELATIONS}/printerSettings`,
        "../printerSettings/printerSettings1.bin",
      ) +
        relation(
          "rId905",
          "http://schemas.microsoft.com/office/2007/relationships/slicer",
          "../slicers/slicer1.xml",
        ),
    ),
    [sheet]: (xml) =>
      into(
        "</worksheet>",
        `<extLst><ext uri="{3A4CF648-6AED-40f4-86FF-DC5316D8AED3}" xmlns:x15="http://schemas.microsoft.com/office/spreadsheetml/2010/11/main"><x14:slicerList xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main"><x14:slicer r:id="rId905"/></x14:slicerList></ext></extLst>`,
      )(
        hasPageSetup
          ? xml.replace("<pageSetup", `<pageSetup r:id="rId904"`)
          : xml,
      ),
  });
}

/** The parts a careless program loses, whose bytes must be what they were. */
export const crowdedParts = [
  "xl/vbaProject.bin",
  "xl/calcChain.xml",
  "customXml/item1.xml",
  "customXml/itemProps1.xml",
  "customXml/_rels/item1.xml.rels",
  "xl/printerSettings/printerSettings1.bin",
  "xl/slicers/slicer1.xml",
  "xl/slicerCaches/slicerCache1.xml",
] as const;
