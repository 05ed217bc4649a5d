import { checkPackage } from "../../../src/hosts/file/check-package";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import { fernkettleBook } from "./fernkettle-book";
import { withParts } from "./packages";

const sheet = "xl/worksheets/sheet1.xml";

describe("each fault a worksheet program would object to is told", () => {
  let good: Uint8Array;
  beforeAll(async () => {
    good = await writeXlsx(fernkettleBook);
  });

  test("and a sound file has none", () => {
    expect(checkPackage(good)).toEqual([]);
  });

  test.each<[string, Parameters<typeof withParts>[1], readonly string[]]>([
    [
      "notes after tables",
      {
        [sheet]: (xml) =>
          xml.replace(
            /(<legacyDrawing [^>]*>)(<tableParts.*<\/tableParts>)/,
            "$2$1",
          ),
      },
      [`${sheet} has legacyDrawing after tableParts, which must come later.`],
    ],
    [
      "an element no worksheet has",
      {
        [sheet]: (xml) => xml.replace("<pageMargins", "<kettle/><pageMargins"),
      },
      [`${sheet} holds kettle, which no worksheet has.`],
    ],
    [
      "a part that is pointed to and missing",
      { "xl/comments2.xml": undefined },
      [
        "xl/worksheets/sheet2.xml points to xl/comments2.xml, which does not exist.",
        "A content type is given for xl/comments2.xml, which does not exist.",
      ],
    ],
    [
      "a relationship that is used and missing",
      {
        [sheet]: (xml) =>
          xml.replace(
            '<legacyDrawing r:id="rId1"',
            '<legacyDrawing r:id="rId8"',
          ),
      },
      [`${sheet} uses the relationship rId8, which does not exist.`],
    ],
    [
      "two tables with one id and one name",
      {
        "xl/tables/table2.xml": (xml) =>
          xml.replace('id="2"', 'id="1"').replace(/ame="Parts"/g, 'ame="LOTS"'),
      },
      ["Two tables have the id 1.", "Two tables are named lots."],
    ],
    [
      "a heading unlike its column",
      {
        "xl/tables/table2.xml": (xml) =>
          xml.replace('name="On hand"', 'name="Counted"'),
      },
      [
        "xl/tables/table2.xml: cell B1 shows On hand where the column is named Counted.",
      ],
    ],
    [
      "two columns of one name in a table wider than its columns",
      {
        "xl/tables/table2.xml": (xml) =>
          xml
            .replace('name="On hand"', 'name="part"')
            .replace(/A1:B3/g, "A1:C3"),
      },
      [
        "xl/tables/table2.xml names 2 columns for an area of 3.",
        "xl/tables/table2.xml has two columns named part.",
        "xl/tables/table2.xml: cell B1 shows On hand where the column is named part.",
      ],
    ],
    [
      "one shape for notes of two sheets",
      {
        "xl/drawings/vmlDrawing2.vml": (vml) =>
          vml.replace("_x0000_s2049", "_x0000_s1025"),
      },
      ["Two notes have the shape _x0000_s1025."],
    ],
    [
      "a part without content type",
      {
        "[Content_Types].xml": (xml) =>
          xml
            .replace(/<Override PartName="\/xl\/styles.xml"[^>]*>/, "")
            .replace(/<Default Extension="vml"[^>]*>/, ""),
      },
      [
        "xl/styles.xml has no content type.",
        "xl/drawings/vmlDrawing1.vml has no content type.",
        "xl/drawings/vmlDrawing2.vml has no content type.",
      ],
    ],
    [
      "our function under its worksheet name",
      {
        [sheet]: (xml) =>
          xml.replace("_xldudf_SYRUP_VOLUME_OF", "SYRUP.VOLUME_OF"),
      },
      [
        `${sheet} has a formula with a function under its worksheet name: SYRUP.VOLUME_OF(Lots[[#This Row],[lb]],66.9)`,
      ],
    ],
    [
      "no workbook",
      { "_rels/.rels": undefined },
      ["The package holds no workbook."],
    ],
  ])("%s", (_, changes, found) => {
    expect([...checkPackage(withParts(good, changes))].sort()).toEqual(
      [...found].sort(),
    );
  });
});
