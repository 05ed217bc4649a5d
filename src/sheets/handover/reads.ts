import { withAddresses } from "../formula-names";
import type { Content } from "../model";
import type { Area } from "../workbook";
import type { Figure } from "./figures";

/** What a formula of a sheet reads. */
export interface Reads {
  /** Rectangles of its own sheet. */
  readonly areas: readonly Area[];
  readonly tables: readonly {
    readonly table: string;
    readonly column: string;
  }[];
  readonly otherSheets: boolean;
}

const nothing: Reads = { areas: [], tables: [], otherSheets: false };

/** The text a copy's formula is written from: plain functions where the two forms differ. */
export const formulaText = (
  content: Content | undefined,
): string | undefined =>
  typeof content === "object"
    ? (content.portable ?? content.formula)
    : undefined;

/** What the formula of a figure reads, once its names have addresses. */
export function readsOf(
  { self }: Pick<Figure, "self">,
  text: string | undefined,
  places: ReadonlyMap<string, Area>,
): Reads {
  if (text === undefined) return nothing;
  const code = withAddresses(text, self, places).replace(
    /"(?:[^"]|"")*"/g,
    '""',
  );
  const own = code
    .replace(/'(?:[^']|'')+'!\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?/g, " ")
    .replace(/\w+\[[^\]]*\]/g, " ");
  return {
    areas: [...own.matchAll(ADDRESS)].map(areaOf),
    tables: [...code.matchAll(/(\w+)\[([^\]]+)\]/g)].map(
      ([, table = "", column = ""]) => ({ table, column }),
    ),
    otherSheets: /'!/.test(code),
  };
}

const ADDRESS =
  /(?<![\w.$])\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?(?![\w(.])/g;

function areaOf([, c1 = "", r1 = "", c2, r2]: RegExpMatchArray): Area {
  const row = Number(r1) - 1;
  const column = columnNumber(c1);
  return {
    row,
    column,
    rows: (r2 === undefined ? row : Number(r2) - 1) - row + 1,
    columns: (c2 === undefined ? column : columnNumber(c2)) - column + 1,
  };
}

const columnNumber = (letters: string): number =>
  [...letters].reduce((n, letter) => n * 26 + letter.charCodeAt(0) - 64, 0) - 1;
