import { printedArea } from "../../sheets/printed-area";
import type { Area, PrintSetup, Sheet } from "../../sheets/workbook";
import { addressLists, addressOf, wholeColumn, wholeRow } from "./areas";
import { onSheet } from "./on-sheet";
import type { Step } from "./step";

/** Widths, heights, merged cells, what stays in view, the printed page and the tab. */
export const layoutStep = (sheet: Sheet): Step => ({
  bytes: 2500 + 400 * sheet.merges.length,
  run: (context) => {
    const on = onSheet(context, sheet);
    for (const merge of sheet.merges)
      on.getRange(addressOf(merge)).merge(false);
    for (const [width, columns] of bySize(sheet.widths))
      for (const list of addressLists(columns.map(wholeColumn)))
        on.getRanges(list).format.columnWidth = columnPoints(width);
    for (const [height, rows] of bySize(sheet.heights))
      for (const list of addressLists(rows.map(wholeRow)))
        on.getRanges(list).format.rowHeight = height;
    freeze(on, sheet.frozen);
    if (sheet.print) setUpPage(on, sheet.print, printedArea(sheet));
    if (sheet.tabColor !== undefined) on.tabColor = sheet.tabColor;
    if (sheet.hidden) on.visibility = "Hidden";
  },
});

/** A column so many characters wide: seven pixels each and five beside, at 96 pixels and 72 points an inch. */
export const columnPoints = (characters: number): number =>
  (characters * 7 + 5) * 0.75;

/** Indexes that share a size, by size. */
function bySize(
  sizes: Readonly<Record<number, number>>,
): readonly (readonly [number, readonly number[]])[] {
  const groups = new Map<number, number[]>();
  for (const [index, size] of Object.entries(sizes))
    groups.set(size, [...(groups.get(size) ?? []), Number(index)]);
  return [...groups];
}

function freeze(on: Excel.Worksheet, { rows, columns }: Sheet["frozen"]): void {
  if (rows > 0 && columns > 0)
    on.freezePanes.freezeAt(on.getRangeByIndexes(0, 0, rows, columns));
  else if (rows > 0) on.freezePanes.freezeRows(rows);
  else if (columns > 0) on.freezePanes.freezeColumns(columns);
}

function setUpPage(
  on: Excel.Worksheet,
  print: PrintSetup,
  printed: Area | undefined,
): void {
  const page = on.pageLayout;
  if (printed) page.setPrintArea(addressOf(printed));
  page.orientation = print.landscape ? "Landscape" : "Portrait";
  page.paperSize = print.paper === "letter" ? "Letter" : "A4";
  page.zoom =
    print.fit === "one page"
      ? { horizontalFitToPages: 1, verticalFitToPages: 1 }
      : { horizontalFitToPages: print.across ?? 1 };
  if ((print.across ?? 1) > 1) page.setPrintTitleColumns("$A:$A");
  if (print.headings) {
    const { first, rows } = print.headings;
    page.setPrintTitleRows(`$${first + 1}:$${first + rows}`);
  }
  const foot = page.headersFooters.defaultForAllPages;
  // "&" starts a code in the foot of a page.
  if (print.foot !== undefined)
    foot.leftFooter = print.foot.replace(/&/g, "&&");
  foot.rightFooter = "&P / &N";
}
