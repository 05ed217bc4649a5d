import type { Area, Sheet } from "../../sheets/workbook";

const held = new WeakMap<Excel.RequestContext, Map<string, Excel.Worksheet>>();

/** The sheet of this name, asked for once in a piece of work however many steps write to it. */
export function onSheet(
  context: Excel.RequestContext,
  { name }: Pick<Sheet, "name">,
): Excel.Worksheet {
  const sheets = held.get(context) ?? new Map<string, Excel.Worksheet>();
  held.set(context, sheets);
  const sheet = sheets.get(name) ?? context.workbook.worksheets.getItem(name);
  sheets.set(name, sheet);
  return sheet;
}

/** The cells of an area. Always this and no address in text: Excel looks some of those up on the sheet in front. */
export const areaOn = (
  context: Excel.RequestContext,
  sheet: Pick<Sheet, "name">,
  { row, column, rows, columns }: Area,
): Excel.Range =>
  onSheet(context, sheet).getRangeByIndexes(row, column, rows, columns);
