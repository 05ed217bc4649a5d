import { sameName } from "../keys";
import { proposeLedger, type LedgerColumns } from "../ledger/propose";
import type { LedgerRole } from "../ledger/roles";
import type { Understanding } from "../ledger/understanding";
import { currencyIn } from "../ledger/written-units";
import { checkTicket, type ReadyTicket } from "./check-ticket";
import { pastedLines, type PastedLine } from "./pasted-lines";
import { as, type Kilograms } from "../../measures/quantity";
import { KG_PER_LB } from "../../measures/units";
import { asked, refused, type Reason } from "./reason";
import { pounds } from "./ticket-cells";
import type { TicketFacts } from "./ticket-facts";

/** A pasted line, looked at. */
export interface CheckedLine {
  readonly line: number;
  readonly text: string;
  readonly name: string;
  readonly verdict: "fine" | "asked" | "refused";
  readonly reasons: readonly Reason[];
  /** What would be posted; undefined while something is refused or open. */
  readonly ready: ReadyTicket | undefined;
}

export interface CheckedPaste {
  readonly columns: LedgerColumns;
  readonly headings: readonly string[];
  readonly understood: Understanding;
  readonly lines: readonly CheckedLine[];
  /** Lines that are no tickets: headings and totals. They stay where they are. */
  readonly passedOver: readonly number[];
}

/** What a ticket cannot do without. */
const needed = [
  "ticket",
  "date",
  "gross",
  "tare",
  "brix",
] as const satisfies readonly LedgerRole[];

/** Looks at every line of a paste before anything is written. */
export function checkTickets(text: string, facts: TicketFacts): CheckedPaste {
  const { lines } = pastedLines(text);
  const proposal = proposeLedger(lines.map(({ cells }) => cells));
  const rows = new Set([
    ...proposal.rows,
    ...proposal.passedOver
      .filter(
        ({ row, why }) =>
          why === "a line of words" && (lines[row]?.cells.length ?? 0) > 1,
      )
      .map(({ row }) => row),
  ]);
  const so: SoFar = { earlier: new Map(), drawn: new Map() };
  const headings = proposal.headings.columns.map(({ all }) => all);
  const how = {
    columns: proposal.columns,
    understood: proposal.understood,
    headingCurrency: currencyIn(
      [proposal.columns.price, proposal.columns.amount]
        .map((c) => headings[c ?? -1] ?? "")
        .join(" "),
    ),
    missing: needed.filter((role) => proposal.columns[role] === undefined),
  };
  return {
    columns: proposal.columns,
    headings,
    understood: proposal.understood,
    passedOver: lines.flatMap(({ line }, i) => (rows.has(i) ? [] : [line])),
    lines: lines
      .filter((_, i) => rows.has(i))
      .map((line) => checked(line, how, facts, so)),
  };
}

function checked(
  line: PastedLine,
  how: Parameters<typeof checkTicket>[1],
  facts: TicketFacts,
  { earlier, drawn }: SoFar,
): CheckedLine {
  const name = line.cells[how.columns.ticket ?? -1]?.trim() ?? "";
  const { reasons, ready } = checkTicket(line, how, facts);
  const all = [
    ...twice(name, line.line, facts, earlier),
    ...reasons,
    ...overdrawn(ready, facts, drawn),
  ];
  const verdict = all.some(({ kind }) => kind === "refused")
    ? "refused"
    : all.length > 0
      ? "asked"
      : "fine";
  return {
    line: line.line,
    text: line.text,
    name: name === "" ? `Line ${line.line + 1}` : name,
    verdict,
    reasons: all,
    ready:
      verdict === "refused" || all.some(({ mustChoose }) => mustChoose)
        ? undefined
        : ready,
  };
}

/** What the lines before have taken: names, and pounds of lots. */
interface SoFar {
  readonly earlier: Map<string, number>;
  readonly drawn: Map<string, number>;
}

/** Lots that do not hold what the tickets so far draw from them. */
function overdrawn(
  ready: ReadyTicket | undefined,
  { lots }: TicketFacts,
  drawn: Map<string, number>,
): readonly Reason[] {
  return (ready?.lots ?? []).flatMap(({ lot, weight = as<Kilograms>(0) }) => {
    const before = drawn.get(sameName(lot)) ?? 0;
    drawn.set(sameName(lot), before + weight);
    const holds = as<Kilograms>((lots.get(sameName(lot)) ?? 0) - before);
    return weight - holds > 0.5 * KG_PER_LB
      ? [
          asked(
            `Lot ${lot} holds ${pounds(as<Kilograms>(Math.max(0, holds)))} lb by the book, and this draws ${pounds(weight)} lb`,
          ),
        ]
      : [];
  });
}

function twice(
  name: string,
  line: number,
  { posted }: TicketFacts,
  earlier: Map<string, number>,
): readonly Reason[] {
  if (name === "") return [refused("The ticket's number is blank")];
  const row = posted.get(sameName(name));
  const before = earlier.get(sameName(name));
  if (before === undefined) earlier.set(sameName(name), line);
  if (row !== undefined)
    return [refused(`Ticket ${name} is posted already, in ${row}`)];
  return before === undefined
    ? []
    : [
        refused(
          `Ticket ${name} stands in line ${before + 1} of this paste already`,
        ),
      ];
}
