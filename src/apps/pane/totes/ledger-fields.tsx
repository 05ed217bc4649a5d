import type { ReactNode } from "react";
import type { Cells } from "../../../book/ledger/headings";
import type { LedgerProposal } from "../../../book/ledger/propose";
import {
  readLedger,
  type LedgerReading,
  type LedgerTicket,
} from "../../../book/ledger/read-ledger";
import {
  ledgerRoles,
  roleLabels,
  type LedgerRole,
} from "../../../book/ledger/roles";
import { isoDate } from "../../../measures/read-date";
import { KG_PER_LB } from "../../../measures/units";
import { cellAddress, columnLetters } from "../../../sheets/address";
import type { LedgerRange } from "../../../sheets/ledger/ledger-range";
import { saleBases } from "../../../trade/totes/sale-amount";
import { ChoiceField } from "../new-product/form-parts";
import { Pair } from "../pair";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { moneyIn } from "./money-in";

/** Which column is what and how figures are read, to be put right; and what that makes of the first tickets. */
export function LedgerFields(props: {
  readonly range: LedgerRange;
  readonly cells: Cells;
  readonly proposal: LedgerProposal;
  readonly wasRemembered: boolean;
  readonly how: LedgerReading;
  readonly change: (how: LedgerReading) => void;
}): ReactNode {
  const { range, cells, proposal, how, change } = props;
  const pane = usePaneStyles();
  const { headings, rows, passedOver, because, understood } = proposal;
  const columns = headings.columns.map(({ all }, c) => ({
    value: String(c),
    text: `${columnLetters(range.column + c)}${all === "" ? "" : `, ${all}`}`,
  }));
  const tickets = readLedger(cells, rows, how);
  const unread = tickets.flatMap(({ row, unread: all }) =>
    all.map(
      ({ role, says }) =>
        `${cellAddress(range.row + row, range.column + (how.columns[role] ?? 0))}, ${roleLabels[role][0]}: ${says}.`,
    ),
  );
  const set = (role: LedgerRole, column: string): void => {
    const { [role]: _, ...others } = how.columns;
    change({
      ...how,
      columns: column === "" ? others : { ...others, [role]: Number(column) },
    });
  };
  return (
    <>
      <Section title="Which column is what">
        <p className={pane.plain} role="status">
          {tickets.length} tickets.
          {props.wasRemembered ? " Read as you said the last time." : ""}
          {passedOver.length > 0
            ? ` ${passedOver.length} ${passedOver.length === 1 ? "row is" : "rows are"} no tickets: ${passedOver
                .slice(0, 4)
                .map(({ row, why }) => `row ${range.row + row + 1}, ${why}`)
                .join("; ")}${passedOver.length > 4 ? " and so on" : ""}.`
            : ""}
        </p>
        <Pair>
          {ledgerRoles.map((role) => (
            <ChoiceField
              key={role}
              label={roleLabels[role][0]}
              none="Not in it"
              value={String(how.columns[role] ?? "")}
              hint={
                how.columns[role] !== undefined &&
                how.columns[role] === proposal.columns[role] &&
                because[role] !== "heading"
                  ? `by its ${because[role] ?? "values"}`
                  : ""
              }
              choices={columns}
              change={(column) => set(role, column)}
            />
          ))}
        </Pair>
      </Section>
      <Section title="How figures are read">
        <Pair>
          <ChoiceField
            label="Weights"
            value={how.weight}
            hint={
              how.weight === understood.weight.is
                ? `from ${understood.weight.from}`
                : ""
            }
            choices={[
              { value: "lb", text: "pounds" },
              { value: "kg", text: "kilograms" },
            ]}
            change={(weight) =>
              change({ ...how, weight: weight === "kg" ? "kg" : "lb" })
            }
          />
          <ChoiceField
            label="Prices"
            none="As each row says"
            value={how.basis ?? ""}
            hint={
              understood.basis && how.basis === understood.basis.is
                ? `from ${understood.basis.from}`
                : ""
            }
            choices={saleBases.map((basis) => ({ value: basis, text: basis }))}
            change={(basis) =>
              change({ ...how, basis: saleBases.find((one) => one === basis) })
            }
          />
          <ChoiceField
            label="Money"
            none="As each row says"
            value={how.currency ?? ""}
            hint={
              understood.currency && how.currency === understood.currency.is
                ? `from ${understood.currency.from}`
                : ""
            }
            choices={[
              { value: "USD", text: "USD" },
              { value: "CAD", text: "CAD" },
            ]}
            change={(money) =>
              change({
                ...how,
                currency:
                  money === "USD" || money === "CAD" ? money : undefined,
              })
            }
          />
          <ChoiceField
            label="Days in figures"
            none="As they stand"
            value={how.dates ?? ""}
            choices={[
              { value: "day first", text: "day first, 25/03/2026" },
              { value: "month first", text: "month first, 03/25/2026" },
            ]}
            change={(dates) =>
              change({
                ...how,
                dates:
                  dates === "day first" || dates === "month first"
                    ? dates
                    : undefined,
              })
            }
          />
        </Pair>
      </Section>
      <Section title="So the first tickets read">
        <ul className={pane.list}>
          {tickets.slice(0, 3).map((ticket) => (
            <li key={ticket.row} className={pane.plain}>
              {ticketWords(ticket)}
            </li>
          ))}
        </ul>
        {unread.length > 0 && (
          <>
            <p className={pane.plain}>
              {unread.length === 1 ? "One cell" : `${unread.length} cells`}{" "}
              cannot be read and count as not entered:
            </p>
            <ul className={pane.list}>
              {unread.slice(0, 5).map((one) => (
                <li key={one} className={pane.quiet}>
                  {one}
                </li>
              ))}
            </ul>
          </>
        )}
      </Section>
    </>
  );
}

const ticketWords = ({
  ticket,
  date,
  buyer,
  gross,
  tare,
  net,
  brix,
  price,
  basis,
  currency,
}: LedgerTicket): string =>
  [
    ticket ?? "no ticket",
    date === undefined ? "no date" : isoDate(date),
    buyer,
    net !== undefined || (gross !== undefined && tare !== undefined)
      ? `${lb(gross !== undefined && tare !== undefined ? gross - tare : (net ?? 0))} net`
      : "no net weight",
    brix === undefined ? undefined : `${brix} °Bx`,
    price === undefined
      ? undefined
      : `${moneyIn(price, currency ?? "USD")}${basis === undefined ? "" : ` ${basis}`}${currency === undefined ? ", money not said" : ""}`,
  ]
    .filter(Boolean)
    .join(" · ");

const lb = (weight: number): string =>
  `${(weight / KG_PER_LB).toLocaleString("en-US", { maximumFractionDigits: 1 })} lb`;
