import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { Contents } from "../../../src/book/contents";
import type { Planted } from "./planted-tables";

type Parts = Record<string, Uint8Array>;

const A_PLACE = 8;
const NS =
  "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** A farm book as it may come from years of use: the same file with secrets in every kind of place a workbook has beside its tables. */
export function withPlantedParts(
  book: Uint8Array,
  planted: Planted,
): Uint8Array {
  const parts: Parts = { ...unzipSync(book) };
  const word = (): string => {
    const made = `Zephyrine Quill ${planted.words.length}`;
    planted.words.push(made);
    return made;
  };
  const figure = (): number => {
    const made = Number(
      (7000.00013 + planted.figures.length * 1.001).toFixed(5),
    );
    planted.figures.push(made);
    return made;
  };
  const words = (count = A_PLACE): readonly string[] =>
    Array.from({ length: count }, word);
  const edit = (part: string, change: (text: string) => string): void => {
    const before = strFromU8(parts[part] ?? new Uint8Array());
    const after = change(before);
    if (after === before) throw new Error(`nothing was planted in ${part}`);
    parts[part] = strToU8(after);
  };
  const add = (
    part: string,
    owner: string,
    kind: string,
    type: string,
    xml: string,
  ): string => {
    parts[part] = strToU8(`<?xml version="1.0" encoding="UTF-8"?>${xml}`);
    edit("[Content_Types].xml", (text) =>
      text.replace(
        "</Types>",
        `<Override PartName="/${part}" ContentType="${type}"/></Types>`,
      ),
    );
    const rels =
      owner === "" ? "_rels/.rels" : owner.replace(/([^/]*)$/, "_rels/$1.rels");
    parts[rels] ??= strToU8(
      '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>',
    );
    const id = `planted${Object.keys(parts).length}`;
    edit(rels, (text) =>
      text.replace(
        "</Relationships>",
        `<Relationship Id="${id}" Type="${NS}/${kind}" Target="/${part}"/></Relationships>`,
      ),
    );
    return id;
  };
  const WORKBOOK = "xl/workbook.xml";
  const SHEET = "xl/worksheets/sheet1.xml";

  // A sheet of the farm's own, hidden, with hidden rows and columns, formulas, formats, choices and a table.
  const rows = words(24).map(
    (text, i) =>
      `<row r="${i + 2}"${i % 2 ? ' hidden="1"' : ""}><c r="A${i + 2}" t="inlineStr"><is><t>${text}</t></is></c><c r="B${i + 2}"><f>1*${figure()}</f><v>${figure()}</v></c></row>`,
  );
  const own = add(
    "xl/worksheets/sheet99.xml",
    WORKBOOK,
    "worksheet",
    `${TYPES}.worksheet+xml`,
    `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="${NS}"><cols><col min="2" max="2" hidden="1" width="9"/></cols><sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>Own</t></is></c><c r="B1" t="inlineStr"><is><t>Worth</t></is></c></row>${rows.join("")}</sheetData>${words()
      .map(
        (text, i) =>
          `<conditionalFormatting sqref="A${i + 2}"><cfRule type="expression" priority="${i + 1}"><formula>A2="${text}"</formula></cfRule></conditionalFormatting>`,
      )
      .join(
        "",
      )}<dataValidations count="1"><dataValidation type="list" sqref="A2:A9" promptTitle="${word()}" prompt="${word()}"><formula1>"${words().join(",")}"</formula1></dataValidation></dataValidations><headerFooter><oddHeader>&amp;C${word()}</oddHeader><oddFooter>&amp;L${word()}&amp;R${figure()}</oddFooter></headerFooter></worksheet>`,
  );
  edit(WORKBOOK, (text) =>
    text.replace(
      "</sheets>",
      `<sheet name="${word()}" sheetId="999" state="hidden" r:id="${own}"/></sheets>`,
    ),
  );
  add(
    "xl/tables/table999.xml",
    "xl/worksheets/sheet99.xml",
    "table",
    `${TYPES}.table+xml`,
    `<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="999" name="Zephyrine_Quill" displayName="Zephyrine_Quill" ref="D1:E2"><tableColumns count="2"><tableColumn id="1" name="${word()}"/><tableColumn id="2" name="${word()}"/></tableColumns></table>`,
  );
  // Names, notes, links and pictures.
  const names = words().map(
    (text, i) =>
      `<definedName name="Zephyrine.${i}" comment="${word()}">"${text}"</definedName>`,
  );
  edit(WORKBOOK, (text) =>
    text.includes("<definedNames>")
      ? text.replace("<definedNames>", `<definedNames>${names.join("")}`)
      : text.replace(
          "</sheets>",
          `</sheets><definedNames>${names.join("")}</definedNames>`,
        ),
  );
  add(
    "xl/comments99.xml",
    SHEET,
    "comments",
    `${TYPES}.comments+xml`,
    `<comments xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><authors><author>${word()}</author></authors><commentList>${words()
      .map(
        (text, i) =>
          `<comment ref="H${i + 20}" authorId="0"><text><r><t>${text.slice(0, 7)}</t></r><r><t>${text.slice(7)}</t></r></text></comment>`,
      )
      .join("")}</commentList></comments>`,
  );
  add(
    "xl/externalLinks/externalLink99.xml",
    WORKBOOK,
    "externalLink",
    `${TYPES}.externalLink+xml`,
    `<externalLink xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><externalBook><sheetNames><sheetName val="${word()}"/></sheetNames><sheetDataSet><sheetData sheetId="0">${words()
      .map(
        (text, i) =>
          `<row r="${i + 1}"><cell r="A${i + 1}" t="str"><v>${text}</v></cell><cell r="B${i + 1}"><v>${figure()}</v></cell></row>`,
      )
      .join("")}</sheetData></sheetDataSet></externalBook></externalLink>`,
  );
  add(
    "xl/pivotCache/pivotCacheRecords99.xml",
    WORKBOOK,
    "pivotCacheRecords",
    `${TYPES}.pivotCacheRecords+xml`,
    `<pivotCacheRecords xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">${words()
      .map((text) => `<r><s v="${text}"/><n v="${figure()}"/></r>`)
      .join("")}</pivotCacheRecords>`,
  );
  add(
    "xl/charts/chart99.xml",
    SHEET,
    "chart",
    "application/vnd.openxmlformats-officedocument.drawingml.chart+xml",
    `<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main"><c:chart><c:title><c:tx><c:rich><a:p><a:r><a:t>${word()}</a:t></a:r></a:p></c:rich></c:tx></c:title><c:strCache>${words()
      .map((text, i) => `<c:pt idx="${i}"><c:v>${text}</c:v></c:pt>`)
      .join(
        "",
      )}</c:strCache><c:numCache>${words(0).join("")}<c:pt idx="0"><c:v>${figure()}</c:v></c:pt></c:numCache></c:chart></c:chartSpace>`,
  );
  add(
    "xl/drawings/drawing99.xml",
    SHEET,
    "drawing",
    "application/vnd.openxmlformats-officedocument.drawing+xml",
    `<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main">${words(
      4,
    )
      .map(
        (text) =>
          `<xdr:sp><xdr:txBody><a:p><a:r><a:t>${text}</a:t></a:r></a:p></xdr:txBody></xdr:sp>`,
      )
      .join("")}</xdr:wsDr>`,
  );
  // What the file says of itself.
  edit("docProps/core.xml", (text) =>
    text.replace(
      "</cp:coreProperties>",
      `<dc:creator xmlns:dc="http://purl.org/dc/elements/1.1/">${word()}</dc:creator><cp:lastModifiedBy>${word()}</cp:lastModifiedBy><cp:keywords>${word()}</cp:keywords></cp:coreProperties>`,
    ),
  );
  edit("docProps/app.xml", (text) =>
    text.replace(
      "</Properties>",
      `<Company>${word()}</Company><Manager>${word()}</Manager></Properties>`,
    ),
  );
  add(
    "docProps/custom.xml",
    "",
    "custom-properties",
    "application/vnd.openxmlformats-officedocument.custom-properties+xml",
    `<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/custom-properties" xmlns:vt="http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes">${words()
      .map(
        (text, i) =>
          `<property fmtid="{D5CDD505-2E9C-101B-9397-08002B2CF9AE}" pid="${i + 2}" name="p${i}"><vt:lpwstr>${text}</vt:lpwstr></property>`,
      )
      .join("")}</Properties>`,
  );
  add(
    "customXml/item99.xml",
    WORKBOOK,
    "customXml",
    "application/xml",
    `<own xmlns="urn:own">${words()
      .map((text) => `<of>${text}</of>`)
      .join("")}</own>`,
  );
  return zipSync(parts);
}

/** Columns of the farm's own beside ours: words, figures and formulas with their stored results. */
export function withOwnColumns(table: Contents, planted: Planted): Contents {
  return {
    ...table,
    headings: [...table.headings, "Own remarks", "Own worth"],
    rows: table.rows.map((row) => {
      const word = `Zephyrine Quill ${planted.words.length} thinks so`;
      const figure = Number(
        (9000.00019 + planted.figures.length * 1.003).toFixed(5),
      );
      planted.words.push(word);
      planted.figures.push(figure);
      return [...row, word, figure];
    }),
  };
}
