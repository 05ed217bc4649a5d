import type { Sheet, Workbook } from "../../sheets/workbook";
import { cellAddress, sheetReference } from "../../sheets/address";
import { looksLikeError } from "./error-values";
import { chartMark } from "./chart-to-file";
import { pack, partBytes, partText, unpack } from "./package-parts";
import { quotedPrintTitles } from "./print-setup";
import { tablePart } from "./table-part";
import { escapeXml } from "./xml";

/**
 * Puts right what the writing library leaves: results that are errors, recalculation at every opening unless asked for,
 * calculated columns, notes with spaces at their ends, and anything that would differ from one writing to the next.
 */
export function finishPackage(
  bytes: Uint8Array,
  workbook: Workbook,
  asksToBeCalculated = false,
): Uint8Array {
  const parts = { ...unpack(bytes) };
  const edit = (name: string, change: (text: string) => string): void => {
    if (parts[name]) parts[name] = partBytes(change(partText(parts, name)));
  };
  edit("xl/workbook.xml", (xml) =>
    quotedPrintTitles(
      xml.replace(
        /<calcPr [^>]*\/>/,
        `<calcPr calcId="191029"${asksToBeCalculated ? ' fullCalcOnLoad="1"' : ""}/>`,
      ),
      workbook.sheets.map(({ name }) => escapeXml(`${sheetReference(name)}!`)),
    ),
  );
  edit("docProps/core.xml", (xml) =>
    xml.replace(/<dcterms:modified[^>]*>[^<]*<\/dcterms:modified>/, ""),
  );
  edit("docProps/app.xml", (xml) =>
    xml.replace(
      /<Application>[^<]*</,
      `<Application>${escapeXml("Tare & Tally")}<`,
    ),
  );
  for (const part of Object.keys(parts))
    if (/^xl\/drawings\/drawing\d+\.xml$/.test(part))
      edit(part, (xml) =>
        xml.replace(/ name="Chart (?=\d)/g, ` name="${escapeXml(chartMark)} `),
      );
  const notes = noteShapes();
  let tables = 0;
  workbook.sheets.forEach((sheet, index) => {
    const number = index + 1;
    edit(`xl/worksheets/sheet${number}.xml`, (xml) => typedResults(xml, sheet));
    edit(`xl/comments${number}.xml`, (xml) =>
      xml.replace(/<t>/g, '<t xml:space="preserve">'),
    );
    edit(`xl/drawings/vmlDrawing${number}.vml`, notes);
    for (const table of sheet.tables) {
      tables += 1;
      parts[`xl/tables/table${tables}.xml`] = partBytes(
        tablePart(table, tables),
      );
    }
  });
  return pack(parts);
}

/** The library stores an error result as text, and text that reads like an error as an error. */
function typedResults(xml: string, sheet: Sheet): string {
  const errors = new Set<string>();
  const texts = new Set<string>();
  for (const { row, column, value, formula } of sheet.cells)
    if (typeof value === "object" && value !== null) {
      if (formula !== undefined) errors.add(cellAddress(row, column));
    } else if (
      typeof value === "string" &&
      formula === undefined &&
      looksLikeError(value)
    )
      texts.add(cellAddress(row, column));
  if (errors.size === 0 && texts.size === 0) return xml;
  return xml
    .replace(/<c r="([A-Z]+\d+)"[^>]* t="str"/g, (cell, address: string) =>
      errors.has(address) ? cell.replace(/ t="str"$/, ' t="e"') : cell,
    )
    .replace(
      /(<c r="([A-Z]+\d+)") t="e"([^>]*>)<v>([^<]*)<\/v>/g,
      (cell, start: string, address: string, rest: string, text: string) =>
        texts.has(address)
          ? `${start} t="inlineStr"${rest}<is><t>${text}</t></is>`
          : cell,
    );
}

/** Numbers the shapes of notes anew: every sheet's shapes get blocks of 1024 ids of their own, as many as it needs. */
function noteShapes(): (vml: string) => string {
  let block = 1;
  return (vml) => {
    const first = block;
    let shapes = 0;
    const numbered = vml.replace(/id="_x0000_s\d+"/g, () => {
      shapes += 1;
      return `id="_x0000_s${first * 1024 + shapes}"`;
    });
    block = first + Math.floor(shapes / 1024) + 1;
    const blocks = Array.from({ length: block - first }, (_, i) => first + i);
    return numbered.replace(
      /(<o:idmap [^>]*data=")[^"]*"/,
      `$1${blocks.join(",")}"`,
    );
  };
}
