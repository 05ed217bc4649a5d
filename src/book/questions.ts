import type { Gallon } from "../measures/gallon";
import { isBlank } from "../functions/read-cell";
import { isoDate, serialOf } from "../measures/read-date";
import { as, type DaySerial } from "../measures/quantity";
import { fromHouse, unitNamed } from "../measures/units";
import { columnWords, type Contents } from "./contents";
import type { Finding } from "./finding";
import { unitSaid } from "./unit-said";
import type { Column, Table } from "./table";
import type { AnyRow } from "./any-row";
import { shown } from "./wording";

type Raw = readonly [row: AnyRow, cells: Readonly<Record<string, unknown>>];

/** Cells that could be read but should be looked at: text understood as a number, blanks that count, unusual figures. */
export function questions(
  table: Table,
  contents: Contents,
  rows: readonly Raw[],
  gallon?: Gallon,
): readonly Finding[] {
  return Object.entries(table.columns)
    .filter(([, column]) => column.formula === undefined)
    .flatMap(([key, column]) =>
      kinds.flatMap((question) => {
        const hits = rows.filter(([row, cells]) =>
          question.asks(column, cells[key], row[key]),
        );
        const first = hits[0];
        if (first === undefined) return [];
        const [row, cells] = first;
        const more = hits.length - 1;
        return [
          {
            where: `${row.place}, ${columnWords(contents, column)}`,
            found: `${shown(cells[key])}${more > 0 ? ` (and ${more} more such in this column)` : ""}`,
            ...question.says(column, row[key], gallon),
          },
        ];
      }),
    );
}

interface Question {
  readonly asks: (column: Column, raw: unknown, value: unknown) => boolean;
  readonly says: (
    column: Column,
    value: unknown,
    gallon: Gallon | undefined,
  ) => { readonly meaning: string; readonly todo: string };
}

const textAsFigure: Question = {
  asks: ({ term, byName }, raw, value) =>
    byName === undefined &&
    value !== undefined &&
    typeof raw === "string" &&
    !isBlank(raw) &&
    ["quantity", "share", "money", "number", "date"].includes(term.kind),
  says: (column, value, gallon) => ({
    meaning: `this is text; it was understood as ${asStated(column, value, gallon)}, but the worksheet's own sums pass over it`,
    todo: retyped(column, value),
  }),
};

const blankCounted: Question = {
  asks: ({ sayBlank }, raw) => sayBlank === true && isBlank(raw),
  says: ({ blankIs, term }) => ({
    meaning: `a blank counts as ${blankIs ?? "not entered"}`,
    todo: `type ${term.label.toLowerCase()}: yes or no`,
  }),
};

const unusual: Question = {
  asks: (column, _raw, value) =>
    column.usual !== undefined &&
    typeof value === "number" &&
    (stated(column, value) < column.usual[0] ||
      stated(column, value) > column.usual[1]),
  says: (column) => {
    const [from, to] = (column.usual ?? [0, 0]).map((limit) =>
      figure(column, limit),
    );
    return {
      meaning: `it is used as it stands, but ${column.term.label.toLowerCase()} is usually between ${from} and ${to}`,
      todo: "check the figure and its unit",
    };
  },
};

/** Only a column shown as text is a code whose leading zeros matter. */
const numberAsCode: Question = {
  asks: ({ format }, raw) => format === "@" && typeof raw === "number",
  says: () => ({
    meaning:
      "this code is a number, so zeros at its front may have been lost and its last digits rounded",
    todo: "format the cell as text and type the code again",
  }),
};

const FIRST_DAY = serialOf(2000, 1, 1);
const LAST_DAY = serialOf(2100, 1, 1);

/** A worksheet makes a day of a lot called 26-03 as soon as it is typed. */
const dayAsName: Question = {
  asks: ({ term, format, byName }, raw) =>
    term.kind === "text" &&
    byName === undefined &&
    format !== "@" &&
    typeof raw === "number" &&
    raw >= FIRST_DAY &&
    raw < LAST_DAY,
  says: (_column, value) => ({
    meaning: `this may be the day ${isoDate(as<DaySerial>(Number(value)))}, made by the worksheet of a name such as 26-03`,
    todo: "format the cell as text and type the name again",
  }),
};

const kinds: readonly Question[] = [
  textAsFigure,
  blankCounted,
  unusual,
  numberAsCode,
  dayAsName,
];

function retyped(column: Column, value: unknown): string {
  if (column.term.kind === "date" || typeof value !== "number")
    return "type the day again, so that the cell takes it as a date";
  return column.term.kind === "share"
    ? `type ${figure(column, value)} as a number`
    : `type ${stated(column, value)} and nothing else`;
}

/** The value in the column's own unit. */
export const stated = ({ term }: Column, value: number): number =>
  term.kind === "quantity"
    ? Number(fromHouse(value, unitNamed(term.unit)).toPrecision(12))
    : value;

function asStated(
  column: Column,
  value: unknown,
  gallon: Gallon | undefined,
): string {
  if (typeof value !== "number") return String(value);
  return column.term.kind === "date"
    ? isoDate(as<DaySerial>(value))
    : figure(column, stated(column, value), gallon);
}

function figure({ term }: Column, value: number, gallon?: Gallon): string {
  if (term.kind === "share")
    return `${Number((value * 100).toPrecision(12))} %`;
  const unit = "unit" in term ? term.unit : "";
  return `${value}${unit === "" ? "" : ` ${unitSaid(unit, gallon)}`}`;
}
