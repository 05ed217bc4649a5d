import type {
  LedgerReading,
  LedgerTicket,
} from "../../book/ledger/read-ledger";
import { sameName } from "../../book/keys";
import { fixedAddress, cellAddress } from "../address";
import { look } from "../looks";
import type { Area, Cell, Sheet } from "../workbook";

/** Sums of an adopted ledger beside its rows: by buyer and money, and by contract. */
export type Sums = Pick<Sheet, "cells" | "tables" | "widths">;

interface Sum {
  readonly heading: string;
  readonly format?: string;
  readonly width: number;
  /** The column that is added up where a row's keys are the sum's; counted where there is none. */
  readonly of?: string;
}

interface Block {
  readonly table: string;
  readonly keys: readonly string[];
  readonly sums: readonly Sum[];
  readonly rows: readonly (readonly string[])[];
}

/** `area` is of the rows that are added up, headings included; what no row says is called so and adds up to itself. */
export function adoptedSums(
  tickets: readonly LedgerTicket[],
  { columns }: LedgerReading,
  rows: { readonly area: Area; readonly headings: readonly string[] },
  table: string,
): Sums {
  const totes: Sum = { heading: "Totes", width: 8 };
  const net: Sum = {
    heading: "Net lb",
    of: "Net lb",
    format: "#,##0.0",
    width: 12,
  };
  const blocks: Block[] = [
    {
      table: `${table}ByBuyer`,
      keys: ["Buyer", "Currency"],
      sums: [
        totes,
        net,
        { heading: "Amount", of: "Amount", format: "#,##0.00", width: 14 },
        ...(columns.paid === undefined
          ? []
          : [{ heading: "Owed", of: "Owed", format: "#,##0.00", width: 14 }]),
      ],
      rows: distinct(tickets, ({ buyer, currency }) => [buyer, currency]),
    },
    ...(columns.contract === undefined
      ? []
      : [
          {
            table: `${table}ByContract`,
            keys: ["Contract"],
            sums: [totes, net],
            rows: distinct(tickets, ({ contract }) => [contract]),
          },
        ]),
  ];
  let column = rows.area.column + rows.area.columns + 1;
  return blocks.reduce<Sums>(
    (all, block) => {
      const placed = placedBlock(block, column, rows);
      column += block.keys.length + block.sums.length + 1;
      return {
        cells: [...all.cells, ...placed.cells],
        tables: [...all.tables, ...placed.tables],
        widths: { ...all.widths, ...placed.widths },
      };
    },
    { cells: [], tables: [], widths: {} },
  );
}

const WIDTHS: Readonly<Record<string, number>> = { Buyer: 26 };

function placedBlock(
  { table, keys, sums, rows }: Block,
  column: number,
  {
    area,
    headings,
  }: { readonly area: Area; readonly headings: readonly string[] },
): Sums {
  const columnOf = (heading: string): string => {
    const c = area.column + headings.indexOf(heading);
    return `${fixedAddress(area.row + 1, c)}:${fixedAddress(area.row + area.rows - 1, c)}`;
  };
  const sumCell = (row: number, { of }: Sum): string => {
    const same = keys.map(
      (key, k) => `(${columnOf(key)}=${cellAddress(row, column + k)})`,
    );
    return of === undefined
      ? `=SUMPRODUCT(${same.join("*")}*1)`
      : `=SUMPRODUCT(${same.join("*")}*1,${columnOf(of)})`;
  };
  return {
    cells: [
      ...[...keys, ...sums.map(({ heading }) => heading)].map(
        (value, c): Cell => ({
          row: area.row,
          column: column + c,
          value,
          style: {
            ...look("heading"),
            wrap: true,
            align: c < keys.length ? "left" : "right",
          },
        }),
      ),
      ...rows.flatMap((values, r): readonly Cell[] => {
        const row = area.row + 1 + r;
        return [
          ...values.map((value, k) => ({
            row,
            column: column + k,
            value,
            style: look("label"),
          })),
          ...sums.map((sum, s) => ({
            row,
            column: column + keys.length + s,
            formula: sumCell(row, sum),
            style: look("result", sum.format ?? "0"),
          })),
        ];
      }),
    ],
    tables: [
      {
        name: table,
        area: {
          row: area.row,
          column,
          rows: Math.max(2, rows.length + 1),
          columns: keys.length + sums.length,
        },
        columns: [...keys, ...sums.map(({ heading }) => heading)].map(
          (heading) => ({ heading }),
        ),
      },
    ],
    widths: Object.fromEntries([
      ...keys.map((key, k) => [column + k, WIDTHS[key] ?? 12] as const),
      ...sums.map(({ width }, s) => [column + keys.length + s, width] as const),
    ]),
  };
}

/** In order of first appearance; a key that a row lacks is a blank, which blank cells equal. */
function distinct(
  tickets: readonly LedgerTicket[],
  keysOf: (ticket: LedgerTicket) => readonly (string | undefined)[],
): readonly (readonly string[])[] {
  const found = new Map<string, readonly string[]>();
  for (const ticket of tickets) {
    const keys = keysOf(ticket).map((key) =>
      (key ?? "").trim().replace(/ +/g, " "),
    );
    const key = keys.map(sameName).join("\u0000");
    if (!found.has(key)) found.set(key, keys);
  }
  return [...found.values()];
}
