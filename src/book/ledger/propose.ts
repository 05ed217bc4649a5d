import type { CellContent } from "../contents";
import {
  columnValues,
  figureOf,
  suits,
  type ColumnValues,
} from "./column-values";
import { headingsOf, type Cells, type Headings } from "./headings";
import { ledgerRows, type PassedOver } from "./ledger-rows";
import { ledgerRoles, roleInHeading, type LedgerRole } from "./roles";
import { weightUnitIn } from "./written-units";
import { understandingOf, type Understanding } from "./understanding";

/** Which column, counted from 0 in the cells given, is what. */
export type LedgerColumns = { readonly [R in LedgerRole]?: number };

/** What a ledger somebody keeps is taken to be; all of it may be corrected. */
export interface LedgerProposal {
  readonly headings: Headings;
  readonly columns: LedgerColumns;
  /** Why each column was chosen: its heading, its values or the sum gross − tare = net. */
  readonly because: { readonly [R in LedgerRole]?: Because };
  readonly rows: readonly number[];
  readonly passedOver: readonly PassedOver[];
  readonly understood: Understanding;
}

export type Because = "heading" | "values" | "gross less tare";

/** Proposes which column of a table or headed range is what, by its heading and by looking at its values. */
export function proposeLedger(cells: Cells): LedgerProposal {
  const headings = headingsOf(cells);
  const { rows, passedOver } = ledgerRows(cells, headings);
  const columns = headings.columns.map((_, c) =>
    rows.map((row): CellContent => cells[row]?.[c] ?? null),
  );
  const values = columns.map(columnValues);
  const chosen = weighed(assigned(headings, values), columns, values, headings);
  return {
    headings,
    columns: Object.fromEntries(
      [...chosen].map(([role, { column }]) => [role, column]),
    ),
    because: Object.fromEntries(
      [...chosen].map(([role, { because }]) => [role, because]),
    ),
    rows,
    passedOver,
    understood: understandingOf(
      Object.fromEntries(
        [...chosen].map(([role, { column }]) => [role, column]),
      ),
      headings,
      columns,
    ),
  };
}

interface Choice {
  readonly column: number;
  readonly because: Because;
}
type Chosen = ReadonlyMap<LedgerRole, Choice>;

/** What a column must reach by its values alone, where no heading speaks for it. */
const BY_VALUES = 0.85;
/** What values show where no column has a heading; with headings they would be guesses. */
const shownWithoutHeadings = new Set<LedgerRole>(["gross", "tare", "price"]);
/** Roles that values alone can show. */
const shownByValues = new Set<LedgerRole>([
  "date",
  "brix",
  "currency",
  "unit",
  "basis",
  "buyer",
  "ticket",
]);

function assigned(
  headings: Headings,
  values: readonly ColumnValues[],
): Map<LedgerRole, Choice> {
  const claims = values.flatMap((of, column) => {
    const { own = "", all = "" } = headings.columns[column] ?? {};
    const said = roleInHeading(own) ?? roleInHeading(all);
    return ledgerRoles.flatMap((role) => {
      const fit = suits(role, of);
      const named = said?.role === role;
      // A heading for something else keeps a column from being taken for what its values resemble.
      const shown =
        shownByValues.has(role) ||
        (headings.rows === 0 && shownWithoutHeadings.has(role));
      if (!named && (said || !shown || fit < BY_VALUES)) return [];
      // Values that cannot be what the heading says leave it to a column that can; where there is none, they are shown as unread.
      // A ledger that keeps both units is read in the book's own, pounds.
      const inPounds = weightUnitIn(all) === "lb" ? 0.1 : 0;
      const rank = !named
        ? fit - 1
        : fit < 0.15
          ? -0.5
          : 1 + said.sure + fit + inPounds;
      return [
        {
          role,
          column,
          rank,
          because: named ? ("heading" as const) : ("values" as const),
        },
      ];
    });
  });
  const chosen = new Map<LedgerRole, Choice>();
  const used = new Set<number>();
  for (const { role, column, because } of claims.sort(
    (a, b) => b.rank - a.rank || a.column - b.column,
  )) {
    if (chosen.has(role) || used.has(column)) continue;
    chosen.set(role, { column, because });
    used.add(column);
  }
  return chosen;
}

/** Finds the three weights by gross − tare = net where the headings leave any of them open or name the wrong ones. */
function weighed(
  chosen: Map<LedgerRole, Choice>,
  columns: readonly (readonly CellContent[])[],
  values: readonly ColumnValues[],
  headings: Headings,
): Chosen {
  const at = (role: LedgerRole): number | undefined => chosen.get(role)?.column;
  const named = [at("gross"), at("tare"), at("net")] as const;
  if (
    named.every((c) => c !== undefined) &&
    sumsUp(columns, ...(named as [number, number, number]))
  )
    return chosen;
  const could = (role: "gross" | "tare" | "net"): readonly number[] =>
    values.flatMap((of, c) => {
      const said = roleInHeading(headings.columns[c]?.own ?? "");
      const other =
        said &&
        said.role !== role &&
        !["gross", "tare", "net"].includes(said.role ?? "");
      return !other && suits(role, of) > 0.5 ? [c] : [];
    });
  const all = could("gross").flatMap((gross) =>
    could("tare").flatMap((tare) =>
      could("net")
        .filter(
          (net) =>
            new Set([gross, tare, net]).size === 3 &&
            sumsUp(columns, gross, tare, net),
        )
        .map((net) => [gross, tare, net] as const),
    ),
  );
  const agreeing = (three: readonly [number, number, number]): number =>
    three.filter((column, i) => column === named[i]).length;
  const [best] = [...all].sort((a, b) => agreeing(b) - agreeing(a));
  if (!best) return chosen;
  const result = new Map(
    [...chosen].filter(
      ([role, { column }]) =>
        !["gross", "tare", "net"].includes(role) && !best.includes(column),
    ),
  );
  for (const [i, role] of (["gross", "tare", "net"] as const).entries())
    result.set(role, {
      column: best[i] ?? 0,
      because: best[i] === named[i] ? "heading" : "gross less tare",
    });
  return result;
}

/** Whether gross less tare is net in nearly all rows that hold all three, within a pound. */
function sumsUp(
  columns: readonly (readonly CellContent[])[],
  gross: number,
  tare: number,
  net: number,
): boolean {
  let [asked, held] = [0, 0];
  for (const [row, cell] of (columns[gross] ?? []).entries()) {
    const [g, t, n] = [
      figureOf(cell),
      figureOf(columns[tare]?.[row]),
      figureOf(columns[net]?.[row]),
    ];
    if (g === undefined || t === undefined || n === undefined) continue;
    asked += 1;
    if (Math.abs(g - t - n) <= 1) held += 1;
  }
  return asked > 1 && held >= asked * 0.75;
}
