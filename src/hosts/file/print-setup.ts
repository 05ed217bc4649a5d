import type { WriteSheet } from "hucre/xlsx";
import type { PrintSetup, Sheet } from "../../sheets/workbook";
import { textFromFile, textInFile } from "./worksheet-text";
import { childNamed, flagOf, type XmlElement } from "./xml";

const PAGE = "&RPage &P of &N";

/** Print settings as the writing library takes them. */
export function printToFile({
  print,
}: Sheet): Pick<WriteSheet, "pageSetup" | "headerFooter"> {
  if (!print) return {};
  const { paper, landscape, fit, headings, foot } = print;
  return {
    pageSetup: {
      paperSize: paper,
      orientation: landscape ? "landscape" : "portrait",
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: fit === "one page" ? 1 : 0,
      ...(headings
        ? {
            printTitlesRow: `$${headings.first + 1}:$${headings.first + headings.rows}`,
          }
        : {}),
    },
    headerFooter: {
      // "&" starts a code in a foot; written twice it is itself.
      oddFooter: `&L${textInFile(foot ?? "").replace(/&/g, "&&")}${PAGE}`,
    },
  };
}

/** The library leaves the sheet's name in front of repeated rows without the quotes it needs. */
export const quotedPrintTitles = (
  xml: string,
  sheetReferences: readonly string[],
): string =>
  xml.replace(
    /(<definedName name="_xlnm\.Print_Titles" localSheetId="(\d+)"[^>]*>)[^<]*(\$\d+:\$\d+<)/g,
    (_, start: string, sheet: string, rows: string) =>
      `${start}${sheetReferences[Number(sheet)] ?? ""}${rows}`,
  );

/** The print settings of a worksheet when the model holds them whole. */
export function printFromFile(
  worksheet: XmlElement,
  repeated: string | undefined,
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
  if (!plain || (setup["fitToWidth"] ?? "1") !== "1") return undefined;
  const height = setup["fitToHeight"] ?? "1";
  const rows = /!\$(\d+):\$(\d+)$/.exec(repeated ?? "");
  if (!["0", "1"].includes(height) || (repeated !== undefined && !rows))
    return undefined;
  return {
    paper,
    landscape: setup["orientation"] === "landscape",
    fit: height === "1" ? "one page" : "one page wide",
    ...(rows
      ? {
          headings: {
            first: Number(rows[1]) - 1,
            rows: Number(rows[2]) - Number(rows[1]) + 1,
          },
        }
      : {}),
    ...(foot === "" ? {} : { foot }),
  };
}

const carried = new Set(
  "paperSize orientation fitToWidth fitToHeight".split(" "),
);

const papers: Readonly<Record<string, PrintSetup["paper"]>> = {
  "1": "letter",
  "9": "a4",
};

/** Our own kind of foot, or undefined for any other header and footer. */
function footOf(element: XmlElement | undefined): string | undefined {
  const [only, ...more] = element?.children ?? [];
  if (!only || only.name !== "oddFooter" || more.length > 0) return undefined;
  const text = textFromFile(only.text);
  if (!text.startsWith("&L") || !text.endsWith(PAGE)) return undefined;
  const [...pieces] = text.slice(2, -PAGE.length).split("&&");
  return pieces.some((piece) => piece.includes("&"))
    ? undefined
    : pieces.join("&");
}
