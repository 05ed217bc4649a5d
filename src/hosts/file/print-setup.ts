import type { WriteSheet } from "hucre/xlsx";
import { fixedAddress } from "../../sheets/address";
import { printedArea } from "../../sheets/printed-area";
import type { PrintSetup, Sheet } from "../../sheets/workbook";
import { textFromFile, textInFile } from "./worksheet-text";
import { childNamed, flagOf, type XmlElement } from "./xml";

const PAGES = { en: "&RPage &P of &N", fr: "&RPage &P sur &N" } as const;

/** Print settings as the writing library takes them. */
export function printToFile(
  sheet: Sheet,
): Pick<WriteSheet, "pageSetup" | "headerFooter"> {
  const { print } = sheet;
  if (!print) return {};
  const area = printedArea(sheet);
  const { paper, landscape, fit, headings, foot, language = "en" } = print;
  const { across = 1 } = print;
  return {
    pageSetup: {
      paperSize: paper,
      orientation: landscape ? "landscape" : "portrait",
      fitToPage: true,
      fitToWidth: across,
      fitToHeight: fit === "one page" ? 1 : 0,
      ...(headings
        ? {
            printTitlesRow: `$${headings.first + 1}:$${headings.first + headings.rows}`,
          }
        : {}),
      ...(across > 1 ? { printTitlesColumn: FIRST_COLUMN } : {}),
      ...(area
        ? {
            printArea: `$A$1:${fixedAddress(area.rows - 1, area.columns - 1)}`,
          }
        : {}),
    },
    headerFooter: {
      // "&" starts a code in a foot; written twice it is itself.
      oddFooter: `&L${textInFile(foot ?? "").replace(/&/g, "&&")}${PAGES[language]}`,
    },
  };
}

const FIRST_COLUMN = "$A:$A";

/** The library leaves the sheet's name in front of repeated rows and columns without the quotes it needs, and the columns last. */
export const quotedPrintTitles = (
  xml: string,
  sheetReferences: readonly string[],
): string =>
  xml
    .replace(
      /(<definedName name="_xlnm\.Print_Titles" localSheetId="(\d+)"[^>]*>)([^<]*)</g,
      (_, start: string, sheet: string, repeated: string) =>
        `${start}${[/\$[A-Z]+:\$[A-Z]+$/, /\$\d+:\$\d+(?=,|$)/]
          .flatMap((one) => one.exec(repeated)?.[0] ?? [])
          .map((area) => `${sheetReferences[Number(sheet)] ?? ""}${area}`)
          .join(",")}<`,
    )
    .replace(
      /(<definedName name="_xlnm\.Print_Area" localSheetId="(\d+)"[^>]*>)[^<]*(\$A\$1:\$[A-Z]+\$\d+<)/g,
      (_, start: string, sheet: string, area: string) =>
        `${start}${sheetReferences[Number(sheet)] ?? ""}${area}`,
    );

/** The print settings of a worksheet when the model holds them whole. */
export function printFromFile(
  worksheet: XmlElement,
  { repeated, printed }: PrintNames,
): PrintSetup | undefined {
  const setup = childNamed(worksheet, "pageSetup")?.attributes;
  const foot = footOf(childNamed(worksheet, "headerFooter"));
  const fitted = flagOf(
    childNamed(childNamed(worksheet, "sheetPr"), "pageSetUpPr"),
    "fitToPage",
  );
  const paper = papers[setup?.["paperSize"] ?? ""];
  if (!setup || foot === undefined || !fitted || !paper) return undefined;
  const plain = Object.keys(setup).every((name) => carried.has(name));
  const across = Number(setup["fitToWidth"] ?? "1");
  const isPlain = plain && Number.isInteger(across) && across > 0;
  const height = setup["fitToHeight"] ?? "1";
  const rows = /!\$(\d+):\$(\d+)$/.exec(repeated ?? "");
  const hasColumn = /^[^,]*!\$A:\$A(,|$)/.test(repeated ?? "");
  const upTo = upToOf(printed);
  if (
    !isPlain ||
    (printed !== undefined && !upTo) ||
    hasColumn !== across > 1 ||
    !["0", "1"].includes(height) ||
    (repeated !== undefined && !rows && !hasColumn)
  )
    return undefined;
  return {
    paper,
    landscape: setup["orientation"] === "landscape",
    fit: height === "1" ? "one page" : "one page wide",
    ...(across > 1 ? { across } : {}),
    ...(rows
      ? {
          headings: {
            first: Number(rows[1]) - 1,
            rows: Number(rows[2]) - Number(rows[1]) + 1,
          },
        }
      : {}),
    ...(upTo ? { upTo } : {}),
    ...foot,
  };
}

/** What a workbook's names say of the printing of one sheet, as they refer to it. */
export interface PrintNames {
  readonly repeated: string | undefined;
  readonly printed: string | undefined;
}

/** The model counts printed cells from the first; any other area is not carried. */
function upToOf(printed: string | undefined): PrintSetup["upTo"] {
  const corner = /!\$A\$1:\$([A-Z]{1,3})\$(\d+)$/.exec(printed ?? "");
  return corner
    ? {
        columns: [...(corner[1] ?? "")].reduce(
          (columns, letter) => columns * 26 + letter.charCodeAt(0) - 64,
          0,
        ),
        rows: Number(corner[2]),
      }
    : undefined;
}

const carried = new Set(
  "paperSize orientation fitToWidth fitToHeight".split(" "),
);

const papers: Readonly<Record<string, PrintSetup["paper"]>> = {
  "1": "letter",
  "9": "a4",
};

/** Our own kind of foot, or undefined for any other header and footer. */
function footOf(
  element: XmlElement | undefined,
): Pick<PrintSetup, "foot" | "language"> | undefined {
  const [only, ...more] = element?.children ?? [];
  if (!only || only.name !== "oddFooter" || more.length > 0) return undefined;
  const text = textFromFile(only.text);
  const isFrench = text.endsWith(PAGES.fr);
  const pages = PAGES[isFrench ? "fr" : "en"];
  if (!text.startsWith("&L") || !text.endsWith(pages)) return undefined;
  const pieces = text.slice(2, -pages.length).split("&&");
  if (pieces.some((piece) => piece.includes("&"))) return undefined;
  const foot = pieces.join("&");
  return {
    ...(foot === "" ? {} : { foot }),
    ...(isFrench ? { language: "fr" } : {}),
  };
}
