import { readXlsx as readFile } from "hucre/xlsx";
import { CannotAnswer, unusable } from "../../measures/cannot-answer";
import type { DefinedName, Workbook } from "../../sheets/workbook";
import { baseFont } from "./cell-style";
import { formulaFromFile } from "./formula-text";
import { lossesOf } from "./losses";
import { partXml, unpack, workbookPart, type Parts } from "./package-parts";
import { refuseDamaged } from "./patch/sound-zip";
import type { PrintNames } from "./print-setup";
import { readSheet } from "./read-sheet";
import { sheetEntries } from "./sheet-entries";
import { textFromFile } from "./worksheet-text";
import { childNamed, childrenNamed, flagOf, type XmlElement } from "./xml";

/**
 * The workbook in an .xlsx file, and `losses`: in plain words, each thing in the file that the workbook does not carry,
 * so that writing it again would lose it. Throws one sentence naming the file when it is damaged, locked with a
 * password or no .xlsx file.
 */
export async function readXlsx(
  bytes: Uint8Array,
  fileName: string,
): Promise<{
  readonly workbook: Workbook;
  readonly losses: readonly string[];
}> {
  refuseOtherKinds(bytes, fileName);
  try {
    const parts = unpack(bytes);
    refuseDamaged(bytes, parts, fileName);
    return await readPackage(parts, bytes);
  } catch (error) {
    if (error instanceof CannotAnswer) throw error;
    const reason =
      error instanceof Error ? error.message.replace(/\.$/, "") : "";
    throw unusable(
      `${fileName} is damaged or is not an .xlsx workbook${reason ? ` (${reason})` : ""}.`,
    );
  }
}

function refuseOtherKinds(bytes: Uint8Array, fileName: string): void {
  if (bytes.length === 0) throw unusable(`${fileName} is empty.`);
  const starts = (...signature: readonly number[]): boolean =>
    signature.every((byte, i) => bytes[i] === byte);
  if (starts(0xd0, 0xcf, 0x11, 0xe0))
    throw unusable(
      `${fileName} is locked with a password or is a workbook of the older .xls kind; save it as .xlsx without a password and try again.`,
    );
  if (!starts(0x50, 0x4b))
    throw unusable(`${fileName} is not an .xlsx workbook.`);
}

async function readPackage(
  parts: Parts,
  bytes: Uint8Array,
): ReturnType<typeof readXlsx> {
  const workbookName = workbookPart(parts);
  if (!workbookName) throw new Error("it holds no workbook");
  const book = partXml(parts, workbookName);
  const entries = sheetEntries(parts, workbookName, book);
  const worksheets = entries.filter(({ kind }) => kind === "worksheet");
  const kept = entries.map(({ kind }) => kind === "worksheet");
  const library = await readFile(bytes, {
    readStyles: true,
    sheets: (_, index) => kept[index] ?? false,
  });
  if (library.sheets.length !== worksheets.length)
    throw new Error("its list of sheets does not match its sheets");
  const shifted = flagOf(childNamed(book, "workbookPr"), "date1904");
  const style = {
    theme: library.themeColors ?? [],
    font: library.defaultFont ?? baseFont,
  };
  const read = worksheets.map(({ part, name, hidden }, index) =>
    readSheet({
      parts,
      part,
      name,
      hidden,
      library: library.sheets[index] as (typeof library.sheets)[number],
      style,
      dateShift: shifted ? daysTo1904 : 0,
      printNames: printNamesOf(
        book,
        entries.findIndex((e) => e.part === part),
      ),
    }),
  );
  return {
    workbook: {
      title: textFromFile(library.properties?.title ?? ""),
      sheets: read.map(({ sheet }) => sheet),
      names: namesOf(book),
    },
    losses: lossesOf({
      parts,
      workbookName,
      book,
      entries,
      font: style.font,
      inSheets: read.map(({ sheet, lost, carriedParts }) => ({
        sheet: sheet.name,
        lost,
        carriedParts,
        printCarried: sheet.print !== undefined,
      })),
    }),
  };
}

/** What the names for the rows a sheet's pages repeat and for the cells it prints refer to. */
const printNamesOf = (book: XmlElement, sheet: number): PrintNames => {
  const named = (name: string): string | undefined =>
    childrenNamed(childNamed(book, "definedNames"), "definedName").find(
      ({ attributes }) =>
        attributes["name"] === `_xlnm.${name}` &&
        Number(attributes["localSheetId"]) === sheet,
    )?.text;
  return { repeated: named("Print_Titles"), printed: named("Print_Area") };
};

/** Days between the two dates a workbook may count from. */
const daysTo1904 = 1_462;

/** Names for the whole workbook; what the program keeps for itself (print areas, filters) is not among them. */
const namesOf = (book: XmlElement): readonly DefinedName[] =>
  childrenNamed(childNamed(book, "definedNames"), "definedName")
    .filter(
      ({ attributes }) =>
        attributes["localSheetId"] === undefined &&
        !attributes["name"]?.startsWith("_xlnm."),
    )
    .map(({ attributes, text }) => ({
      name: textFromFile(attributes["name"] ?? ""),
      refersTo: formulaFromFile(textFromFile(text)).slice(1),
    }));
