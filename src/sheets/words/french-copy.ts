import { tableList } from "../../book/book";
import { FIGURES_SHEET } from "../handover/cut-tables";
import type { Copy } from "../handover/copy";
import type { Cell, Sheet, Workbook } from "../workbook";
import { inFrench } from "./french";
import type { Renamed } from "./french-formula";
import { sheetInFrench, type Whose } from "./french-sheet";
import { newNames } from "./sheet-names";
import type { Language } from "./language";

/** A copy in the language of its reader: its file and what is looked for in it. The list of what it holds stays ours. */
export function copyIn(copy: Copy, language: Language): Copy {
  if (language === "en") return copy;
  const renamed = renamings(copy.workbook.sheets);
  const whose = ownersOf(copy);
  const translated = (sheet: Sheet): Sheet =>
    sheetInFrench(sheet, renamed, whose(sheet));
  const whole = (workbook: Workbook): Workbook => ({
    ...workbook,
    title: inFrench("layout", workbook.title) ?? workbook.title,
    sheets: workbook.sheets.map(translated),
  });
  const workbook = whole(copy.workbook);
  return {
    ...copy,
    workbook,
    sheets: copy.sheets.map((one) => ({
      ...one,
      sheet: translated(one.sheet),
    })),
    secrets: { ...copy.secrets, bare: whole(copy.secrets.bare) },
  };
}

/** Headings of tables and names of sheets, old to new. */
function renamings(sheets: readonly Sheet[]): Renamed {
  const names = newNames(
    sheets.map(({ name }) => name),
    (name) => inFrench("sheets", name) ?? name,
  );
  return {
    sheet: (name) => names.get(name) ?? name,
    heading: (_, heading) => inFrench("layout", heading) ?? heading,
  };
}

/** Names and numbers somebody gave to something; a word of ours among them is theirs. */
const NAMED = /(^|\.)(product|part|item|lot|name|number|pays|buyer)$/;

function ownersOf({ sheets }: Copy): (sheet: Sheet) => (cell: Cell) => Whose {
  const figures = new Map(
    sheets.map(({ sheet, figures: of }) => [
      sheet.name,
      new Map(
        of.map(({ row, column, of: { figure } }) => [
          `${row},${column}`,
          figure.name,
        ]),
      ),
    ]),
  );
  return (sheet) => {
    const own = figures.get(sheet.name);
    const isChoice = choiceColumns(sheet);
    return ({ row, column }) => {
      if (sheet.name === FIGURES_SHEET && !own)
        return row <= (sheet.tables[0]?.area.row ?? 0)
          ? "layout"
          : isChoice.has(column)
            ? "said"
            : "typed";
      const name = own?.get(`${row},${column}`);
      if (name === undefined) return "layout";
      return NAMED.test(name) ? "typed" : "said";
    };
  };
}

/** Columns of the book whose words are chosen from a list of ours. */
const choiceColumns = ({ tables }: Sheet): ReadonlySet<number> =>
  new Set(
    tables.flatMap(({ name, area, columns }) => {
      const known = tableList.find(([, table]) => table.name === name)?.[1];
      return columns.flatMap(({ heading }, i) => {
        const kind = Object.values(known?.columns ?? {}).find(
          (column) => column.heading === heading,
        )?.term.kind;
        return kind === "choice" || kind === "yes or no"
          ? [area.column + i]
          : [];
      });
    }),
  );
