import { isBlank } from "../../functions/read-cell";
import { KG_PER_LB } from "../../measures/units";
import type { SaleBasis } from "../../trade/totes/sale-amount";
import type { CellContent } from "../contents";
import { figureOf } from "./column-values";
import type { Headings } from "./headings";
import type { LedgerRole } from "./roles";
import { dateOrderOf, type DateOrder } from "./written-date";
import {
  basisIn,
  currencyIn,
  weightUnitIn,
  type Currency,
  type WeightUnit,
} from "./written-units";

/** Units, bases and moneys as they are understood, each with where that was read. */
export interface Understanding {
  readonly weight: Understood<WeightUnit>;
  readonly basis: Understood<SaleBasis> | undefined;
  readonly currency: Understood<Currency> | undefined;
  /** How days in figures are written; undefined where none is text or nothing shows it. */
  readonly dates: DateOrder | undefined;
}

export interface Understood<T> {
  readonly is: T;
  readonly from:
    "the heading" | "the cells" | "the size of the figures" | "the amounts";
}

type Columns = { readonly [R in LedgerRole]?: number };

export function understandingOf(
  at: Columns,
  headings: Headings,
  columns: readonly (readonly CellContent[])[],
): Understanding {
  const heading = (role: LedgerRole): string =>
    headings.columns[at[role] ?? -1]?.all ?? "";
  const cells = (role: LedgerRole): readonly CellContent[] =>
    columns[at[role] ?? -1] ?? [];
  const weight = weightOf(
    [heading("gross"), heading("net"), heading("tare")],
    [...cells("gross"), ...cells("net")],
  );
  return {
    weight,
    basis:
      at.price === undefined
        ? undefined
        : basisOf(heading("price"), cells, weight.is),
    currency: currencyOf(
      [heading("currency"), heading("price"), heading("amount")],
      [cells("currency"), cells("price"), cells("amount")],
    ),
    dates: dateOrderOf(
      cells("date").filter((cell) => typeof cell === "string"),
    ),
  };
}

/** A full tote weighs about 3,040 lb or 1,380 kg, so figures below this are kilograms. Common practice, no source. */
const LEAST_POUNDS = 1900;

function weightOf(
  headings: readonly string[],
  cells: readonly CellContent[],
): Understood<WeightUnit> {
  const said = firstOf(headings, weightUnitIn);
  if (said) return { is: said, from: "the heading" };
  const written = commonest(cells, weightUnitIn);
  if (written) return { is: written, from: "the cells" };
  const figures = cells.map(figureOf).filter((value) => value !== undefined);
  const middle = [...figures].sort((a, b) => a - b)[
    Math.floor(figures.length / 2)
  ];
  return {
    is: middle !== undefined && middle < LEAST_POUNDS ? "kg" : "lb",
    from: "the size of the figures",
  };
}

function basisOf(
  heading: string,
  cells: (role: LedgerRole) => readonly CellContent[],
  weight: WeightUnit,
): Understood<SaleBasis> | undefined {
  const said = basisIn(heading.replace(/^\D*\bprice\b/i, ""));
  if (said) return { is: said, from: "the heading" };
  const written =
    commonest(cells("basis"), basisIn) ?? commonest(cells("price"), basisIn);
  if (written) return { is: written, from: "the cells" };
  return byAmount(cells, weight);
}

/** Which basis makes the amounts that stand beside the prices; a gallon is taken as 11.03 lb to tell them apart. */
function byAmount(
  cells: (role: LedgerRole) => readonly CellContent[],
  weight: WeightUnit,
): Understood<SaleBasis> | undefined {
  const rows = cells("price").flatMap((cell, row) => {
    const [price, net, amount] = [
      figureOf(cell),
      figureOf(cells("net")[row]),
      figureOf(cells("amount")[row]),
    ];
    return price === undefined || net === undefined || !amount
      ? []
      : [{ price, pounds: weight === "kg" ? net / KG_PER_LB : net, amount }];
  });
  const near = (units: number): number =>
    rows.filter(
      ({ price, pounds, amount }) =>
        Math.abs((pounds * units * price) / amount - 1) < 0.015,
    ).length;
  const found = (
    [
      ["per lb", near(1)],
      ["per kg", near(KG_PER_LB)],
      ["per gal", near(1 / 11.03)],
    ] as const
  ).find(([, count]) => count > 0 && count * 2 > rows.length);
  return found && { is: found[0], from: "the amounts" };
}

function currencyOf(
  headings: readonly string[],
  columns: readonly (readonly CellContent[])[],
): Understood<Currency> | undefined {
  const said = firstOf(
    headings.filter((heading) => !bothMoneys(heading)),
    currencyIn,
  );
  if (said) return { is: said, from: "the heading" };
  for (const cells of columns) {
    const moneys = new Set(
      cells.map((cell) =>
        isBlank(cell) ? undefined : currencyIn(String(cell)),
      ),
    );
    const [only] = moneys;
    // Two moneys, or a blank among them: each row must then say its own.
    if (moneys.size === 1 && only) return { is: only, from: "the cells" };
    if (moneys.size > 1) return undefined;
  }
  return undefined;
}

/** "USD/CAD" over a column names neither. */
const bothMoneys = (heading: string): boolean =>
  /us.{0,3}\/.{0,3}ca|ca.{0,3}\/.{0,3}us/i.test(heading);

function firstOf<T>(
  texts: readonly string[],
  read: (text: string) => T | undefined,
): T | undefined {
  for (const text of texts) {
    const found = read(text);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** What most of the cells say. */
function commonest<T>(
  cells: readonly CellContent[],
  read: (text: string) => T | undefined,
): T | undefined {
  const counts = new Map<T, number>();
  for (const cell of cells) {
    const found = typeof cell === "string" ? read(cell) : undefined;
    if (found !== undefined) counts.set(found, (counts.get(found) ?? 0) + 1);
  }
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  // What a cell says of itself holds for that cell; only what most of them say holds for the column.
  const filled = cells.filter((cell) => !isBlank(cell)).length;
  return most && most[1] * 2 > filled ? most[0] : undefined;
}
