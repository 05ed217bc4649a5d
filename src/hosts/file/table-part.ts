import type { Area, Table, TableColumn } from "../../sheets/workbook";
import { formulaFromFile, formulaInFile } from "./formula-text";
import { areaOf, areaReference } from "./ranges";
import { textFromFile, textInAttribute, textInFile } from "./worksheet-text";
import {
  childNamed,
  childrenNamed,
  escapeXml,
  flagOf,
  type XmlElement,
} from "./xml";

/** The part that makes an area a real table: filter buttons, columns and the formulas that new rows take over. */
export function tablePart(table: Table, id: number): string {
  const name = escapeXml(textInAttribute(table.name));
  const reference = areaReference(tableArea(table));
  return (
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>' +
    `<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="${id}" name="${name}" displayName="${name}" ref="${reference}" totalsRowShown="0">` +
    `<autoFilter ref="${reference}"/>` +
    `<tableColumns count="${table.columns.length}">${table.columns.map(columnPart).join("")}</tableColumns>` +
    `<tableStyleInfo name="${tableLook}" showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/>` +
    "</table>"
  );
}

/** A plain look of the file format's own set, for the cells carry their looks themselves. */
const tableLook = "TableStyleLight1";

/** A table in a file needs a row below its headings, be it blank. */
export const tableArea = ({ area }: Table): Area => ({
  ...area,
  rows: Math.max(2, area.rows),
});

/** A table as read, and what of it the model does not carry, in words; no table when it has no heading row. */
export interface TableRead {
  readonly table?: Table;
  readonly lost: readonly string[];
}

export function tableFromPart(part: XmlElement): TableRead {
  const { attributes } = part;
  const name = textFromFile(
    attributes["displayName"] ?? attributes["name"] ?? "",
  );
  if (attributes["headerRowCount"] === "0")
    return { lost: [`table ${name}, which has no heading row,`] };
  const area = areaOf(attributes["ref"] ?? "");
  const totals = Number(attributes["totalsRowCount"] ?? 0);
  const filter = childNamed(part, "autoFilter");
  return {
    table: {
      name,
      area: { ...area, rows: area.rows - totals },
      columns: childrenNamed(
        childNamed(part, "tableColumns"),
        "tableColumn",
      ).map(columnFromPart),
    },
    lost: [
      ...(totals > 0 ? [`the totals row of table ${name}`] : []),
      ...(filter && filter.children.length > 0
        ? [`the filter set on table ${name}`]
        : []),
    ],
  };
}

function columnPart({ heading, formula }: TableColumn, index: number): string {
  const start = `<tableColumn id="${index + 1}" name="${escapeXml(textInAttribute(heading))}"`;
  return formula === undefined
    ? `${start}/>`
    : `${start}><calculatedColumnFormula>${escapeXml(textInFile(formulaInFile(formula)))}</calculatedColumnFormula></tableColumn>`;
}

function columnFromPart(column: XmlElement): TableColumn {
  const formula = childNamed(column, "calculatedColumnFormula");
  return {
    heading: textFromFile(column.attributes["name"] ?? ""),
    ...(formula && !flagOf(formula, "array")
      ? { formula: formulaFromFile(textFromFile(formula.text)) }
      : {}),
  };
}
